package entracte.read;

import entracte.read.Tree.Entry;
import entracte.read.Tree.Leaf;
import entracte.read.Tree.Table;
import entracte.rig.FootSwitch;
import entracte.rig.Gear;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads what stands around the case: MIDI gear and the foot switch. */
final class GearReader {
  private static final List<String> GEAR_KEYS = List.of("port", "channel", "programs from");
  private static final List<String> FOOT_SWITCH_KEYS = List.of("port", "press", "hold");

  private final Notebook notes;
  private final Shapes shapes;
  private final Values values;

  GearReader(Notebook notes) {
    this.notes = notes;
    this.shapes = new Shapes(notes);
    this.values = new Values(notes);
  }

  List<Gear> gear(List<Entry> lines) {
    List<Gear> gear = new ArrayList<>();
    for (Entry line : lines) {
      shapes.table(line).map(table -> gear(line.key(), table)).ifPresent(gear::add);
    }
    return gear;
  }

  private Gear gear(Leaf name, Table table) {
    Fields parts = new Fields(table, GEAR_KEYS, notes);
    String port = parts.needed("port", name).map(Leaf::name).orElse("");
    int channel = parts.needed("channel", name).map(l -> values.whole(l).orElse(1)).orElse(1);
    int from = parts.leaf("programs from").map(l -> values.whole(l).orElse(1)).orElse(1);
    return notes.note(new Gear(name.name(), port, channel, from), name.place());
  }

  Optional<FootSwitch> footSwitch(Entry entry) {
    return shapes.table(entry).map(table -> footSwitch(entry.key(), table));
  }

  private FootSwitch footSwitch(Leaf key, Table table) {
    Fields parts = new Fields(table, FOOT_SWITCH_KEYS, notes);
    FootSwitch pedal =
        new FootSwitch(
            parts.leaf("port").map(Leaf::name).orElse(""),
            parts.needed("press", key).map(Leaf::name).orElse(""),
            parts.leaf("hold").map(Leaf::name).orElse(""));
    return notes.note(pedal, key.place());
  }
}
