package entracte.rehearsal;

import org.hipparchus.distribution.continuous.TDistribution;
import org.hipparchus.special.Gamma;

/**
 * What is known of a quantity that scatters normally, from some prior doubt and from readings: a
 * normal level of unknown mean and unknown spread, with the conjugate prior (normal times inverse
 * gamma). The next reading then follows a Student t.
 *
 * <p>With {@link Prior#none()} this is the classical prediction interval: mean plus or minus t
 * times s times the root of 1 + 1/n, with n - 1 degrees of freedom.
 *
 * @param mean of the level
 * @param weight how many readings the mean is worth
 * @param freedom degrees of freedom
 * @param spread the scatter of single readings
 * @param logEvidence how well the readings were foretold, up to a constant that depends only on
 *     their number and the prior
 */
record Level(double mean, double weight, double freedom, double spread, double logEvidence) {

  /**
   * What is thought before any reading.
   *
   * @param mean the level expected
   * @param weight how many readings that expectation is worth
   * @param spread the scatter expected
   * @param freedom how many readings that scatter is worth
   */
  record Prior(double mean, double weight, double spread, double freedom) {
    /** Nothing at all; then at least two readings are needed. */
    static Prior none() {
      return new Prior(0, 0, 0, -1);
    }
  }

  static Level of(Prior prior, double... readings) {
    int n = readings.length;
    double sum = 0;
    for (double each : readings) {
      sum += each;
    }
    double average = n == 0 ? 0 : sum / n;
    double squares = 0;
    for (double each : readings) {
      squares += (each - average) * (each - average);
    }
    double weight = prior.weight() + n;
    double off = average - prior.mean();
    double all =
        prior.freedom() * prior.spread() * prior.spread()
            + squares
            + (n == 0 ? 0 : prior.weight() * n / weight * off * off);
    double freedom = prior.freedom() + n;
    double mean = (prior.weight() * prior.mean() + sum) / weight;
    double logEvidence = -0.5 * Math.log(weight) - freedom / 2 * Math.log(all / 2);
    return new Level(
        mean, weight, freedom, Math.sqrt(all / freedom), logEvidence + Gamma.logGamma(freedom / 2));
  }

  /** The scatter of the next reading, with the doubt about the level. */
  double nextSpread() {
    return spread * Math.sqrt(1 + 1 / weight);
  }

  /** The chance that the next reading is at most {@code value}. */
  double chance(double value) {
    return new TDistribution(freedom).cumulativeProbability((value - mean) / nextSpread());
  }

  /** What the next reading stays below with probability {@code chance}. */
  double next(double chance) {
    return mean + nextSpread() * new TDistribution(freedom).inverseCumulativeProbability(chance);
  }
}
