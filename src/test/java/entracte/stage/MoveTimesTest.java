package entracte.stage;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Nights on the small show: each press comes a second after the one before. */
class MoveTimesTest {
  /** The set-up's three moves, the song, and the press that ends it. */
  private static final int TO_THE_FIRST_CHANGEOVER = 3 + 1 + 1;

  private final SmallShow small = new SmallShow().begin();

  private List<MoveTimes.Played> played() {
    return MoveTimes.of(small.show, small.events);
  }

  @Test
  void aChangeoverThatWasPlayedWholeTellsTheSecondsOfEachMove() {
    small.next(TO_THE_FIRST_CHANGEOVER);
    small.now += 4000;
    small.next(4);
    MoveTimes.Played played = played().get(0);
    assertEquals("Clock", played.song());
    assertEquals(List.of(5.0, 1.0, 1.0), played.seconds());
    assertEquals(3, played.moves().size());
    assertEquals(small.now - 1000, played.endedAtMillis());
    assertEquals(1, played().size());
  }

  @Test
  void theSetUpIsNotToldOf() {
    small.next(TO_THE_FIRST_CHANGEOVER);
    assertEquals(List.of(), played());
  }

  @Test
  void oneThatIsNotOverIsNotToldOf() {
    small.next(TO_THE_FIRST_CHANGEOVER + 3);
    assertEquals(List.of(), played());
  }

  @Test
  void aMoveTakenBackIsTimedUntilItIsDoneAgain() {
    small.next(TO_THE_FIRST_CHANGEOVER + 2).press(Input.BACK).next(3);
    assertEquals(List.of(1.0, 3.0, 1.0), played().get(0).seconds());
  }

  @Test
  void oneWithAMoveLeftUndoneIsNotToldOf() {
    small.next(TO_THE_FIRST_CHANGEOVER + 1).choose("leave").next(2);
    assertEquals("SONG Clock", small.place());
    assertEquals(List.of(), played());
  }

  @Test
  void oneThatAStoppedProgramCutInTwoIsNotToldOf() {
    small.next(TO_THE_FIRST_CHANGEOVER + 1).take(new Event.Resumed(small.now)).next(3);
    assertEquals("SONG Clock", small.place());
    assertEquals(List.of(), played());
  }

  /** While the way is worked out the hands can do nothing. */
  @Test
  void waitingForTheWayIsNotTheHandsTime() {
    SmallShow late = new SmallShow();
    late.take(new Event.Begun(late.now, late.show.fingerprint(), List.of(0, 1), TrueRig.bare()));
    List<Way> first = List.of(SmallShow.way(0, true));
    late.take(new Event.Planned(late.now, 1, List.of(0, 1), first, ""));
    late.next(TO_THE_FIRST_CHANGEOVER);
    late.now += 60_000;
    List<Way> both = List.of(SmallShow.way(1, false));
    late.take(new Event.Planned(late.now, late.night.request(), List.of(1), both, ""));
    late.next(4);
    assertEquals(List.of(1.0, 1.0, 1.0), MoveTimes.of(late.show, late.events).get(0).seconds());
  }
}
