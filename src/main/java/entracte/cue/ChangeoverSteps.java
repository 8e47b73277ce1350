package entracte.cue;

import entracte.plan.Action;
import entracte.plan.Changeover;
import entracte.rig.Control;
import entracte.rig.Cord;
import entracte.rig.Module;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * Puts the actions of one changeover in the order of the hands and words them. In a set-up what the
 * first song needs comes before what is made ready for later ones; in a changeover the hands travel
 * once, and both are done on the way.
 */
final class ChangeoverSteps {
  private final Changeover changeover;
  private final CordReasons cords;
  private final SettingReasons settings;

  ChangeoverSteps(Changeover changeover, CordReasons cords, SettingReasons settings) {
    this.changeover = changeover;
    this.cords = cords;
    this.settings = settings;
  }

  /** Everything between the level going down and the tuning. */
  List<Step> moves() {
    List<Step> steps = new ArrayList<>();
    steps.addAll(inHandOrder(Action.Remove.class, this::pull));
    ShiftOrder.of(only(Action.Shift.class)).forEach(ordered -> steps.add(move(ordered)));
    steps.addAll(inHandOrder(Action.Add.class, this::plug));
    steps.addAll(inHandOrder(Action.Flip.class, this::flip));
    steps.addAll(inHandOrder(Action.Turn.class, this::turn));
    return steps;
  }

  /** With the level down before and up after, wherever something could be heard to pop. */
  static List<Step> framed(List<Step> moves, List<Step> tuning, int song) {
    boolean pops = moves.stream().anyMatch(step -> step.verb() != Verb.TURN);
    List<Step> inside = Stream.concat(moves.stream(), tuning.stream()).toList();
    if (!pops && tuning.isEmpty()) {
      return inside;
    }
    Step lower = fixed(Verb.LOWER, "LOWER the main level before any plug or switch moves", song);
    Step raise = fixed(Verb.RAISE, "RAISE the main level slowly", song);
    return Stream.of(List.of(lower), inside, List.of(raise)).flatMap(List::stream).toList();
  }

  private static Step fixed(Verb verb, String text, int song) {
    return new Step(verb, text, "", 0, List.of(), song, false);
  }

  private <A extends Action> List<A> only(Class<A> type) {
    return changeover.actions().stream().filter(type::isInstance).map(type::cast).toList();
  }

  private <A extends Action> List<Step> inHandOrder(Class<A> type, Function<A, Step> worded) {
    Comparator<Step> nowFirst = Comparator.comparing(step -> changeover.setUp() && step.early());
    return only(type).stream()
        .map(worded)
        .sorted(
            nowFirst
                .thenComparing(step -> step.reach().get(0), HandOrder.SPOTS)
                .thenComparing(Step::text))
        .toList();
  }

  private Step pull(Action.Remove remove) {
    Cord cord = remove.cord().cord();
    return new Step(
        Verb.PULL,
        Wording.pull(remove.cord()),
        cords.whyPulled(changeover.to(), cord),
        remove.moves(),
        List.of(Spot.of(cord.sink()), Spot.of(cord.source())),
        changeover.to(),
        false);
  }

  private Step plug(Action.Add add) {
    Cord cord = add.cord().cord();
    int song = cords.songFor(changeover.to(), cord);
    return new Step(
        Verb.PLUG,
        Wording.plug(add.cord()),
        cords.whyPlugged(changeover.to(), cord),
        add.moves(),
        List.of(Spot.of(cord.source()), Spot.of(cord.sink())),
        song,
        song > changeover.to());
  }

  private Step move(ShiftOrder.Ordered ordered) {
    Action.Shift shift = ordered.shift();
    int to = changeover.to();
    int song = cords.songFor(to, shift.to().cord());
    boolean early = song > to && cords.inTheWay(to, shift.from().cord()).isEmpty();
    String why = cords.whyMoved(to, shift);
    Spot leaves = Spot.of(ShiftOrder.leaves(shift));
    Spot enters = Spot.of(ShiftOrder.enters(shift));
    return switch (ordered.form()) {
      case WHOLE ->
          new Step(Verb.MOVE, Wording.move(shift), why, 2, List.of(leaves, enters), song, early);
      case LET_HANG ->
          new Step(Verb.PULL, Wording.letHang(shift), why, 1, List.of(leaves), song, early);
      case PLUG_HANGING ->
          new Step(Verb.PLUG, Wording.plugHanging(shift), why, 1, List.of(enters), song, early);
    };
  }

  private Step flip(Action.Flip flip) {
    return set(Verb.SWITCH, Wording.flip(flip), flip.toggle(), Extent.of(flip));
  }

  private Step turn(Action.Turn turn) {
    return set(Verb.TURN, Wording.turn(turn), turn.knob(), Extent.of(turn));
  }

  private Step set(Verb verb, String text, Control control, double size) {
    int to = changeover.to();
    int song = settings.songFor(to, control);
    List<Spot> reach = List.of(Spot.of(control));
    return new Step(verb, text, settings.why(to, control), 1, reach, size, song, song > to);
  }

  static Step tune(Module module, String reason, double size, int song) {
    String text = "TUNE " + module.name() + " (" + reason + ")";
    return new Step(Verb.TUNE, text, reason, 0, List.of(Spot.of(module)), size, song, false);
  }
}
