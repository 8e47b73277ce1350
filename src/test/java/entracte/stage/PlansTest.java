package entracte.stage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** A plan comes when it comes; it may not surprise hands or a foot that are at work. */
final class PlansTest {
  private final SmallShow small = new SmallShow().begin();

  private static Way shorter(int song) {
    Way way = SmallShow.way(song, false);
    return way.with(way.moves().subList(0, 2));
  }

  private Event.Planned better(List<Integer> order) {
    List<Way> ways = order.stream().map(PlansTest::shorter).toList();
    return new Event.Planned(small.now, small.night.request(), order, ways, "");
  }

  private static List<String> menu(SmallShow small) {
    return small.rows(80, 24).subList(2, 20);
  }

  @Test
  void theLinesOfAnOpenMenuStayWhereTheyAre() {
    small.next(4).choose("swap clock");
    Effect.Plan asked = (Effect.Plan) small.effects.get(small.effects.size() - 1);
    small.press(Input.MENU, Input.NEXT, Input.NEXT);
    final List<String> before = menu(small);
    List<Way> ways = asked.order().stream().map(song -> SmallShow.way(song, false)).toList();
    small.take(new Event.Planned(small.now, asked.request(), asked.order(), ways, ""));
    assertEquals(before, menu(small));
    small.press(Input.CLOSE);
    assertTrue(small.night.now().way().isPresent());
    assertEquals(List.of(0, 2, 1, 3), small.night.now().order());
  }

  @Test
  void whatTheMenuTookBackIsNotPlannedAfterAll() {
    small.next(4).choose("swap clock");
    Effect.Plan asked = (Effect.Plan) small.effects.get(small.effects.size() - 1);
    small.press(Input.MENU);
    List<Way> ways = asked.order().stream().map(song -> SmallShow.way(song, false)).toList();
    small.take(new Event.Planned(small.now, asked.request(), asked.order(), ways, ""));
    small.narrow("take back: swap");
    assertEquals(List.of(0, 1, 2, 3), small.night.now().order());
    assertEquals("Taken back: swap Clock and Enamel. Nothing was sent.", small.notice());
  }

  @Test
  void aPlanForWhatWasUndoneComesTooLate() {
    small.next(4).choose("swap clock").answer().press(Input.UNDO);
    assertEquals(List.of(0, 1, 2, 3), small.night.now().order());
    small.take(
        new Event.Planned(
            small.now, 2, List.of(2, 1, 3), List.of(shorter(2), shorter(1), shorter(3)), ""));
    assertEquals(List.of(0, 1, 2, 3), small.night.now().order());
  }

  @Test
  void aBetterPlanLeavesTheMovesThatHandsAreAt() {
    small.next(5);
    Way ahead = small.night.now().way().orElseThrow();
    small.choose("swap clock").answer();
    assertEquals("CHANGEOVER Enamel", small.place());
    final List<Move> shown = small.night.now().way().orElseThrow().moves();
    small.take(better(List.of(2, 1, 3)));
    assertEquals(shown, small.night.now().way().orElseThrow().moves());
    assertEquals(3, ahead.moves().size());
  }

  @Test
  void whileASongSoundsABetterPlanIsTakenAndSaid() {
    small.next(4).choose("swap clock").answer().take(better(List.of(2, 1, 3)));
    assertEquals(2, small.night.now().way().orElseThrow().moves().size());
    assertEquals("A better plan came: 3 moves fewer.", small.notice());
  }

  @Test
  void notWhileSomebodyMakesReady() {
    small.next(4).choose("swap clock").answer().press(Input.READY).take(better(List.of(2, 1, 3)));
    assertEquals(3, small.night.now().way().orElseThrow().moves().size());
  }
}
