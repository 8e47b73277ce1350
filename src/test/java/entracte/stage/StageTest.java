package entracte.stage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import entracte.cue.Change;
import entracte.cue.GearSends;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A night goes as planned, from the set-up to the encore. */
final class StageTest {
  private final SmallShow small = new SmallShow().begin();

  @Test
  void everyPressIsOneMoveAndThenTheSong() {
    assertEquals("CHANGEOVER Kettle", small.place());
    small.next(3);
    assertEquals("CHANGEOVER Kettle", small.place());
    assertEquals(List.of(), small.sent());
    small.next(1);
    assertEquals("SONG Kettle", small.place());
    assertEquals(List.of("C0 32"), small.sent());
  }

  @Test
  void theChangeoverSendsWhatWantsTimeAndTheSongTheRest() {
    small.next(5);
    assertEquals("CHANGEOVER Clock", small.place());
    assertEquals(List.of("C0 01"), small.sent());
    small.next(4);
    assertEquals(List.of("C0 33"), small.sent());
  }

  @Test
  void sectionsComeBeforeTheNextChangeover() {
    small.next(9).next(1);
    assertEquals("SONG Clock", small.place());
    assertEquals(List.of("C0 65"), small.sent());
    small.next(1);
    assertEquals("CHANGEOVER Enamel", small.place());
  }

  @Test
  void anEncoreWaitsUntilItIsCalledFor() {
    small.next(16);
    assertEquals("PAUSE Enamel", small.place());
    small.next(1);
    assertEquals("CHANGEOVER Late", small.place());
    small.next(5);
    assertEquals(Phase.END, small.night.phase());
    small.next(3);
    assertEquals("The set is over.", small.notice());
  }

  @Test
  void aPressRightAfterSomethingWasSentIsNotHeard() {
    small.next(5);
    long sent = small.now;
    Night before = small.night;
    small.take(new Event.Pressed(sent + SmallShow.DEAF_MILLIS - 1, Input.NEXT));
    assertEquals(before, small.night);
    small.take(new Event.Pressed(sent + SmallShow.DEAF_MILLIS, Input.NEXT));
    assertEquals(List.of(Done.DONE, Done.OPEN, Done.OPEN), small.night.now().done());
  }

  @Test
  void theRigIsTrueMoveByMove() {
    assertEquals(TrueRig.bare(), small.night.rig());
    small.next(2);
    Change.Plugged first = new Change.Plugged("osc 1.saw", "filter 1.audio 0", 30);
    assertEquals(new TrueRig(List.of(first), Map.of()), small.night.rig());
    small.next(1);
    assertEquals(Map.of("filter 1.cutoff", "0"), small.night.rig().positions());
  }

  @Test
  void backTakesOneStepBackAndSendsNothing() {
    small.next(5).press(Input.BACK);
    assertEquals("SONG Kettle", small.place());
    assertEquals(List.of(), small.effects);
    small.press(Input.BACK, Input.BACK);
    assertEquals("CHANGEOVER Kettle", small.place());
    assertEquals(List.of(Done.DONE, Done.DONE, Done.OPEN), small.night.now().done());
    small.press(Input.BACK, Input.BACK, Input.BACK);
    assertEquals("This is the beginning.", small.notice());
  }

  @Test
  void backLeavesAloneWhatIsNoStep() {
    small.next(4).choose("skip").answer().press(Input.BACK);
    assertEquals("The last thing was \"skip Clock\"; undo takes it back.", small.notice());
    small.press(Input.UNDO).answer();
    assertEquals(List.of(0, 1, 2, 3), small.night.now().order());
  }

  @Test
  void sendAgainSendsAllThatThePlaceAsksFor() {
    small.next(10).press(Input.SEND_AGAIN);
    assertTrue(small.effects.contains(new Effect.CaughtUp()));
    assertEquals(List.of("C0 01", "C0 33", "C0 65"), small.sent());
    assertEquals("SONG Clock", small.place());
  }

  @Test
  void quietKeepsThePlace() {
    small.next(6);
    State before = small.night.now();
    small.press(Input.QUIET);
    assertEquals(List.of("B0 7B 00"), small.sent());
    assertEquals(before.done(), small.night.now().done());
    assertEquals(before.at(), small.night.now().at());
  }

  /** The press that began the hold has marked a move; it is taken back. */
  @Test
  void aHoldTakesBackItsOwnPressAndOpensTheMenu() {
    small.next(2);
    small.take(new Event.Pressed(small.now + 700, Input.HOLD));
    assertTrue(small.night.menuOpen());
    assertEquals(List.of(Done.DONE, Done.OPEN, Done.OPEN), small.night.now().done());
  }

  @Test
  void aHoldMayMeanBack() {
    SmallShow other = new SmallShow(Show.Hold.BACK).begin().next(2);
    other.take(new Event.Pressed(other.now + 700, Input.HOLD));
    assertFalse(other.night.menuOpen());
    assertEquals(List.of(Done.OPEN, Done.OPEN, Done.OPEN), other.night.now().done());
  }

  @Test
  void replayingTheEventsGivesTheSameNight() {
    small.next(4).choose("swap").answer().next(7).choose("amp 1").press(Input.QUIET);
    Night again = Night.fresh();
    for (Event event : small.events) {
      again = Stage.after(small.show, again, event).night();
    }
    assertEquals(small.night, again);
  }

  /** Presses meant what they meant when they were made, whatever the set says by now. */
  @Test
  void aNightIsReplayedByTheShowThatItWasPlayedBy() {
    SmallShow small = new SmallShow();
    Basis basis = new Basis(Map.of(), Optional.of(small.show.outline()));
    List<Integer> order = small.show.order();
    small.take(new Event.Begun(small.now, "", order, TrueRig.bare(), basis)).answer().next(10);
    assertEquals("SONG Clock", small.place());
    assertEquals(1, small.night.now().section());
    assertEquals(small.night, Stage.replay(withoutSections(small.show), small.events));
  }

  @Test
  void whatWasPlannedForOtherFilesIsPlannedAgainFromTheRigAsItIs() {
    SmallShow small = new SmallShow().begin().next(7);
    small.take(new Event.Resumed(small.now, Basis.unknown(), true));
    Effect.Plan asked = (Effect.Plan) small.effects.get(0);
    assertEquals(List.of(1, 2, 3), asked.order());
    assertTrue(
        asked.rig().cords().contains(new Change.Plugged("osc 1.saw", "filter 1.audio 1", 30)));
    small.answer().press(Input.UNDO);
    assertTrue(small.night.waiting(), "the way before it was planned for other files, too");
  }

  private static Show withoutSections(Show show) {
    Show outline = show.outline();
    List<ShowSong> plain =
        outline.songs().stream()
            .map(
                s ->
                    ShowSong.outline(
                        s.title(),
                        s.encore(),
                        new GearSends(s.sends().changeover(), s.sends().song(), List.of())))
            .toList();
    return new Show(
        outline.set(),
        plain,
        outline.modules(),
        outline.jacks(),
        outline.quiet(),
        outline.slotSeconds(),
        outline.fallback(),
        outline.drone(),
        outline.hold(),
        outline.deafMillis());
  }
}
