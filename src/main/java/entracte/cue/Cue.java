package entracte.cue;

import java.util.List;
import java.util.OptionalDouble;

/**
 * The way to one song, in words.
 *
 * @param number of the song, from 1
 * @param setUp whether it happens before the show, with nobody waiting
 * @param steps in the order of the hands
 * @param seconds how long the steps take at the assumed pace
 * @param runs how many timed runs of these very steps the seconds come from; 0 for none
 * @param gapSeconds the silence that the set allows; empty if it says nothing
 * @param lookAt the settings to look at before playing
 * @param parked the cords that wait unheard during the song
 * @param ear what to trust and what to listen for
 */
public record Cue(
    int number,
    String song,
    boolean setUp,
    List<Step> steps,
    double seconds,
    int runs,
    OptionalDouble gapSeconds,
    List<String> lookAt,
    List<String> parked,
    SongCard card,
    EarNotes ear) {
  /** A way of which nothing is said to the ear. */
  public Cue(
      int number,
      String song,
      boolean setUp,
      List<Step> steps,
      double seconds,
      int runs,
      OptionalDouble gapSeconds,
      List<String> lookAt,
      List<String> parked,
      SongCard card) {
    this(
        number,
        song,
        setUp,
        steps,
        seconds,
        runs,
        gapSeconds,
        lookAt,
        parked,
        card,
        EarNotes.none());
  }

  public Cue {
    steps = List.copyOf(steps);
    lookAt = List.copyOf(lookAt);
    parked = List.copyOf(parked);
  }

  /** {@code To 3 Late Bus}, {@code Set-up for 1 Kettle}. */
  public String heading() {
    return (setUp ? "Set-up for " : "To ") + number + " " + song;
  }

  /** From how many runs the seconds come: {@code (3 runs)}; nothing where they are an estimate. */
  public String ofRuns() {
    return ofRuns(runs);
  }

  /** The same of so many runs. */
  public static String ofRuns(int runs) {
    return switch (runs) {
      case 0 -> "";
      case 1 -> " (1 run)";
      default -> " (" + runs + " runs)";
    };
  }

  /** Whether a step is the first that tunes: before it stands what is seen to before tuning. */
  public boolean beginsTuning(Step step) {
    return steps.stream()
        .filter(each -> each.verb() == Verb.TUNE)
        .findFirst()
        .filter(step::equals)
        .isPresent();
  }

  /** As the problem counts them: plugs, turns and flips. */
  public int moves() {
    return steps.stream().mapToInt(Step::moves).sum();
  }

  /** By how much the steps outlast the gap; 0 if they fit, or if there is none to fit. */
  public double overrunSeconds() {
    return setUp || gapSeconds.isEmpty() ? 0 : Math.max(0, seconds - gapSeconds.getAsDouble());
  }

  /** The seconds as they are printed, so that what is added up from them adds up on paper. */
  public long wholeSeconds() {
    return Math.round(seconds);
  }

  /** By how much the printed seconds outlast the printed gap. */
  public long wholeOverrun() {
    return setUp || gapSeconds.isEmpty()
        ? 0
        : Math.max(0, wholeSeconds() - Math.round(gapSeconds.getAsDouble()));
  }
}
