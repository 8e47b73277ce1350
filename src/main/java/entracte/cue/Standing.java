package entracte.cue;

import entracte.plan.Plan;
import entracte.plan.PluggedCord;
import entracte.plan.SongPlan;
import entracte.rig.Control;
import entracte.rig.Position;
import entracte.rig.RigState;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * What is plugged and how it is set at some moment, in the words of a patch card.
 *
 * @param cords {@code osc 1 saw to mix 1 channel 2 in}
 * @param settings a line for each module: {@code filter 1: cutoff at 4, resonance at 3}
 */
public record Standing(List<String> cords, List<String> settings) {
  public Standing {
    cords = List.copyOf(cords);
    settings = List.copyOf(settings);
  }

  /** What the rig is like before the plan begins. */
  static Standing before(Plan plan) {
    RigState state = plan.start().state();
    return new Standing(cords(PluggedCord.of(state)), settings(state.positions(), any -> true));
  }

  /**
   * What the song itself does not ask for, and what the next changeovers count on: the cords that
   * wait, and the knobs and switches that a later song finds set.
   *
   * @param named what each song's patch names
   */
  static Standing beside(Plan plan, int index, List<NamedSettings> named) {
    SongPlan song = plan.songs().get(index);
    return new Standing(
        cords(song.parked()),
        settings(song.positions(), control -> isForLater(plan, index, control, named)));
  }

  private static boolean isForLater(
      Plan plan, int index, Control control, List<NamedSettings> named) {
    Position now = plan.songs().get(index).positions().get(control);
    int song = index;
    while (song < plan.songs().size() && named.get(song).of(control).isEmpty()) {
      song++;
    }
    return song > index
        && song < plan.songs().size()
        && plan.songs().subList(index, song + 1).stream()
            .allMatch(each -> now.equals(each.positions().get(control)));
  }

  private static List<String> cords(List<PluggedCord> cords) {
    return cords.stream().map(Wording::both).sorted().toList();
  }

  private static List<String> settings(Map<Control, Position> positions, Predicate<Control> which) {
    return settings(
        positions.keySet().stream().filter(which), c -> positions.get(c).toString(), positions);
  }

  /**
   * One line for each module, so that whoever builds it goes from module to module.
   *
   * @param at what is said of where a control stands
   * @param known a control that is not among these is left out
   */
  static List<String> settings(
      Stream<Control> controls, Function<Control, String> at, Map<Control, Position> known) {
    Map<String, List<String>> byModule = new LinkedHashMap<>();
    controls
        .filter(known::containsKey)
        .sorted(Comparator.comparing(control -> Spot.of(control), HandOrder.SPOTS))
        .forEach(
            control ->
                byModule
                    .computeIfAbsent(control.module().name(), name -> new ArrayList<>())
                    .add(Wording.local(control) + " at " + at.apply(control)));
    return byModule.entrySet().stream()
        .map(e -> e.getKey() + ": " + String.join(", ", e.getValue()))
        .toList();
  }
}
