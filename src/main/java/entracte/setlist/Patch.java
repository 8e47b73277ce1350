package entracte.setlist;

import java.util.List;

/** A sound: the modules it needs, how they are connected, and how they are set. */
public record Patch(
    String name, List<Role> roles, List<Connection> connections, List<Setting> settings) {
  public Patch {
    roles = List.copyOf(roles);
    connections = List.copyOf(connections);
    settings = List.copyOf(settings);
  }
}
