package entracte.read;

import entracte.read.Tree.Entry;
import entracte.read.Tree.Leaf;
import entracte.read.Tree.Table;
import entracte.rig.Direction;
import entracte.rig.Electrics;
import entracte.rig.Group;
import entracte.rig.Jack;
import entracte.rig.Jumper;
import entracte.rig.Kind;
import entracte.rig.Knob;
import entracte.rig.Position;
import entracte.rig.Switch;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Reads a kind of module. */
final class KindReader {
  static final List<String> KEYS =
      Stream.concat(
              Stream.of(
                  "in",
                  "out",
                  "knobs",
                  "switches",
                  "jumpers",
                  "channels",
                  "taps",
                  "width",
                  "leaves"),
              ElectricsReader.KEYS.stream())
          .toList();
  static final List<String> CHANNEL_KEYS =
      List.of("count", "in", "out", "knobs", "switches", "closed");

  /** {@code pitch x2}: two equal jacks. */
  private static final Pattern TIMES = Pattern.compile("(.+?) x ?(\\d{1,9})");

  private static final int MOST_EQUAL = 99;

  private final Notebook notes;
  private final Shapes shapes;
  private final Values values;

  KindReader(Notebook notes) {
    this.notes = notes;
    this.shapes = new Shapes(notes);
    this.values = new Values(notes);
  }

  Kind read(Leaf name, Table table) {
    Fields fields = new Fields(table, KEYS, notes);
    List<Jack> own = new ArrayList<>();
    List<Group> groups = new ArrayList<>();
    jacks(fields, "in", Direction.IN, own, groups);
    jacks(fields, "out", Direction.OUT, own, groups);
    groups.add(0, group(Group.Form.OWN, "", 1, own, fields, name));
    fields.entry("channels").flatMap(this::channels).ifPresent(groups::add);
    fields.leaf("taps").flatMap(this::taps).ifPresent(groups::add);
    double width =
        fields
            .leaf("width")
            .map(l -> values.sizeCm(l).orElse(Kind.DEFAULT_WIDTH_CM))
            .orElse(Kind.DEFAULT_WIDTH_CM);
    Set<String> leaves =
        fields.names("leaves").stream()
            .map(Leaf::name)
            .collect(Collectors.toCollection(TreeSet::new));
    Electrics electrics = new ElectricsReader(notes).read(fields);
    return notes.note(
        new Kind(name.name(), groups, jumpers(fields), width, leaves, electrics), name.place());
  }

  private Group group(
      Group.Form form, String name, int count, List<Jack> jacks, Fields fields, Leaf key) {
    List<Knob> knobs = knobs(fields);
    List<Switch> switches = switches(fields);
    Map<String, Position> closed = closed(fields, knobs);
    return notes.note(new Group(form, name, count, jacks, knobs, switches, closed), key.place());
  }

  private void jacks(
      Fields fields, String key, Direction direction, List<Jack> own, List<Group> groups) {
    for (Leaf written : fields.names(key)) {
      Matcher times = TIMES.matcher(written.name());
      if (!times.matches()) {
        own.add(notes.note(new Jack(written.name(), direction), written.place()));
        continue;
      }
      int count = Integer.parseInt(times.group(2));
      Jack jack = notes.note(new Jack(times.group(1), direction), written.place());
      if (count == 1) {
        own.add(jack);
      } else {
        groups.add(equal(jack, checked(written, count, "equal jacks", 2)));
      }
    }
  }

  private Group equal(Jack jack, int count) {
    return notes.note(
        new Group(
            Group.Form.EQUAL_JACKS,
            jack.name(),
            count,
            List.of(jack),
            List.of(),
            List.of(),
            Map.of()),
        notes.places().of(jack));
  }

  /** The count, or the nearest that can be. */
  private int checked(Leaf written, int count, String what, int low) {
    if (count >= low && count <= MOST_EQUAL) {
      return count;
    }
    notes.slip(
        written.place(),
        "a module cannot have " + count + " " + what,
        "Their number lies from " + low + " to " + MOST_EQUAL + ".");
    return Math.max(low, Math.min(MOST_EQUAL, count));
  }

  private Optional<Group> taps(Leaf written) {
    Jack tap = notes.note(new Jack("tap", Direction.TAP), written.place());
    return values.whole(written).stream()
        .mapToObj(count -> equal(tap, checked(written, count, "taps", 2)))
        .findFirst();
  }

  private Optional<Group> channels(Entry entry) {
    Optional<Table> table = shapes.table(entry);
    if (table.isEmpty()) {
      return Optional.empty();
    }
    Fields fields = new Fields(table.get(), CHANNEL_KEYS, notes);
    int count =
        fields
            .needed("count", entry.key())
            .map(l -> checked(l, values.whole(l).orElse(1), "channels", 1))
            .orElse(1);
    List<Jack> jacks = new ArrayList<>();
    List<Group> equal = new ArrayList<>();
    jacks(fields, "in", Direction.IN, jacks, equal);
    jacks(fields, "out", Direction.OUT, jacks, equal);
    for (Group group : equal) {
      notes.error(
          notes.places().of(group),
          "a channel has each of its jacks once",
          "Give equal jacks of a channel names of their own.");
      jacks.addAll(group.jacks());
    }
    return Optional.of(group(Group.Form.CHANNELS, "", count, jacks, fields, entry.key()));
  }

  private List<Knob> knobs(Fields fields) {
    List<Knob> knobs = new ArrayList<>();
    for (Entry line : fields.lines("knobs")) {
      Optional<Leaf> scale = shapes.leaf(line);
      if (scale.isPresent()) {
        Knob knob = new Knob(line.name(), values.scale(scale.get()));
        knobs.add(notes.note(knob, line.key().place()));
      }
    }
    return knobs;
  }

  private List<Switch> switches(Fields fields) {
    List<Switch> switches = new ArrayList<>();
    for (Entry line : fields.lines("switches")) {
      Switch made = new Switch(line.name(), positions(line));
      switches.add(notes.note(made, line.key().place()));
    }
    return switches;
  }

  private List<Jumper> jumpers(Fields fields) {
    List<Jumper> jumpers = new ArrayList<>();
    for (Entry line : fields.lines("jumpers")) {
      Jumper made = new Jumper(line.name(), positions(line));
      jumpers.add(notes.note(made, line.key().place()));
    }
    return jumpers;
  }

  private List<String> positions(Entry line) {
    Set<String> names = new LinkedHashSet<>();
    for (Leaf position : shapes.leaves(line)) {
      if (!names.add(position.name())) {
        notes.slip(
            position.place(),
            Names.quote(line.name()) + " has " + Names.quote(position.text()) + " twice",
            "Give each of its positions a name of its own.");
      }
    }
    if (names.isEmpty() && line.value().items().isPresent()) {
      notes.error(
          line.key().place(),
          Names.quote(line.name()) + " has no positions",
          "List them: [one, another].");
    }
    return List.copyOf(names);
  }

  /** What shuts a channel: a knob's figure or a switch's position. */
  private Map<String, Position> closed(Fields fields, List<Knob> knobs) {
    Map<String, Position> closed = new LinkedHashMap<>();
    for (Entry line : fields.lines("closed")) {
      Optional<Leaf> value = shapes.leaf(line);
      boolean knob = knobs.stream().anyMatch(k -> k.name().equals(line.name()));
      if (value.isPresent() && knob) {
        values.figure(value.get()).ifPresent(at -> closed.put(line.name(), new Position.At(at)));
      } else if (value.isPresent()) {
        closed.put(line.name(), new Position.Thrown(value.get().name()));
      }
    }
    return closed;
  }
}
