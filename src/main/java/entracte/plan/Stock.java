package entracte.plan;

/** Whether the bag may run empty. A loose stock is planned as if it had no end. */
enum Stock {
  LOOSE,
  TIGHT
}
