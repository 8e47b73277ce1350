package entracte.port;

import static org.junit.jupiter.api.Assertions.assertEquals;

import entracte.midi.Message;
import entracte.midi.Trigger;
import entracte.port.FootLogic.Foot;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * A foot on a bad switch. Common practice: contacts bounce for a fraction of a millisecond up to 50
 * ms, both when the foot comes and when it goes; some switches latch; some pedals repeat.
 */
final class FootLogicTest {
  private static final long LOCK_OUT = 250;

  private static FootLogic momentary() {
    return new FootLogic(Trigger.parse("cc 64").orElseThrow(), false, LOCK_OUT);
  }

  private static Message value(int value) {
    return new Message.ControlChange(1, 64, value);
  }

  private static int presses(FootLogic foot, long[][] timesAndValues) {
    int presses = 0;
    for (long[] each : timesAndValues) {
      if (foot.hear(value((int) each[1]), each[0]).equals(Optional.of(Foot.PRESS))) {
        presses++;
      }
    }
    return presses;
  }

  @Test
  void aPressIsTheStepDownAndNotTheStepUp() {
    FootLogic foot = momentary();
    assertEquals(Optional.of(Foot.PRESS), foot.hear(value(127), 0));
    assertEquals(Optional.empty(), foot.hear(value(0), 400));
    assertEquals(Optional.of(Foot.PRESS), foot.hear(value(127), 800));
  }

  @Test
  void aPedalThatRepeatsItselfPressesOnce() {
    assertEquals(
        1, presses(momentary(), new long[][] {{0, 127}, {300, 127}, {600, 127}, {900, 100}}));
  }

  @Test
  void aReleaseHeardFirstIsNoPress() {
    assertEquals(0, presses(momentary(), new long[][] {{0, 0}, {10, 0}}));
  }

  @Test
  void contactsThatBounceWhenTheFootGoesDoNotPressAgain() {
    assertEquals(1, presses(momentary(), new long[][] {{0, 127}, {500, 0}, {505, 127}, {511, 0}}));
  }

  /** 2,000 presses, each with random chatter of up to 50 ms at both ends. */
  @Test
  void chatterOfUpTo50MillisNeverAddsOrSwallowsAPress() {
    Random random = new Random(4);
    FootLogic foot = momentary();
    long now = 0;
    int heard = 0;
    for (int press = 0; press < 2000; press++) {
      now += 330 + random.nextInt(2000);
      List<long[]> pattern = new ArrayList<>();
      chatter(pattern, now, 127, random);
      long up = now + 120 + random.nextInt(900);
      chatter(pattern, up, 0, random);
      heard += presses(foot, pattern.toArray(long[][]::new));
      now = up;
    }
    assertEquals(2000, heard);
  }

  /** Ends at {@code value}, after some flickering. */
  private static void chatter(List<long[]> pattern, long from, int value, Random random) {
    long at = from;
    int flickers = random.nextInt(6);
    for (int i = 0; i < flickers; i++) {
      pattern.add(new long[] {at, value});
      at += 1 + random.nextInt(4);
      pattern.add(new long[] {at, 127 - value});
      at += 1 + random.nextInt(4);
    }
    pattern.add(new long[] {at, value});
  }

  @Test
  void aLatchingSwitchPressesWithEveryStep() {
    FootLogic foot = new FootLogic(Trigger.parse("cc 64").orElseThrow(), true, LOCK_OUT);
    assertEquals(
        4, presses(foot, new long[][] {{0, 127}, {900, 0}, {1800, 127}, {2700, 0}, {2705, 127}}));
  }

  @Test
  void aProgramChangeThatRepeatsPressesOnceUntilItFallsSilent() {
    FootLogic foot = new FootLogic(Trigger.parse("program 5").orElseThrow(), false, LOCK_OUT);
    Message five = new Message.ProgramChange(1, 4);
    assertEquals(Optional.of(Foot.PRESS), foot.hear(five, 0));
    assertEquals(Optional.empty(), foot.hear(five, 200));
    assertEquals(Optional.empty(), foot.hear(five, 400));
    assertEquals(Optional.of(Foot.PRESS), foot.hear(five, 700));
  }

  @Test
  void aNoteWithVelocityZeroIsTheFootComingUp() {
    FootLogic foot = new FootLogic(Trigger.parse("note 60").orElseThrow(), false, LOCK_OUT);
    assertEquals(Optional.of(Foot.PRESS), foot.hear(new Message.NoteOn(1, 60, 90), 0));
    assertEquals(Optional.empty(), foot.hear(new Message.NoteOn(1, 60, 0), 400));
    assertEquals(Optional.of(Foot.PRESS), foot.hear(new Message.NoteOn(1, 60, 90), 900));
  }

  @Test
  void theLockOutIsAdjustable() {
    FootLogic slow = new FootLogic(Trigger.parse("cc 64").orElseThrow(), false, 1000);
    assertEquals(1, presses(slow, new long[][] {{0, 127}, {300, 0}, {900, 127}}));
    FootLogic quick = new FootLogic(Trigger.parse("cc 64").orElseThrow(), false, 100);
    assertEquals(2, presses(quick, new long[][] {{0, 127}, {70, 0}, {140, 127}}));
  }

  @Test
  void aFootThatStaysIsToldOnceAsAHold() {
    FootLogic foot = momentary();
    foot.hear(value(127), 0);
    assertEquals(Optional.empty(), foot.stays(699));
    assertEquals(Optional.of(Foot.HOLD), foot.stays(700));
    assertEquals(Optional.empty(), foot.stays(2000));
  }

  @Test
  void aFootThatWentHoldsNothing() {
    FootLogic foot = momentary();
    foot.hear(value(127), 0);
    foot.hear(value(0), 300);
    assertEquals(Optional.empty(), foot.stays(900));
  }
}
