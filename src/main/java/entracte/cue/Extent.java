package entracte.cue;

import entracte.plan.Action;
import entracte.plan.SongPlan;
import entracte.rig.Module;
import entracte.rig.Position;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/** How far the hands turn a knob or throw a switch. */
final class Extent {
  private static final List<String> TUNING_KNOBS = List.of("tune", "tuning", "coarse");

  private Extent() {}

  /** The part of the knob's scale; all of it from an unknown position. */
  static double of(Action.Turn turn) {
    OptionalDouble from = turn.from().map(Extent::figure).orElse(OptionalDouble.empty());
    OptionalDouble to = figure(turn.to());
    if (from.isEmpty() || to.isEmpty()) {
      return 1;
    }
    double scale = turn.knob().scale().map(s -> s.high() - s.low()).orElse(1.0);
    return Math.abs(to.getAsDouble() - from.getAsDouble()) / scale;
  }

  /** The positions that the switch passes; one from an unknown position. */
  static double of(Action.Flip flip) {
    List<String> names = flip.toggle().positions();
    int to = names.indexOf(flip.to().toString());
    int from = flip.from().map(at -> names.indexOf(at.toString())).orElse(-1);
    return from < 0 || to < 0 ? 1 : Math.abs(to - from);
  }

  /** What the module's tuning knob stands at in the song, without its sign; 0 if it has none. */
  static double ofTuning(Module module, SongPlan song) {
    return module.controls().stream()
        .filter(control -> TUNING_KNOBS.contains(control.name().toLowerCase(Locale.ROOT)))
        .filter(song.positions()::containsKey)
        .mapToDouble(control -> Math.abs(figure(song.positions().get(control)).orElse(0)))
        .findFirst()
        .orElse(0);
  }

  private static OptionalDouble figure(Position position) {
    return position instanceof Position.At at
        ? OptionalDouble.of(at.value())
        : OptionalDouble.empty();
  }
}
