package entracte.rehearsal;

import entracte.cue.Spot;
import entracte.cue.Step;
import entracte.cue.Verb;
import entracte.rig.CordStock;
import entracte.rig.Rig;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;

/**
 * A player made of chance: a speed of each kind of work, a law of learning, a scatter from run to
 * run, and slips that cost whole seconds. The program is told none of it.
 */
final class SimulatedPlayer {
  private static final int MODULES_IN_A_ROW = 9;
  private static final double MODULE_CM = 6;

  private static final Verb[] MOVES = {Verb.PULL, Verb.MOVE, Verb.PLUG, Verb.SWITCH, Verb.TURN};

  private final Random random;
  private final Map<Work, Double> factors = new EnumMap<>(Work.class);
  private final Law law;
  private final double scatter;
  private final double slipChance;
  private final TimeModel model;
  private long second;

  /** The changeover's own difficulty, which no model sees. */
  record Changeover(List<Step> steps, double difficulty) {}

  SimulatedPlayer(long seed) {
    this(seed, rig());
  }

  SimulatedPlayer(long seed, Rig rig) {
    random = new Random(seed);
    model = new TimeModel(rig);
    double speed = about(0.25);
    for (Work work : Work.values()) {
      factors.put(work, speed * about(0.2));
    }
    law =
        random.nextBoolean()
            ? Law.exponential(between(0.5, 0.95), between(0.1, 0.8))
            : Law.power(between(0.02, 0.4));
    scatter = between(0.06, 0.2);
    slipChance = between(0.02, 0.15);
  }

  static Rig rig() {
    return new Rig(
        "any", List.of(), List.of(), CordStock.unlimited(), 25, List.of(), Optional.empty());
  }

  double between(double low, double high) {
    return low + (high - low) * random.nextDouble();
  }

  private double about(double spread) {
    return Math.exp(spread * random.nextGaussian());
  }

  /** A changeover of 4 to 20 steps anywhere on two rows of nine modules. */
  Changeover changeover() {
    List<Step> steps = new ArrayList<>();
    int count = 4 + random.nextInt(17);
    for (int i = 0; i < count; i++) {
      Verb verb = MOVES[random.nextInt(MOVES.length)];
      boolean cord = verb == Verb.PULL || verb == Verb.MOVE || verb == Verb.PLUG;
      List<Spot> reach = cord ? List.of(spot(), spot()) : List.of(spot());
      double size = verb == Verb.TURN ? random.nextDouble() : 1;
      steps.add(new Step(verb, verb + " it", "", cord ? 2 : 1, reach, size, 0, false));
    }
    if (random.nextBoolean()) {
      steps.add(new Step(Verb.TUNE, "TUNE it", "", 0, List.of(spot()), 0, 0, false));
    }
    return changeover(steps);
  }

  /** A given one, as hard as it happens to be for this player. */
  Changeover changeover(List<Step> steps) {
    return new Changeover(steps, about(0.15));
  }

  private Spot spot() {
    int place = random.nextInt(MODULES_IN_A_ROW);
    return new Spot("m" + place, random.nextInt(2), MODULE_CM * (place + 0.5), random.nextInt(6));
  }

  /** What run number {@code n} of a changeover takes, from 1. */
  Run play(Changeover changeover, int n) {
    Makeup makeup = Makeup.sum(model.makeup(changeover.steps()));
    double seconds = changeover.difficulty() * Math.exp(law.log(n)) * about(scatter);
    double work = 0;
    for (Work each : Work.values()) {
      work += factors.get(each) * makeup.of(each);
    }
    boolean slip = random.nextDouble() < slipChance;
    return new Run(
        Instant.ofEpochSecond(second++),
        Run.Where.REHEARSAL,
        "song",
        Mark.of(changeover.steps()),
        seconds * work + (slip ? between(2, 8) : 0),
        slip ? 1 : 0,
        makeup,
        List.of());
  }
}
