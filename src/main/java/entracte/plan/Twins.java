package entracte.plan;

/** Of modules and strips that are alike and not in use so far, a proof need try only one. */
final class Twins {
  private final Alike alike;
  private final int[] moduleUses;
  private final int[] stripUses;

  Twins(Problem problem) {
    alike = new Alike(problem);
    moduleUses = new int[problem.rig.modules.size()];
    stripUses = new int[problem.rig.strips()];
  }

  void use(int module, int by) {
    moduleUses[module] += by;
  }

  void useStrip(int strip, int by) {
    stripUses[strip] += by;
  }

  /** Whether an unused module has a twin before it that is unused as well. */
  boolean isMirrored(Shape shape, int role, int module) {
    if (moduleUses[module] > 0) {
      return false;
    }
    for (int other : shape.candidates[role]) {
      if (other < module
          && moduleUses[other] == 0
          && alike.moduleClass[other] == alike.moduleClass[module]) {
        return true;
      }
    }
    return false;
  }

  /** Whether nothing tells a strip from the other unused ones of its module. */
  boolean isFresh(int strip) {
    return stripUses[strip] == 0 && !alike.stripIsSpecial[strip];
  }
}
