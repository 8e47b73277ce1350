package entracte.cue;

import java.util.List;

/**
 * What inputs that hang together on one output take from its voltage. The output has a resistance
 * in series, each input one to ground; together they divide the voltage. An oscillator is trimmed
 * with one cord in it, so the loss of one input is already in its scale.
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

  /** The part of the voltage that is lost: 0.01 for a hundredth. */
  double loss() {
    double load = ohmsIn.stream().mapToDouble(ohms -> ohmsOut / ohms).sum();
    return load / (1 + load);
  }

  /** By how many cents each octave comes out too narrow. */
  double flatCentsPerOctave() {
    return CENTS_PER_OCTAVE * loss();
  }

  /** How many of these are new against a single cord into the first of the inputs. */
  double flatterThanAlone() {
    return flatCentsPerOctave() - new Split(ohmsOut, ohmsIn.subList(0, 1)).flatCentsPerOctave();
  }
}
