package entracte.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Which modules and strips are interchangeable in a problem: what no song tells apart, and no start
 * state. As long as none of its like has been used, trying one is trying all.
 */
final class Alike {
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
    boolean[] special = markStart();
    moduleClass = new int[rig.modules.size()];
    List<String> signatures = new ArrayList<>();
    for (int m = 0; m < moduleClass.length; m++) {
      String signature = special[m] ? "only " + m : signature(m);
      if (!signatures.contains(signature)) {
        signatures.add(signature);
      }
      moduleClass[m] = signatures.indexOf(signature);
    }
  }

  private String signature(int module) {
    StringBuilder signature = new StringBuilder();
    signature.append(rig.kindOfModule[module]).append(':');
    for (List<Shape> shapes : problem.shapes) {
      for (Shape shape : shapes) {
        for (int[] candidates : shape.candidates) {
          boolean may = Arrays.stream(candidates).anyMatch(c -> c == module);
          signature.append(may ? '1' : '0');
        }
      }
    }
    for (int other = 0; other < rig.modules.size(); other++) {
      boolean reaches = problem.lengthNeeded[module][other] != Problem.TOO_FAR;
      signature.append(reaches ? "" : " not " + other);
    }
    return signature.toString();
  }

  private void markNumbered() {
    for (List<Shape> shapes : problem.shapes) {
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
