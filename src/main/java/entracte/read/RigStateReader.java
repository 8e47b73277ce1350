package entracte.read;

import entracte.finding.NearestName;
import entracte.read.Tree.Entry;
import entracte.read.Tree.Leaf;
import entracte.read.Tree.Table;
import entracte.rig.Control;
import entracte.rig.Cord;
import entracte.rig.Figures;
import entracte.rig.Position;
import entracte.rig.Rig;
import entracte.rig.RigState;
import entracte.rig.Scale;
import entracte.rig.Socket;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Reads a saved state of a rig: what is plugged and where its controls stand.
 *
 * <pre>
 * state: after Slack Water
 * cords: {osc 1.saw: mix 1.2.in}
 * lengths: {osc 1.saw: 60 cm}
 * positions: {filter 1.cutoff: 6.5, osc 1.octave: 8}
 * </pre>
 *
 * <p>Each cord stands under the jack at its one end. A cord without a length is the shortest that
 * reaches and that is left of the stock.
 */
public final class RigStateReader {
  private static final List<String> KEYS = List.of("state", "cords", "lengths", "positions");

  private final Rig rig;
  private final Notebook notes;
  private final Shapes shapes;
  private final Values values;

  private RigStateReader(Rig rig, Notebook notes) {
    this.rig = rig;
    this.notes = notes;
    this.shapes = new Shapes(notes);
    this.values = new Values(notes);
  }

  /** Reads a state of {@code rig}; nothing in the file makes this throw. */
  public static ReadState read(Path path, Rig rig) {
    FileName file = FileName.of(path);
    Notebook notes = new Notebook(file.wholeFile());
    Optional<Table> table = new SourceFiles(notes).table(file, file.wholeFile(), "state");
    if (table.isEmpty()) {
      return new ReadState(file.bare(), Optional.empty(), notes.findings());
    }
    Fields fields = new Fields(table.get(), KEYS, notes);
    String name = fields.title("state", file);
    RigState state = new RigStateReader(rig, notes).state(fields);
    boolean whole = notes.findings().isEmpty();
    return new ReadState(name, whole ? Optional.of(state) : Optional.empty(), notes.findings());
  }

  private RigState state(Fields fields) {
    Map<String, Cord> cords = cords(fields.lines("cords"));
    Map<String, Integer> written = lengths(fields.lines("lengths"), cords);
    List<Integer> lengths =
        new CordLengths(rig, notes, fields.place()).of(List.copyOf(cords.values()), written);
    return new RigState(List.copyOf(cords.values()), lengths, positions(fields.lines("positions")));
  }

  /** The cords by the name of their first jack, in the order written. */
  private Map<String, Cord> cords(List<Entry> lines) {
    Map<String, Socket> jacks = new LinkedHashMap<>();
    rig.modules().forEach(m -> m.sockets().forEach(s -> jacks.putIfAbsent(s.toString(), s)));
    Map<Socket, Integer> taken = new HashMap<>();
    Map<String, Cord> cords = new LinkedHashMap<>();
    for (Entry line : lines) {
      Optional<Socket> one = jack(line.key(), jacks, taken);
      Optional<Socket> other = shapes.leaf(line).flatMap(l -> jack(l, jacks, taken));
      if (one.isPresent() && other.isPresent()) {
        cords.put(line.name(), new Cord(one.get(), other.get()));
      }
    }
    return cords;
  }

  private Optional<Socket> jack(
      Leaf written, Map<String, Socket> jacks, Map<Socket, Integer> taken) {
    Socket jack = jacks.get(written.name());
    if (jack == null) {
      unknown("jack", written, List.copyOf(jacks.keySet()));
      return Optional.empty();
    }
    Integer before = taken.putIfAbsent(jack, written.place().line());
    if (before != null) {
      notes.error(
          written.place(),
          Names.quote(written.text()) + " holds two plugs",
          "The other stands in line " + before + ".");
    }
    return Optional.of(jack);
  }

  private Map<String, Integer> lengths(List<Entry> lines, Map<String, Cord> cords) {
    Map<String, Integer> lengths = new HashMap<>();
    for (Entry line : lines) {
      if (!cords.containsKey(line.name())) {
        unknown("cord from", line.key(), List.copyOf(cords.keySet()));
      }
      shapes
          .leaf(line)
          .map(values::lengthCm)
          .ifPresent(cm -> cm.ifPresent(length -> lengths.put(line.name(), length)));
    }
    return lengths;
  }

  private Map<Control, Position> positions(List<Entry> lines) {
    Map<String, Control> controls = new LinkedHashMap<>();
    rig.modules().forEach(m -> m.controls().forEach(c -> controls.putIfAbsent(c.toString(), c)));
    Map<Control, Position> positions = new HashMap<>();
    for (Entry line : lines) {
      Control control = controls.get(line.name());
      if (control == null) {
        unknown("knob or switch", line.key(), List.copyOf(controls.keySet()));
      } else {
        shapes
            .leaf(line)
            .flatMap(value -> position(control, value))
            .ifPresent(position -> positions.put(control, position));
      }
    }
    return positions;
  }

  private Optional<Position> position(Control control, Leaf value) {
    return control.isKnob()
        ? at(control.scale().orElseThrow(), value)
        : thrown(control.positions(), value);
  }

  private Optional<Position> at(Scale scale, Leaf value) {
    return values.figure(value).stream()
        .filter(figure -> onScale(figure, scale, value))
        .mapToObj(figure -> (Position) new Position.At(figure))
        .findFirst();
  }

  private boolean onScale(double figure, Scale scale, Leaf value) {
    if (!scale.contains(figure)) {
      notes.error(
          value.place(),
          Names.quote(value.text()) + " lies off the scale",
          "It runs from "
              + Figures.plain(scale.low())
              + " to "
              + Figures.plain(scale.high())
              + ".");
    }
    return scale.contains(figure);
  }

  private Optional<Position> thrown(List<String> positions, Leaf value) {
    if (!positions.contains(value.name())) {
      unknown("position", value, positions);
      return Optional.empty();
    }
    return Optional.of(new Position.Thrown(value.name()));
  }

  private void unknown(String what, Leaf written, List<String> known) {
    notes.error(
        written.place(),
        "there is no " + what + " " + Names.quote(written.text()),
        NearestName.advice(written.name(), known));
  }
}
