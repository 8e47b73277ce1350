package entracte.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import entracte.midi.Message;
import entracte.rig.FootSwitch;
import entracte.stage.Input;
import entracte.terminal.Key;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** A rehearsal's conversation in keys, each pressed a second after the one before. */
class KeyTalkTest {
  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private long millis = 1_000_000;
  private final KeyTalk talk =
      new KeyTalk(
          new Streams(out, new ByteArrayOutputStream(), false, false),
          () -> Instant.ofEpochMilli(millis));

  private Optional<String> answer(Key key) {
    millis += 1000;
    talk.key(key);
    return talk.ask("? ");
  }

  private String shown() {
    return out.toString(StandardCharsets.UTF_8);
  }

  @Test
  void whateverSaysNextOnStageIsEnter() {
    assertEquals(Optional.of(""), answer(new Key.Says(Input.ENTER)));
    assertEquals(Optional.of(""), answer(new Key.Says(Input.NEXT)));
    assertEquals(Optional.of(""), answer(new Key.Says(Input.DOWN)));
  }

  @Test
  void whateverSaysBackOnStageGoesBackAStep() {
    assertEquals(Optional.of("u"), answer(new Key.Says(Input.BACK)));
    assertEquals(Optional.of("u"), answer(new Key.Letter(8)));
  }

  @Test
  void oneLetterIsOneAnswer() {
    assertEquals(Optional.of("s"), answer(new Key.Letter('S')));
    assertEquals("? s\n", shown());
  }

  @Test
  void theEndOfTheTerminalIsTheEndOfTheConversation() {
    assertEquals(Optional.empty(), answer(new Key.Leaves()));
  }

  @Test
  void aKeyThatRepeatsByItselfCountsOnce() {
    talk.key(new Key.Says(Input.NEXT));
    for (int repeat = 0; repeat < 20; repeat++) {
      millis += 30;
      talk.key(new Key.Says(Input.NEXT));
    }
    talk.key(new Key.Letter('x'));
    assertEquals(Optional.of(""), talk.ask("? "));
    assertEquals(Optional.of("x"), talk.ask("? "));
  }

  @Test
  void aFootOnTheRigsPedalIsEnterAndASecondSwitchGoesBack() {
    talk.foot(new FootSwitch("Pedal", "cc 64", "", "cc 65", false, 0.25));
    talk.heard(new Message.ControlChange(1, 64, 127));
    millis += 1000;
    talk.heard(new Message.ControlChange(1, 65, 127));
    talk.heard(new Message.ControlChange(1, 7, 127));
    talk.key(new Key.Letter('x'));
    assertEquals(Optional.of(""), talk.ask("? "));
    assertEquals(Optional.of("u"), talk.ask("? "));
    assertEquals(Optional.of("x"), talk.ask("? "));
  }

  @Test
  void theClockRunsBelowTheMoveAndIsGoneAfterIt() {
    talk.key(new Key.Letter('s'));
    talk.ask("    2/7  TURN osc 1 tune to 3 ", () -> "12 s of 45 s");
    talk.key(new Key.Says(Input.NEXT));
    talk.ask("    2/7  TURN osc 1 tune to 3 ", () -> "14 s of 45 s");
    talk.say("next");
    String gone = "<" + " ".repeat(35) + "<";
    assertEquals(
        "    2/7 TURN osc 1 tune to 3\n"
            + "<        12 s of 45 s               "
            + gone
            + "<        14 s of 45 s               "
            + gone
            + "next\n",
        shown().replace('\r', '<'));
  }

  private static List<String> moves(int count) {
    return IntStream.rangeClosed(1, count).mapToObj(n -> "  move " + n).toList();
  }

  @Test
  void aListLongerThanTheScreenIsShownPageByPage() {
    talk.low(10);
    talk.key(new Key.Says(Input.NEXT));
    talk.list(moves(9));
    assertEquals(
        """
          move 1
          move 2
          move 3
          move 4
          move 5
          move 6
          move 7
        Enter shows the rest, 2 more lines:\s
          move 8
          move 9
        """,
        shown());
  }

  @Test
  void whoEndsInTheMiddleOfAListEndsWhatItBelongsTo() {
    talk.low(10);
    talk.key(new Key.Letter('q'));
    talk.list(moves(30));
    assertEquals(Optional.of("q"), talk.ask("? "));
    assertTrue(!shown().contains("move 8"), shown());
  }

  @Test
  void aListThatFitsAsksNothing() {
    talk.low(10);
    talk.list(moves(7));
    assertTrue(shown().endsWith("  move 7\n"), shown());
  }

  @Test
  void aLongMoveGoesOnBelowItsWords() {
    talk.key(new Key.Says(Input.NEXT));
    talk.ask(
        "   10/22  MOVE from mult 1 tap 1, to scale 1 channel 1 out; keep the plug in osc 3 pitch",
        () -> "0 s");
    assertTrue(shown().contains("\n        osc 3 pitch\n"), shown());
  }

  @Test
  void inANarrowTerminalNoWordIsBroken() {
    talk.narrow(40);
    talk.say("Bring the rig to where Kettle leaves it, without the clock: 28 moves.");
    talk.key(new Key.Letter('q'));
    talk.ask("Enter once the rig stands as Kettle leaves it, q to end: ");
    assertEquals(
        """
        Bring the rig to where Kettle leaves it,
          without the clock: 28 moves.
        Enter once the rig stands as Kettle
          leaves it, q to end: q
        """,
        shown());
  }
}
