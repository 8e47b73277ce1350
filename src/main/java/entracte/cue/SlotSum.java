package entracte.cue;

import entracte.setlist.Slot;
import entracte.setlist.Song;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Songs, talk and changeovers against the slot, in one line. Before each song counts the longer of
 * talk and changeover, since talk goes on while the hands work; the set-up is over before the set
 * begins.
 */
final class SlotSum {
  private SlotSum() {}

  /** Empty if the set gives neither a slot nor the length of any song, or begins in its middle. */
  static Optional<String> of(Slot slot, List<Song> all, List<Cue> cues) {
    long songs = 0;
    long between = 0;
    List<String> untimed = new ArrayList<>();
    for (Cue cue : cues) {
      Song song = all.get(cue.number() - 1);
      songs += Math.round(song.card().lengthSeconds().orElse(0));
      between += cue.setUp() ? 0 : Math.max(cue.wholeSeconds(), talk(song));
      if (song.card().lengthSeconds().isEmpty()) {
        untimed.add(song.name());
      }
    }
    if (slot.seconds().isEmpty() && songs == 0 || cues.size() < all.size()) {
      return Optional.empty();
    }
    String sum =
        "Songs "
            + TimeText.of(songs)
            + ", between them "
            + TimeText.of(between)
            + " (talk or changeover, whichever is longer): "
            + TimeText.of(songs + between)
            + " in all"
            + (cues.stream().anyMatch(cue -> cue.card().encore()) ? ", encore included." : ".");
    return Optional.of(sum + against(slot, songs + between) + lacking(untimed) + kept(all));
  }

  private static long talk(Song song) {
    return Math.round(song.running().talkSeconds());
  }

  private static String against(Slot slot, long sum) {
    if (slot.seconds().isEmpty()) {
      return "";
    }
    long room = Math.round(slot.seconds().getAsDouble() - slot.reserveSeconds());
    String reserve =
        slot.reserveSeconds() == 0
            ? ""
            : ", less " + TimeText.of(slot.reserveSeconds()) + " in reserve";
    return " Slot "
        + TimeText.of(slot.seconds().getAsDouble())
        + reserve
        + ": "
        + TimeText.of(Math.abs(room - sum))
        + (sum <= room ? " to spare." : " too long.");
  }

  /** Which songs nobody is to leave out. */
  private static String kept(List<Song> all) {
    List<String> kept = all.stream().filter(s -> s.running().keep()).map(Song::name).toList();
    return kept.isEmpty()
        ? ""
        : " If it runs late, the player says which song goes; never "
            + String.join(", ", kept)
            + ".";
  }

  private static String lacking(List<String> untimed) {
    return untimed.isEmpty() ? "" : " No length is given for " + String.join(", ", untimed) + ".";
  }
}
