package entracte.plan.sample;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** Chance, from a seed. */
final class Dice {
  private final SplittableRandom random;

  Dice(long seed) {
    this(new SplittableRandom(seed));
  }

  private Dice(SplittableRandom random) {
    this.random = random;
  }

  /** Dice of their own, which do not change what these roll later. */
  Dice split() {
    return new Dice(random.split());
  }

  /** From 0 to {@code bound - 1}. */
  int below(int bound) {
    return random.nextInt(bound);
  }

  /** From {@code low} to {@code high}. */
  int between(int low, int high) {
    return low + below(high - low + 1);
  }

  boolean chance(double probability) {
    return random.nextDouble() < probability;
  }

  <T> T one(List<T> list) {
    return list.get(below(list.size()));
  }

  <T> List<T> shuffled(List<T> list) {
    List<T> copy = new ArrayList<>(list);
    for (int i = copy.size() - 1; i > 0; i--) {
      int j = below(i + 1);
      T held = copy.get(i);
      copy.set(i, copy.get(j));
      copy.set(j, held);
    }
    return copy;
  }
}
