package entracte.cue;

import entracte.plan.Plan;
import entracte.plan.SongPlan;
import entracte.plan.SongPlan.CastAs;
import entracte.rig.Control;
import entracte.rig.Jumper;
import entracte.rig.Module;
import entracte.rig.Position;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How steeply the filters of a song fall, told by the names of their positions: each pole takes 6
 * dB from every octave beyond the cutoff. That is where the fall ends up; near the cutoff it is
 * gentler.
 */
final class Slopes {
  private static final Pattern POLES = Pattern.compile("([1-8])[- ]?poles?");
  private static final int DECIBELS_PER_POLE = 6;

  private Slopes() {}

  /**
   * {@code filter 1 slope at 4-pole: 24 dB an octave}. A switch that hands over to a jumper is
   * followed to it: {@code slope} at {@code other}, and the jumper {@code other slope}.
   */
  static List<String> of(SongPlan song, Map<Plan.JumperIn, String> jumpers) {
    List<String> lines = new ArrayList<>();
    for (CastAs cast : song.casting()) {
      for (Control control : cast.module().controls()) {
        if (song.positions().get(control) instanceof Position.Thrown thrown) {
          line(control, thrown.position(), jumpers).ifPresent(lines::add);
        }
      }
    }
    return lines.stream().sorted().toList();
  }

  private static Optional<String> line(
      Control control, String at, Map<Plan.JumperIn, String> jumpers) {
    String name = Wording.name(control) + " at " + at;
    OptionalInt own = decibelsPerOctave(at);
    if (own.isPresent()) {
      return Optional.of(name + ": " + own.getAsInt() + " dB an octave");
    }
    Module module = control.module();
    Optional<Jumper> jumper = module.kind().jumper(at + " " + control.name());
    Optional<String> inside = jumper.map(j -> jumpers.get(new Plan.JumperIn(module, j)));
    OptionalInt set = inside.map(Slopes::decibelsPerOctave).orElse(OptionalInt.empty());
    return set.isPresent()
        ? Optional.of(name + " (" + inside.get() + "): " + set.getAsInt() + " dB an octave")
        : Optional.empty();
  }

  /** 24 for {@code 4-pole}; empty for a name that is no number of poles. */
  static OptionalInt decibelsPerOctave(String position) {
    Matcher poles = POLES.matcher(position.strip());
    return poles.matches()
        ? OptionalInt.of(DECIBELS_PER_POLE * Integer.parseInt(poles.group(1)))
        : OptionalInt.empty();
  }
}
