package entracte.check;

import entracte.setlist.GearCue;
import entracte.setlist.Song;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Gear stays in the bank that was chosen last (MIDI 1.0: bank select holds for every program change
 * that follows). Where only some songs name one, the others sound otherwise after a jump or a skip.
 */
final class GearBanks {
  private final Findings findings;

  GearBanks(Findings findings) {
    this.findings = findings;
  }

  void check(List<Song> songs) {
    Set<String> banked = new LinkedHashSet<>();
    Map<String, GearCue> first = new LinkedHashMap<>();
    Map<String, Set<String>> without = new LinkedHashMap<>();
    for (Song song : songs) {
      for (GearCue cue : song.gear()) {
        if (cue.bank().isPresent()) {
          banked.add(cue.gear());
        } else if (cue.program().isPresent()) {
          first.putIfAbsent(cue.gear(), cue);
          without.computeIfAbsent(cue.gear(), gear -> new LinkedHashSet<>()).add(song.name());
        }
      }
    }
    banked.stream()
        .filter(first::containsKey)
        .forEach(gear -> warn(first.get(gear), without.get(gear)));
  }

  private void warn(GearCue cue, Set<String> songs) {
    int others = songs.size() - 1;
    findings.warning(
        cue,
        "\"%s\" has a bank in some songs, but none in \"%s\"%s"
            .formatted(
                cue.gear(),
                songs.iterator().next(),
                others == 0 ? "" : " and " + others + (others == 1 ? " other" : " others")),
        "There it plays from the bank chosen last: write a bank beside each of its programs.");
  }
}
