package entracte.rehearsal;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.stream.DoubleStream;
import org.hipparchus.distribution.continuous.TDistribution;
import org.hipparchus.stat.regression.OLSMultipleLinearRegression;
import org.hipparchus.stat.regression.SimpleRegression;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The library for statistics, and what is built on it, against published values. */
class StatisticsTest {
  /** NIST Statistical Reference Datasets, Norris: y, x. */
  private static final double[][] NORRIS = {
    {0.1, 0.2}, {338.8, 337.4}, {118.1, 118.2}, {888.0, 884.6}, {9.2, 10.1}, {228.1, 226.5},
    {668.5, 666.3}, {998.5, 996.3}, {449.1, 448.6}, {778.9, 777.0}, {559.2, 558.2}, {0.3, 0.4},
    {0.1, 0.6}, {778.1, 775.5}, {668.8, 666.9}, {339.3, 338.0}, {448.9, 447.5}, {10.8, 11.6},
    {557.7, 556.0}, {228.3, 228.1}, {998.0, 995.8}, {888.8, 887.6}, {119.6, 120.2}, {0.3, 0.3},
    {0.6, 0.3}, {557.6, 556.8}, {339.3, 339.1}, {888.0, 887.2}, {998.5, 999.0}, {778.9, 779.0},
    {10.2, 11.1}, {117.6, 118.3}, {228.9, 229.2}, {668.4, 669.1}, {449.2, 448.9}, {0.2, 0.5}
  };

  /** NIST Statistical Reference Datasets, Longley: y, x1 to x6. */
  private static final double[][] LONGLEY = {
    {60323, 83.0, 234289, 2356, 1590, 107608, 1947},
    {61122, 88.5, 259426, 2325, 1456, 108632, 1948},
    {60171, 88.2, 258054, 3682, 1616, 109773, 1949},
    {61187, 89.5, 284599, 3351, 1650, 110929, 1950},
    {63221, 96.2, 328975, 2099, 3099, 112075, 1951},
    {63639, 98.1, 346999, 1932, 3594, 113270, 1952},
    {64989, 99.0, 365385, 1870, 3547, 115094, 1953},
    {63761, 100.0, 363112, 3578, 3350, 116219, 1954},
    {66019, 101.2, 397469, 2904, 3048, 117388, 1955},
    {67857, 104.6, 419180, 2822, 2857, 118734, 1956},
    {68169, 108.4, 442769, 2936, 2798, 120445, 1957},
    {66513, 110.8, 444546, 4681, 2637, 121950, 1958},
    {68655, 112.6, 482704, 3813, 2552, 123366, 1959},
    {69564, 114.2, 502601, 3931, 2514, 125368, 1960},
    {69331, 115.7, 518173, 4806, 2572, 127852, 1961},
    {70551, 116.9, 554894, 4007, 2827, 130081, 1962}
  };

  /**
   * Montgomery and Runger, <em>Applied Statistics and Probability for Engineers</em> (2002),
   * Examples 8-4 and 8-8: loads at failure of 22 specimens.
   */
  private static final double[] LOADS = {
    19.8, 10.1, 14.9, 7.5, 15.4, 15.4, 15.4, 18.5, 7.9, 12.7, 11.9, 11.4, 11.4, 14.1, 17.6, 16.7,
    15.8, 19.5, 8.8, 13.6, 11.9, 11.4
  };

  /** Certified values: itl.nist.gov, Norris.dat. */
  @Test
  void theLibraryFitsTheLineThroughNorris() {
    SimpleRegression line = new SimpleRegression();
    Arrays.stream(NORRIS).forEach(point -> line.addData(point[1], point[0]));
    assertEquals(-0.262323073774029, line.getIntercept(), 1e-11);
    assertEquals(1.00211681802045, line.getSlope(), 1e-13);
    assertEquals(0.232818234301152, line.getInterceptStdErr(), 1e-10);
    assertEquals(26.6173985294224, line.getSumSquaredErrors(), 1e-7);
    assertEquals(0.999993745883712, line.getRSquare(), 1e-12);
  }

  /** Certified values: itl.nist.gov, Longley.dat; a hard case, its columns nearly dependent. */
  @Test
  void theLibraryFitsLongley() {
    double[] y = Arrays.stream(LONGLEY).mapToDouble(row -> row[0]).toArray();
    double[][] x =
        Arrays.stream(LONGLEY).map(row -> Arrays.copyOfRange(row, 1, 7)).toArray(double[][]::new);
    OLSMultipleLinearRegression fit = new OLSMultipleLinearRegression();
    fit.newSampleData(y, x);
    double[] certified = {
      -3482258.63459582,
      15.0618722713733,
      -0.0358191792925910,
      -2.02022980381683,
      -1.03322686717359,
      -0.0511041056535807,
      1829.15146461355
    };
    double[] found = fit.estimateRegressionParameters();
    for (int i = 0; i < certified.length; i++) {
      assertEquals(1, found[i] / certified[i], 1e-8, "parameter " + i);
    }
    assertEquals(304.854073561965, fit.estimateRegressionStandardError(), 1e-6);
  }

