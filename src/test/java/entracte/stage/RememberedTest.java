package entracte.stage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import entracte.cue.Change;
import entracte.cue.Ear;
import entracte.cue.Verb;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What the ear and the hand at the main level did is known to every plan that is made later. */
final class RememberedTest {
  private static final Ear EAR =
      new Ear(Set.of("keys.pitch to osc 1.pitch"), Map.of("keys pitch", 1L), Map.of(), "");

  private final SmallShow small = new SmallShow();

  private static Move move(Verb verb, String text, Change... changes) {
    return new Move(verb, text, 0, List.of(), List.of(changes), false);
  }

  private static Way way(Move... moves) {
    return new Way(0, false, List.of(moves), 12, 0, List.of());
  }

  private static final Move LOWER = move(Verb.LOWER, "LOWER the level", new Change.Level(true));
  private static final Move PULL = move(Verb.PULL, "PULL keys gate, then amp 1 cv");
  private static final Move TUNE = move(Verb.TUNE, "TUNE osc 1", new Change.Tuned("osc 1", EAR));
  private static final Move RAISE = move(Verb.RAISE, "RAISE the level", new Change.Level(false));

  private SmallShow planned(Way way) {
    return small.take(
        new Event.Planned(small.now, small.night.request(), List.of(0), List.of(way), ""));
  }

  private SmallShow begun(Way way) {
    small.take(new Event.Begun(small.now, "", List.of(0), TrueRig.bare()));
    return planned(way);
  }

  private List<String> moves() {
    return small.night.now().way().orElseThrow().moves().stream().map(Move::text).toList();
  }

  private List<Done> done() {
    return small.night.now().done();
  }

  private TrueRig asked() {
    return small.effects.stream()
        .filter(Effect.Plan.class::isInstance)
        .map(effect -> ((Effect.Plan) effect).rig())
        .findFirst()
        .orElseThrow();
  }

  @Test
  void aNewPlanIsToldWhatWasTuned() {
    begun(way(LOWER, PULL, TUNE, RAISE)).next(3).choose("moves done").narrow("plan again");
    assertEquals(Map.of("osc 1", EAR), asked().tunings().ears());
  }

  @Test
  void aTuningThatWasLeftOutIsNone() {
    begun(way(LOWER, TUNE, RAISE)).next(1).choose("leave this move").next(2);
    assertEquals("SONG Kettle", small.place());
    assertTrue(small.night.rig().tunings().ears().isEmpty());
  }

  @Test
  void whatWasTouchedSinceIsNotInTune() {
    Move turn = move(Verb.TURN, "TURN osc 1 tune to 1", new Change.Touched("osc 1"));
    begun(way(TUNE, turn)).next(2);
    assertEquals(Set.of("osc 1"), small.night.rig().tunings().touched());
    assertEquals(Map.of(), small.night.rig().tunings().ears());
  }

  @Test
  void aLevelThatIsDownIsNotLoweredTwice() {
    begun(way(LOWER, PULL, RAISE)).next(1).choose("moves done").narrow("plan again");
    planned(way(LOWER, PULL, TUNE, RAISE));
    assertEquals(List.of(Done.DONE, Done.OPEN, Done.OPEN, Done.OPEN), done());
    assertEquals("PULL keys gate, then amp 1 cv", small.rows(80, 24).get(5));
  }

  /** A better plan may still come: no hand was at this one. */
  @Test
  void aLevelThatIsDownIsNoMoveOfTheNewWay() {
    begun(way(LOWER, PULL, RAISE)).next(1).choose("moves done").narrow("plan again");
    planned(way(LOWER, PULL, TUNE, RAISE));
    assertTrue(new Draft(small.show, small.night.now(), small.now).isUntouched());
    small.next(1);
    assertFalse(new Draft(small.show, small.night.now(), small.now).isUntouched());
  }

  @Test
  void aLevelThatIsDownIsRaisedOnAWayThatNeedsNoSilence() {
    begun(way(LOWER, PULL, RAISE)).next(1).choose("moves done").narrow("plan again");
    planned(way(move(Verb.TURN, "TURN osc 1 width to 4")));
    assertEquals(List.of("TURN osc 1 width to 4", "RAISE the main level slowly"), moves());
    small.next(2);
    assertFalse(small.night.rig().levelDown());
  }

  @Test
  void whileASongSoundsTheLevelIsUp() {
    begun(way(LOWER, PULL, RAISE)).next(2).choose("leave this move").next(1);
    assertEquals("SONG Kettle", small.place());
    assertFalse(small.night.rig().levelDown());
  }
}
