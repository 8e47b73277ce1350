package entracte.cue;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One oscillator into one mixer, its level and its gain step. */
class LevelsTest {
  private static final String RIG =
      """
      rig: Shelf
      kinds:
        oscillator: {in: [pitch], out: [saw, pulse]}
        mixer:
          channels: {count: 2, in: [in], knobs: {level: 0..10}}
          out: [out]
          switches: {gain: [x1, x10]}
          TAPER
        output: {in: [in x3]}
      rows:
        - - osc 1: oscillator
          - mix 1: mixer
          - main: output
      """;

  @TempDir Path folder;

  private CraftFiles rig(String taper) {
    return new CraftFiles(folder, RIG.replace("TAPER", taper));
  }

  /** A song with the saw in channel a, and more of it if the patch says so. */
  private static String song(String level, String gain, String... more) {
    return """
        roles: {lead: osc 1, blend: mixer}
        connections:
          lead.saw: blend.1.in
          blend.out: main.in
          MORE
        settings: {blend: {gain: GAIN}, blend.1: {level: LEVEL}}
        drive: {blend: wanted}
        """
        .replace("LEVEL", level)
        .replace("GAIN", gain)
        .replace("MORE", String.join("\n  ", more));
  }

  private static Optional<String> jump(CraftFiles files) {
    return files.papers().sheet().cues().get(1).ear().level();
  }

  /** Twice the voltage is 6 dB (J. O. Smith, Mathematics of the DFT). */
  @Test
  void aLinearKnobFromHalfToFullDoublesTheVoltage() {
    CraftFiles files = rig("attenuates: {level: linear}");
    assertEquals(
        Optional.of(
            "the loudest voice about +6 dB against the song before by gain steps and levels"),
        jump(files.song(song("5", "x1")).song(song("10", "x1"))));
  }

  /** Ten times is 20 dB, half of a linear knob is -6 dB: together 14 up. */
  @Test
  void whoeverRaisesTheLevelIsToldHowMuchLouderItComes() {
    CraftFiles files = rig("attenuates: {level: linear}");
    List<Step> steps =
        files.song(song("10", "x1")).song(song("5", "x10")).papers().sheet().cues().get(1).steps();
    assertEquals(
        "RAISE the main level slowly from zero: about 14 dB louder than the song before",
        steps.get(steps.size() - 1).text());
  }

  @Test
  void theEngineerIsToldOfEveryDistortionThatIsWanted() {
    Paperwork papers = rig("").song(song("5", "x1")).song(song("5", "x10")).papers();
    assertEquals(List.of("distortion by mix 1 is wanted"), papers.songs().get(0).desk());
    assertEquals(List.of("mix 1: drive is wanted"), papers.songs().get(0).patchNotes().levels());
    assertEquals(
        List.of("mix 1 gain +20 dB", "distortion by mix 1 is wanted"),
        papers.songs().get(1).desk());
  }

  /** An audio taper passes 10 to 20 % at half (common practice): 20 log10 of 1 / 0.15 is 16. */
  @Test
  void anAudioTaperLeavesMoreBetweenHalfAndFull() {
    CraftFiles files = rig("attenuates: {level: audio}");
    assertEquals(
        Optional.of(
            "the loudest voice about +16 dB against the song before by gain steps and levels"),
        jump(files.song(song("5", "x1")).song(song("10", "x1"))));
  }

  @Test
  void aTaperThatNobodyHasNamedIsSaidToBeAGuess() {
    assertEquals(
        Optional.of(
            "the loudest voice about +6 dB against the song before by gain steps and levels"
                + " (taking mix 1 level as linear)"),
        jump(rig("").song(song("5", "x1")).song(song("10", "x1"))));
  }

  @Test
  void ofTwoWavesInOneMixerTheLouderCounts() {
    String both =
        song("5", "x1", "lead.pulse: blend.2.in")
            .replace("blend.1: {level: 5}", "blend.1: {level: 5}, blend.2: {level: 10}");
    CraftFiles files = rig("attenuates: {level: linear}");
    assertEquals(Optional.empty(), jump(files.song(song("10", "x1")).song(both)));
  }

  /** 20 log10 of 10 is 20 dB; the other voice goes straight out and stays the loudest. */
  @Test
  void aGainStepBelowTheLoudestVoiceIsNamed() {
    CraftFiles files =
        new CraftFiles(
            folder,
            RIG.replace("TAPER", "attenuates: {level: linear}")
                .replace(
                    "  - - osc 1: oscillator", "  - - osc 1: oscillator\n    - osc 2: oscillator"));
    String loud = "connections:\n  straight.saw: main.in 2";
    String both = "{lead: osc 1, straight: osc 2, blend";
    String soft =
        song("0.5", "x1").replace("{lead: osc 1, blend", both).replace("connections:", loud);
    String driven =
        song("0.5", "x10").replace("{lead: osc 1, blend", both).replace("connections:", loud);
    assertEquals(
        Optional.of(
            "mix 1 gain +20 dB against the song before, and the loudest voice about as loud as it"
                + " was; distortion by mix 1 is wanted, so less comes out"),
        jump(files.song(soft).song(driven)));
  }

  @Test
  void aGainStepThatStaysUpIsNamedWhereTheLevelGoesDown() {
    CraftFiles files = rig("attenuates: {level: linear}");
    String other = song("5", "x10").replace("saw", "pulse");
    List<Cue> cues = files.song(song("5", "x10")).song(other).papers().sheet().cues();
    assertEquals(
        "LOWER the main level before any plug or switch moves (mix 1 gain stays at x10)",
        cues.get(1).steps().get(0).text());
    assertEquals(
        "LOWER the main level before any plug or switch moves", cues.get(0).steps().get(0).text());
  }
}
