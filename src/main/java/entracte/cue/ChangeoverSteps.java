package entracte.cue;

import entracte.plan.Action;
import entracte.plan.Changeover;
import entracte.rig.Control;
import entracte.rig.Cord;
import entracte.rig.Module;
import entracte.rig.Position;
import entracte.rig.Toggle;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * Puts the actions of one changeover in the order of the hands and words them. Within each phase
 * the hands travel once: what is made ready for later songs is done on the way, in the set-up too.
 */
final class ChangeoverSteps {
  private final Changeover changeover;
  private final CordReasons cords;
  private final SettingReasons settings;
  private final Unheard unheard;

  ChangeoverSteps(
      Changeover changeover, CordReasons cords, SettingReasons settings, Unheard unheard) {
    this.unheard = unheard;
    this.changeover = changeover;
    this.cords = cords;
    this.settings = settings;
  }

  /**
   * Everything between the level going down and the tuning. A gain step that goes down does so
   * before any plug moves, and one that goes up does so last; what is left to the ear comes after
   * what goes to a mark.
   */
  List<Step> moves() {
    List<Step> steps = new ArrayList<>();
    steps.addAll(inHandOrder(Action.Flip.class, flip -> gain(flip) < 0, this::flip));
    steps.addAll(inHandOrder(Action.Remove.class, any -> true, this::pull));
    ShiftOrder.of(only(Action.Shift.class)).forEach(ordered -> steps.add(move(ordered)));
    steps.addAll(inHandOrder(Action.Add.class, any -> true, this::plug));
    steps.addAll(inHandOrder(Action.Flip.class, flip -> gain(flip) == 0, this::flip));
    steps.addAll(inHandOrder(Action.Turn.class, turn -> !byEar(turn), this::turn));
    steps.addAll(inHandOrder(Action.Turn.class, this::byEar, this::turn));
    steps.addAll(inHandOrder(Action.Flip.class, flip -> gain(flip) > 0, this::flip));
    return steps;
  }

  private boolean byEar(Action.Turn turn) {
    return settings.byEar(changeover.to(), turn.knob());
  }

  /** Below 0 for a gain step that goes down, above 0 for one that goes up. */
  private static int gain(Action.Flip flip) {
    Toggle toggle = Toggle.of(flip.toggle());
    OptionalDouble to = toggle.gain(flip.to().toString());
    OptionalDouble from =
        flip.from().map(at -> toggle.gain(at.toString())).orElse(OptionalDouble.of(1));
    return to.isEmpty() || from.isEmpty()
        ? 0
        : Double.compare(to.getAsDouble(), from.getAsDouble());
  }

  /**
   * With the level down before and up after, wherever something could be heard to pop.
   *
   * @param loud the gain steps that stay up meanwhile
   * @param rise what is said of a song that comes out much louder than the one before; empty if it
   *     does not
   */
  static List<Step> framed(
      List<Step> moves, List<Step> tuning, List<String> loud, String rise, int song) {
    boolean pops = moves.stream().anyMatch(step -> step.verb() != Verb.TURN);
    List<Step> inside = Stream.concat(moves.stream(), tuning.stream()).toList();
    if (!pops && tuning.isEmpty() && rise.isEmpty()) {
      return inside;
    }
    String up = loud.isEmpty() ? "" : " (" + String.join("; ", loud) + ")";
    Step lower =
        fixed(Verb.LOWER, "LOWER the main level before any plug or switch moves" + up, song)
            .leaving(List.of(new Change.Level(true)), false);
    Step raise =
        fixed(Verb.RAISE, "RAISE the main level slowly" + rise, song)
            .leaving(List.of(new Change.Level(false)), false);
    return Stream.of(List.of(lower), inside, List.of(raise)).flatMap(List::stream).toList();
  }

  private static Step fixed(Verb verb, String text, int song) {
    return new Step(verb, text, "", 0, List.of(), song, false);
  }

  private <A extends Action> List<A> only(Class<A> type) {
    return changeover.actions().stream().filter(type::isInstance).map(type::cast).toList();
  }

  private <A extends Action> List<Step> inHandOrder(
      Class<A> type, Predicate<A> which, Function<A, Step> worded) {
    Comparator<Step> byPlace = Comparator.comparing(step -> step.reach().get(0), HandOrder.SPOTS);
    return only(type).stream()
        .filter(which)
        .map(worded)
        .sorted(byPlace.thenComparing(Step::text))
        .toList();
  }

