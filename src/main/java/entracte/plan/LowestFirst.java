package entracte.plan;

import java.util.Arrays;

/**
 * The same casting by other names: of modules, and of strips, that nothing tells apart, those with
 * the lowest numbers are used first, as anybody would who patches by hand. Where cords are short it
 * may cost moves, for places differ in what reaches them.
 */
final class LowestFirst {
  private static final int NONE = -1;

  private final Problem problem;
  private final RigIndex rig;
  private final Alike alike;

  LowestFirst(Problem problem) {
    this.problem = problem;
    rig = problem.rig;
    alike = new Alike(problem);
  }

  Casting of(Casting casting) {
    Casting moved = renamed(casting, stripsOfModules(newModules(casting)));
    return renamed(moved, newStrips(moved));
  }

  private int[] newModules(Casting casting) {
    int[] name = nameless(rig.modules.size());
    boolean[] taken = new boolean[name.length];
    for (int[] modules : casting.module) {
      for (int module : modules) {
        nameModule(module, name, taken);
      }
    }
    for (int module = 0; module < name.length; module++) {
      nameModule(module, name, taken);
    }
    return name;
  }

  private void nameModule(int module, int[] name, boolean[] taken) {
    int least = 0;
    while (name[module] == NONE
        && (taken[least] || alike.moduleClass[least] != alike.moduleClass[module])) {
      least++;
    }
    if (name[module] == NONE) {
      name[module] = least;
      taken[least] = true;
    }
  }

  private int[] stripsOfModules(int[] newModule) {
    int[] name = new int[rig.strips()];
    for (int strip = 0; strip < name.length; strip++) {
      int module = rig.moduleOfStrip[strip];
      name[strip] = strip - rig.firstStrip[module][0] + rig.firstStrip[newModule[module]][0];
    }
    return name;
  }

  private int[] newStrips(Casting casting) {
    int[] name = nameless(rig.strips());
    boolean[] taken = new boolean[name.length];
    for (int[] strips : casting.strip) {
      for (int strip : strips) {
        nameStrip(strip, name, taken);
      }
    }
    for (int strip = 0; strip < name.length; strip++) {
      nameStrip(strip, name, taken);
    }
    return name;
  }

  private void nameStrip(int strip, int[] name, boolean[] taken) {
    if (name[strip] != NONE) {
      return;
    }
    int least = alike.stripIsSpecial[strip] ? strip : firstOfGroup(strip);
    while (taken[least] || least != strip && alike.stripIsSpecial[least]) {
      least++;
    }
    name[strip] = least;
    taken[least] = true;
  }

  private int firstOfGroup(int strip) {
    int first = 0;
    for (int start : rig.firstStrip[rig.moduleOfStrip[strip]]) {
      first = start <= strip ? Math.max(first, start) : first;
    }
    return first;
  }

  private Casting renamed(Casting casting, int[] newStrip) {
    Casting other = casting.copy();
    for (int song = 0; song < problem.songs(); song++) {
      for (int role = 0; role < other.module[song].length; role++) {
        int own = rig.firstStrip[casting.module[song][role]][0];
        other.module[song][role] = rig.moduleOfStrip[newStrip[own]];
      }
      for (int q = 0; q < other.strip[song].length; q++) {
        other.strip[song][q] = newStrip[casting.strip[song][q]];
      }
    }
    for (int strip = 0; strip < newStrip.length; strip++) {
      other.shut[newStrip[strip]] = casting.shut[strip].clone();
    }
    return other;
  }

  private static int[] nameless(int size) {
    int[] name = new int[size];
    Arrays.fill(name, NONE);
    return name;
  }
}
