package entracte.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import entracte.cue.Spot;
import entracte.cue.Touch;
import entracte.cue.Touch.Act;
import entracte.cue.Touch.Travel;
import entracte.print.Mark.Path;
import entracte.print.Mark.Point;
import entracte.print.Mark.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class StampsTest {
  private static final double CAPITAL = 4;

  private final Stamps stamps = new Stamps(new Lettering(), CAPITAL, 300);

  private static Place place(Act act, Travel travel) {
    Spot spot = new Spot("osc 1", 0, 3, 0);
    return new Place("7", new Touch(act, spot, "osc 1 tune", Optional.ofNullable(travel)));
  }

  private List<Path> paths(Place place) {
    List<Path> paths = new ArrayList<>();
    for (Mark mark : stamps.draw(place, 0, 0)) {
      mark.draw(
          new Mark.Pen() {
            @Override
            public void words(Words words) {}

            @Override
            public void path(Path path) {
              paths.add(path);
            }
          });
    }
    return paths;
  }

  /** Knobs sweep 300 degrees, from seven o'clock to five. */
  @Test
  void theScaleLiesEvenlyToBothSidesOfUp() {
    assertEquals(-150, stamps.angle(0));
    assertEquals(0, stamps.angle(0.5));
    assertEquals(150, stamps.angle(1));
  }

  @Test
  void thePointersStandAtTheirTrueAngles() {
    List<Path> paths = paths(place(Act.TURN, new Travel(0, OptionalDouble.of(0.25), 1)));
    Path thick = paths.get(paths.size() - 1);
    assertEquals(150, angle(thick), 0.01);
    List<Path> pointers = paths.stream().filter(path -> path.points().size() == 2).toList();
    assertEquals(-75, angle(pointers.get(0)), 0.01);
    assertTrue(thick.width() > pointers.get(0).width());
  }

  @Test
  void aKnobFromNowhereHasOnePointer() {
    List<Path> paths = paths(place(Act.TURN, new Travel(0, OptionalDouble.empty(), 0.5)));
    assertEquals(1, paths.stream().filter(path -> path.points().size() == 2).count());
  }

  @Test
  void theNewPositionOfASwitchIsFilled() {
    List<Path> paths = paths(place(Act.SWITCH, new Travel(3, OptionalDouble.of(0), 1)));
    Path filled = paths.stream().filter(Path::filled).findFirst().orElseThrow();
    double top = filled.points().stream().mapToDouble(Point::y).min().orElseThrow();
    assertEquals(stamps.height() * 2 / 3, top, 1e-6);
    assertEquals(1, paths.stream().filter(Path::filled).count());
  }

  /** ISO 9241-3: 16 minutes of arc are the least; capitals fill 20. */
  @Test
  void theOldPositionOfASwitchIsARingThatCanBeSeen() {
    for (int stops = 2; stops <= 8; stops++) {
      Place place = place(Act.SWITCH, new Travel(stops, OptionalDouble.of(0), 1));
      Path ring =
          paths(place).stream().filter(path -> path.points().size() > 10).findFirst().orElseThrow();
      double top = ring.points().stream().mapToDouble(Point::y).min().orElseThrow();
      double bottom = ring.points().stream().mapToDouble(Point::y).max().orElseThrow();
      assertEquals(16.0 / 20 * CAPITAL, bottom - top + ring.width(), 1e-6, stops + " stops");
      assertTrue(top >= 0 && stamps.height(place) / stops >= bottom, stops + " stops");
    }
  }

  @Test
  void aPlugPointsDownAndIsSolidAPullPointsUpAndIsHollow() {
    Path plug = paths(place(Act.PLUG, null)).get(0);
    Path pull = paths(place(Act.PULL, null)).get(0);
    assertTrue(plug.filled() && !pull.filled());
    assertEquals(1, atEdge(plug, stamps.height()));
    assertEquals(1, atEdge(pull, pull.width() / 2));
    assertNotEquals(plug.points(), pull.points());
  }

  @Test
  void everyStampKeepsToItsRoom() {
    Travel travel = new Travel(5, OptionalDouble.of(0.5), 0);
    for (Act act : Act.values()) {
      Place place = place(act, act == Act.SWITCH || act == Act.TURN ? travel : null);
      for (Mark mark : stamps.draw(place, 0, 0)) {
        assertTrue(mark.right() <= stamps.width(place) + 1e-6, act + " is too wide");
      }
    }
  }

  private static long atEdge(Path path, double y) {
    return path.points().stream().filter(p -> Math.abs(p.y() - y) < 1e-6).count();
  }

  /** Clockwise from straight up. */
  private static double angle(Path pointer) {
    Point from = pointer.points().get(0);
    Point to = pointer.points().get(1);
    return Math.toDegrees(Math.atan2(to.x() - from.x(), from.y() - to.y()));
  }
}
