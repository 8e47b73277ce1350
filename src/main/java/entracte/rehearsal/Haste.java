package entracte.rehearsal;

import entracte.rig.Hands;

/** Times so short that a key must have been pressed in passing. */
final class Haste {
  /** Hands that take less than this part of trained ones were no hands. An estimate. */
  private static final double NO_HANDS = 0.15;

  /** Below this part of what is expected, a run is likelier a mistake than a feat. An estimate. */
  private static final double HARDLY = 0.4;

  private Haste() {}

  /** Whether nobody could have been so quick, in whatever light. */
  static boolean isImpossible(Run run, Hands hands) {
    return run.seconds() < NO_HANDS * run.makeup().hands() / hands.light();
  }

  /** Whether it is worth a question, for a player of whom so much is expected. */
  static boolean isDoubtful(double seconds, double expectedSeconds) {
    return seconds < HARDLY * expectedSeconds;
  }
}
