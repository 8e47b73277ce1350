package entracte.read;

import entracte.finding.NearestName;
import entracte.midi.Trigger;
import entracte.read.Tree.Entry;
import entracte.read.Tree.Leaf;
import entracte.read.Tree.Table;
import entracte.rig.FootSwitch;
import entracte.rig.Gear;
import entracte.rig.Gear.Banks;
import entracte.rig.Gear.Manners;
import entracte.rig.Gear.SendAt;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads the MIDI gear of a rig, and its foot switch. */
final class GearReader {
  static final List<String> GEAR =
      List.of("port", "device", "channel", "programs from", "settle", "banks", "send", "notes off");
  static final List<String> SWITCH =
      List.of("port", "press", "hold", "back", "latching", "lock out", "deaf after sending");

  private static final Map<String, Banks> BANKS = new LinkedHashMap<>();
  private static final Map<String, SendAt> SEND = new LinkedHashMap<>();
  private static final Map<String, Boolean> NOTES_OFF = new LinkedHashMap<>();
  private static final Map<String, String> HOLD = new LinkedHashMap<>();

  static {
    BANKS.put("high and low", Banks.BOTH);
    BANKS.put("high", Banks.HIGH);
    BANKS.put("low", Banks.LOW);
    SEND.put("changeover", SendAt.CHANGEOVER);
    SEND.put("song", SendAt.SONG);
    NOTES_OFF.put("at once", false);
    NOTES_OFF.put("one by one", true);
    HOLD.put("menu", "menu");
    HOLD.put("back", "back");
    HOLD.put("nothing", "nothing");
  }

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
      shapes
          .table(line)
          .ifPresent(table -> gear.add(notes.note(one(line, table), line.key().place())));
    }
    return gear;
  }

  private Gear one(Entry line, Table table) {
    Fields parts = new Fields(table, GEAR, notes);
    String device = parts.leaf("device").map(Leaf::name).orElse("");
    String port =
        device.isEmpty()
            ? parts.needed("port", line.key()).map(Leaf::name).orElse("")
            : alone(parts, device);
    int channel = parts.needed("channel", line.key()).map(l -> values.whole(l).orElse(1)).orElse(1);
    int from = parts.leaf("programs from").map(l -> values.whole(l).orElse(1)).orElse(1);
    Gear gear = new Gear(line.name(), port, device, channel, from, manners(parts));
    for (String number : List.of("channel", "programs from")) {
      parts.entry(number).ifPresent(e -> notes.notePart(gear, number, e.value().place()));
    }
    return gear;
  }

  private String alone(Fields parts, String device) {
    parts
        .leaf("port")
        .ifPresent(
            port ->
                notes.error(
                    port.place(),
                    "gear hangs on a port or on a device, not on both",
                    "Leave out the port, or the device " + Names.quote(device) + "."));
    return "";
  }

  private Manners manners(Fields parts) {
    double usual = Manners.USUAL_SETTLE_SECONDS;
    return new Manners(
        parts.leaf("settle").map(l -> values.stretch(l).orElse(usual)).orElse(usual),
        word(parts, "banks", BANKS, Banks.BOTH),
        word(parts, "send", SEND, SendAt.CHANGEOVER),
        word(parts, "notes off", NOTES_OFF, false));
  }

  Optional<FootSwitch> footSwitch(Entry entry) {
    return shapes.table(entry).map(table -> notes.note(pedal(entry, table), entry.key().place()));
  }

  private FootSwitch pedal(Entry entry, Table table) {
    Fields parts = new Fields(table, SWITCH, notes);
    return new FootSwitch(
        parts.leaf("port").map(Leaf::name).orElse(""),
        parts.needed("press", entry.key()).map(this::trigger).orElse(""),
        word(parts, "hold", HOLD, ""),
        parts.leaf("back").map(this::trigger).orElse(""),
        parts.leaf("latching").map(values::yes).orElse(false),
        seconds(parts, "lock out", FootSwitch.USUAL_LOCK_OUT_SECONDS),
        seconds(parts, "deaf after sending", FootSwitch.USUAL_DEAF_SECONDS));
  }

  private double seconds(Fields parts, String key, double usual) {
    return parts.leaf(key).map(l -> values.stretch(l).orElse(usual)).orElse(usual);
  }

  private String trigger(Leaf leaf) {
    if (Trigger.parse(leaf.name()).isEmpty()) {
      notes.error(
          leaf.place(),
          Names.quote(leaf.text()) + " is nothing that a foot switch sends",
          "Write it like cc 64, note 60 (both 0 to 127), program 5 (1 to 128) or page down.");
    }
    return leaf.name();
  }

  private <T> T word(Fields parts, String key, Map<String, T> known, T usual) {
    Optional<Leaf> leaf = parts.leaf(key);
    if (leaf.isPresent() && !known.containsKey(leaf.get().name())) {
      notes.error(
          leaf.get().place(),
          Names.quote(leaf.get().text()) + " is not known here",
          NearestName.advice(leaf.get().name(), known.keySet()));
    }
    return leaf.map(l -> known.getOrDefault(l.name(), usual)).orElse(usual);
  }
}
