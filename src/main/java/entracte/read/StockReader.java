package entracte.read;

import entracte.read.Tree.Entry;
import entracte.read.Tree.Leaf;
import entracte.read.Tree.Table;
import entracte.rig.CordStock;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;

/** Reads the stock of patch cords: a number, or numbers by length. */
final class StockReader {
  private static final int MOST_CORDS = 10_000;

  private static final int M = 100;

  /** No case is so large that a cord of ten metres would do any good. */
  private static final int LONGEST_CM = 1000;

  private final Notebook notes;
  private final Shapes shapes;
  private final Values values;

  StockReader(Notebook notes) {
    this.notes = notes;
    this.shapes = new Shapes(notes);
    this.values = new Values(notes);
  }

  CordStock read(Entry entry) {
    Optional<Leaf> plain = entry.value().leaf();
    CordStock stock =
        plain.isPresent() ? CordStock.ofAnyLength(count(plain.get())) : byLength(entry);
    return notes.note(stock, entry.key().place());
  }

  private CordStock byLength(Entry entry) {
    List<Entry> lines = shapes.table(entry).map(Table::entries).orElse(List.of());
    if (lines.isEmpty() && entry.value().table().isPresent()) {
      notes.error(
          entry.value().place(), "no cord is listed", "Write their number, or {30 cm: 10}.");
    }
    TreeMap<Integer, Integer> stock = new TreeMap<>();
    for (Entry line : lines) {
      values.lengthCm(line.key()).ifPresent(cm -> add(line, cm, stock));
    }
    return stock.isEmpty() ? CordStock.unlimited() : new CordStock(stock);
  }

  private void add(Entry line, int cm, TreeMap<Integer, Integer> stock) {
    if (cm > LONGEST_CM) {
      notes.doubt(
          line.key().place(),
          Names.quote(line.name()) + " is long for a patch cord",
          cm % M == 0 && cm / M <= LONGEST_CM
              ? "Did you mean " + cm / M + " cm?"
              : "Hardly any is longer than " + LONGEST_CM / M + " m.");
    }
    int count = shapes.leaf(line).map(this::count).orElse(MOST_CORDS);
    if (stock.putIfAbsent(cm, count) != null) {
      notes.error(
          line.key().place(),
          "cords of " + cm + " cm are counted twice",
          "Write their number once.");
    }
  }

  private int count(Leaf written) {
    return values.whole(written, "cords", 0, MOST_CORDS).orElse(MOST_CORDS);
  }
}
