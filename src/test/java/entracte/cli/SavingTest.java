package entracte.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Two songs on two equal oscillators. Two knobs and a switch stand otherwise in the second song:
 * three moves, or the cord of two plugs goes from the one oscillator to the other, which is two.
 */
class SavingTest {
  private static final String RIG =
      """
      rig: Two
      kinds:
        oscillator:
          out: [saw]
          knobs: {tune: -5..5, width: 0..10}
          switches: {octave: [32, 16, 8, 4, 2]}
        output: {in: [left]}
      rows:
        - - osc 1: oscillator
          - osc 2: oscillator
          - out: output
      """;

  private static final String SET =
      """
      set: Two Voices
      rig: two.yaml
      songs:
        - song: Low
          patch: voice.yaml
          settings: {voice: {tune: -5, width: 0, octave: 32}}
        - song: High
          patch: voice.yaml
          settings: {voice: {tune: 5, width: 10, octave: 2}}
      """;

  private static final String PATCH =
      """
      patch: voice
      roles: {voice: oscillator}
      connections: {voice.saw: out.left}
      """;

  private static final Pattern SAVED =
      Pattern.compile(
          "Against the plan of the fewest moves \\(2 moves, about \\d+ s\\) it saves (\\d+\\.\\d)"
              + " s: the moves alone take (\\d+\\.\\d) s instead of (\\d+\\.\\d) s\\.");

  @TempDir Path folder;

  private final Typist typist = new Typist();

  @BeforeEach
  void writeTheSet() throws IOException {
    Files.writeString(folder.resolve("two.yaml"), RIG);
    Files.writeString(folder.resolve("set.yaml"), SET);
    Files.writeString(folder.resolve("voice.yaml"), PATCH);
  }

  /** One long run, step by step, as hands leave it that plug so much slower or quicker. */
  private void rehearsed(double plug, double turn) throws IOException {
    String each = plug * 3 + " of plug 3.00; " + turn * 3 + " of turn 3.00; 1.50 of read 1.50; ";
    String line =
        "2026-03-01T19:02:11Z\trehearsal\tto: Other\tmoves: 0123456789\ttook: 600.00\tslips: 0\t"
            + "expected: read 90.00, plug 180.00, turn 180.00\teach: "
            + each.repeat(60)
            + "1.50 of read 1.50\tend\n";
    Files.writeString(folder.resolve("rehearsal.log"), line);
  }

  private String told(String option) {
    String set = folder.toString();
    assertEquals(0, typist.type("plan", set, "--aim", "fastest", "--seconds", "1", option));
    return typist.out().replaceAll("\\s+", " ");
  }

  @Test
  void whoIsSlowWithPlugsIsToldWhatTheAimSaves() throws IOException {
    rehearsed(6, 0.5);
    String told = told("--why");
    assertTrue(told.contains("Between songs: 3 moves, "), told);
    Matcher saved = SAVED.matcher(told);
    assertTrue(saved.find(), told);
    double gain = Double.parseDouble(saved.group(1));
    assertTrue(gain > 0, told);
    double takes = Double.parseDouble(saved.group(2));
    assertEquals(Double.parseDouble(saved.group(3)) - takes, gain, 1e-9);
    Matcher json = Pattern.compile("\"savedSeconds\": ([\\d.]+)").matcher(told("--json"));
    assertTrue(json.find());
    assertEquals(gain, Double.parseDouble(json.group(1)), 1e-9);
  }

  @Test
  void thePlanOfTheFewestMovesIsHeldAgainstNothing() {
    assertEquals(0, typist.type("plan", folder.toString(), "-q"));
    assertTrue(!typist.out().contains("Against"), typist.out());
  }
}
