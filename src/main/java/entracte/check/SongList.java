package entracte.check;

import entracte.rig.Figures;
import entracte.setlist.SetList;
import entracte.setlist.Song;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A set has songs, told apart by name, with time between them. */
final class SongList {
  private final Findings findings;

  SongList(Findings findings) {
    this.findings = findings;
  }

  void check(SetList set) {
    if (set.songs().isEmpty()) {
      findings.error(
          set, "the set has no songs", "List them under \"songs\", each with its patch.");
    }
    checkNames(set.songs());
    checkGaps(set.songs());
  }

  private void checkNames(List<Song> songs) {
    Map<String, Integer> times = new HashMap<>();
    for (Song song : songs) {
      if (times.merge(song.name(), 1, Integer::sum) == 2) {
        findings.warning(
            song,
            "two songs are called \"" + song.name() + "\"",
            "Give one of them a longer name, so that you can tell them apart on stage.");
      }
    }
  }

  /** One wrong gap of the set reaches every song, and is told once. */
  private void checkGaps(List<Song> songs) {
    Map<Double, List<Song>> wrong = new LinkedHashMap<>();
    for (Song song : songs) {
      double gap = song.gapSeconds().orElse(1);
      if (!(gap > 0)) {
        wrong.computeIfAbsent(gap, seconds -> new ArrayList<>()).add(song);
      }
    }
    wrong.forEach(
        (gap, all) -> {
          int more = all.size() - 1;
          String others = more == 0 ? "" : " and " + Quoted.count(more, "more song");
          findings.error(
              all.get(0),
              "the gap before \"%s\"%s is %s s"
                  .formatted(all.get(0).name(), others, Figures.plain(gap)),
              "Give the seconds that the audience will wait, or leave the gap out.");
        });
  }
}
