package entracte.read;

import entracte.finding.NearestName;
import entracte.read.Tree.Entry;
import entracte.read.Tree.Leaf;
import entracte.read.Tree.Table;
import entracte.rig.CordStock;
import entracte.rig.FootSwitch;
import entracte.rig.Gear;
import entracte.rig.Kind;
import entracte.rig.Module;
import entracte.rig.Rig;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Reads a rig. */
final class RigReader {
  private static final List<String> KEYS =
      List.of("rig", "kinds", "rows", "cords", "row height", "gear", "foot switch");
  private static final int MOST_CORDS = 10_000;

  private final Notebook notes;
  private final Shapes shapes;
  private final Values values;

  RigReader(Notebook notes) {
    this.notes = notes;
    this.shapes = new Shapes(notes);
    this.values = new Values(notes);
  }

  Rig read(Table table, FileName file) {
    Fields fields = new Fields(table, KEYS, notes);
    Map<String, Kind> kinds = new LinkedHashMap<>();
    KindReader kindReader = new KindReader(notes);
    for (Entry line : fields.lines("kinds")) {
      shapes.table(line).ifPresent(t -> kinds.put(line.name(), kindReader.read(line.key(), t)));
    }
    if (!fields.has("kinds")) {
      notes.error(fields.place(), "this rig has no kinds", "Describe them under kinds.");
    }
    List<List<Module>> rows = rows(fields, kinds);
    if (rows.isEmpty()
        && !fields.entry("rows").filter(e -> e.value().items().isEmpty()).isPresent()) {
      notes.error(fields.place(), "this rig has no modules", "List them under rows.");
    }
    Rig rig =
        new Rig(
            fields.title("rig", file),
            List.copyOf(kinds.values()),
            rows,
            fields.entry("cords").map(this::cords).orElseGet(CordStock::unlimited),
            fields
                .leaf("row height")
                .map(l -> values.sizeCm(l).orElse(Rig.DEFAULT_ROW_HEIGHT_CM))
                .orElse(Rig.DEFAULT_ROW_HEIGHT_CM),
            gear(fields),
            fields.entry("foot switch").flatMap(this::footSwitch));
    return notes.note(rig, table.place());
  }

  private List<List<Module>> rows(Fields fields, Map<String, Kind> kinds) {
    List<List<Module>> rows = new ArrayList<>();
    Optional<Entry> entry = fields.entry("rows");
    for (Tree row : entry.flatMap(shapes::items).map(Tree.Items::list).orElse(List.of())) {
      rows.add(row(row, rows.size(), kinds));
    }
    return rows;
  }

  /**
   * A row is a list of modules. One table of modules, or one module, is not taken for a row: who
   * forgets the second dash gets each module in a row of its own.
   */
  private List<Module> row(Tree row, int number, Map<String, Kind> kinds) {
    List<Module> modules = new ArrayList<>();
    double edge = 0;
    if (row.items().isEmpty()) {
      notes.error(
          row.place(),
          "a row is a list of modules, not " + row.what(),
          "Begin its first module with two dashes and the others below the second.");
    }
    for (Tree part : row.items().map(Tree.Items::list).orElse(List.of(row))) {
      if (part.table().isEmpty() && row.items().isPresent()) {
        notes.error(
            part.place(),
            "a row lists modules, not " + part.what(),
            "Write each on a line of its own: - name: kind.");
      }
      for (Entry line : part.table().map(Table::entries).orElse(List.of())) {
        Optional<Kind> kind = shapes.leaf(line).flatMap(l -> kind(l, kinds));
        if (kind.isPresent()) {
          double centre = edge + kind.get().widthCm() / 2;
          edge += kind.get().widthCm();
          Module module = new Module(line.name(), kind.get(), number, centre);
          modules.add(notes.note(module, line.key().place()));
        }
      }
    }
    return modules;
  }

  /** A mistyped kind is taken as the near one, lest every use of the module be called a mistake. */
  private Optional<Kind> kind(Leaf written, Map<String, Kind> kinds) {
    Kind known = kinds.get(written.name());
    if (known != null) {
      return Optional.of(known);
    }
    if (kinds.isEmpty() || notes.isFull()) {
      return Optional.empty();
    }
    notes.error(
        written.place(),
        "there is no kind " + Names.quote(written.text()),
        NearestName.advice(written.name(), kinds.keySet()));
    return NearestName.of(written.name(), kinds.keySet()).map(kinds::get);
  }

  private CordStock cords(Entry entry) {
    Optional<Leaf> plain = entry.value().leaf();
    if (plain.isPresent()) {
      int count = values.whole(plain.get(), "cords", 0, MOST_CORDS).orElse(MOST_CORDS);
      return notes.note(CordStock.ofAnyLength(count), entry.key().place());
    }
    TreeMap<Integer, Integer> stock = new TreeMap<>();
    for (Entry line : shapes.table(entry).map(Table::entries).orElse(List.of())) {
      values.lengthCm(line.key()).ifPresent(cm -> addCords(line, cm, stock));
    }
    if (entry.value().table().filter(t -> t.entries().isEmpty()).isPresent()) {
      notes.error(
          entry.value().place(), "no cord is listed", "Write their number, or {30 cm: 10}.");
    }
    CordStock cords = stock.isEmpty() ? CordStock.unlimited() : new CordStock(stock);
    return notes.note(cords, entry.key().place());
  }

  private void addCords(Entry line, int cm, TreeMap<Integer, Integer> stock) {
    int count =
        shapes
            .leaf(line)
            .map(l -> values.whole(l, "cords", 0, MOST_CORDS).orElse(MOST_CORDS))
            .orElse(MOST_CORDS);
    if (stock.putIfAbsent(cm, count) != null) {
      notes.error(
          line.key().place(),
          "cords of " + cm + " cm are counted twice",
          "Write their number once.");
    }
  }

  private List<Gear> gear(Fields fields) {
    List<Gear> gear = new ArrayList<>();
    for (Entry line : fields.lines("gear")) {
      Optional<Table> table = shapes.table(line);
      if (table.isPresent()) {
        Fields parts = new Fields(table.get(), List.of("port", "channel", "programs from"), notes);
        String port = parts.needed("port", line.key()).map(Leaf::name).orElse("");
        int channel =
            parts.needed("channel", line.key()).map(l -> values.whole(l).orElse(1)).orElse(1);
        int from = parts.leaf("programs from").map(l -> values.whole(l).orElse(1)).orElse(1);
        gear.add(notes.note(new Gear(line.name(), port, channel, from), line.key().place()));
      }
    }
    return gear;
  }

  private Optional<FootSwitch> footSwitch(Entry entry) {
    return shapes
        .table(entry)
        .map(
            table -> {
              Fields parts = new Fields(table, List.of("port", "press", "hold"), notes);
              FootSwitch pedal =
                  new FootSwitch(
                      parts.leaf("port").map(Leaf::name).orElse(""),
                      parts.needed("press", entry.key()).map(Leaf::name).orElse(""),
                      parts.leaf("hold").map(Leaf::name).orElse(""));
              return notes.note(pedal, entry.key().place());
            });
  }
}
