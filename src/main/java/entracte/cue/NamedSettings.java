package entracte.cue;

import entracte.plan.SongPlan;
import entracte.plan.SongPlan.CastAs;
import entracte.plan.SongPlan.StripAs;
import entracte.rig.Control;
import entracte.rig.Group;
import entracte.setlist.Setting;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The knobs and switches that a song's patch names, found on the modules that the plan casts. Knobs
 * that no patch names may stand anywhere, so they are nobody's worry.
 */
final class NamedSettings {
  /**
   * @param owner who wants it: a role, or a role's channel
   */
  record Named(Control control, String owner) {}

  private final Map<String, Named> byControl = new LinkedHashMap<>();

  static NamedSettings of(SongPlan song) {
    List<Setting> written = new ArrayList<>(song.song().patch().settings());
    written.addAll(song.song().settings());
    NamedSettings settings = new NamedSettings();
    for (Setting setting : written) {
      control(song, setting).ifPresent(c -> settings.put(new Named(c, setting.owner())));
    }
    return settings;
  }

  List<Named> all() {
    return List.copyOf(byControl.values());
  }

  Optional<Named> of(Control control) {
    return Optional.ofNullable(byControl.get(control.toString()));
  }

  private void put(Named named) {
    byControl.put(named.control().toString(), named);
  }

  /** Empty for a jumper, which is no work for a changeover. */
  private static Optional<Control> control(SongPlan song, Setting setting) {
    String owner = setting.owner();
    for (CastAs cast : song.casting()) {
      if (cast.role().equals(owner)) {
        return find(cast, Optional.empty(), setting.control());
      }
    }
    int dot = owner.lastIndexOf('.');
    String role = dot < 0 ? "" : owner.substring(0, dot).strip();
    String strip = owner.substring(dot + 1).strip();
    return song.casting().stream()
        .filter(cast -> cast.role().equals(role))
        .findFirst()
        .flatMap(cast -> find(cast, number(cast, strip), setting.control()));
  }

  private static Optional<Integer> number(CastAs cast, String label) {
    return cast.strips().stream()
        .filter(strip -> strip.label().equals(label))
        .map(StripAs::number)
        .findFirst();
  }

  private static Optional<Control> find(CastAs cast, Optional<Integer> channel, String name) {
    Group.Form form = channel.isPresent() ? Group.Form.CHANNELS : Group.Form.OWN;
    return cast.module().controls().stream()
        .filter(c -> c.group().form() == form && c.number() == channel.orElse(1))
        .filter(c -> c.name().equals(name))
        .findFirst();
  }
}
