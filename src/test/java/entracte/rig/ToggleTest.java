package entracte.rig;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Switches and jumpers that are called by decibels, factors and poles. */
class ToggleTest {
  private static final List<String> TWO = List.of("12 dB", "24 dB");

  /** 6 dB an octave for 1 pole, 12 for 2, 24 for 4: a published table of filter slopes. */
  @ParameterizedTest
  @CsvSource({"1-pole, 6", "2-pole, 12", "3 poles, 18", "4-pole, 24"})
  void eachPoleTakesSixDecibelsFromAnOctave(String position, int decibels) {
    assertEquals(OptionalInt.of(decibels), on("any", "mode").slope(position));
  }

  /**
   * A Butterworth filter of N poles passes 1 / (1 + f^2N) of the power at f times its cutoff
   * (Butterworth, 1930). Far out, from 64 to 128 times the cutoff, one octave must cost what is
   * said.
   */
  @ParameterizedTest
  @CsvSource({"1", "2", "3", "4"})
  void farFromTheCutoffAButterworthFilterFallsSo(int poles) {
    double octave = butterworth(poles, 64) - butterworth(poles, 128);
    int said = on("any", "mode").slope(poles + "-pole").orElseThrow();
    assertEquals(octave, said, 0.03 * poles);
  }

  private static double butterworth(int poles, double f) {
    return -10 * Math.log10(1 + Math.pow(f, 2 * poles));
  }

  /** 20 log10: factor 10 is 20 dB, factor 2 is 6.02 dB (J. O. Smith, Mathematics of the DFT). */
  @ParameterizedTest
  @CsvSource({"x1, 0", "x2, 6.0206", "x 10, 20", "x100, 40", "x0.5, -6.0206", "20 dB, 20"})
  void gainsAreDecibels(String position, double decibels) {
    double factor = on("mixer", "range", position).gain(position).orElseThrow();
    assertEquals(decibels, GainStep.decibels(factor), 0.00005);
    assertEquals(factor, GainStep.factorOf(decibels), 0.0001);
  }

  @ParameterizedTest
  @CsvSource({"low", "16", "4-pole", "x0", "10", "steep", "other"})
  void otherPositionsAreNoGain(String position) {
    assertEquals(OptionalDouble.empty(), on("mixer", "octave", position).gain(position));
  }

  @Test
  void decibelsOfAFilterAreItsSlope() {
    for (String kind : List.of("filter", "low-pass", "Filter bank")) {
      assertEquals(OptionalInt.of(24), new Toggle(kind(kind), "mode", TWO).slope("24 dB"));
      assertEquals(OptionalDouble.empty(), new Toggle(kind(kind), "mode", TWO).gain("24 dB"));
    }
    assertEquals(OptionalInt.of(12), new Toggle(withCutoff(), "mode", TWO).slope("12 dB"));
  }

  @Test
  void decibelsOfAnyOtherModuleAreAGain() {
    Toggle pad = new Toggle(kind("mixer"), "mode", TWO);
    assertEquals(OptionalInt.empty(), pad.slope("24 dB"));
    assertEquals(24, GainStep.decibels(pad.gain("24 dB").orElseThrow()), 1e-9);
  }

  @Test
  void aToggleNamedForASlopeIsOneOnAnyModule() {
    assertEquals(OptionalInt.of(24), new Toggle(kind("voice"), "slope", TWO).slope("24 dB"));
    assertEquals(OptionalInt.of(12), on("voice", "slope", "12", "24").slope("12"));
    assertEquals(OptionalInt.of(24), on("voice", "poles", "2", "4").slope("4"));
    assertEquals(OptionalInt.of(24), on("voice", "tone").slope("24 dB/octave"));
    assertEquals(OptionalInt.of(24), on("voice", "tone").slope("24 dB per octave"));
  }

  @Test
  void aFilterMayHaveAGainAsWell() {
    assertEquals(OptionalInt.empty(), new Toggle(kind("filter"), "drive", TWO).slope("12 dB"));
    assertEquals(OptionalInt.empty(), on("filter", "pre", "0 dB", "12 dB").slope("12 dB"));
    assertEquals(OptionalInt.empty(), on("filter", "pre", "6 dB", "20 dB").slope("6 dB"));
    assertEquals(OptionalDouble.of(10), on("filter", "bend", "x1", "x10").gain("x10"));
  }

  @Test
  void aFigureAloneIsNeither() {
    assertEquals(OptionalInt.empty(), on("filter", "range", "16", "8").slope("16"));
    assertEquals(OptionalDouble.empty(), on("filter", "range", "16", "8").gain("16"));
  }

  private static Toggle on(String kind, String name, String... positions) {
    return new Toggle(kind(kind), name, List.of(positions));
  }

  private static Kind kind(String name) {
    return kind(name, List.of());
  }

  private static Kind withCutoff() {
    return kind("ladder", List.of(new Knob("cutoff", new Scale(0, 10))));
  }

  private static Kind kind(String name, List<Knob> knobs) {
    Group own = new Group(Group.Form.OWN, "", 1, List.of(), knobs, List.of(), Map.of());
    return new Kind(name, List.of(own), List.of(), Kind.DEFAULT_WIDTH_CM, Set.of());
  }
}
