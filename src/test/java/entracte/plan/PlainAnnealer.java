package entracte.plan;

import java.util.SplittableRandom;

/**
 * A rival to compare with: simulated annealing over castings as anybody would write it
 * (Kirkpatrick, Gelatt and Vecchi 1983), in one thread, with one cooling over the whole of its
 * time. A step gives one role of one song another module, or changes places with the role that has
 * it, or gives a strip another of its group. It is handed our exact cost, kept change by change, so
 * that it is no slower than it could be.
 */
final class PlainAnnealer {
  private static final double HOT = 3;
  private static final double COLD = 0.15;
  private static final int CLOCK_EVERY = 128;

  private final Problem problem;
  private final RigIndex rig;
  private final SplittableRandom random;
  private final Ledger ledger;
  private Casting best;
  private long steps;

  PlainAnnealer(Problem problem, long seed) {
    this.problem = problem;
    rig = problem.rig;
    random = new SplittableRandom(seed);
    Casting first = ((FirstCasting.Found.Cast) new FirstCasting(problem).find()).casting();
    ledger = new Ledger(problem, first, Stock.LOOSE);
    best = first.copy();
  }

  /** Anneals for so long; returns the best plan of what it found, if the bag allows it. */
  int moves(double seconds) {
    long begun = System.nanoTime();
    long cost = ledger.cost();
    long least = cost;
    double temperature = HOT;
    for (steps = 0; ; steps++) {
      if (steps % CLOCK_EVERY == 0) {
        double gone = (System.nanoTime() - begun) / 1e9 / seconds;
        if (gone >= 1) {
          break;
        }
        temperature = HOT * Math.pow(COLD / HOT, gone);
      }
      if (!propose()) {
        ledger.edits().clear();
        continue;
      }
      ledger.apply();
      long next = ledger.cost();
      double worse = (double) (next - cost) / Weights.CHANGEOVER;
      if (worse <= 0 || random.nextDouble() < Math.exp(-worse / temperature)) {
        ledger.accept();
        cost = next;
        if (cost < least) {
          least = cost;
          best = ledger.layout.casting.copy();
        }
      } else {
        ledger.undo();
      }
    }
    return new Finish(problem).plan(best).orElseThrow().moves();
  }

  long steps() {
    return steps;
  }

  private boolean propose() {
    Casting casting = ledger.layout.casting;
    int song = random.nextInt(problem.songs());
    Shape shape = ledger.layout.shape(song);
    if (shape.strips.isEmpty() || random.nextInt(3) > 0) {
      return recast(casting, shape, song, random.nextInt(shape.roles()));
    }
    return restrip(casting, shape, song, random.nextInt(shape.strips.size()));
  }

  private boolean recast(Casting casting, Shape shape, int song, int role) {
    int before = casting.module[song][role];
    int module = shape.candidates[role][random.nextInt(shape.candidates[role].length)];
    if (module == before) {
      return false;
    }
    for (int other = 0; other < shape.roles(); other++) {
      if (casting.module[song][other] == module) {
        if (!accepts(shape, other, before)) {
          return false;
        }
        put(casting, shape, song, other, before);
      }
    }
    put(casting, shape, song, role, module);
    return true;
  }

  private static boolean accepts(Shape shape, int role, int module) {
    for (int candidate : shape.candidates[role]) {
      if (candidate == module) {
        return true;
      }
    }
    return false;
  }

  /** Takes the same numbers of strips on the other module where its kind is the same. */
  private void put(Casting casting, Shape shape, int song, int role, int module) {
    int before = casting.module[song][role];
    ledger.edits().recast(casting, song, role, module);
    int[] lowest = new int[shape.strips.size()];
    StripChoice.lowest(rig, shape, role, module, lowest);
    boolean sameKind = rig.kindOfModule[before] == rig.kindOfModule[module];
    for (int q = shape.firstStrip[role]; q < shape.firstStrip[role + 1]; q++) {
      int moved = casting.strip[song][q] - rig.firstStrip[before][0] + rig.firstStrip[module][0];
      ledger.edits().takeStrip(song, q, sameKind ? moved : lowest[q]);
    }
  }

  private boolean restrip(Casting casting, Shape shape, int song, int q) {
    int role = shape.roleOfStrip[q];
    int module = casting.module[song][role];
    if (shape.strips.get(q).number() > 0 || StripChoice.isOwn(rig, shape, q, module)) {
      return false;
    }
    int first = StripChoice.firstOfGroup(rig, shape, q, module);
    int strip = first + random.nextInt(StripChoice.count(rig, shape, q, module));
    int before = casting.strip[song][q];
    if (strip == before) {
      return false;
    }
    ledger.edits().recast(casting, song, role, module);
    for (int other = shape.firstStrip[role]; other < shape.firstStrip[role + 1]; other++) {
      if (casting.strip[song][other] == strip) {
        if (shape.strips.get(other).number() > 0) {
          return false;
        }
        ledger.edits().takeStrip(song, other, before);
      }
    }
    ledger.edits().takeStrip(song, q, strip);
    return true;
  }
}
