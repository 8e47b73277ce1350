package entracte.cue;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class HandOrderTest {
  @Test
  void withinReachTheTopRowComesFirst() {
    Spot lowLeft = new Spot("low left", 1, 3, 0);
    Spot topMiddle = new Spot("top middle", 0, 15, 0);
    assertEquals(List.of(topMiddle, lowLeft), sorted(lowLeft, topMiddle));
  }

  @Test
  void beyondReachLeftComesFirst() {
    Spot lowLeft = new Spot("low left", 1, 3, 0);
    Spot topFar = new Spot("top far", 0, HandOrder.REACH_CM + 3, 0);
    assertEquals(List.of(lowLeft, topFar), sorted(topFar, lowLeft));
  }

  @Test
  void onOneModuleThePanelsOwnOrderHolds() {
    Spot second = new Spot("osc 1", 0, 9, 1);
    Spot first = new Spot("osc 1", 0, 9, 0);
    assertEquals(List.of(first, second), sorted(second, first));
  }

  private static List<Spot> sorted(Spot... spots) {
    return Stream.of(spots).sorted(HandOrder.SPOTS).toList();
  }
}
