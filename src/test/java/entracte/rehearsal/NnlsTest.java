package entracte.rehearsal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Random;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.QRDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;

/** Against trying every set of unknowns that may be above zero. */
class NnlsTest {
  private static final int ROWS = 7;
  private static final int COLUMNS = 4;

  @RepeatedTest(100)
  void noOtherChoiceOfUnknownsFitsBetter(RepetitionInfo info) {
    Random random = new Random(info.getCurrentRepetition());
    double[][] a = new double[ROWS][COLUMNS];
    double[] b = new double[ROWS];
    for (int r = 0; r < ROWS; r++) {
      b[r] = random.nextGaussian();
      for (int c = 0; c < COLUMNS; c++) {
        a[r][c] = random.nextGaussian();
      }
    }
    double[] x = Nnls.solve(a, b);
    for (double each : x) {
      assertEquals(true, each >= 0, "below zero: " + each);
    }
    assertEquals(best(a, b), error(a, b, x), 1e-9);
  }

  private static double best(double[][] a, double[] b) {
    double best = error(a, b, new double[COLUMNS]);
    for (int set = 1; set < 1 << COLUMNS; set++) {
      double[] x = solve(a, b, set);
      boolean allowed = true;
      for (double each : x) {
        allowed &= each >= 0;
      }
      best = allowed ? Math.min(best, error(a, b, x)) : best;
    }
    return best;
  }

  private static double[] solve(double[][] a, double[] b, int set) {
    int[] columns =
        java.util.stream.IntStream.range(0, COLUMNS).filter(c -> (set >> c & 1) == 1).toArray();
    int[] rows = java.util.stream.IntStream.range(0, ROWS).toArray();
    RealMatrix some = new Array2DRowRealMatrix(a).getSubMatrix(rows, columns);
    double[] found = new QRDecomposition(some).getSolver().solve(new ArrayRealVector(b)).toArray();
    double[] x = new double[COLUMNS];
    for (int i = 0; i < columns.length; i++) {
      x[columns[i]] = found[i];
    }
    return x;
  }

  private static double error(double[][] a, double[] b, double[] x) {
    return new Array2DRowRealMatrix(a)
        .operate(new ArrayRealVector(x))
        .subtract(new ArrayRealVector(b))
        .getNorm();
  }
}
