package entracte.rehearsal;

import entracte.cue.Spot;
import entracte.cue.Step;
import entracte.cue.Verb;
import entracte.rehearsal.Mtm.Way;
import entracte.rig.Hands;
import entracte.rig.Rig;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Seconds for the steps of a changeover, of a player of whom nothing is known.
 *
 * <p>Each step is taken apart into motions: read the line, reach over the true distance from where
 * the hand was, grasp, pull, carry, plug, turn by the angle, press. Their times are those of {@link
 * Mtm}; what no motion table holds (reading, tuning, light and nerves) is guessed, and stands in
 * the rig's {@code hands} for the player to change. Everything but tuning, for which ears need no
 * light, is multiplied by {@code light}. The lines about the main level are known by heart.
 */
public final class TimeModel {
  private final double rowHeightCm;
  private final Hands hands;

  /** The model for whoever plays {@code rig}. */
  public TimeModel(Rig rig) {
    this.rowHeightCm = rig.rowHeightCm();
    this.hands = rig.hands();
  }

  Hands hands() {
    return hands;
  }

  /** What each step is made of, in seconds; the hand goes from each to the next. */
  List<Makeup> makeup(List<Step> steps) {
    List<Makeup> makeup = new ArrayList<>();
    Optional<Spot> hand = Optional.empty();
    for (Step step : steps) {
      makeup.add(makeup(step, hand));
      hand =
          step.reach().isEmpty()
              ? Optional.empty()
              : Optional.of(step.reach().get(step.reach().size() - 1));
    }
    return makeup;
  }

  /** What one step is made of, in seconds, for a hand that was somewhere. */
  Makeup makeup(Step step, Optional<Spot> hand) {
    double reach =
        hand.isPresent() && !step.reach().isEmpty()
            ? distanceCm(hand.get(), step.reach().get(0))
            : hands.way().firstCm();
    Map<Work, Double> tmu = new EnumMap<>(Work.class);
    switch (step.verb()) {
      case LOWER, RAISE -> tmu.put(Work.LEVEL, level(step));
      case PULL -> tmu.put(Work.PULL, pull(step, reach));
      case MOVE -> {
        tmu.put(Work.PULL, out(reach));
        tmu.put(Work.PLUG, in(between(step)));
      }
      case PLUG -> tmu.put(Work.PLUG, plug(step));
      case SWITCH -> tmu.put(Work.SWITCH, flip(reach, step.size()));
      case TURN -> tmu.put(Work.TURN, turn(reach, step.size()));
      case TUNE -> tmu.put(Work.TURN, Mtm.over(Way.REACH_B, reach) + Mtm.GRASP);
    }
    Map<Work, Double> seconds = new EnumMap<>(Work.class);
    tmu.forEach((work, each) -> seconds.put(work, Mtm.seconds(each) * hands.light()));
    if (step.verb() == Verb.TUNE) {
      seconds.put(Work.TUNE, hands.tuning().seconds(step.size()));
    }
    if (!tmu.containsKey(Work.LEVEL)) {
      seconds.put(Work.READ, readSeconds());
    }
    return new Makeup(seconds);
  }

  /** Seconds to read one line and find the place it names. */
  double readSeconds() {
    return (hands.readSeconds() + Mtm.seconds(Mtm.EYE_FOCUS)) * hands.light();
  }

  /** The straight distance between two places on the rig. */
  double distanceCm(Spot a, Spot b) {
    if (a.equals(b)) {
      return 0;
    }
    double cm = Math.hypot(a.centreCm() - b.centreCm(), (a.row() - b.row()) * rowHeightCm);
    return Math.max(cm, hands.way().moduleCm());
  }

  /** TMU to reach a plug and pull it. */
  double out(double reachCm) {
    return Mtm.over(Way.REACH_B, reachCm) + Mtm.GRASP + free();
  }

  private double free() {
    double byFit = Mtm.disengage(hands.plugs().fit().ordinal());
    OptionalDouble said = hands.plugs().pullSeconds();
    return said.isPresent() ? said.getAsDouble() / Mtm.SECONDS_PER_TMU : byFit;
  }

  /** TMU to carry a plug to its jack and put it in. */
  double in(double carryCm) {
    return Mtm.over(Way.MOVE_C, carryCm) + place();
  }

  /** TMU to put a plug in that is at its jack. */
  private double place() {
    return Mtm.position(hands.plugs().fit().ordinal()) + Mtm.RELEASE;
  }

  /** TMU to turn a knob by a part of its scale, looking before and after. */
  double turn(double reachCm, double part) {
    return Mtm.over(Way.REACH_B, reachCm)
        + Mtm.GRASP
        + Mtm.turn(part * hands.sweepDegrees())
        + 2 * Mtm.EYE_FOCUS
        + Mtm.RELEASE;
  }

  /** TMU to throw a switch past so many positions. */
  double flip(double reachCm, double positions) {
    return Mtm.over(Way.REACH_B, reachCm) + Math.max(1, positions) * Mtm.APPLY_PRESSURE;
  }

  /** TMU to put a cord away. */
  double toBag() {
    return Mtm.over(Way.MOVE_B, hands.way().bagCm());
  }

  /** TMU to find a cord in the bag and bring it to the case. */
  double fromBag() {
    return Mtm.over(Way.REACH_C, hands.way().bagCm())
        + Mtm.GRASP_JUMBLED
        + Mtm.over(Way.MOVE_C, hands.way().bagCm());
  }

  private double pull(Step step, double reachCm) {
    double tmu = out(reachCm);
    if (step.wholeCord()) {
      tmu += out(between(step)) + toBag();
    }
    return tmu + Mtm.RELEASE;
  }

  private double plug(Step step) {
    double loose = Mtm.over(Way.REACH_B, hands.way().hangCm()) + Mtm.GRASP;
    if (!step.wholeCord()) {
      return loose + in(hands.way().hangCm());
    }
    return fromBag() + place() + loose + in(between(step));
  }

  private double between(Step step) {
    List<Spot> reach = step.reach();
    return reach.size() < 2 ? hands.way().firstCm() : distanceCm(reach.get(0), reach.get(1));
  }

  private double level(Step step) {
    double tmu =
        Mtm.over(Way.REACH_A, hands.way().firstCm())
            + Mtm.GRASP
            + Mtm.turn(hands.level().degrees())
            + Mtm.RELEASE;
    boolean slowly = step.verb() == Verb.RAISE;
    return slowly ? tmu + hands.level().raiseSeconds() / Mtm.SECONDS_PER_TMU : tmu;
  }
}
