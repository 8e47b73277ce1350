package entracte.cue;

import entracte.plan.Plan;
import entracte.plan.SongPlan;
import entracte.plan.SongPlan.CastAs;
import entracte.rig.Control;
import entracte.rig.Jumper;
import entracte.rig.Module;
import entracte.rig.Position;
import entracte.rig.Toggle;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Stream;

/**
 * How steeply the filters of a song fall, told by the names of their positions ({@link Toggle}).
 * That is where the fall ends up, far beyond the cutoff; near it the fall is gentler.
 */
final class Slopes {
  private final SongPlan song;
  private final Map<Plan.JumperIn, String> set;
  private final List<String> lines = new ArrayList<>();

  private Slopes(SongPlan song, Map<Plan.JumperIn, String> set) {
    this.song = song;
    this.set = set;
  }

  /**
   * {@code filter 1 slope at 4-pole: 24 dB an octave}. A switch that hands over to a jumper is
   * followed to it: {@code slope} at {@code other}, and the jumper {@code other slope}. Any other
   * jumper of a filter speaks for itself.
   */
  static List<String> of(SongPlan song, Map<Plan.JumperIn, String> jumpers) {
    Slopes slopes = new Slopes(song, jumpers);
    song.casting().stream().map(CastAs::module).forEach(slopes::add);
    return slopes.lines.stream().sorted().toList();
  }

  private void add(Module module) {
    Set<String> handedOver = new HashSet<>();
    for (Control control : module.controls()) {
      control.positions().stream().map(at -> jumper(at, control)).forEach(handedOver::add);
      if (song.positions().get(control) instanceof Position.Thrown thrown) {
        line(control, thrown.position()).ifPresent(lines::add);
      }
    }
    module.kind().jumpers().stream()
        .filter(jumper -> !handedOver.contains(jumper.name()))
        .flatMap(jumper -> inside(module, jumper))
        .forEach(lines::add);
  }

  private static String jumper(String position, Control control) {
    return position + " " + control.name();
  }

  private Optional<String> line(Control control, String at) {
    Module module = control.module();
    String name = Wording.name(control) + " at " + at;
    OptionalInt own = Toggle.of(control).slope(at);
    if (own.isPresent()) {
      return Optional.of(name + fall(own));
    }
    return module
        .kind()
        .jumper(jumper(at, control))
        .filter(jumper -> slope(module, jumper).isPresent())
        .map(jumper -> name + " (" + set(module, jumper) + ")" + fall(slope(module, jumper)));
  }

  private Stream<String> inside(Module module, Jumper jumper) {
    OptionalInt slope = slope(module, jumper);
    return slope.isEmpty()
        ? Stream.of()
        : Stream.of(
            module.name() + " " + jumper.name() + " at " + set(module, jumper) + fall(slope));
  }

  private OptionalInt slope(Module module, Jumper jumper) {
    return Toggle.of(module.kind(), jumper).slope(set(module, jumper));
  }

  /** Where the jumper is set; nothing if no song of the set cares. */
  private String set(Module module, Jumper jumper) {
    return set.getOrDefault(new Plan.JumperIn(module, jumper), "");
  }

  private static String fall(OptionalInt decibels) {
    return ": " + decibels.getAsInt() + " dB an octave";
  }
}
