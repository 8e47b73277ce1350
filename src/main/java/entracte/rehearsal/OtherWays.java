package entracte.rehearsal;

import entracte.cue.Cue;
import entracte.cue.CueSheet;
import java.util.Optional;

/** What one changeover has to do with others, in a sentence each. */
final class OtherWays {
  /** Less than this part of a time is not worth a word. */
  private static final double WORTH_A_WORD = 0.01;

  private static final double WHOLE = 100;

  private OtherWays() {}

  /** Runs that led to this song when the plan was another one; nothing if there are none. */
  static Optional<String> to(Cue cue, Learned learned) {
    long others = learned.othersTo(cue);
    if (others == 0) {
      return Optional.empty();
    }
    String runs = others == 1 ? "1 run was" : others + " runs were";
    return Optional.of(
        runs
            + " of other moves to "
            + cue.song()
            + ", before the plan changed; they tell of your hands, but not of these moves.");
  }

  /** What a run of one makes of the next times of all others; nothing if it is too little. */
  static Optional<String> moved(CueSheet sheet, Cue run, Learned before, Learned now) {
    double was = 0;
    double is = 0;
    for (Cue cue : sheet.cues()) {
      if (!cue.setUp() && cue.number() != run.number()) {
        was += before.outlook(cue.steps()).typical(1);
        is += now.outlook(cue.steps()).typical(1);
      }
    }
    double change = was > 0 ? is / was - 1 : 0;
    if (Math.abs(change) < WORTH_A_WORD) {
      return Optional.empty();
    }
    return Optional.of(
        "It tells of your hands as well: the next runs of the other changeovers are now expected to"
            + " take "
            + Math.round(Math.abs(change) * WHOLE)
            + (change < 0 ? " % less." : " % more."));
  }
}
