package entracte.rehearsal;

import java.util.ArrayList;
import java.util.List;

/**
 * How times fall with practice: the shape of a learning curve, without its level.
 *
 * <p>Two laws are held against each other. The power law, T(n) = T(1) n^-a: Snoddy 1926; Newell and
 * Rosenbloom 1981; in industry Wright 1936, here in its unit form. The exponential law, T(n) = A +
 * B e^-c(n-1): for single people it fits better than the power law, which is what averages over
 * people look like (Heathcote, Brown and Mewhort, <em>Psychonomic Bulletin and Review</em> 7, 2000,
 * 185-207).
 *
 * @param first the exponent a; or A as a part of T(1)
 * @param second nothing; or the rate c
 */
record Law(Family family, double first, double second) {
  /** Which law. */
  enum Family {
    POWER,
    EXPONENTIAL
  }

  /** Shapes to choose from, with the weight each has before any run. Each family has one half. */
  record Weighted(Law law, double weight) {}

  /** The motion times are those of trained hands: of someone who has done it so often. */
  static final int TRAINED = 5;

  private static final double[] EXPONENTS = {0, 0.05, 0.1, 0.15, 0.2, 0.25, 0.3, 0.4, 0.5};
  private static final double[] FLOORS = {0.4, 0.55, 0.7, 0.85, 1};
  private static final double[] RATES = {0.1, 0.2, 0.4, 0.8};

  static Law power(double exponent) {
    return new Law(Family.POWER, exponent, 0);
  }

  static Law exponential(double floor, double rate) {
    return new Law(Family.EXPONENTIAL, floor, rate);
  }

  /** The time of run {@code n} as a part of that of run 1. */
  double part(double n) {
    return switch (family) {
      case POWER -> Math.pow(n, -first);
      case EXPONENTIAL -> first + (1 - first) * Math.exp(-second * (n - 1));
    };
  }

  /** The logarithm of the time of run {@code n} against that of a trained one. */
  double log(int n) {
    return Math.log(part(n) / part(TRAINED));
  }

  /** The time of run {@code n} against that of a trained one, before any run was seen. */
  static double usualPart(int n) {
    return Math.exp(all().stream().mapToDouble(w -> w.weight() * w.law().log(n)).sum());
  }

  /** All shapes that are held possible. */
  static List<Weighted> all() {
    List<Weighted> all = new ArrayList<>();
    for (double exponent : EXPONENTS) {
      all.add(new Weighted(power(exponent), 0.5 / EXPONENTS.length));
    }
    for (double floor : FLOORS) {
      for (double rate : RATES) {
        all.add(new Weighted(exponential(floor, rate), 0.5 / (FLOORS.length * RATES.length)));
      }
    }
    return all;
  }
}