  /** Quantiles of Student's t as the tables print them; 21 degrees: Montgomery and Runger. */
  @ParameterizedTest
  @CsvSource({
    "1, 0.975, 12.706205",
    "4, 0.975, 2.776445",
    "9, 0.95, 1.833113",
    "21, 0.975, 2.079614",
    "30, 0.975, 2.042272"
  })
  void theLibraryKnowsStudentsT(double freedom, double chance, double t) {
    assertEquals(t, new TDistribution(freedom).inverseCumulativeProbability(chance), 1e-6);
  }

  /** The book prints 6.16 to 21.26, rounded on the way; unrounded it is 6.157482 to 21.269791. */
  @Test
  void withoutAPriorThePredictionIntervalIsTheTextbooks() {
    Level level = Level.of(Level.Prior.none(), LOADS);
    assertEquals(6.16, level.next(0.025), 0.01);
    assertEquals(21.26, level.next(0.975), 0.011);
    assertEquals(6.157482, level.next(0.025), 1e-6);
    assertEquals(21.269791, level.next(0.975), 1e-6);
    assertEquals(0.975, level.chance(21.269791), 1e-7);
  }

  /**
   * J. L. Devore, <em>Probability and Statistics for Engineering and the Sciences</em>, Example
   * 7.13: fat in ten hot dogs, interval 12.09 to 31.71 for the eleventh. The example is from
   * memory; its mean 21.90 and spread 4.134 follow from the data.
   */
  @Test
  void forTenReadingsItIsTheTextbooksToo() {
    Level level =
        Level.of(Level.Prior.none(), 25.2, 21.3, 22.8, 17.0, 29.8, 21.0, 25.5, 16.0, 20.9, 19.5);
    assertEquals(21.90, level.mean(), 0.005);
    assertEquals(4.134, level.spread(), 0.0005);
    assertEquals(12.09, level.next(0.025), 0.01);
    assertEquals(31.71, level.next(0.975), 0.01);
  }

  /** Those 22 loads on logarithms, worked out by the same formula with SciPy. */
  @Test
  void onLogarithmsTheIntervalIsLopsidedAndAboveZero() {
    Level level = Level.of(Level.Prior.none(), DoubleStream.of(LOADS).map(Math::log).toArray());
    assertEquals(7.367530, Math.exp(level.next(0.025)), 1e-5);
    assertEquals(13.246699, Math.exp(level.next(0.5)), 1e-5);
    assertEquals(23.817351, Math.exp(level.next(0.975)), 1e-5);
  }

  @Test
  void aPriorWorthAsManyReadingsAsThereAreMeetsThemHalfWay() {
    Level level = Level.of(new Level.Prior(10, 2, 1, 4), 20, 20);
    assertEquals(15, level.mean(), 1e-12);
    assertEquals(6, level.freedom());
    // 4 x 1, and 2 x 2 / 4 x 10 x 10 for how far the two were apart, over 6
    assertEquals(Math.sqrt(104.0 / 6), level.spread(), 1e-12);
  }

  /**
   * The example of MATLAB's own page on the method of Lawson and Hanson: [0, 0.6929], where free
   * least squares give [-2.5627, 3.1108].
   */
  @Test
  void leastSquaresWithNothingBelowZero() {
    double[][] a = {{0.0372, 0.2869}, {0.6861, 0.7071}, {0.6233, 0.6245}, {0.6344, 0.6170}};
    double[] b = {0.8587, 0.1781, 0.0747, 0.8405};
    assertArrayEquals(new double[] {0, 0.69293440}, Nnls.solve(a, b), 1e-8);
  }

  /** mathnium.com/help/nnls.html prints [0, 1.4898]. */
  @Test
  void leastSquaresWithNothingBelowZeroAgain() {
    double[][] a = {{4, 5}, {2, 3}, {7, 8}};
    assertArrayEquals(new double[] {0, 1.489795918}, Nnls.solve(a, new double[] {10, 8, 9}), 1e-8);
  }

  @Test
  void whereFreeLeastSquaresAreAboveZeroTheyAreTheAnswer() {
    double[][] a = {{1, 0}, {0, 2}, {1, 1}};
    assertArrayEquals(new double[] {2, 3}, Nnls.solve(a, new double[] {2, 6, 5}), 1e-9);
  }
}
