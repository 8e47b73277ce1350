package entracte.rehearsal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class PlotTest {
  private static List<Run> runs(double... seconds) {
    List<Run> runs = new ArrayList<>();
    for (double each : seconds) {
      int slips = runs.size() == 1 ? 1 : 0;
      runs.add(
          new Run(
              Instant.ofEpochSecond(runs.size()),
              Run.Where.REHEARSAL,
              "song",
              "mark",
              each,
              slips,
              new Makeup(Map.of()),
              List.of()));
    }
    return runs;
  }

  @Test
  void timesFallTowardTheGap() {
    assertEquals(
        """
             1 min | o
                   |
                   |   x
                   |     o
              40 s |-------o-- gap
                   |
              30 s |         o
        """,
        String.join("\n", Plot.lines(runs(60, 50, 45, 40, 30), OptionalDouble.of(40), 60)) + "\n");
  }

  @Test
  void withoutAGapThereIsNoLineForIt() {
    assertEquals(
        """
              50 s | o
                   |
                   |
                   |
                   |
                   |
              40 s |   x
        """,
        String.join("\n", Plot.lines(runs(50, 40), OptionalDouble.empty(), 60)) + "\n");
  }

  @Test
  void oneRunIsNoCourseToDraw() {
    assertEquals(List.of(), Plot.lines(runs(50), OptionalDouble.of(30), 60));
  }

  @Test
  void withoutARunThereIsNoPlot() {
    assertEquals(List.of(), Plot.lines(List.of(), OptionalDouble.of(30), 60));
  }

  @Test
  void ofMoreRunsThanFitTheLastAreShown() {
    double[] falling = new double[100];
    for (int i = 0; i < falling.length; i++) {
      falling[i] = 100 - i / 2.0;
    }
    List<String> lines = Plot.lines(runs(falling), OptionalDouble.of(20), 80);
    assertTrue(lines.stream().allMatch(line -> line.length() <= 80), lines.toString());
    long shown =
        lines.stream().flatMapToInt(String::chars).filter(c -> c == 'o' || c == 'x').count();
    assertEquals(32, shown);
    assertEquals(" 1 min 6 s", lines.get(0).substring(0, 10));
  }

  @Test
  void equalTimesStandInOneRow() {
    List<String> lines = Plot.lines(runs(40, 40, 40), OptionalDouble.of(40), 60);
    assertEquals("      40 s |-o-x-o gap", lines.get(0));
    assertEquals(Collections.nCopies(6, "           |"), lines.subList(1, 7));
  }
}
