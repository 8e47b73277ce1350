package entracte.cue;

import java.util.List;

/**
 * What inputs that hang together on one output leave of its voltage. The output has a resistance in
 * series, each input one to ground; together they divide the voltage. An oscillator is trimmed with
 * its cord alone in the output, so what it loses to its own input is already in its scale.
 *
 * @param ohmsOut of the output
 * @param ohmsIn of each input
 */
record Split(double ohmsOut, List<Double> ohmsIn) {
  private static final double CENTS_PER_OCTAVE = 1200;

  Split {
    ohmsIn = List.copyOf(ohmsIn);
    if (ohmsIn.isEmpty()) {
      throw new IllegalArgumentException("nothing hangs on the output");
    }
  }

  /** The part of the output's voltage that arrives: 0.99 for a hundredth lost. */
  double passes() {
    return 1 / (1 + ohmsIn.stream().mapToDouble(ohms -> ohmsOut / ohms).sum());
  }

  /** The part that is left of what comes to an input of so many ohms while its cord is alone. */
  double kept(double ohms) {
    return passes() / new Split(ohmsOut, List.of(ohms)).passes();
  }

  /** By how many cents an octave comes out too narrow if so much of the voltage is kept. */
  static double narrower(double kept) {
    return CENTS_PER_OCTAVE * (1 - kept);
  }
}
