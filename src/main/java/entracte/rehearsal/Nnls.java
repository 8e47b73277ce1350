package entracte.rehearsal;

import java.util.stream.IntStream;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.linear.SingularValueDecomposition;

/**
 * Least squares with no unknown below zero: minimises |A x - b| over x &gt;= 0.
 *
 * <p>The active-set method of C. L. Lawson and R. J. Hanson, <em>Solving Least Squares
 * Problems</em> (1974), chapter 23. Unknowns held at zero are freed one by one, the one with the
 * steepest descent first; after each, the free ones are solved for, and any that would fall below
 * zero is stopped there and held again. Every pass lowers the error, so no set of free unknowns
 * comes twice and the method ends. At the end no held unknown could lower the error by growing:
 * that is the condition of Karush, Kuhn and Tucker, which for this convex problem means the
 * minimum. Each pass costs one dense solution; meant for some ten unknowns.
 */
final class Nnls {
  private static final double TINY = 1e-10;

  private final RealMatrix a;
  private final RealVector b;
  private final double[] x;
  private final boolean[] free;

  private Nnls(double[][] rows, double[] b) {
    this.a = new Array2DRowRealMatrix(rows);
    this.b = new ArrayRealVector(b);
    this.x = new double[a.getColumnDimension()];
    this.free = new boolean[x.length];
  }

  /**
   * The solution, as long as a row of {@code rows}.
   *
   * @param rows at least one, all of the same length
   */
  static double[] solve(double[][] rows, double[] b) {
    Nnls nnls = new Nnls(rows, b);
    int next = nnls.steepest();
    while (next >= 0) {
      nnls.free[next] = true;
      nnls.settle();
      next = nnls.steepest();
    }
    return nnls.x;
  }

  /** The held unknown by whose growth the error falls fastest; -1 if it falls by none. */
  private int steepest() {
    RealVector residual = b.subtract(a.operate(new ArrayRealVector(x)));
    double[] descent = a.transpose().operate(residual).toArray();
    double scale = a.getFrobeniusNorm() * Math.max(1, b.getNorm());
    return IntStream.range(0, x.length)
        .filter(i -> !free[i] && descent[i] > TINY * scale)
        .boxed()
        .max((i, j) -> Double.compare(descent[i], descent[j]))
        .orElse(-1);
  }

  /** Moves to the best of the free unknowns, holding those that stop it. */
  private void settle() {
    double[] wanted = freeSolution();
    while (IntStream.range(0, x.length).anyMatch(i -> free[i] && wanted[i] <= 0)) {
      double part = 1;
      for (int i = 0; i < x.length; i++) {
        if (free[i] && wanted[i] <= 0) {
          part = Math.min(part, x[i] / (x[i] - wanted[i]));
        }
      }
      for (int i = 0; i < x.length; i++) {
        x[i] += free[i] ? part * (wanted[i] - x[i]) : 0;
        if (free[i] && x[i] <= TINY) {
          x[i] = 0;
          free[i] = false;
        }
      }
      System.arraycopy(freeSolution(), 0, wanted, 0, wanted.length);
    }
    System.arraycopy(wanted, 0, x, 0, x.length);
  }

  /** The least squares of the free unknowns alone, the others zero. */
  private double[] freeSolution() {
    int[] columns = IntStream.range(0, x.length).filter(i -> free[i]).toArray();
    double[] solution = new double[x.length];
    if (columns.length > 0) {
      int[] rows = IntStream.range(0, a.getRowDimension()).toArray();
      RealVector some =
          new SingularValueDecomposition(a.getSubMatrix(rows, columns)).getSolver().solve(b);
      for (int c = 0; c < columns.length; c++) {
        solution[columns[c]] = some.getEntry(c);
      }
    }
    return solution;
  }
}
