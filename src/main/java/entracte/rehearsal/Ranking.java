package entracte.rehearsal;

import entracte.cue.CueSheet;
import java.util.Comparator;
import java.util.List;

/**
 * Which changeover to practise. One more run makes the next one quicker by what its law of learning
 * says; how much of that the set gains depends on its gap. Gains are compared first in seconds that
 * no longer run over a gap, since these are what the audience notices, and, where they are equal to
 * the tenth, in seconds of any kind. The set-up is not ranked: nobody waits for it.
 */
final class Ranking {
  private static final double TENTHS = 10;

  private Ranking() {}

  /** All changeovers with something to move, in the order of the set. */
  static List<Standing> standings(CueSheet sheet, Learned learned) {
    return sheet.cues().stream()
        .filter(cue -> !cue.setUp() && cue.moves() > 0)
        .map(cue -> new Standing(cue, learned.outlook(cue.steps())))
        .toList();
  }

  /** Those that practice helps most, first. */
  static List<Standing> byGain(CueSheet sheet, Learned learned) {
    Comparator<Standing> gain =
        Comparator.comparingLong((Standing s) -> Math.round(s.overSaved() * TENTHS))
            .thenComparingDouble(Standing::secondsSaved);
    return standings(sheet, learned).stream().sorted(gain.reversed()).toList();
  }

  /** Those that run over their gaps most, first; then the longest. */
  static List<Standing> worst(CueSheet sheet, Learned learned) {
    Comparator<Standing> bad =
        Comparator.comparingLong((Standing s) -> Math.round(s.over(1) * TENTHS))
            .thenComparingDouble(s -> s.outlook().typical(1));
    return standings(sheet, learned).stream().sorted(bad.reversed()).toList();
  }
}
