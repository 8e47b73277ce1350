package entracte.cue;

import entracte.plan.SongPlan;
import entracte.plan.SongPlan.CastAs;
import entracte.plan.SongPlan.StripAs;
import entracte.rig.Control;
import entracte.rig.Group;
import entracte.setlist.Interval;
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
   * @param value as written
   */
  record Named(Control control, String owner, String value) {
    /** Whether it may stand so far off that the ear sets it in the end. */
    boolean byEar() {
      double scale = control.scale().map(s -> s.high() - s.low()).orElse(Double.MAX_VALUE);
      return Interval.parse(value).filter(i -> i.high() - i.low() >= EAR_PART * scale).isPresent();
    }
  }

  /** A knob that may stand a tenth of its scale off to either side is left to the ear. */
  private static final double EAR_PART = 0.2;

  private final Map<String, Named> byControl = new LinkedHashMap<>();

  static NamedSettings of(SongPlan song) {
    List<Setting> written = new ArrayList<>(song.song().patch().settings());
    written.addAll(song.song().settings());
    NamedSettings settings = new NamedSettings();
    for (Setting setting : written) {
      control(song, setting)
          .ifPresent(c -> settings.put(new Named(c, setting.owner(), setting.value())));
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
