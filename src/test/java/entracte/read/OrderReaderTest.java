package entracte.read;

import static org.junit.jupiter.api.Assertions.assertEquals;

import entracte.setlist.OrderRule.Apart;
import entracte.setlist.OrderRule.Before;
import entracte.setlist.OrderRule.First;
import entracte.setlist.OrderRule.Last;
import entracte.setlist.OrderRule.Place;
import entracte.setlist.OrderRule.Together;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a set demands of the order of its songs. */
final class OrderReaderTest {
  @TempDir Path folder;

  private Folder set(String more, String... songs) {
    StringBuilder text = new StringBuilder("set: Rules\nrig: harbour-case.yaml\n");
    text.append(more).append("songs:\n");
    for (String song : songs) {
      text.append("  - {").append(song).append(", patch: patches/two-hands.yaml}\n");
    }
    return Folder.nightFerry(folder).with("set.yaml", text.toString());
  }

  @Test
  void songsAndSetsSayWhatTheyDemand() {
    ReadSet read =
        set(
                "together: [[A, B], [C, D]]\napart: [A, C]\n",
                "song: A, first: yes, before: B",
                "song: B, after: [A, C], last: no",
                "song: C, place: 3",
                "song: D, last: yes")
            .read();
    assertEquals(List.of(), read.findings());
    assertEquals(
        List.of(
            new Together(List.of("A", "B")),
            new Together(List.of("C", "D")),
            new Apart(List.of("A", "C")),
            new First("A"),
            new Before("A", "B"),
            new Before("A", "B"),
            new Before("C", "B"),
            new Place("C", 3),
            new Last("D")),
        read.setList().orElseThrow().order());
  }

  @Test
  void oneBracketTooManyIsToldAsSuch() {
    ReadSet read = set("together: [[[A, B]]]\n", "song: A", "song: B").read();
    assertEquals(
        List.of("3:13: an item of \"together\" is one value, not a list"),
        read.findings().stream()
            .map(f -> f.place().line() + ":" + f.place().column() + ": " + f.message())
            .toList());
  }

  @Test
  void slipsAreToldWhereTheyStand() {
    ReadSet read = set("together: [[A]]\n", "song: A, place: 0", "song: B, first: maybe").read();
    assertEquals(
        List.of(
            "set.yaml:3:13: \"together\" names one song only",
            "set.yaml:5:22: \"0\" is not a number of places",
            "set.yaml:6:22: \"maybe\" is neither yes nor no"),
        read.findings().stream()
            .map(
                f -> "set.yaml:" + f.place().line() + ":" + f.place().column() + ": " + f.message())
            .toList());
  }

  @Test
  void aRuleStandsWhereItIsWritten() {
    ReadSet read = set("", "song: A, first: yes").read();
    assertEquals(22, read.places().of(read.setList().orElseThrow().order().get(0)).column());
  }
}
