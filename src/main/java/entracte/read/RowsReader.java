package entracte.read;

import entracte.finding.NearestName;
import entracte.read.Tree.Entry;
import entracte.read.Tree.Items;
import entracte.read.Tree.Leaf;
import entracte.read.Tree.Table;
import entracte.rig.Kind;
import entracte.rig.Module;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads the modules in their rows. */
final class RowsReader {
  private final Map<String, Kind> kinds;
  private final Notebook notes;
  private final Shapes shapes;

  RowsReader(Map<String, Kind> kinds, Notebook notes) {
    this.kinds = kinds;
    this.notes = notes;
    this.shapes = new Shapes(notes);
  }

  List<List<Module>> read(Fields fields) {
    Optional<Entry> entry = fields.entry("rows");
    List<List<Module>> rows = new ArrayList<>();
    for (Tree row : entry.flatMap(shapes::items).map(Items::list).orElse(List.of())) {
      rows.add(row(row, rows.size()));
    }
    boolean said = entry.isPresent() && entry.get().value().items().isEmpty();
    if (rows.isEmpty() && !said) {
      notes.error(fields.place(), "this rig has no modules", "List them under rows.");
    }
    return rows;
  }

  /**
   * A row is a list of modules. One table of modules, or one module, is not taken for a row: who
   * forgets the second dash gets each module in a row of its own.
   */
  private List<Module> row(Tree row, int number) {
    if (row.items().isEmpty()) {
      notes.slip(
          row.place(),
          "a row is a list of modules, not " + row.what(),
          "Begin its first module with two dashes and the others below the second.");
    }
    List<Module> modules = new ArrayList<>();
    double edge = 0;
    for (Entry line : lines(row)) {
      Optional<Kind> kind = shapes.leaf(line).flatMap(this::kind);
      if (kind.isPresent()) {
        double centre = edge + kind.get().widthCm() / 2;
        edge += kind.get().widthCm();
        Module module = new Module(line.name(), kind.get(), number, centre);
        modules.add(notes.note(module, line.key().place()));
      }
    }
    return modules;
  }

  private List<Entry> lines(Tree row) {
    if (row.items().isEmpty()) {
      return row.table().map(Table::entries).orElse(List.of());
    }
    List<Entry> lines = new ArrayList<>();
    for (Tree part : row.items().get().list()) {
      if (part.table().isEmpty()) {
        notes.error(
            part.place(),
            "a row lists modules, not " + part.what(),
            "Write each on a line of its own: - name: kind.");
      }
      lines.addAll(part.table().map(Table::entries).orElse(List.of()));
    }
    return lines;
  }

  /** A mistyped kind is taken as the near one, lest every use of the module be called a mistake. */
  private Optional<Kind> kind(Leaf written) {
    Kind known = kinds.get(written.name());
    // Without kinds, or with a thousand mistakes, enough has been said.
    if (known != null || kinds.isEmpty() || notes.isFull()) {
      return Optional.ofNullable(known);
    }
    String message = "there is no kind " + Names.quote(written.text());
    String advice = NearestName.advice(written.name(), kinds.keySet());
    Optional<String> near = NearestName.of(written.name(), kinds.keySet());
    if (near.isPresent()) {
      notes.slip(written.place(), message, advice);
    } else {
      notes.error(written.place(), message, advice);
    }
    return near.map(kinds::get);
  }
}
