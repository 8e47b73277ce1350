package entracte.plan.oracle;

import com.google.ortools.sat.BoolVar;
import java.util.List;

/**
 * Whether a cord waits in a song, one way: since a use ({@code after}), or since it was plugged and
 * before any use ({@code fresh}). Only a cord that can serve both ways needs the distinction; for
 * any other {@code after} says both.
 *
 * @param either whichever there are of the two
 */
record Waits(BoolVar after, BoolVar fresh, List<BoolVar> either) {
  static Waits oneWay(Cp cp, String name) {
    BoolVar waits = cp.bool(name + " waits");
    return new Waits(waits, null, List.of(waits));
  }

  static Waits bothWays(Cp cp, String name) {
    BoolVar after = cp.bool(name + " waits after");
    BoolVar fresh = cp.bool(name + " waits before");
    return new Waits(after, fresh, List.of(after, fresh));
  }
}
