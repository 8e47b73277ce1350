package entracte.cue;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Filters told by their poles. */
class SlopesTest {
  @TempDir Path folder;

  /** 6 dB an octave for 1 pole, 12 for 2, 24 for 4: a published table of filter slopes. */
  @ParameterizedTest
  @CsvSource({"1-pole, 6", "2-pole, 12", "3 poles, 18", "4-pole, 24"})
  void eachPoleTakesSixDecibelsFromAnOctave(String position, int decibels) {
    assertEquals(OptionalInt.of(decibels), Slopes.decibelsPerOctave(position));
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
    int said = Slopes.decibelsPerOctave(poles + "-pole").orElseThrow();
    assertEquals(octave, said, 0.03 * poles);
  }

  private static double butterworth(int poles, double f) {
    return -10 * Math.log10(1 + Math.pow(f, 2 * poles));
  }

  @Test
  void otherNamesAreNoSlope() {
    assertEquals(OptionalInt.empty(), Slopes.decibelsPerOctave("steep"));
    assertEquals(OptionalInt.empty(), Slopes.decibelsPerOctave("other"));
  }

  @Test
  void aPatchCardFollowsTheSwitchToItsJumper() {
    CraftFiles files =
        new CraftFiles(
            folder,
            """
            rig: Shelf
            kinds:
              oscillator: {out: [saw]}
              filter:
                in: [audio]
                out: [out]
                switches: {slope: [4-pole, other]}
                jumpers: {other slope: [2-pole, 3-pole]}
              output: {in: [in x3]}
            rows:
              - - osc 1: oscillator
                - filter 1: filter
                - main: output
            """);
    String song =
        """
        roles: {lead: osc 1, body: filter}
        connections: {lead.saw: body.audio, body.out: main.in}
        """;
    files
        .song(song + "settings: {body: {slope: 4-pole}}\n")
        .song(song + "settings: {body: {slope: other, other slope: 3-pole}}\n");
    List<SongSheet> songs = files.papers().songs();
    assertEquals(
        List.of("filter 1 slope at 4-pole: 24 dB an octave"), songs.get(0).patchNotes().slopes());
    assertEquals(
        List.of("filter 1 slope at other (3-pole): 18 dB an octave"),
        songs.get(1).patchNotes().slopes());
  }
}
