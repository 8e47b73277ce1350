package entracte.rehearsal;

import java.util.ArrayList;
import java.util.List;

/**
 * What came of adding the times of nights.
 *
 * @param runs that the log has now
 * @param known runs that it had already, and so were not added again
 * @param hasty runs quicker than hands are, such as a walk through the steps at a soundcheck, for
 *     which nobody spoke up
 */
public record Added(int runs, int known, int hasty) {
  /** {@code Added 2 runs; 1 was in the log already.} */
  public String text() {
    List<String> parts = new ArrayList<>();
    parts.add(added(runs));
    if (known > 0) {
      parts.add(known == 1 ? "1 was in the log already" : known + " were in the log already");
    }
    if (hasty > 0) {
      parts.add(hasty + (hasty == 1 ? " is" : " are") + " far too quick and left out");
    }
    return String.join("; ", parts) + ".";
  }

  /** {@code Added 1 run}. */
  static String added(int runs) {
    return "Added " + (runs == 1 ? "1 run" : runs + " runs");
  }
}
