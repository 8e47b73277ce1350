package entracte.cue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a patch card says besides cords and knobs, of sets written out. */
class PatchNotesTest {
  private static final String RIG =
      """
      rig: Shelf
      kinds:
        keyboard:
          out: [pitch, gate, second cv]
          switches: {mode: [two voices, voice and wheel]}
          played by: {left hand: [pitch, gate], right hand: second cv, wheel: second cv}
        oscillator: {in: [pitch, fm], out: [saw], switches: {octave: [16, 8, 4]}}
        slew limiter: {in: [in], out: [out], knobs: {time: 0..10}}
        attenuator:
          channels: {count: 2, in: [in], out: [out], knobs: {amount: 0..10}}
          attenuates: {amount: TAPER}
        envelope: {in: [gate], out: [out], switches: {trigger: [every note, legato]}}
        mixer:
          channels: {count: 2, in: [in], knobs: {level: 0..10}}
          out: [out]
          switches: {gain: [x1, x10]}
        multiple: {taps: 4}
        output: {in: [in x3]}
      rows:
        - - keys: keyboard
          - osc 1: oscillator
          - osc 2: oscillator
          - slew 1: slew limiter
          - scale 1: attenuator
          - mult 1: multiple
          - env 1: envelope
          - mix 1: mixer
          - main: output
      """;

  @TempDir Path folder;

  private static final String HALF =
      """
      roles: {lead: osc 1, halve: attenuator}
      connections:
        keys.pitch: halve.a.in
        halve.a.out: lead.pitch
        lead.saw: main.in
      settings: {halve.a: {amount: 5}, lead: {octave: 8}}
      scale: {lead: quarter tones}
      """;

  /**
   * An audio taper passes 10 to 20 % in the middle (common practice; 15 is taken): 15 cents a key,
   * and the half of the voltage at 5 + 5 x 0.35 / 0.85 = 7.06.
   */
  @Test
  void anAudioTaperIsWorkedWith() {
    String rig = RIG.replace("TAPER", "audio");
    List<String> lines =
        new CraftFiles(folder, rig).song(HALF).papers().songs().get(0).patchNotes().pitch();
    assertTrue(
        lines
            .get(0)
            .endsWith("15 cents a key, if scale 1 channel 1 amount passes 15 % in the middle"),
        lines.get(0));
    assertTrue(
        lines.get(1).startsWith("osc 1: for 50 cents a key scale 1 channel 1 amount at 7.06 of 10"),
        lines.get(1));
  }

  @Test
  void aKindThatAddsTwoVoltagesIsPlayedByEar() {
    String rig =
        RIG.replace("multiple: {taps: 4}", "multiple: {taps: 4}\n  adder: {in: [a, b], out: [out]}")
            .replace("- mix 1: mixer", "- sum 1: adder")
            .replace("TAPER", "linear");
    String song =
        """
        roles: {lead: osc 1}
        connections:
          env 1.out: sum 1.a
          keys.pitch: sum 1.b
          keys.gate: env 1.gate
          sum 1.out: lead.pitch
          lead.saw: main.in
        """;
    SongSheet sheet = new CraftFiles(folder, rig).song(song).papers().songs().get(0);
    assertEquals(
        List.of(
            "osc 1: more than one voltage comes through sum 1, so no figure tells how far a key"
                + " goes"),
        sheet.patchNotes().pitch());
    assertEquals(
        List.of("osc 1 plays lead, from keys pitch (left hand) by way of sum 1, through main"),
        sheet.voices());
  }

  /** Half of 83.33 mV a semitone (1/12 V, a published thread) is 41.67; 24 steps an octave. */
  @Test
  void anAttenuatorAtHalfGivesQuarterTones() {
    Paperwork papers = linear().song(HALF).papers();
    assertEquals(
        List.of(
            "osc 1: keys pitch through scale 1, 0.5 V an octave, 41.67 mV and 50 cents a key",
            "osc 1: for 50 cents a key scale 1 channel 1 amount at 5 of 10"),
        papers.songs().get(0).patchNotes().pitch());
    assertEquals(List.of(), papers.sheet().cues().get(0).ear().mind());
  }

