package entracte.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** What the stage says of what is wrong around it. */
final class TroublesTest {
  private final Troubles troubles = new Troubles();

  @Test
  void everyPortThatIsNotThereIsNamed() {
    troubles.missing("Stage Piano");
    assertEquals("Stage Piano is not there.", troubles.say());
    troubles.missing("Drum Box");
    assertEquals("Stage Piano and Drum Box are not there.", troubles.say());
    troubles.clear("Stage Piano");
    assertEquals("Drum Box is not there.", troubles.say());
  }

  /** On a small screen there is room to say it once. */
  @Test
  void thatAPortIsNotThereIsSaidOnceWithTheGearThatGotNothing() {
    troubles.missing("Stage Piano");
    troubles.missing("Drum Box");
    troubles.missing("Pedal");
    troubles.tell("drum box", "drum box is not reached: Drum Box takes nothing.");
    troubles.unreached("Stage Piano", "piano");
    troubles.unreached("Drum Box", "drum box");
    assertEquals(
        "Stage Piano, Drum Box and Pedal are not there. Not reached: piano, drum box.",
        troubles.say());
    troubles.clear("Stage Piano");
    assertEquals("Drum Box and Pedal are not there. Not reached: drum box.", troubles.say());
  }

  @Test
  void theLastComesFirstAndWhatWasWrongBeforeItIsNotForgotten() {
    troubles.tell("journal", "The disk is full.");
    troubles.tell("piano", "piano was not reached.");
    assertEquals("piano was not reached. The disk is full.", troubles.say());
    troubles.tell("piano", "piano was not reached.");
    troubles.clear("piano");
    assertEquals("The disk is full.", troubles.say());
  }

  @Test
  void aPortThatIsBackIsMissingNoMore() {
    troubles.missing("Stage Piano");
    troubles.back("Stage Piano");
    assertEquals(
        "Stage Piano is back. It was sent nothing; F2 sends everything again.", troubles.say());
    troubles.missing("Drum Box");
    troubles.back("Drum Box");
    assertEquals(
        "Stage Piano and Drum Box are back. They were sent nothing; F2 sends everything again.",
        troubles.say());
    troubles.caughtUp();
    assertEquals("", troubles.say());
    troubles.missing("Stage Piano");
    assertEquals("Stage Piano is not there.", troubles.say());
  }

  @Test
  void whatWasFoundAtTheStartWaitsForAPress() {
    troubles.found("The journal was torn.");
    troubles.missing("Pedal");
    assertEquals("The journal was torn.", troubles.say());
    troubles.acknowledge();
    assertEquals("Pedal is not there.", troubles.say());
  }
}
