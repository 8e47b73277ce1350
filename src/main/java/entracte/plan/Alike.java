package entracte.plan;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * Which modules and strips are interchangeable in a problem: what no song tells apart, and no start
 * state. As long as none of its like has been used, trying one is trying all.
 */
final class Alike {
  private static final int NOT_SPECIAL = -1;

  /** The class of each module. */
  final int[] moduleClass;

  /** Whether a strip is told apart from its equals, by a number in a patch or by the start. */
  final boolean[] stripIsSpecial;

  private final Problem problem;
  private final RigIndex rig;

  Alike(Problem problem) {
    this.problem = problem;
    rig = problem.rig;
    stripIsSpecial = new boolean[rig.strips()];
    markNumbered();
    markDearer();
    boolean[] special = markStart();
    List<Signature> signatures = new ArrayList<>();
    for (int m = 0; m < rig.modules.size(); m++) {
      signatures.add(new Signature(rig.kindOfModule[m], special[m] ? m : NOT_SPECIAL, pricesOf(m)));
    }
    tellByRoles(signatures);
    moduleClass = new int[rig.modules.size()];
    Map<Signature, Integer> classes = new HashMap<>();
    for (int m = 0; m < moduleClass.length; m++) {
      tellByReach(signatures.get(m), m);
      Integer first = classes.putIfAbsent(signatures.get(m), m);
      moduleClass[m] = first == null ? m : first;
    }
  }

  /**
   * What tells modules apart.
   *
   * @param only the module, if the start state tells it from all others
   * @param prices what moves cost there
   * @param roles the roles that it can play, numbered through all songs
   * @param outOfReach the modules that no cord joins it with
   */
  private record Signature(
      int kind, int only, List<Integer> prices, BitSet roles, BitSet outOfReach) {
    Signature(int kind, int only, List<Integer> prices) {
      this(kind, only, prices, new BitSet(), new BitSet());
    }
  }

  /** What moves cost at a module, one after another. */
  private List<Integer> pricesOf(int module) {
    int end = rig.endOfModule(module);
    return IntStream.range(rig.firstStrip[module][0], end)
        .boxed()
        .flatMap(strip -> pricesOfStrip(strip).stream())
        .toList();
  }

  private List<Integer> pricesOfStrip(int strip) {
    List<Integer> prices = new ArrayList<>();
    for (int s = rig.firstSocketOfStrip[strip]; s < rig.firstSocketOfStrip[strip + 1]; s++) {
      prices.add(problem.prices.pull[s]);
      prices.add(problem.prices.plug[s]);
    }
    for (int c = rig.firstControlOfStrip[strip]; c < rig.firstControlOfStrip[strip + 1]; c++) {
      prices.add(problem.prices.set[c]);
    }
    return prices;
  }

  /** Strips at which moves do not cost the same as at their equals. */
  private void markDearer() {
    for (int module = 0; module < rig.modules.size(); module++) {
      for (int group = 0; group < rig.firstStrip[module].length; group++) {
        int first = rig.firstStrip[module][group];
        for (int strip = first + 1; strip < rig.endOfGroup(module, group); strip++) {
          if (!pricesOfStrip(strip).equals(pricesOfStrip(first))) {
            stripIsSpecial[strip] = true;
          }
        }
      }
    }
  }

  private void tellByRoles(List<Signature> signatures) {
    int number = 0;
    for (Shape[] shapes : problem.shapes) {
      for (Shape shape : shapes) {
        for (int[] candidates : shape.candidates) {
          for (int module : candidates) {
            signatures.get(module).roles().set(number);
          }
          number++;
        }
      }
    }
  }

  private void tellByReach(Signature signature, int module) {
    for (int other = 0; other < rig.modules.size(); other++) {
      if (problem.lengthNeeded[module][other] == Problem.TOO_FAR) {
        signature.outOfReach().set(other);
      }
    }
  }

  private void markNumbered() {
    for (Shape[] shapes : problem.shapes) {
      for (Shape shape : shapes) {
        for (int q = 0; q < shape.strips.size(); q++) {
          if (shape.strips.get(q).number() > 0) {
            markNumber(shape, q);
          }
        }
      }
    }
  }

  private void markNumber(Shape shape, int q) {
    for (int module : shape.candidates[shape.roleOfStrip[q]]) {
      if (!StripChoice.isOwn(rig, shape, q, module)) {
        int first = StripChoice.firstOfGroup(rig, shape, q, module);
        stripIsSpecial[first + shape.strips.get(q).number() - 1] = true;
      }
    }
  }

  private boolean[] markStart() {
    boolean[] special = new boolean[rig.modules.size()];
    for (int[] cord : problem.startCords) {
      for (int socket : cord) {
        special[rig.moduleOfSocket[socket]] = true;
        stripIsSpecial[rig.stripOfSocket[socket]] = true;
      }
    }
    for (int strip = 0; strip < rig.strips(); strip++) {
      for (int c = rig.firstControlOfStrip[strip]; c < rig.firstControlOfStrip[strip + 1]; c++) {
        if (!Double.isNaN(problem.startPosition[c])) {
          special[rig.moduleOfStrip[strip]] = true;
          stripIsSpecial[strip] = true;
        }
      }
    }
    return special;
  }
}