  @Test
  void aKnobThatStandsElsewhereIsToldItsTarget() {
    Paperwork papers = linear().song(HALF.replace("amount: 5", "amount: 4")).papers();
    assertEquals(
        List.of("for 50 cents a key scale 1 channel 1 amount at 5 of 10; it stands at 4"),
        papers.sheet().cues().get(0).ear().mind());
  }

  @Test
  void whereTheTaperIsNotGivenTheAnswerHangsOnIt() {
    CraftFiles files = new CraftFiles(folder, RIG.replace("TAPER", "unknown")).song(HALF);
    assertEquals(
        "osc 1: for 50 cents a key scale 1 channel 1 amount at 5 of 10, if scale 1 channel 1 amount"
            + " is linear",
        files.papers().songs().get(0).patchNotes().pitch().get(1));
    assertEquals(
        List.of("try an octave on osc 1: nobody has said that scale 1 channel 1 amount is linear"),
        files.papers().sheet().cues().get(0).ear().mind());
  }

  /** 1 kohm into two inputs of 100 kohm leaves 1.01 / 1.02 of what it leaves to one (divider). */
  @Test
  void aPassiveMultipleNarrowsTheOctaveAndABufferedOneDoesNot() {
    String two =
        """
        roles: {lead: osc 1, bass: osc 2}
        connections:
          keys.pitch: [lead.pitch, bass.pitch]
          lead.saw: main.in
          bass.saw: main.in
        """;
    Paperwork papers = linear().song(two).papers();
    assertEquals(
        List.of(
            "osc 1, osc 2 are 12 cents an octave too narrow on a passive multiple: tune them in the"
                + " middle of what you play"),
        papers.sheet().cues().get(0).ear().mind());
    assertEquals(
        "osc 1, osc 2: 2 inputs share keys pitch: an octave is 12 cents narrower"
            + " than with its cord alone (1 kohm out and 100 kohm in are assumed)",
        papers.songs().get(0).patchNotes().pitch().get(0));
    String rig = RIG.replace("TAPER", "linear").replace("{taps: 4}", "{taps: 4, buffered: yes}");
    CraftFiles buffered = new CraftFiles(folder, rig).song(two);
    assertEquals(List.of(), buffered.papers().songs().get(0).patchNotes().pitch());
  }

  @Test
  void eachVoiceIsAChainFromTheHandOn() {
    String glide =
        """
        roles: {glide: slew limiter, lead: osc 2, shape: envelope}
        connections:
          keys.second cv: glide.in
          glide.out: lead.pitch
          keys.gate: shape.gate
          shape.out: lead.fm
          lead.saw: mix 1.a.in
          mix 1.out: main.in
        settings: {keys: {mode: MODE}, shape: {trigger: legato}, mix 1.a: {level: 5}}
        """;
    SongSheet two = song(glide.replace("MODE", "two voices"));
    assertEquals(
        List.of(
            "osc 2 plays lead, from keys second cv (right hand) by way of slew 1, through mix 1,"
                + " main"),
        two.voices());
    assertEquals(
        List.of("left hand: env 1 gate", "right hand: slew 1 in", "env 1 trigger: legato"),
        two.patchNotes().playing());
    assertTrue(
        song(glide.replace("MODE", "voice and wheel"))
            .patchNotes()
            .playing()
            .containsAll(List.of("either hand: env 1 gate", "wheel: slew 1 in")));
  }

