package entracte.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is cut short or mistyped at the command line, and what was probably meant. */
class MistypedTest {
  private final Typist typist = new Typist();

  @ParameterizedTest
  @CsvSource({
    "plan,--secs,--seconds",
    "plan,--sec=3,--seconds",
    "plan,--sed,--seed",
    "order,--wri,--write",
    "plan,--jsn,--json",
    "rehearse,--sum,--summary"
  })
  void anOptionCutShortIsGuessedByItsBeginning(String command, String typed, String meant) {
    assertEquals(2, typist.type(command, typed, "sets/any"));
    assertTrue(typist.err().contains("\n  Did you mean " + meant + "?\n"), typist.err());
  }

  @ParameterizedTest
  @CsvSource({"reh,rehearse", "ord,order", "ordr,order", "sheets,sheet", "chek,check"})
  void aCommandCutShortIsGuessedLikewise(String typed, String meant) {
    assertEquals(2, typist.type(typed));
    assertTrue(typist.err().contains("\n  Did you mean " + meant + "?\n"), typist.err());
  }

  @Test
  void whatCouldBeSeveralIsNotGuessed() {
    assertEquals(2, typist.type("plan", "--se", "sets/any"));
    assertEquals(
        """
        entracte: no option is called --se
          Add --help to see what can be typed.
        """,
        typist.err());
  }

  @ParameterizedTest
  @CsvSource({
    "sets/orchard-bam, there is no sets/orchard-bam, Did you mean sets/orchard-barn?",
    "set/kitchn-table, there is no set/kitchn-table, Did you mean sets/kitchen-table?",
    "sets/kitchen-table/sett.yaml, there is no sets/kitchen-table/sett.yaml,"
        + " Did you mean sets/kitchen-table/set.yaml?",
    "sets/choir, there is no sets/choir, Name a set's folder or its file."
  })
  void aSetThatIsMistypedIsToldTheNearOne(String typed, String message, String advice) {
    assertEquals(3, typist.type("check", typed));
    assertEquals("entracte: " + message + "\n  " + advice + "\n", typist.err());
  }

  @Test
  void aFolderOfSetsIsToldWhichItHolds() {
    assertEquals(3, typist.type("plan", "sets"));
    assertEquals(
        """
        entracte: sets holds no set.yaml
          Name one of those within it: sets/kitchen-table, sets/orchard-barn.
        """,
        typist.err());
  }
}
