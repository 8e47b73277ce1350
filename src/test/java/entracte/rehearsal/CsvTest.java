package entracte.rehearsal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class CsvTest {
  private static Run run(String to, String mark) {
    Makeup makeup = new Makeup(Map.of(Work.PLUG, 30.0));
    Instant when = Instant.parse("2026-03-01T19:02:11Z");
    return new Run(when, Run.Where.REHEARSAL, to, mark, 41.2, 1, makeup, List.of());
  }

  @Test
  void eachRunIsALineAndCountsWithinItsChangeover() {
    assertEquals(
        List.of(
            "when,where,to,moves,run,seconds,expected,slips",
            "2026-03-01T19:02:11Z,rehearsal,\"Bread Clock\",aa,1,41.20,30.00,1",
            "2026-03-01T19:02:11Z,rehearsal,\"Kettle\",bb,1,41.20,30.00,1",
            "2026-03-01T19:02:11Z,rehearsal,\"Bread Clock\",aa,2,41.20,30.00,1"),
        Csv.lines(
            List.of(run("Bread Clock", "aa"), run("Kettle", "bb"), run("Bread Clock", "aa"))));
  }

  @Test
  void aNameIsNeitherTwoFieldsNorAFormula() {
    assertEquals(
        "2026-03-01T19:02:11Z,rehearsal,\"'=1, \"\"two\"\"\",aa,1,41.20,30.00,1",
        Csv.lines(List.of(run("=1, \"two\"", "aa"))).get(1));
  }
}
