package entracte.rehearsal;

import entracte.cue.TimeText;
import java.util.Locale;
import java.util.function.Predicate;

/** Times so short that keys were likelier pressed in passing than moves made. */
final class Haste {
  /** Below this part of what is expected, a run is likelier a mistake than a feat. An estimate. */
  private static final double HARDLY = 0.4;

  private Haste() {}

  /** Whether it is worth a question, for a player of whom so much is expected. */
  static boolean isDoubtful(double seconds, double expectedSeconds) {
    return seconds < HARDLY * expectedSeconds;
  }

  /**
   * Whether a run from elsewhere shall count.
   *
   * @param player what is known of the player so far
   * @param played asked, in words, whether one was played that is hardly possible
   */
  static boolean counts(Run run, Player player, Predicate<String> played) {
    double expected = Math.min(run.makeup().total(), player.seconds(run.makeup()));
    return !isDoubtful(run.seconds(), expected)
        || played.test(
            String.format(
                Locale.ROOT,
                "A run to %s took %.1f s, where %s were to be expected.",
                run.to(),
                run.seconds(),
                TimeText.of(expected)));
  }
}
