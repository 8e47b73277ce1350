package entracte.read;

import entracte.finding.Place;
import entracte.read.Tree.Entry;
import entracte.read.Tree.Table;
import entracte.rig.CordStock;
import entracte.rig.Kind;
import entracte.rig.Module;
import entracte.rig.Rig;
import entracte.rig.Warmth;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads a rig. */
final class RigReader {
  static final List<String> KEYS =
      List.of(
          "rig",
          "kinds",
          "rows",
          "cords",
          "row height",
          "gear",
          "foot switch",
          "hands",
          "warm up",
          "tune again");

  private final SourceFiles files;
  private final Notebook notes;
  private final Shapes shapes;
  private final Values values;

  RigReader(SourceFiles files, Notebook notes) {
    this.files = files;
    this.notes = notes;
    this.shapes = new Shapes(notes);
    this.values = new Values(notes);
  }

  /**
   * The rig in {@code file}; empty if a part of its kinds or modules is lost: every patch that uses
   * the part would be called wrong. What else is lost hides nothing; nobody counts the cords of a
   * rig that has an error in its file.
   */
  Optional<Rig> read(FileName file, Place asked) {
    int losses = notes.losses();
    return files.table(file, asked, "rig").flatMap(table -> read(table, file, losses));
  }

  private Optional<Rig> read(Table table, FileName file, int losses) {
    Fields fields = new Fields(table, KEYS, notes);
    String name = fields.title("rig", file);
    Map<String, Kind> kinds = kinds(fields);
    List<List<Module>> rows = new RowsReader(kinds, notes).read(fields);
    boolean whole = notes.losses() == losses;
    CordStock cords =
        fields
            .entry("cords")
            .map(entry -> new StockReader(notes).read(entry))
            .orElseGet(CordStock::unlimited);
    double rowHeight =
        fields
            .leaf("row height")
            .map(leaf -> values.sizeCm(leaf).orElse(Rig.DEFAULT_ROW_HEIGHT_CM))
            .orElse(Rig.DEFAULT_ROW_HEIGHT_CM);
    GearReader gear = new GearReader(notes);
    Rig rig =
        new Rig(
            name,
            List.copyOf(kinds.values()),
            rows,
            cords,
            rowHeight,
            gear.gear(fields.lines("gear")),
            fields.entry("foot switch").flatMap(gear::footSwitch),
            new HandsReader(notes).read(fields.entry("hands")),
            new Warmth(stretch(fields, "warm up"), stretch(fields, "tune again")));
    notes.note(rig, table.place());
    return whole ? Optional.of(rig) : Optional.empty();
  }

  private OptionalDouble stretch(Fields fields, String key) {
    return fields.leaf(key).map(values::stretch).orElse(OptionalDouble.empty());
  }

  private Map<String, Kind> kinds(Fields fields) {
    if (!fields.has("kinds")) {
      notes.error(fields.place(), "this rig has no kinds", "Describe them under kinds.");
    }
    Map<String, Kind> kinds = new LinkedHashMap<>();
    KindReader reader = new KindReader(notes);
    for (Entry line : fields.lines("kinds")) {
      shapes.table(line).ifPresent(table -> kinds.put(line.name(), reader.read(line.key(), table)));
    }
    return kinds;
  }
}