  private Step pull(Action.Remove remove) {
    Cord cord = remove.cord().cord();
    String why = cords.whyPulled(changeover.to(), cord);
    List<Touch> touches = List.of(Touch.pull(cord.sink()), Touch.pull(cord.source()));
    return plugs(Verb.PULL, Wording.pull(remove.cord()), why, changeover.to(), false, touches)
        .leaving(List.of(Changes.pulled(cord)), unheard.pull(changeover, cord));
  }

  private Step plug(Action.Add add) {
    Cord cord = add.cord().cord();
    int song = cords.songFor(changeover.to(), cord);
    String why = cords.whyPlugged(changeover.to(), cord);
    List<Touch> touches = List.of(Touch.plug(cord.source()), Touch.plug(cord.sink()));
    boolean early = song > changeover.to();
    return plugs(Verb.PLUG, Wording.plug(add.cord()), why, song, early, touches)
        .leaving(List.of(Changes.plugged(add.cord())), unheard.plug(changeover, cord));
  }

  private Step move(ShiftOrder.Ordered ordered) {
    Action.Shift shift = ordered.shift();
    int to = changeover.to();
    int song = cords.songFor(to, shift.to().cord());
    boolean early = song > to && cords.inTheWay(to, shift.from().cord()).isEmpty();
    String why = cords.whyMoved(to, shift);
    List<Change> changes =
        List.of(Changes.pulled(shift.from().cord()), Changes.plugged(shift.to()));
    Touch leaves = Touch.pull(ShiftOrder.leaves(shift));
    Touch enters = Touch.plug(ShiftOrder.enters(shift));
    return switch (ordered.form()) {
      case WHOLE ->
          plugs(Verb.MOVE, Wording.move(shift), why, song, early, List.of(leaves, enters))
              .leaving(changes, unheard.shift(changeover, shift));
      case LET_HANG -> plugs(Verb.PULL, Wording.letHang(shift), why, song, early, List.of(leaves));
      case PLUG_HANGING ->
          plugs(Verb.PLUG, Wording.plugHanging(shift), why, song, early, List.of(enters))
              .leaving(changes, false);
    };
  }

  /** Each place counts one move. */
  private static Step plugs(
      Verb verb, String text, String why, int song, boolean early, List<Touch> touches) {
    return new Step(verb, text, why, touches.size(), reach(touches), 0, song, early, touches);
  }

  private static List<Spot> reach(List<Touch> touches) {
    return touches.stream().map(Touch::spot).toList();
  }

  private Step flip(Action.Flip flip) {
    Touch touch = Touch.thrown(flip.toggle(), flip.from(), flip.to());
    return set(Verb.SWITCH, Wording.flip(flip), Extent.of(flip), flip.toggle(), touch, flip.to());
  }

  private Step turn(Action.Turn turn) {
    Touch touch = Touch.turned(turn.knob(), turn.from(), turn.to());
    String ear = byEar(turn) ? ", then by ear" : "";
    return set(Verb.TURN, Wording.turn(turn) + ear, Extent.of(turn), turn.knob(), touch, turn.to());
  }

  private Step set(
      Verb verb, String text, double size, Control control, Touch touch, Position position) {
    Change change = new Change.Set(control.toString(), position.toString());
    List<Change> changes =
        Ear.isTuning(control)
            ? List.of(change, new Change.Touched(control.module().name()))
            : List.of(change);
    int to = changeover.to();
    int song = settings.songFor(to, control);
    String why = settings.why(to, control);
    List<Touch> touches = List.of(touch);
    return new Step(verb, text, why, 1, reach(touches), size, song, song > to, touches)
        .leaving(changes, unheard.set(changeover, control));
  }

  /** {@code TUNE osc 3 to a pure fifth above osc 1 (another pitch cord)}. */
  static Step tune(
      Module module, Ear ear, String target, String reason, double size, int song, boolean early) {
    String text = ("TUNE " + module.name() + " " + target).strip() + " (" + reason + ")";
    List<Touch> touches = List.of(Touch.tuned(module));
    return new Step(Verb.TUNE, text, reason, 0, reach(touches), size, song, early, touches)
        .leaving(List.of(new Change.Tuned(module.name(), ear)), false);
  }
}
