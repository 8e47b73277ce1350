package entracte.rehearsal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import entracte.cue.CueSheet;
import entracte.cue.KitchenDances;
import entracte.cue.Pace;
import entracte.cue.Step;
import entracte.plan.Plan;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A night of {@link KitchenDances}, told to the log. */
class NightsTest {
  private static final Plan PLAN = KitchenDances.plan();
  private static final CueSheet SHEET = CueSheet.of(PLAN, Pace.estimated());
  private static final Instant ENDED = Instant.parse("2026-03-07T21:14:05.123Z");
  private static final List<Step> AS_PLANNED = SHEET.cues().get(1).steps();

  @TempDir Path folder;

  /** The steps as a journal tells them, which does not say how far a knob turned. */
  private static List<Step> asTold() {
    return AS_PLANNED.stream()
        .map(step -> Nights.step(step.verb(), step.text(), step.moves(), step.reach()))
        .toList();
  }

  private static Nights.Played played(List<Step> steps) {
    List<Double> seconds = Collections.nCopies(steps.size(), 4.5);
    return new Nights.Played(ENDED, "Two Kettles", steps, seconds);
  }

  private Added add(Nights.Played... played) throws IOException {
    return Nights.into(
        RunLog.beside(folder), List.of(played), SHEET, PLAN.setList().rig(), sure -> false);
  }

  @Test
  void aChangeoverPlayedOnStageIsARunOfThatChangeover() throws IOException {
    assertEquals(new Added(1, 0, 0), add(played(asTold())));
    Run run = RunLog.beside(folder).read().runs().get(0);
    assertEquals(Run.Where.STAGE, run.where());
    assertEquals(ENDED, run.when());
    assertEquals(4.5 * AS_PLANNED.size(), run.seconds());
    assertEquals(AS_PLANNED.size(), run.each().size());
    Learned learned = Learned.from(PLAN.setList().rig(), RunLog.beside(folder));
    assertEquals(1, learned.runs(AS_PLANNED));
  }

  @Test
  void thePlanTellsHowFarAKnobTurned() throws IOException {
    add(played(asTold()));
    double planned = Makeup.sum(new TimeModel(PLAN.setList().rig()).makeup(AS_PLANNED)).total();
    double written = RunLog.beside(folder).read().runs().get(0).makeup().total();
    assertEquals(planned, written, 0.05);
  }

  @Test
  void theSameNightIsAddedOnlyOnce() throws IOException {
    add(played(asTold()));
    assertEquals(new Added(0, 1, 0), add(played(asTold())));
    assertEquals(1, RunLog.beside(folder).read().runs().size());
  }

  @Test
  void whatWasWithdrawnStaysWithdrawn() throws IOException {
    add(played(asTold()));
    RunLog log = RunLog.beside(folder);
    log.withdraw(log.read().runs().get(0));
    assertEquals(new Added(0, 1, 0), add(played(asTold())));
    assertEquals(List.of(), log.read().runs());
  }

  /** A way that the plan does not have any more still tells of the hands. */
  @Test
  void anotherWayTeachesThePlayersSpeedAlone() throws IOException {
    add(played(asTold().subList(0, 4)));
    Learned learned = Learned.from(PLAN.setList().rig(), RunLog.beside(folder));
    assertEquals(0, learned.runs(AS_PLANNED));
    assertEquals(1, learned.timedRuns());
    assertTrue(RunLog.beside(folder).read().runs().get(0).makeup().total() > 0);
  }

  /** Who walks through the steps at the soundcheck presses and does nothing. */
  @Test
  void aWalkThroughTheStepsIsLeftOut() throws IOException {
    List<Double> seconds = Collections.nCopies(AS_PLANNED.size(), 0.1);
    Added added = add(new Nights.Played(ENDED, "Two Kettles", asTold(), seconds));
    assertEquals("Added 0 runs; 1 is far too quick and left out.", added.text());
    assertEquals(List.of(), RunLog.beside(folder).read().runs());
  }

  @Test
  void eachStepHasItsTime() {
    assertThrows(
        IllegalArgumentException.class,
        () -> new Nights.Played(ENDED, "Two Kettles", asTold(), List.of(1.0)));
  }
}
