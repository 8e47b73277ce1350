package entracte;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import entracte.check.Checked;
import entracte.check.Checker;
import entracte.check.Part;
import entracte.check.Part.CastRole;
import entracte.check.Part.JackUse;
import entracte.check.Part.Wanted;
import entracte.check.PlayableSet;
import entracte.read.ReadSet;
import entracte.read.SetReader;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The two sets that come with the program: no mistakes in them, and a player's usual tricks. */
class DemoSetsTest {
  private static final PlayableSet KITCHEN = playable("sets/kitchen-table");
  private static final PlayableSet BARN = playable("sets/orchard-barn");

  @Test
  void theKitchenTableHasThreeSongsOnSixModules() {
    assertEquals(3, KITCHEN.setList().songs().size());
    assertEquals(6, KITCHEN.setList().rig().modules().size());
  }

  @Test
  void theOrchardBarnHasEightSongsOnEighteenModulesAndTwoInstrumentsBeside() {
    assertEquals(8, BARN.setList().songs().size());
    assertEquals(18, BARN.setList().rig().modules().size());
    assertEquals(2, BARN.setList().rig().gear().size());
    assertTrue(BARN.setList().rig().cords().lengthMatters());
  }

  @Test
  void twoHandsPlayTwoVoices() {
    assertPlayed(
        part ->
            joins(part, "keyboard.pitch", "oscillator.pitch")
                && joins(part, "keyboard.second cv", "oscillator.pitch")
                && wants(part, "keyboard", "mode", "two voices"));
  }

  @Test
  void aSlewLimiterInThePitchPathGlides() {
    assertPlayed(
        part ->
            joins(part, "keyboard.pitch", "slew limiter.in")
                && joins(part, "slew limiter.out", "oscillator.pitch"));
  }

  @Test
  void threeOscillatorsTunedApartHangOnOneMultiple() {
    assertPlayed(
        part ->
            part.nets().stream().anyMatch(net -> net.sinks().size() == 3)
                && tunings(part).size() == 3);
  }

  @Test
  void shortEnvelopesIntoPitchAndCutoffMakeDrums() {
    assertPlayed(
        part ->
            joins(part, "envelope.out", "oscillator.fm")
                && joins(part, "envelope.out", "filter.cutoff cv")
                && knobs(part, "envelope", "decay").allMatch(k -> k.interval().high() <= 3));
  }

  @Test
  void twoWavesOfOneOscillatorAreBlended() {
    assertPlayed(
        part ->
            joins(part, "oscillator.saw", "mixer.in")
                && joins(part, "oscillator.pulse", "mixer.in")
                && rolesOf(part, "oscillator").size() == 1);
  }

  @Test
  void theWheelControlsVibratoThroughAnAmplitudeInput() {
    assertPlayed(
        part ->
            joins(part, "keyboard.second cv", "modulation oscillator.amplitude")
                && joins(part, "modulation oscillator.triangle", "oscillator.fm")
                && wants(part, "keyboard", "mode", "voice and wheel"));
  }

  @Test
  void theWheelControlsTheCutoff() {
    assertPlayed(
        part ->
            joins(part, "keyboard.second cv", "filter.cutoff cv")
                && wants(part, "keyboard", "mode", "voice and wheel"));
  }

  @Test
  void jumpersGiveTheOtherSlopeTwoPolesOrThree() {
    Set<String> wanted =
        BARN.parts().stream()
            .flatMap(part -> part.jumpers().stream())
            .map(Part.JumperNeed::position)
            .collect(Collectors.toSet());
    assertEquals(Set.of("2-pole", "3-pole"), wanted);
  }

  @Test
  void aGainStepDrivesTheFilter() {
    assertPlayed(
        part -> wants(part, "mixer", "gain", "x10") && joins(part, "mixer.out", "filter.audio"));
  }

  @Test
  void aModulationOscillatorPlaysWhereTheOscillatorsDoNotSuffice() {
    assertPlayed(
        part ->
            rolesOf(part, "oscillator").size() == 4
                && rolesOf(part, "modulation oscillator").size() > 1);
  }

  @Test
  void aHighPassStandsBeforeALowPass() {
    assertPlayed(part -> joins(part, "high-pass.out", "filter.audio"));
  }

  @Test
  void anAttenuatorStretchesTheKeyboard() {
    assertPlayed(
        part ->
            joins(part, "keyboard.pitch", "attenuator.in")
                && joins(part, "attenuator.out", "oscillator.pitch"));
  }

  @Test
  void envelopesStartAtEveryNoteOrOncePerPhrase() {
    assertPlayed(
        part ->
            wants(part, "envelope", "trigger", "legato")
                && wants(part, "envelope", "trigger", "every note"));
  }

  /** Reads and checks a set; the check itself is the first test of it. */
  private static PlayableSet playable(String folder) {
    ReadSet read = SetReader.read(Path.of(folder));
    Checked checked = Checker.check(read.setList().orElseThrow(), read.places());
    assertEquals(List.of(), read.findings());
    assertEquals(List.of(), checked.findings());
    return checked.set().orElseThrow();
  }

  private static void assertPlayed(Predicate<Part> trick) {
    assertTrue(BARN.parts().stream().anyMatch(trick), "no song of the set does this");
  }

  /** Whether a cord runs from one kind's jack to another's; each is {@code kind.jack}. */
  private static boolean joins(Part part, String source, String sink) {
    return part.nets().stream()
        .filter(net -> is(part, net.source(), source))
        .flatMap(net -> net.sinks().stream())
        .anyMatch(use -> is(part, use, sink));
  }

  private static boolean is(Part part, JackUse use, String kindAndJack) {
    List<String> names = Arrays.asList(kindAndJack.split("\\."));
    return use.jack().equals(names.get(1))
        && mayBe(part.roles().get(use.owner().role()), names.get(0));
  }

  private static boolean mayBe(CastRole role, String kind) {
    return role.candidates().stream().anyMatch(module -> module.kind().name().equals(kind));
  }

  private static List<CastRole> rolesOf(Part part, String kind) {
    return part.roles().stream().filter(role -> mayBe(role, kind)).toList();
  }

  private static boolean wants(Part part, String kind, String control, String position) {
    return part.settings().stream()
        .filter(wanted -> mayBe(part.roles().get(wanted.owner().role()), kind))
        .anyMatch(
            wanted ->
                wanted instanceof Wanted.Switch flip
                    && flip.control().equals(control)
                    && flip.position().equals(position));
  }

  private static Stream<Wanted.Knob> knobs(Part part, String kind, String control) {
    return part.settings().stream()
        .filter(wanted -> mayBe(part.roles().get(wanted.owner().role()), kind))
        .filter(wanted -> wanted.control().equals(control))
        .map(Wanted.Knob.class::cast);
  }

  private static Set<Double> tunings(Part part) {
    return knobs(part, "oscillator", "tune")
        .map(knob -> knob.interval().nominal())
        .collect(Collectors.toSet());
  }
}
