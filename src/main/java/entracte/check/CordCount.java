package entracte.check;

import entracte.check.Part.Net;
import entracte.rig.CordStock;
import entracte.setlist.Connection;

/** No song needs more cords than there are, those to and between multiples included. */
final class CordCount {
  private final CordStock stock;
  private final Chains chains;
  private final Findings findings;

  CordCount(RigIndex rig, Findings findings) {
    this.stock = rig.rig().cords();
    this.chains = new Chains(rig.multiples());
    this.findings = findings;
  }

  /** Reports the connection for which no cord is left. */
  void check(Part part) {
    int total = 0;
    int first = -1;
    for (int i = 0; i < part.nets().size(); i++) {
      total += cords(part.nets().get(i));
      if (total > stock.total() && first < 0) {
        first = i;
      }
    }
    if (first >= 0) {
      Connection connection = part.song().patch().connections().get(first);
      findings.error(
          connection,
          "the patch \"%s\" needs %s, and there %s"
              .formatted(
                  part.song().patch().name(),
                  Quoted.count(total, "cord"),
                  stock.total() == 1 ? "is 1" : "are " + stock.total()),
          "Bring more cords, or leave a connection out. Each multiple on the way takes one, too.");
    }
  }

  /** A chain of k multiples to n sinks takes n cords to them, one to the chain, k - 1 within it. */
  private int cords(Net net) {
    int sinks = net.sinks().size();
    return sinks + chains.fewest(sinks);
  }
}
