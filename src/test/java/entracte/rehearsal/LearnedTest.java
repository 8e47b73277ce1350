package entracte.rehearsal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import entracte.cue.CueSheet;
import entracte.cue.KitchenDances;
import entracte.cue.Step;
import entracte.plan.Plan;
import entracte.plan.Tempo;
import entracte.rig.Control;
import entracte.rig.Module;
import entracte.rig.Rig;
import entracte.rig.Socket;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class LearnedTest {
  private static final Plan PLAN = KitchenDances.plan();
  private static final Rig RIG = PLAN.setList().rig();
  private static final Learned NOBODY = Learned.from(RIG, List.of());
  private static final List<Step> TO_KETTLES = CueSheet.of(PLAN, NOBODY).cues().get(1).steps();

  private static Learned after(double... seconds) {
    Makeup makeup = Makeup.sum(new TimeModel(RIG).makeup(TO_KETTLES));
    List<Run> runs = new ArrayList<>();
    for (double each : seconds) {
      runs.add(
          new Run(
              Instant.parse("2026-03-01T19:00:00Z").plusSeconds(100L * runs.size()),
              Run.Where.REHEARSAL,
              "Two Kettles",
              Mark.of(TO_KETTLES),
              each,
              0,
              makeup,
              List.of()));
    }
    return Learned.from(RIG, runs);
  }

  @Test
  void untilThereAreRunsTheModelIsAskedAndSaysSo() {
    double model = Makeup.sum(new TimeModel(RIG).makeup(TO_KETTLES)).total();
    assertEquals(model, NOBODY.seconds(TO_KETTLES), 1e-9);
    assertEquals(0, NOBODY.runs(TO_KETTLES));
    assertEquals("Times are estimates until you have rehearsed.", NOBODY.origin());
  }

  @Test
  void withRunsTheSecondsComeFromThemAndSayHowMany() {
    Learned learned = after(60, 55, 52, 50, 50, 49, 50, 50);
    assertEquals(50, learned.seconds(TO_KETTLES), 3);
    assertEquals(8, learned.runs(TO_KETTLES));
    assertEquals("Times are learned from 8 timed runs of 1 changeover.", learned.origin());
    CueSheet sheet = CueSheet.of(PLAN, learned);
    assertEquals(8, sheet.cues().get(1).runs());
    assertEquals(0, sheet.cues().get(2).runs());
    assertEquals(learned.origin(), sheet.aboutTimes());
  }

  /** What is told of several changeovers tells of the player; of one, of that one as well. */
  @Test
  void aSingleRunMovesTheOthersByHalfAtMost() {
    List<Step> toBus = CueSheet.of(PLAN, NOBODY).cues().get(2).steps();
    double usual = NOBODY.seconds(toBus);
    double part = 0.4;
    double once = after(part * Law.usualPart(1) * NOBODY.seconds(TO_KETTLES)).seconds(toBus);
    assertTrue(once > usual * (1 + part) / 2, once + " of " + usual);
    assertTrue(once < usual, once + " of " + usual);
  }

  @Test
  void oneRunIsOneRun() {
    assertEquals("Times are learned from 1 timed run.", after(60).origin());
  }

  @Test
  void whoIsSlowInOneChangeoverIsExpectedSlowInAnother() {
    List<Step> toBus = CueSheet.of(PLAN, NOBODY).cues().get(2).steps();
    double usual = NOBODY.seconds(toBus);
    assertTrue(after(90, 85, 80).seconds(toBus) > 1.1 * usual);
    assertTrue(after(20, 19, 18).seconds(toBus) < 0.9 * usual);
  }

  @Test
  void whatWasKnownEarlierCanBeAskedAgain() {
    Learned learned = after(60, 52, 46, 41);
    Outlook begin = learned.before(Instant.parse("2026-03-01T19:01:00Z")).outlook(TO_KETTLES);
    Outlook now = learned.outlook(TO_KETTLES);
    assertEquals(1, begin.runs());
    assertEquals(4, now.runs());
    assertTrue(now.odds(45, 1) > begin.odds(45, 1));
  }

  @Test
  void theLastDayBeginsAtMidnight() {
    assertEquals(Instant.parse("2026-03-01T00:00:00Z"), after(60, 50).lastDay());
    assertEquals(Instant.EPOCH, NOBODY.lastDay());
  }

  /**
   * The words may be improved and knobs be set otherwise: it is the same changeover to practise.
   */
  @Test
  void otherWordsAndOtherFiguresAreTheSameChangeover() {
    List<Step> reworded =
        TO_KETTLES.stream()
            .map(
                s ->
                    new Step(s.verb(), s.verb() + " anew", "", s.moves(), s.reach(), 0.9, 0, false))
            .toList();
    assertEquals(Mark.of(TO_KETTLES), Mark.of(reworded));
    assertTrue(!Mark.of(TO_KETTLES).equals(Mark.of(TO_KETTLES.subList(0, 4))));
  }

  @Test
  void thePlannerGetsSecondsForEverySingleMove() {
    Tempo tempo = after(60, 52, 46, 41).tempo(RIG);
    for (Module module : RIG.modules()) {
      for (Socket socket : module.sockets()) {
        assertTrue(tempo.pull(socket) > 0.5 && tempo.pull(socket) < 10, socket.toString());
        assertTrue(tempo.plug(socket) > tempo.pull(socket), socket.toString());
      }
      for (Control control : module.controls()) {
        double seconds = control.isKnob() ? tempo.turn(control) : tempo.flip(control);
        assertTrue(seconds > 0.5 && seconds < 10, control.toString());
      }
    }
  }

  @Test
  void aPlaceAtTheEdgeIsFartherOnAverageThanOneInTheMiddle() {
    Tempo tempo = NOBODY.tempo(RIG);
    Socket edge = RIG.module("lfo 1").orElseThrow().sockets().get(0);
    Socket middle = RIG.module("osc 1").orElseThrow().sockets().get(0);
    assertTrue(tempo.pull(edge) > tempo.pull(middle));
  }
}
