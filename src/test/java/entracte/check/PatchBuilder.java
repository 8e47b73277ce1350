package entracte.check;

import entracte.setlist.Connection;
import entracte.setlist.End;
import entracte.setlist.Patch;
import entracte.setlist.Role;
import entracte.setlist.Setting;
import entracte.setlist.Song;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;

/** Makes a patch in a few lines. */
public final class PatchBuilder {
  private final String name;
  private final List<Role> roles = new ArrayList<>();
  private final List<Connection> connections = new ArrayList<>();
  private final List<Setting> settings = new ArrayList<>();

  private PatchBuilder(String name) {
    this.name = name;
  }

  public static PatchBuilder patch(String name) {
    return new PatchBuilder(name);
  }

  public PatchBuilder role(String role, String... accepts) {
    roles.add(new Role(role, List.of(accepts)));
    return this;
  }

  public PatchBuilder cord(String source, String... sinks) {
    connections.add(new Connection(new End(source), Arrays.stream(sinks).map(End::new).toList()));
    return this;
  }

  public PatchBuilder set(String owner, String control, String value) {
    settings.add(new Setting(owner, control, value));
    return this;
  }

  public Patch build() {
    return new Patch(name, roles, connections, settings);
  }

  /** A song that plays this patch and has the patch's name. */
  public Song song() {
    return song(name, build());
  }

  /** A song with settings of its own. */
  public static Song song(String name, Patch patch, Setting... own) {
    return new Song(
        name, patch, List.of(own), OptionalDouble.empty(), List.of(), Song.Card.blank());
  }
}
