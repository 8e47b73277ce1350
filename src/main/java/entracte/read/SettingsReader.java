package entracte.read;

import entracte.read.Tree.Entry;
import entracte.read.Tree.Leaf;
import entracte.read.Tree.Table;
import entracte.setlist.Setting;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads settings: owner, control, value. */
final class SettingsReader {
  private final Notebook notes;
  private final Shapes shapes;

  SettingsReader(Notebook notes) {
    this.notes = notes;
    this.shapes = new Shapes(notes);
  }

  /** In the order written. */
  List<Setting> read(List<Entry> owners) {
    List<Setting> settings = new ArrayList<>();
    for (Entry owner : owners) {
      String ownerName = notes.note(owner.name(), owner.key().place());
      for (Entry line : shapes.table(owner).map(Table::entries).orElse(List.of())) {
        Optional<Leaf> value = shapes.leaf(line);
        if (value.isPresent()) {
          String text = notes.note(value.get().name(), value.get().place());
          Setting setting = new Setting(ownerName, line.name(), text);
          settings.add(notes.note(setting, line.key().place()));
        }
      }
    }
    return settings;
  }
}
