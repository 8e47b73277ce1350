package entracte.plan;

import java.util.List;
import java.util.Optional;

/** What came of the search for a better order. */
public sealed interface Ordered {
  /**
   * An order was found.
   *
   * @param written what is known of the order as written; empty if it has no plan
   * @param writtenPermitted whether the order as written keeps the set's rules
   * @param proposed the plan of the best order found, which may be the one written
   * @param order the songs of that order, from 0, as numbered in the written one
   * @param lowerBound no permitted order has a plan with fewer moves
   */
  record Found(
      Optional<Result.Planned> written,
      boolean writtenPermitted,
      Result.Planned proposed,
      List<Integer> order,
      int lowerBound)
      implements Ordered {
    public Found {
      order = List.copyOf(order);
    }

    /** Whether no permitted order has fewer moves. */
    public boolean proven() {
      return lowerBound == proposed.plan().moves();
    }

    /** The moves that the proposed order has less than the written one. */
    public int saved() {
      return written.map(w -> w.plan().moves() - proposed.plan().moves()).orElse(0);
    }

    /** Whether the order proposed is the one written. */
    public boolean isWritten() {
      for (int k = 0; k < order.size(); k++) {
        if (order.get(k) != k) {
          return false;
        }
      }
      return true;
    }
  }

  /** No order was found; {@code reason} is a sentence. */
  record NoneFound(String reason) implements Ordered {}
}
