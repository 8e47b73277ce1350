package entracte.read;

import entracte.finding.NearestName;
import entracte.finding.Place;
import entracte.read.Tree.Entry;
import entracte.read.Tree.Leaf;
import entracte.read.Tree.Table;
import entracte.setlist.Connection;
import entracte.setlist.End;
import entracte.setlist.Patch;
import entracte.setlist.Role;
import entracte.setlist.Setting;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Reads one patch, on top of the one it is like. */
final class PatchReader {
  static final List<String> KEYS =
      Stream.concat(
              Stream.of("patch", "like", "roles", "connections", "settings"),
              SoundReader.KEYS.stream())
          .toList();

  /** What takes an inherited connection away. */
  private static final String NONE = "none";

  private final Notebook notes;
  private final Shapes shapes;

  PatchReader(Notebook notes) {
    this.notes = notes;
    this.shapes = new Shapes(notes);
  }

  static Fields fields(Table table, Notebook notes) {
    return new Fields(table, KEYS, notes);
  }

  /**
   * Reads a patch.
   *
   * @param losses how many pieces were lost in other files
   * @return empty if a role or a connection is lost: whatever uses it would be called wrong
   */
  Optional<Patch> read(Fields fields, FileName file, Optional<Patch> like, int losses) {
    Map<String, Role> roles = new LinkedHashMap<>();
    Map<String, Connection> connections = new LinkedHashMap<>();
    Map<List<String>, Setting> settings = new LinkedHashMap<>();
    like.ifPresent(
        base -> {
          base.roles().forEach(r -> roles.put(r.name(), r));
          base.connections().forEach(c -> connections.put(source(c), c));
          base.settings().forEach(s -> settings.put(control(s), s));
        });
    fields.lines("roles").forEach(line -> roles.put(line.name(), role(line)));
    fields.lines("connections").forEach(line -> connect(line, connections));
    like.ifPresent(base -> replacements(base.connections(), connections));
    boolean whole = notes.losses() == losses;
    new SettingsReader(notes)
        .read(fields.lines("settings"))
        .forEach(s -> settings.put(control(s), s));
    Patch patch =
        new Patch(
            fields.title("patch", file),
            List.copyOf(roles.values()),
            List.copyOf(connections.values()),
            List.copyOf(settings.values()),
            new SoundReader(notes).read(fields, like));
    notes.note(patch, fields.place());
    return whole ? Optional.of(patch) : Optional.empty();
  }

  private static String source(Connection connection) {
    return connection.source().owner() + "." + connection.source().jack();
  }

  private static List<String> control(Setting setting) {
    return List.of(setting.owner(), setting.control());
  }

  private Role role(Entry line) {
    List<String> accepts = new ArrayList<>();
    for (Leaf kind : shapes.leaves(line)) {
      accepts.add(notes.note(kind.name(), kind.place()));
    }
    if (line.value().items().filter(i -> i.list().isEmpty()).isPresent()) {
      notes.error(
          line.key().place(),
          Names.quote(line.name()) + " names no kind",
          "List the kinds that will do.");
    }
    return notes.note(new Role(line.name(), accepts), line.key().place());
  }

  private void connect(Entry line, Map<String, Connection> connections) {
    End source = end(line.key());
    List<End> sinks = new ArrayList<>();
    boolean cut = false;
    for (Leaf sink : shapes.leaves(line)) {
      cut |= sink.name().equals(NONE);
      sinks.add(end(sink));
    }
    if (line.value().items().filter(i -> i.list().isEmpty()).isPresent()) {
      notes.error(
          line.key().place(),
          Names.quote(line.name()) + " feeds nothing",
          "Name a jack, or delete the line.");
    }
    Connection connection = notes.note(new Connection(source, sinks), line.key().place());
    if (cut) {
      remove(connection, connections);
    } else if (!sinks.isEmpty()) {
      connections.put(source(connection), connection);
    }
  }

  /**
   * A source has one connection, so another from it takes the place of the inherited one. Nobody
   * need be told where another source feeds what the old one fed, or where the new connection only
   * leaves out some of the old.
   */
  private void replacements(List<Connection> inherited, Map<String, Connection> connections) {
    Set<End> fed =
        connections.values().stream()
            .flatMap(connection -> connection.sinks().stream())
            .collect(Collectors.toSet());
    for (Connection old : inherited) {
      List<String> unfed =
          old.sinks().stream().filter(sink -> !fed.contains(sink)).map(End::text).toList();
      Connection now = connections.get(source(old));
      if (now != null && !old.sinks().containsAll(now.sinks()) && !unfed.isEmpty()) {
        List<String> sinks = old.sinks().stream().map(End::text).toList();
        notes.remark(
            notes.places().of(now),
            "this takes the place of the inherited connection to %s, and nothing feeds %s now"
                .formatted(quoted(sinks), quoted(unfed)),
            "If the source shall feed both, list both: [one, another].");
      }
    }
  }

  private static String quoted(List<String> names) {
    return names.stream().map(Names::quote).collect(Collectors.joining(" and "));
  }

  private void remove(Connection cut, Map<String, Connection> connections) {
    Place place = notes.places().of(cut.source());
    if (cut.sinks().size() > 1) {
      notes.error(place, "\"none\" stands alone or not at all", "List jacks, or write none.");
    } else if (connections.remove(source(cut)) == null) {
      notes.error(
          place,
          "there is no inherited connection from "
              + Names.quote(cut.source().text())
              + " to take away",
          NearestName.advice(source(cut), connections.keySet()));
    }
  }

  private End end(Leaf written) {
    return notes.note(new End(written.name()), written.place());
  }
}
