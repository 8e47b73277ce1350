package entracte.stage;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

/** The gist of a move, for letters that are read from afar. */
final class HeadlineTest {
  @Test
  void aCordIsWhereItsPlugsGo() {
    assertEquals(
        List.of(
            List.of("PLUG osc 1 saw", "filter 1 audio 2"),
            List.of("PLUG", "osc 1 saw", "filter 1 audio 2"),
            List.of("osc 1 saw", "filter 1 audio 2"),
            List.of("PLUG")),
        Headline.of("PLUG osc 1 saw, then filter 1 audio 2 (30 cm)"));
    assertEquals(
        List.of("PULL amp 1 cv", "env 1 out 1"),
        Headline.of("PULL amp 1 cv, then env 1 out 1").get(0));
  }

  @Test
  void aPlugThatMovesGoesFromJackToJack() {
    assertEquals(
        List.of(
            List.of("from keys pitch 1", "to mult 1 tap 3"),
            List.of("MOVE", "keys pitch 1", "mult 1 tap 3"),
            List.of("keys pitch 1", "mult 1 tap 3"),
            List.of("MOVE")),
        Headline.of("MOVE from keys pitch 1, to mult 1 tap 3; keep the plug in osc 2 pitch"));
  }

  @Test
  void aControlIsItsNameAndWhereItShallStand() {
    assertEquals(
        List.of(List.of("filter 1 cutoff", "to 5"), List.of("TURN", "to 5")),
        Headline.of("TURN filter 1 cutoff from 3 to 5"));
    assertEquals(
        List.of("filter 1 resonance", "to 2"),
        Headline.of("TURN filter 1 resonance to 2, then by ear").get(0));
    assertEquals(
        List.of(List.of("env 1 trigger", "to every note"), List.of("SWITCH", "to every note")),
        Headline.of("SWITCH env 1 trigger to every note"));
  }

  @Test
  void whatElseTheHandsDoIsSaidWithoutItsReason() {
    assertEquals(
        List.of(List.of("TUNE osc 1"), List.of("TUNE")),
        Headline.of("TUNE osc 1 (octave changed)"));
    assertEquals(
        List.of(List.of("LOWER the main level"), List.of("LOWER")),
        Headline.of("LOWER the main level before any plug or switch moves"));
  }
}
