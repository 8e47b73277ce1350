package entracte.plan;

import entracte.check.Part;
import entracte.check.PlayableSet;
import entracte.rig.Cord;
import entracte.rig.RigState;
import java.util.Arrays;
import java.util.OptionalInt;
import java.util.function.Function;

/** One planning problem as numbers: the rig, the shapes of every song, and the start state. */
final class Problem {
  static final int TOO_FAR = -1;

  final PlayableSet set;
  final Start start;
  final RigIndex rig;
  final Weights weights;
  final Prices prices;
  final boolean parking;

  /** The ways each song can be laid out; the first song is song 0. */
  final Shape[][] shapes;

  /** The cords of the start state, as pairs of sockets. */
  final int[][] startCords;

  /** Where each control stands at the start; NaN if that is unknown. */
  final double[] startPosition;

  /** The length a cord between two modules needs, or {@link #TOO_FAR}. */
  final int[][] lengthNeeded;

  /** Moves are counted. */
  Problem(PlayableSet set, Start start) {
    this(set, start, Prices::counted);
  }

  Problem(PlayableSet set, Start start, Function<RigIndex, Prices> pricing) {
    this.set = set;
    this.start = start;
    rig = new RigIndex(set.setList().rig());
    prices = pricing.apply(rig);
    weights = Weights.of(start);
    parking = set.setList().parking();
    Chains chains = new Chains(rig);
    shapes = set.parts().stream().map(part -> shapesOf(part, chains)).toArray(Shape[][]::new);
    RigState state = start.state();
    startCords = state.cords().stream().map(this::sockets).toArray(int[][]::new);
    startPosition = new double[rig.controls.size()];
    Arrays.fill(startPosition, Double.NaN);
    state
        .positions()
        .forEach(
            (control, position) -> {
              int c = rig.indexOf(control);
              startPosition[c] = rig.value(c, position);
            });
    lengthNeeded = lengths();
  }

  /** The songs {@code from} to {@code to} (exclusive) alone; the first of them starts for free. */
  private Problem(Problem whole, int from, int to) {
    prices = whole.prices;
    set = whole.set;
    rig = whole.rig;
    parking = whole.parking;
    lengthNeeded = whole.lengthNeeded;
    shapes = Arrays.copyOfRange(whole.shapes, from, to);
    boolean atStart = from == 0;
    start = atStart ? whole.start : Start.bare();
    weights = Weights.of(start);
    startCords = atStart ? whole.startCords : new int[0][];
    startPosition = whole.startPosition.clone();
    if (!atStart) {
      Arrays.fill(startPosition, Double.NaN);
    }
  }

  /**
   * The songs {@code from} to {@code to} (exclusive) as a problem of their own. Its changeovers
   * cost at most what they cost in the whole: whatever the whole brings along is free here.
   */
  Problem window(int from, int to) {
    return new Problem(this, from, to);
  }

  /** The same songs in another order, from the same start state. */
  Problem inOrder(int... order) {
    return new Problem(this, start, order);
  }

  /** Some of the songs alone, the first of them from a bare rig. */
  Problem alone(int... songs) {
    return new Problem(this, Start.bare(), songs);
  }

  private Problem(Problem whole, Start start, int[] songs) {
    prices = whole.prices;
    set = whole.set.inOrder(songs);
    rig = whole.rig;
    parking = whole.parking;
    lengthNeeded = whole.lengthNeeded;
    this.start = start;
    weights = Weights.of(start);
    shapes = Arrays.stream(songs).mapToObj(song -> whole.shapes[song]).toArray(Shape[][]::new);
    boolean same = start == whole.start;
    startCords = same ? whole.startCords : new int[0][];
    startPosition = whole.startPosition.clone();
    if (!same) {
      Arrays.fill(startPosition, Double.NaN);
    }
  }

  /** The same, with other weights to search with. */
  Problem weighing(Weights other) {
    return new Problem(this, other);
  }

  private Problem(Problem whole, Weights weights) {
    this.weights = weights;
    prices = whole.prices;
    set = whole.set;
    rig = whole.rig;
    parking = whole.parking;
    lengthNeeded = whole.lengthNeeded;
    start = whole.start;
    shapes = whole.shapes;
    startCords = whole.startCords;
    startPosition = whole.startPosition;
  }

  private Shape[] shapesOf(Part part, Chains chains) {
    return chains.choicesFor(part).stream()
        .map(choice -> ShapeBuilder.build(rig, part, choice))
        .toArray(Shape[]::new);
  }

  private int[] sockets(Cord cord) {
    return new int[] {rig.indexOf(cord.source()), rig.indexOf(cord.sink())};
  }

  private int[][] lengths() {
    int[][] needed = new int[rig.modules.size()][rig.modules.size()];
    for (int a = 0; a < needed.length; a++) {
      for (int b = 0; b < needed.length; b++) {
        OptionalInt cm = rig.rig.cordLengthCm(rig.modules.get(a), rig.modules.get(b));
        needed[a][b] = cm.orElse(TOO_FAR);
      }
    }
    return needed;
  }

  /** The shape that a casting gives a song. */
  Shape shape(Casting casting, int song) {
    return shapes[song][casting.shape[song]];
  }

  int songs() {
    return shapes.length;
  }

  /** How many modules and strips a casting chooses. */
  int choices() {
    return Arrays.stream(shapes).map(of -> of[0]).mapToInt(s -> s.roles() + s.strips.size()).sum();
  }

  /** The start state and the songs. */
  int columns() {
    return shapes.length + 1;
  }
}