  @Test
  void aHandThatTheKindNamesIsNotEitherHandAndAWheelIsAWheel() {
    String song = "roles: {lead: osc 1}\nconnections: {keys.pitch: lead.pitch, lead.saw: main.in";
    String two = "}\nsettings: {keys: {mode: two voices}}\n";
    assertEquals(List.of("left hand: osc 1 pitch"), song(song + two).patchNotes().playing());
    String rig =
        RIG.replace("TAPER", "linear").replace("gate, second cv]", "gate, second cv, wheel]");
    Paperwork papers =
        new CraftFiles(folder, rig).song(song + ", keys.wheel: lead.fm" + two).papers();
    assertEquals(
        List.of("left hand: osc 1 pitch", "wheel: osc 1 fm"),
        papers.songs().get(0).patchNotes().playing());
    assertEquals("leave the wheel at rest", papers.sheet().cues().get(0).ear().before().get(1));
  }

  private SongSheet song(String patch) {
    return linear().song(patch).papers().songs().get(0);
  }

  private static final String LEVEL =
      """
      roles: {lead: osc 1, blend: mixer}
      connections:
        keys.pitch: lead.pitch
        lead.saw: blend.a.in
        blend.out: main.in
      settings: {lead: {octave: 8}, blend: {gain: GAIN}, blend.a: {level: 5}}
      """;

  /** 20 log10 of 10 is 20 dB (J. O. Smith, Mathematics of the DFT). */
  @Test
  void aGainStepIsToldInDecibelsAndTheDeskIsWarned() {
    CraftFiles files =
        linear()
            .song(LEVEL.replace("GAIN", "x1"))
            .song(LEVEL.replace("GAIN", "x10") + "drive: {blend: wanted}");
    Paperwork papers = files.papers();
    assertEquals(
        List.of("mix 1 gain at x10: +20 dB, and drive is wanted"),
        papers.songs().get(1).patchNotes().levels());
    assertEquals(
        Optional.of(
            "the loudest voice about +20 dB against the song before by gain steps and levels;"
                + " distortion by mix 1 is wanted, so less comes out"),
        papers.sheet().cues().get(1).ear().level());
  }

  @Test
  void theDeskIsToldOfGainStepsWithoutTheCautionForTheHands() {
    Paperwork papers =
        linear().song(LEVEL.replace("GAIN", "x1")).song(LEVEL.replace("GAIN", "x10")).papers();
    // Ten times the voltage is 20 dB (IEC 60027-3: 20 lg of a ratio of field quantities).
    assertEquals(List.of("mix 1 gain +20 dB"), papers.songs().get(1).desk());
    assertEquals(List.of(), papers.songs().get(0).desk());
  }

  @Test
  void aGainStepGoesDownBeforeAnyPlugAndUpAfterTheKnobs() {
    CraftFiles files =
        linear()
            .song(LEVEL.replace("GAIN", "x10"))
            .song(LEVEL.replace("blend.a", "blend.b").replace("GAIN", "x1"))
            .song(LEVEL.replace("GAIN", "x10"));
    List<Cue> cues = files.papers().sheet().cues();
    assertEquals(Verb.SWITCH, cues.get(1).steps().get(1).verb());
    List<Step> up = cues.get(2).steps();
    assertEquals(Verb.SWITCH, up.get(up.size() - 2).verb());
  }

  @Test
  void aGainStepOfWhichThePatchSaysNothingIsNoted() {
    assertEquals(
        List.of(
            "note: \"gain\" of \"blend\" at x10 is +20 dB, and the patch does not say whether it"
                + " may distort / Add drive: {blend: wanted}, or unwanted."),
        linear().song(LEVEL.replace("GAIN", "x10")).said());
  }

  @Test
  void whatMayStandFarOffIsLeftToTheEarAndComesLast() {
    CraftFiles files =
        linear().song(LEVEL.replace("GAIN", "x1").replace("level: 5", "level: 5 +-1"));
    assertTrue(
        files.papers().sheet().cues().get(0).steps().stream()
            .anyMatch(s -> s.text().equals("TURN mix 1 channel 1 level to 5, then by ear")));
    assertTrue(
        files.papers().songs().get(0).settings().stream()
            .anyMatch(line -> line.endsWith("channel 1 level at 5 (then by ear)")));
  }

  private CraftFiles linear() {
    return new CraftFiles(folder, RIG.replace("TAPER", "linear"));
  }
}
