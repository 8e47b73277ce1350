package entracte.rig;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a kind of module does to the voltages that pass it. All of it may be left unsaid.
 *
 * @param signals what its jacks carry, by their names
 * @param ohmsIn what each of its inputs weighs on the output that feeds it
 * @param ohmsOut what its outputs have in series
 * @param buffered whether a multiple drives each of its outputs anew, so that nothing is lost
 * @param attenuates the knobs that pass all at the top and nothing at zero
 * @param voltsPerOctave what its pitch jacks take or give
 * @param playedBy who plays its outputs ({@code left hand}, {@code wheel}), in the order written
 */
public record Electrics(
    Map<String, Signal> signals,
    OptionalDouble ohmsIn,
    OptionalDouble ohmsOut,
    boolean buffered,
    Map<String, Taper> attenuates,
    OptionalDouble voltsPerOctave,
    Map<String, List<String>> playedBy) {
  /** Common practice, also seen in published discussions of passive splits. */
  public static final double USUAL_OHMS_IN = 100_000;

  /** Common practice: a resistor that keeps two joined outputs from harm. */
  public static final double USUAL_OHMS_OUT = 1_000;

  public static final double USUAL_VOLTS_PER_OCTAVE = 1;

  /** What an attenuating knob is called where no kind says which it is. */
  private static final List<String> USUAL_ATTENUATORS =
      List.of("amount", "level", "attenuation", "attenuator");

  public Electrics {
    signals = Map.copyOf(signals);
    attenuates = Map.copyOf(attenuates);
    playedBy = Collections.unmodifiableMap(new LinkedHashMap<>(playedBy));
  }

  /** Of which nothing is said. */
  public static Electrics unsaid() {
    return new Electrics(
        Map.of(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        false,
        Map.of(),
        OptionalDouble.empty(),
        Map.of());
  }

  /** What a jack carries; empty if nobody has said. */
  public Optional<Signal> signal(String jack) {
    return Optional.ofNullable(signals.get(jack));
  }

  /** How a knob attenuates; empty if it does something else. */
  public Optional<Taper> attenuator(String knob) {
    return attenuates.isEmpty() && USUAL_ATTENUATORS.contains(knob)
        ? Optional.of(Taper.UNKNOWN)
        : Optional.ofNullable(attenuates.get(knob));
  }
}
