package entracte.stage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import entracte.cue.Change;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** A night that goes otherwise. */
final class AmendsTest {
  private final SmallShow small = new SmallShow().begin();

  private Effect.Plan asked() {
    return small.effects.stream()
        .filter(Effect.Plan.class::isInstance)
        .map(Effect.Plan.class::cast)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void aSongIsSkippedWhileAnotherSounds() {
    small.next(4).choose("skip");
    assertEquals(List.of(2, 3), asked().order());
    assertTrue(asked().midShow());
    small.answer().next(1);
    assertEquals("CHANGEOVER Enamel", small.place());
  }

  @Test
  void aSongIsSkippedOnTheWayToItAndTheGearFollows() {
    small.next(6).choose("skip");
    assertEquals(List.of(2, 3), asked().order());
    assertEquals(List.of("C0 02"), small.sent());
    small.answer();
    assertEquals("CHANGEOVER Enamel", small.place());
    assertEquals(List.of(Done.OPEN, Done.OPEN, Done.OPEN), small.night.now().done());
  }

  /** Two moves of the way to Clock were made: the new plan starts from there. */
  @Test
  void theNewPlanStartsFromTheRigAsItStands() {
    small.next(7).choose("skip");
    assertTrue(
        asked().rig().cords().contains(new Change.Plugged("osc 1.saw", "filter 1.audio 1", 30)));
  }

  @Test
  void aJumpLeavesOutWhatLiesBetween() {
    small.next(4).choose("jump").narrow("enamel");
    assertEquals(List.of(2, 3), asked().order());
  }

  @Test
  void aSongIsPlayedOnceMoreAndThenTheSetCarriesOn() {
    small.next(4).choose("play another").narrow("kettle");
    assertEquals(List.of(0, 1, 2, 3), asked().order());
    small.answer().next(1);
    assertEquals("CHANGEOVER Kettle", small.place());
  }

  @Test
  void twoSongsAreSwapped() {
    small.next(4).choose("swap");
    assertEquals(List.of(2, 1, 3), asked().order());
  }

  @Test
  void aMoveLeftUndoneIsPlannedForWhenTheSongBegins() {
    small.next(6).choose("leave this move");
    assertEquals(List.of(Done.DONE, Done.LEFT, Done.OPEN), small.night.now().done());
    small.next(2);
    assertEquals("SONG Clock", small.place());
    assertFalse(
        asked().rig().cords().contains(new Change.Plugged("osc 1.saw", "filter 1.audio 1", 30)));
    assertEquals("1", asked().rig().positions().get("filter 1.cutoff"));
  }

  @Test
  void aMoveIsMarkedUndoneAndTheWayIsPlannedAgain() {
    small.next(7).choose("moves done").narrow("done: PLUG");
    assertTrue(small.night.menuOpen());
    assertEquals(List.of(Done.DONE, Done.OPEN, Done.OPEN), small.night.now().done());
    small.press(Input.BACK).choose("moves done").narrow("plan again");
    assertEquals(List.of(1, 2, 3), asked().order());
    assertEquals(1, asked().rig().cords().size());
  }

  @Test
  void aCordThatIsNotThereIsTakenFromTheTruth() {
    small.next(4).choose("a cord is not there").narrow("audio 0");
    assertEquals(List.of(), asked().rig().cords());
  }

  @Test
  void aCordThatNobodyPlannedIsAddedToTheTruth() {
    small.next(4).choose("one more cord").narrow("osc 1.sine").narrow("amp 1.audio");
    assertTrue(asked().rig().cords().contains(new Change.Plugged("osc 1.sine", "amp 1.audio", 0)));
  }

  @Test
  void aDeadModuleIsPlannedAround() {
    small.next(4).choose("dead").narrow("osc 1");
    assertEquals(Set.of("osc 1"), asked().dead());
  }

  /** The other plug of such a cord is in a jack that plays. */
  @Test
  void theCordsOfADeadModuleComeOutFirstWithTheLevelDown() {
    small.next(4).choose("dead").narrow("osc 1");
    assertEquals(List.of(), asked().rig().cords());
    small.answer().next(1);
    assertEquals(
        List.of(
            "LOWER the main level before any plug or switch moves",
            "PULL filter 1 audio 0, then osc 1 saw",
            "PLUG osc 1 saw, then filter 1 audio 1"),
        small.night.now().way().orElseThrow().moves().stream()
            .map(Move::text)
            .toList()
            .subList(0, 3));
    assertEquals(1, small.night.rig().cords().size());
    small.next(2);
    assertEquals(List.of(), small.night.rig().cords());
  }

  @Test
  void aCordOfADeadModuleThatWasNotPulledIsAskedForAgain() {
    small.next(4).choose("dead").narrow("osc 1").answer().next(2);
    small.choose("moves done").narrow("plan again").answer();
    assertEquals(
        "PULL filter 1 audio 0, then osc 1 saw",
        small.night.now().way().orElseThrow().moves().get(1).text());
  }

  /** Else the song that takes its place would be played on its program. */
  @Test
  void whereTheNextSongIsTakenOutTheGearIsToldOfTheOneAfterIt() {
    small.next(5).choose("dead").narrow("osc 1");
    int ahead = small.night.now().ahead();
    assertEquals(1, ahead);
    List<Way> ways = List.of(SmallShow.way(2, false));
    small.take(new Event.Planned(small.now, asked().request(), List.of(2), ways, ""));
    assertEquals(List.of(SmallShow.sent(2)), small.effects);
  }

  @Test
  void theFallbackFromNothingTellsItsGear() {
    small.next(6).choose("lost").narrow("pull every cord, then build kettle");
    assertTrue(small.effects.contains(SmallShow.sent(0)), small.effects.toString());
    assertEquals(1, small.effects.stream().filter(Effect.Plan.class::isInstance).count());
  }

  @Test
  void songsThatCannotBePlayedAreTakenOutAndTold() {
    small.next(4).choose("dead").narrow("osc 1");
    int request = asked().request();
    List<Way> ways = List.of(SmallShow.way(2, false));
    small.take(new Event.Planned(small.now, request, List.of(2), ways, "Clock cannot be played."));
    assertEquals(List.of(0, 2), small.night.now().order());
    assertEquals("Clock cannot be played.", small.notice());
  }

  @Test
  void lostLeadsToSilenceAndKeepsThePlace() {
    small.next(6).choose("lost").narrow("silence");
    assertEquals(List.of("B0 7B 00"), small.sent());
    assertEquals("CHANGEOVER Clock", small.place());
  }

  @Test
  void lostLeadsToTheFallbackFromNothing() {
    small.next(6).choose("lost").narrow("pull every cord, then build kettle");
    assertEquals(TrueRig.bare(), asked().rig());
    assertEquals(List.of(0, 1, 2, 3), asked().order());
    small.answer();
    assertEquals("CHANGEOVER Kettle", small.place());
    assertEquals("PULL every cord", small.night.now().way().orElseThrow().moves().get(1).text());
  }

  @Test
  void lostLeadsToADroneAtOnceAndTheSongsGoOnAfterIt() {
    small.next(4).choose("lost").narrow("drone");
    assertEquals("CHANGEOVER Drone", small.place());
    assertEquals(List.of(4, 1, 2, 3), asked().order());
    assertEquals(1, asked().rig().cords().size());
    small.answer().press(Input.UNDO);
    assertEquals("SONG Kettle", small.place());
  }

  @Test
  void theDroneIsNoSongOfTheEvening() {
    assertEquals(List.of(0, 1, 2, 3), small.show.order());
    small.next(4).choose("play another");
    assertFalse(String.join(" ", small.rows(80, 24)).contains("Drone"));
  }

  @Test
  void jumpersStayWhereTheFirstPlanHadThem() {
    SmallShow other = new SmallShow();
    other.take(new Event.Begun(other.now, "", List.of(0, 1, 2, 3), TrueRig.bare()));
    Map<String, String> jumpers = Map.of("filter 1.other slope", "3-pole");
    List<Way> ways = List.of(SmallShow.way(0, true), SmallShow.way(1, false));
    other.take(new Event.Planned(other.now, 1, List.of(0, 1, 2, 3), ways, "", jumpers));
    other.next(4).choose("lost").narrow("pull every cord, then build clock");
    Effect.Plan plan = (Effect.Plan) other.effects.get(other.effects.size() - 1);
    assertEquals(jumpers, plan.rig().jumpers());
    assertEquals(Map.of(), plan.rig().positions());
  }

  @Test
  void anOldPlanThatComesLateIsNotTaken() {
    small.next(4).choose("swap");
    Effect.Plan old = asked();
    small.choose("swap enamel");
    List<Way> ways = old.order().stream().map(s -> SmallShow.way(s, false)).toList();
    small.take(new Event.Planned(small.now, old.request(), old.order(), ways, ""));
    assertTrue(small.night.waiting());
  }

  @Test
  void aBetterPlanIsTakenUntilAMoveIsMade() {
    small.next(5);
    List<Way> ways = List.of(SmallShow.way(1, true));
    small.next(1).take(new Event.Planned(small.now, 1, List.of(1), ways, ""));
    assertEquals(List.of(0, 1, 2, 3), small.night.now().order());
  }

  @Test
  void noPlanIsToldAndTheShowStands() {
    small.next(4).choose("swap");
    small.take(new Event.Unplanned(small.now, asked().request(), "No plan was found."));
    assertEquals("No plan was found.", small.notice());
    small.press(Input.UNDO).answer().next(1);
    assertEquals("CHANGEOVER Clock", small.place());
  }

  @Test
  void undoTakesBackTheLastThingWhateverItWas() {
    small.next(4).choose("swap").answer().press(Input.UNDO).answer();
    assertEquals(List.of(0, 1, 2, 3), small.night.now().order());
    assertEquals("SONG Kettle", small.place());
  }

  @Test
  void aFootAloneUsesTheMenu() {
    small.next(4).press(Input.HOLD);
    small.night = new SmallShow().begin().night;
    small.press(Input.MENU).next(1);
    assertEquals(1, small.night.now().menu().orElseThrow().marked());
    small.press(Input.HOLD);
    assertFalse(small.night.menuOpen());
  }

  @Test
  void everyMenuHasALineThatClosesItAndIsNothingToTakeBack() {
    for (Menu.Page page : Menu.Page.values()) {
      SmallShow show = new SmallShow().begin().next(4);
      Night before = show.night;
      show.press(Input.MENU);
      Draft draft = new Draft(show.show, show.night.now(), show.now);
      draft.menu = Optional.of(Menu.of(page));
      show.night = new Night(draft.state(), before.past());
      show.press(Input.UP).press(Input.HOLD);
      assertFalse(show.night.menuOpen(), page.title());
      assertEquals(before.past(), show.night.past());
    }
  }

  @Test
  void escapeClosesAMenuAndElseSaysNothing() {
    small.next(4);
    Night before = small.night;
    assertEquals(before, small.press(Input.CLOSE).night);
    small.press(Input.MENU).press(Input.CLOSE);
    assertFalse(small.night.menuOpen());
    assertEquals(before.past(), small.night.past());
  }

  /** Only the next way was found in time; the rest is asked for when the song begins. */
  @Test
  void theRestOfAPlanMayComeLater() {
    small.next(4).choose("swap");
    List<Way> one = List.of(SmallShow.way(2, false));
    small.take(new Event.Planned(small.now, asked().request(), List.of(2, 1, 3), one, ""));
    small.next(1).next(3);
    assertEquals(List.of(), small.effects);
    small.next(1);
    assertEquals("SONG Enamel", small.place());
    assertEquals(List.of(1, 3), asked().order());
  }
}
