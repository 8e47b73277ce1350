package entracte.plan.sample;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import entracte.check.SetBuilder;
import entracte.finding.Severity;
import java.util.EnumSet;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Random sets are the same for the same seed, playable at every size, and as asked for. */
final class RandomSetsTest {
  @Test
  void theSameSeedMakesTheSameSet() {
    Sample one = RandomSets.any(5, 4, 9);
    Sample again = RandomSets.any(5, 4, 9);
    assertEquals(one.set().setList(), again.set().setList());
    assertEquals(one.start(), again.start());
    assertNotEquals(one.set().setList(), RandomSets.any(6, 4, 9).set().setList());
  }

  @Test
  void everySizeCanBePlayed() {
    for (int seed = 0; seed < 300; seed++) {
      assertEquals(3 + seed % 28, RandomSets.any(seed, 3 + seed % 28, 6 + seed % 35).songs());
    }
    Sample large = RandomSets.make(1, 100, 120, EnumSet.complementOf(EnumSet.of(Feature.TIGHT)));
    assertEquals(100, large.songs());
    assertEquals(120, large.set().setList().rig().modules().size());
  }

  @Test
  void theCheckHasNothingToSayButNotesAndHints() {
    for (int seed = 0; seed < 100; seed++) {
      Sample sample = RandomSets.any(seed, 4, 12);
      assertTrue(
          SetBuilder.check(sample.set().setList()).findings().stream()
              .noneMatch(finding -> finding.severity() == Severity.ERROR),
          sample.label());
    }
  }

  @Test
  void everyFeatureShowsInSomeSet() {
    assertTrue(cords(Set.of(Feature.TIGHT)) < cords(Set.of()), "a tight stock is smaller");
    Sample chained = RandomSets.make(3, 6, 12, EnumSet.of(Feature.MULTIPLES, Feature.GIVEN_START));
    assertTrue(
        chained.set().parts().stream()
            .flatMap(part -> part.nets().stream())
            .anyMatch(net -> net.sinks().size() > 1),
        "some source has several sinks");
    assertTrue(!chained.start().state().cords().isEmpty(), "something is plugged at the start");
    Sample loose = RandomSets.make(3, 6, 12, EnumSet.of(Feature.SEVERAL_KINDS));
    assertTrue(
        loose.set().parts().stream()
            .flatMap(part -> part.roles().stream())
            .anyMatch(
                role ->
                    role.candidates().stream().map(m -> m.kind().name()).distinct().count() > 1),
        "some role has candidates of two kinds");
  }

  private static int cords(Set<Feature> features) {
    return RandomSets.make(2, 6, 12, features).set().setList().rig().cords().total();
  }
}
