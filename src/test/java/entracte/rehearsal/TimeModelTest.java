package entracte.rehearsal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import entracte.cue.Spot;
import entracte.cue.Step;
import entracte.cue.Verb;
import entracte.rehearsal.Mtm.Way;
import entracte.rig.CordStock;
import entracte.rig.Hands;
import entracte.rig.Rig;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class TimeModelTest {
  private static final Spot HERE = new Spot("osc 1", 0, 9, 2);
  private static final Spot THERE = new Spot("filter 1", 1, 39, 0);

  private static TimeModel model(Hands hands) {
    return new TimeModel(
        new Rig(
            "any",
            List.of(),
            List.of(),
            CordStock.unlimited(),
            40,
            List.of(),
            Optional.empty(),
            hands));
  }

  private static Hands light(double light) {
    Hands usual = Hands.usual();
    return new Hands(
        light,
        usual.readSeconds(),
        usual.tuning(),
        usual.level(),
        usual.plugs(),
        usual.way(),
        usual.sweepDegrees());
  }

  private static Step step(Verb verb, int moves, double size, Spot... reach) {
    return new Step(verb, verb + " it", "", moves, List.of(reach), size, 0, false);
  }

  @Test
  void theWayIsTheStraightOneAcrossTheRig() {
    assertEquals(50, model(light(1)).distanceCm(HERE, THERE), 1e-9);
  }

  /** Reach 30 cm, grasp, pull; carry 50 cm to an exact place, plug, let go: element by element. */
  @Test
  void aMoveIsThePullAndThePlugOverTheTrueDistance() {
    Makeup makeup = model(light(1)).makeup(step(Verb.MOVE, 2, 0, HERE, THERE), Optional.empty());
    double pull = Mtm.over(Way.REACH_B, 30) + 2.0 + 7.5;
    double plug = Mtm.over(Way.MOVE_C, 50) + 16.2 + 2.0;
    assertEquals(Mtm.seconds(pull), makeup.of(Work.PULL), 1e-12);
    assertEquals(Mtm.seconds(plug), makeup.of(Work.PLUG), 1e-12);
    assertEquals(1.2 + 7.3 * 0.036, makeup.of(Work.READ), 1e-12);
  }

  /** The planning rule of thumb: a rehearsed cord move takes 4 to 5 seconds (common practice). */
  @Test
  void inStageLightACordMoveTakesWhatPlayersSay() {
    double seconds =
        model(Hands.usual()).makeup(step(Verb.MOVE, 2, 0, HERE, THERE), Optional.empty()).total();
    assertTrue(seconds > 3.5 && seconds < 5.5, "took " + seconds);
  }

  /** Six cords, eight knobs and one oscillator take 60 to 75 s (common practice). */
  @Test
  void aChangeoverOfUsualSizeTakesAboutAMinute() {
    List<Step> steps =
        Stream.of(
                Collections.nCopies(6, step(Verb.MOVE, 2, 0, HERE, THERE)),
                Collections.nCopies(8, step(Verb.TURN, 1, 0.3, THERE)),
                List.of(step(Verb.TUNE, 0, 0, HERE)))
            .flatMap(List::stream)
            .toList();
    double seconds = Makeup.sum(model(Hands.usual()).makeup(steps)).total();
    assertTrue(seconds > 50 && seconds < 85, "took " + seconds);
  }

  @Test
  void theHandGoesFromEachStepToTheNext() {
    List<Step> near = List.of(step(Verb.TURN, 1, 0.5, HERE), step(Verb.TURN, 1, 0.5, HERE));
    List<Step> far = List.of(step(Verb.TURN, 1, 0.5, HERE), step(Verb.TURN, 1, 0.5, THERE));
    List<Makeup> nearMakeup = model(light(1)).makeup(near);
    List<Makeup> farMakeup = model(light(1)).makeup(far);
    assertEquals(nearMakeup.get(0), farMakeup.get(0));
    double longer = farMakeup.get(1).total() - nearMakeup.get(1).total();
    double expected = Mtm.seconds(Mtm.over(Way.REACH_B, 50) - Mtm.over(Way.REACH_B, 0));
    assertEquals(expected, longer, 1e-9);
  }

  @Test
  void dimLightMakesEverythingSlower() {
    Step step = step(Verb.PLUG, 2, 0, HERE, THERE);
    double bright = model(light(1)).makeup(step, Optional.empty()).total();
    double dim = model(light(1.5)).makeup(step, Optional.empty()).total();
    assertEquals(1.5 * bright, dim, 1e-9);
  }

  @Test
  void aCordFromTheBagTakesLongerThanOneThatHangs() {
    Makeup fromBag = model(light(1)).makeup(step(Verb.PLUG, 2, 0, HERE, THERE), Optional.empty());
    Makeup hanging = model(light(1)).makeup(step(Verb.PLUG, 1, 0, THERE), Optional.empty());
    assertTrue(fromBag.of(Work.PLUG) > 2 * hanging.of(Work.PLUG));
  }

  @Test
  void aWiderTurnAndAFartherPositionTakeLonger() {
    TimeModel model = model(light(1));
    assertTrue(
        model.makeup(step(Verb.TURN, 1, 1, HERE), Optional.empty()).of(Work.TURN)
            > model.makeup(step(Verb.TURN, 1, 0.1, HERE), Optional.empty()).of(Work.TURN));
    assertTrue(
        model.makeup(step(Verb.SWITCH, 1, 3, HERE), Optional.empty()).of(Work.SWITCH)
            > model.makeup(step(Verb.SWITCH, 1, 1, HERE), Optional.empty()).of(Work.SWITCH));
  }

  /** Octaves beat like unisons; the other intervals take longer (estimates). */
  /** Fifths and fourths beat nearly as clearly as octaves (an estimate, like all of these). */
  @Test
  void octavesAreTunedLikeUnisonsAndOtherIntervalsTakeLonger() {
    Hands.Tuning tuning = Hands.usual().tuning();
    assertEquals(8, tuning.seconds(0));
    assertEquals(8, tuning.seconds(-24));
    assertEquals(10, tuning.seconds(7));
    assertEquals(10, tuning.seconds(-7));
    assertEquals(12, tuning.seconds(4));
  }

  @Test
  void whoSaysHowLongAPullTakesIsBelieved() {
    Hands usual = Hands.usual();
    Hands stiff =
        new Hands(
            1,
            usual.readSeconds(),
            usual.tuning(),
            usual.level(),
            new Hands.Plugs(Hands.Fit.CLOSE, OptionalDouble.of(0.9)),
            usual.way(),
            usual.sweepDegrees());
    Step pull = step(Verb.PULL, 1, 0, HERE);
    double usually = model(light(1)).makeup(pull, Optional.empty()).of(Work.PULL);
    double stiffly = model(stiff).makeup(pull, Optional.empty()).of(Work.PULL);
    assertEquals(0.9 - Mtm.seconds(7.5), stiffly - usually, 1e-12);
  }
}
