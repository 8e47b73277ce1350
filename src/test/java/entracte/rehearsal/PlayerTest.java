package entracte.rehearsal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

class PlayerTest {
  private static Run run(int number, double seconds, Makeup makeup) {
    return new Run(
        Instant.ofEpochSecond(number),
        Run.Where.REHEARSAL,
        "song",
        "changeover " + number % 5,
        seconds,
        0,
        makeup,
        List.of());
  }

  @Test
  void withoutARunEveryFactorIsOne() {
    Player player = Player.of(new Histories(List.of()));
    for (Work work : Work.values()) {
      assertEquals(1, player.factor(work), 1e-9, work.word());
    }
  }

  @Test
  void oneSlowRunMakesThePlayerSlowerMostAtWhatItWasMadeOf() {
    Makeup makeup = new Makeup(Map.of(Work.READ, 10.0, Work.PLUG, 10.0));
    double seconds = 1.5 * makeup.total() * Law.usualPart(1);
    Player player = Player.of(new Histories(List.of(run(0, seconds, makeup))));
    assertTrue(player.factor(Work.PLUG) > 1.2 && player.factor(Work.PLUG) < 1.5);
    assertTrue(player.factor(Work.TURN) > 1.1);
    assertTrue(player.factor(Work.TURN) < player.factor(Work.PLUG));
  }

  /** Who plugs at half the model's speed and turns at twice: found from whole runs alone. */
  @Test
  void manyRunsTellTheKindsOfWorkApart() {
    Random random = new Random(7);
    List<Run> runs = new ArrayList<>();
    for (int i = 0; i < 400; i++) {
      double plug = 30 * random.nextDouble();
      double turn = 30 * random.nextDouble();
      double read = 5 + 10 * random.nextDouble();
      Makeup makeup = new Makeup(Map.of(Work.READ, read, Work.PLUG, plug, Work.TURN, turn));
      double untrained = Law.usualPart(i / 5 + 1);
      runs.add(run(i, (read + 2 * plug + 0.5 * turn) * untrained, makeup));
    }
    Player player = Player.of(new Histories(runs));
    assertEquals(2, player.factor(Work.PLUG), 0.1);
    assertEquals(0.5, player.factor(Work.TURN), 0.1);
    assertEquals(1, player.factor(Work.READ), 0.15);
  }

  @Test
  void stepsTimedSinglyTellTheKindsApartInOneRun() {
    List<Run.Split> each = new ArrayList<>();
    for (int i = 0; i < 20; i++) {
      each.add(new Run.Split(6, new Makeup(Map.of(Work.PLUG, 3.0))));
      each.add(new Run.Split(1.5, new Makeup(Map.of(Work.TURN, 3.0))));
    }
    Makeup whole = new Makeup(Map.of(Work.PLUG, 60.0, Work.TURN, 60.0));
    Run run = new Run(Instant.EPOCH, Run.Where.REHEARSAL, "song", "mark", 150, 0, whole, each);
    Player player = Player.of(new Histories(List.of(run)));
    assertTrue(player.factor(Work.PLUG) > 2 * player.factor(Work.TURN));
  }

  @Test
  void noFactorIsEverBelowZero() {
    Makeup makeup = new Makeup(Map.of(Work.PLUG, 1.0, Work.TURN, 1000.0));
    List<Run> runs = new ArrayList<>();
    for (int i = 0; i < 50; i++) {
      runs.add(run(i, 0.01, makeup));
    }
    Player player = Player.of(new Histories(runs));
    for (Work work : Work.values()) {
      assertTrue(player.factor(work) >= 0, work.word());
    }
  }
}
