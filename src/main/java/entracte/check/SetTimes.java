package entracte.check;

import entracte.rig.Figures;
import entracte.setlist.SetList;
import entracte.setlist.Slot;
import entracte.setlist.Song;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/** The times of a set fit each other, as far as that is known before anything is planned. */
final class SetTimes {
  private static final double HOUR = 3600;
  private static final int MINUTE = 60;

  private final Findings findings;

  SetTimes(Findings findings) {
    this.findings = findings;
  }

  void check(SetList set) {
    checkGaps(set.songs());
    set.songs().forEach(this::checkTalk);
    OptionalDouble slot = set.slot().seconds();
    if (slot.isPresent()) {
      checkSlot(set.slot(), slot.getAsDouble(), set.songs());
    }
  }

  /** One gap of the set reaches every song, and is told of once. */
  private void checkGaps(List<Song> songs) {
    Map<Double, List<Song>> odd = new LinkedHashMap<>();
    for (Song song : songs) {
      double gap = song.gapSeconds().orElse(1);
      if (!(gap > 0 && gap <= HOUR)) {
        odd.computeIfAbsent(gap, seconds -> new ArrayList<>()).add(song);
      }
    }
    odd.forEach(this::reportGap);
  }

  private void reportGap(double gap, List<Song> before) {
    int more = before.size() - 1;
    String others = more == 0 ? "" : " and " + Quoted.count(more, "more song");
    String subject = "the gap before \"%s\"%s is ".formatted(before.get(0).name(), others);
    if (gap > HOUR) {
      findings.warningInPart(
          before.get(0),
          "gap",
          subject + "longer than an hour",
          "Give the time from the end of one song to the beginning of the next.");
    } else {
      findings.errorInPart(
          before.get(0),
          "gap",
          subject + Figures.plain(gap) + " s",
          "Give the seconds that the audience will wait, or leave the gap out.");
    }
  }

  /** Talk goes on while the hands work, so a gap that is shorter holds them to no purpose. */
  private void checkTalk(Song song) {
    double talk = song.running().talkSeconds();
    if (talk > 0 && talk > song.gapSeconds().orElse(Double.POSITIVE_INFINITY)) {
      findings.note(
          song,
          "the talk before \"%s\" takes %s, and the gap is %s"
              .formatted(song.name(), clock(talk), clock(song.gapSeconds().getAsDouble())),
          "Nobody waits while there is talk: let the gap be as long.");
    }
  }

  /** Encores are left out: they are played only if there is time. */
  private void checkSlot(Slot slot, double seconds, List<Song> songs) {
    if (slot.reserveSeconds() > 0 && slot.reserveSeconds() >= seconds) {
      findings.warningInPart(
          slot,
          "reserve",
          "the reserve of %s leaves nothing of the slot of %s"
              .formatted(clock(slot.reserveSeconds()), clock(seconds)),
          "Give as the reserve what you would rather not need.");
      return;
    }
    double played =
        songs.stream()
            .filter(song -> !song.card().encore())
            .mapToDouble(song -> song.card().lengthSeconds().orElse(0))
            .sum();
    double room = seconds - slot.reserveSeconds();
    if (played > room) {
      findings.warning(
          slot,
          "the songs alone take %s, and the slot leaves %s".formatted(clock(played), clock(room)),
          "Leave a song out%s, or ask for a longer slot.".formatted(butNot(songs)));
    }
  }

  /** The songs that the set keeps even when it runs late. */
  private static String butNot(List<Song> songs) {
    List<String> kept =
        songs.stream().filter(song -> song.running().keep()).map(Song::name).toList();
    return kept.isEmpty() ? "" : ", but not " + Quoted.list(kept);
  }

  /** As files have it: {@code 37:30}. */
  private static String clock(double seconds) {
    long whole = Math.round(seconds);
    return "%d:%02d".formatted(whole / MINUTE, whole % MINUTE);
  }
}
