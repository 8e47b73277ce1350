package entracte.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What another rig is worth, asked about the small demonstration set. */
class WhatIfCommandTest {
  private static final String SET = "sets/kitchen-table";
  private final Typist typist = new Typist();

  @Test
  void itReadsLikeThis() {
    assertEquals(0, typist.type("whatif", SET));
    assertEquals("", typist.err());
    assertEquals(
        """
        Kitchen Table on Table case: 24 moves between songs

        One more of these would save
          keyboard      nothing: no song can use it
          oscillator    1 move, to 23
          filter        5 moves, to 19
          envelope      1 move, to 23
          amplifier     nothing found
          6 more cords  nothing found

        Without this one
          keys          no song can be played
          osc 1         1 of 3 songs play; lost: Bread Clock, Blue Enamel
          osc 2         1 of 3 songs play; lost: Bread Clock, Blue Enamel
          filter 1      no song can be played
          env 1         no song can be played
          amp 1         no song can be played

        Each answer is the best of a short search, so that a purchase may save more than
          it says; "nothing" behind a kind that no song can use is certain.
        """,
        typist.out());
  }

  @Test
  void itIsTheSameEveryTimeThoughItRunsInThreads() {
    typist.type("whatif", SET, "--seed", "3");
    String first = typist.out();
    typist.type("whatif", SET, "--seed", "3");
    assertEquals(first, typist.out());
  }

  @Test
  void asJsonItIsOneObject() {
    assertEquals(0, typist.type("whatif", "--json", SET));
    Map<?, ?> json = (Map<?, ?>) StrictJson.read(typist.out());
    assertEquals(24.0, json.get("moves"));
    Map<?, ?> filter = (Map<?, ?>) ((List<?>) json.get("more")).get(2);
    assertEquals("filter", filter.get("what"));
    assertEquals(5.0, filter.get("saved"));
    Map<?, ?> osc = (Map<?, ?>) ((List<?>) json.get("without")).get(1);
    assertEquals(List.of("Bread Clock", "Blue Enamel"), osc.get("lost"));
    assertEquals(null, osc.get("moves"));
  }

  @Test
  void aSetWithErrorsStopsIt() {
    assertEquals(3, typist.type("whatif", "sets/no such set"));
    assertTrue(typist.err().startsWith("entracte: there is no sets/no such set"), typist.err());
  }
}
