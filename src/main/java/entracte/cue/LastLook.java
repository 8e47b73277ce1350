package entracte.cue;

import entracte.plan.Action;
import entracte.plan.Changeover;
import entracte.plan.SongPlan;
import entracte.rig.Control;
import entracte.rig.NameWords;
import entracte.rig.Position;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The three to five settings to look at before playing: those that would hurt most if they were
 * wrong.
 *
 * <p>The rule. Only knobs and switches that the song's patch names are looked at. Their names say
 * how much a mistake hurts: gain, drive and boost most (a forgotten gain switch is the loudest
 * mistake there is), then level, volume, mute, resonance and feedback, then octave and range, gate,
 * trigger and mode; anything else is harmless. What hurts and has just been changed comes first,
 * then what hurts and has not, then what is harmless but changed, then the rest; within each of
 * these the worse name first, then the larger change as a part of the scale (a thrown switch, or a
 * knob from an unknown position, counts as the whole scale), then from left to right. All of the
 * first sort are shown up to five; the others only fill up to three.
 */
final class LastLook {
  private static final int FEWEST = 3;
  private static final int MOST = 5;

  private static final List<List<String>> WORST_FIRST =
      List.of(
          List.of("gain", "drive", "boost", "overdrive"),
          List.of("level", "volume", "mute", "resonance", "feedback", "emphasis"),
          List.of("octave", "range", "footage", "gate", "trigger", "retrigger", "mode"));

  private static final int HARMLESS = WORST_FIRST.size();

  private record Candidate(Control control, Position at, int rank, double change) {
    boolean hurts() {
      return rank < HARMLESS;
    }

    boolean changed() {
      return change > 0;
    }

    int sort() {
      return (hurts() ? 0 : 2) + (changed() ? 0 : 1);
    }
  }

  private LastLook() {}

  /** What to look at, such as {@code filter 1 resonance at 3}. */
  static List<String> before(SongPlan song, NamedSettings settings, Changeover changeover) {
    Map<String, Double> changes = changes(changeover);
    List<Candidate> ranked =
        settings.all().stream()
            .flatMap(named -> candidate(song, named.control(), changes).stream())
            .sorted(
                Comparator.comparingInt(Candidate::sort)
                    .thenComparingInt(Candidate::rank)
                    .thenComparing(Comparator.comparingDouble(Candidate::change).reversed())
                    .thenComparing(c -> Spot.of(c.control()), HandOrder.SPOTS))
            .toList();
    long pressing = ranked.stream().filter(c -> c.sort() == 0).count();
    return ranked.stream()
        .limit(Math.max(FEWEST, Math.min(MOST, pressing)))
        .map(c -> Wording.name(c.control()) + " at " + c.at())
        .toList();
  }

  private static Optional<Candidate> candidate(
      SongPlan song, Control control, Map<String, Double> changes) {
    return Optional.ofNullable(song.positions().get(control))
        .map(
            at ->
                new Candidate(
                    control, at, rank(control), changes.getOrDefault(control.toString(), 0.0)));
  }

  private static int rank(Control control) {
    for (int rank = 0; rank < HARMLESS; rank++) {
      if (NameWords.say(control.name(), WORST_FIRST.get(rank))) {
        return rank;
      }
    }
    return HARMLESS;
  }

  private static Map<String, Double> changes(Changeover changeover) {
    Map<String, Double> changes = new HashMap<>();
    Stream<Action.Turn> turns = only(changeover, Action.Turn.class);
    turns.forEach(turn -> changes.put(turn.knob().toString(), Extent.of(turn)));
    Stream<Action.Flip> flips = only(changeover, Action.Flip.class);
    flips.forEach(flip -> changes.put(flip.toggle().toString(), 1.0));
    return changes;
  }

  private static <A extends Action> Stream<A> only(Changeover changeover, Class<A> type) {
    return changeover.actions().stream().filter(type::isInstance).map(type::cast);
  }
}
