package entracte.setlist;

import java.util.List;
import java.util.Objects;

/** A sound: the modules it needs, how they are connected, how they are set, and what to hear. */
public record Patch(
    String name,
    List<Role> roles,
    List<Connection> connections,
    List<Setting> settings,
    Sound sound) {
  public Patch {
    roles = List.copyOf(roles);
    connections = List.copyOf(connections);
    settings = List.copyOf(settings);
    Objects.requireNonNull(sound);
  }

  /** A patch that says nothing for the ear. */
  public Patch(
      String name, List<Role> roles, List<Connection> connections, List<Setting> settings) {
    this(name, roles, connections, settings, Sound.unsaid());
  }
}
