package entracte.plan;

import entracte.check.PermittedOrders;

/** Which song may come next, with the songs placed so far as the bits of a number. */
interface OrderSteps {
  /** Any song may follow any other. */
  OrderSteps FREE = (placed, last, next) -> true;

  /**
   * Whether {@code next}, which is not yet placed, may follow.
   *
   * @param last the song placed last; anything if none is
   */
  boolean mayFollow(int placed, int last, int next);

  /** The steps of a set of at most 31 songs. */
  static OrderSteps of(PermittedOrders permitted) {
    if (!permitted.anyForbidden()) {
      return FREE;
    }
    return (placed, last, next) ->
        permitted.mayFollow(
            song -> (placed >> song & 1) != 0, Integer.bitCount(placed), last, next);
  }
}
