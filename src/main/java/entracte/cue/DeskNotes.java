package entracte.cue;

import entracte.plan.SongPlan;
import entracte.plan.SongPlan.CastAs;
import entracte.rig.Control;
import entracte.rig.GainStep;
import entracte.rig.Group;
import entracte.rig.NameWords;
import entracte.rig.Position;
import entracte.rig.Toggle;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What the way to a song does to the gains of its modules, for somebody at a mixing desk who knows
 * nothing of the case: gain steps in decibels, other gains as louder or softer. What single
 * channels do is left out, and what is meant to distort is named; what they do to the whole is in
 * the sum of {@link Levels}.
 */
final class DeskNotes {
  private DeskNotes() {}

  static List<String> of(Optional<SongPlan> before, SongPlan song) {
    List<String> notes = new ArrayList<>();
    before.ifPresent(last -> notes.addAll(changes(last, song)));
    notes.addAll(Levels.wanted(song));
    return notes;
  }

  private static List<String> changes(SongPlan before, SongPlan song) {
    return song.casting().stream()
        .map(CastAs::module)
        .distinct()
        .flatMap(module -> module.controls().stream())
        .filter(control -> control.group().form() == Group.Form.OWN)
        .filter(control -> NameWords.sayLoudness(control.name()))
        .flatMap(control -> change(before, song, control).stream())
        .toList();
  }

  /** {@code mix 1 gain +20 dB}, {@code amp 1 gain up}. */
  private static Optional<String> change(SongPlan before, SongPlan song, Control control) {
    Position from = before.positions().get(control);
    Position to = song.positions().get(control);
    if (from == null || to == null || from.equals(to)) {
      return Optional.empty();
    }
    return way(control, from, to).map(way -> Wording.name(control) + " " + way);
  }

  private static Optional<String> way(Control control, Position from, Position to) {
    if (from instanceof Position.At was && to instanceof Position.At is) {
      return Optional.of(is.value() > was.value() ? "up" : "down");
    }
    Toggle toggle = Toggle.of(control);
    OptionalDouble was = toggle.gain(from.toString());
    OptionalDouble is = toggle.gain(to.toString());
    return was.isEmpty() || is.isEmpty()
        ? Optional.of("from " + from + " to " + to)
        : Optional.of(GainStep.words(GainStep.decibels(is.getAsDouble() / was.getAsDouble())));
  }
}
