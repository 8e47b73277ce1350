package entracte.plan;

/** Finds physical strips for the strips of a role on a module. */
final class StripChoice {
  private StripChoice() {}

  /** The group's first strip on the module. */
  static int firstOfGroup(RigIndex rig, Shape shape, int strip, int module) {
    return rig.firstStrip[module][shape.groupOfStrip[strip][rig.kindOfModule[module]]];
  }

  static int count(RigIndex rig, Shape shape, int strip, int module) {
    int group = shape.groupOfStrip[strip][rig.kindOfModule[module]];
    return rig.modules.get(module).kind().groups().get(group).count();
  }

  /** Whether the strip is a jack that this kind of module has only once. */
  static boolean isOwn(RigIndex rig, Shape shape, int strip, int module) {
    return shape.groupOfStrip[strip][rig.kindOfModule[module]] == 0;
  }

  /** The sockets that an end may have on a module: one for each strip of its group. */
  static int[] sockets(RigIndex rig, Shape shape, int end, int module) {
    int jack = shape.jackOfEnd[end][rig.kindOfModule[module]];
    int q = shape.stripOfEnd[end];
    if (q < 0 || isOwn(rig, shape, q, module)) {
      return new int[] {rig.firstSocketOfStrip[rig.firstStrip[module][0]] + jack};
    }
    int first = firstOfGroup(rig, shape, q, module);
    int[] all = new int[count(rig, shape, q, module)];
    for (int i = 0; i < all.length; i++) {
      all[i] = rig.firstSocketOfStrip[first + i] + jack;
    }
    return all;
  }

  /** Gives a role the numbers it asks for and the lowest free ones otherwise. */
  static void lowest(RigIndex rig, Shape shape, int role, int module, int[] physical) {
    int from = shape.firstStrip[role];
    int to = shape.firstStrip[role + 1];
    for (int q = from; q < to; q++) {
      physical[q] = -1;
    }
    for (int q = from; q < to; q++) {
      int number = shape.strips.get(q).number();
      if (number > 0 || isOwn(rig, shape, q, module)) {
        physical[q] = firstOfGroup(rig, shape, q, module) + Math.max(0, number - 1);
      }
    }
    for (int q = from; q < to; q++) {
      if (physical[q] < 0) {
        int first = firstOfGroup(rig, shape, q, module);
        int strip = first;
        while (isTaken(physical, from, to, strip)) {
          strip++;
        }
        physical[q] = strip;
      }
    }
  }

  private static boolean isTaken(int[] physical, int from, int to, int strip) {
    for (int q = from; q < to; q++) {
      if (physical[q] == strip) {
        return true;
      }
    }
    return false;
  }
}
