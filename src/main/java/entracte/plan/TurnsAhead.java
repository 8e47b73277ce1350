package entracte.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * How many turns and flips the roles of a song that have no module yet must add. What a role adds
 * on a module depends on nothing but the songs before, for no two roles of a song share a module.
 * So the least that several roles can add is an assignment of them to the modules left, which is
 * solved for every set of modules that may be left, by dynamic programming over such sets (Held and
 * Karp 1962). Roles that no module could play both are looked at apart.
 *
 * <p>Channels that may be shut are left out, for what their controls cost depends on when they are
 * shut; of other channels the cheapest is taken for each. Memory: roles times 2^modules of the
 * largest group, which is limited; larger groups are not foretold.
 */
final class TurnsAhead {
  private static final int MOST_MODULES = 12;
  private static final int UNKNOWN = -1;
  private static final int NEVER = 1 << 20;

  private final Layout layout;
  private final RigIndex rig;
  private final ControlLedger controls;
  private final int song;
  private final List<Kin> all = new ArrayList<>();

  /** Roles that share candidates, in the order of casting, and all their candidates. */
  private static final class Kin {
    final List<Integer> roles = new ArrayList<>();
    final List<Integer> places = new ArrayList<>();
    final List<Integer> modules = new ArrayList<>();
    int[][] turns;
    int[][] least;
  }

  TurnsAhead(Layout layout, int song, Decisions order) {
    this.layout = layout;
    this.song = song;
    rig = layout.rig;
    controls = layout.controls;
    Shape shape = layout.shape(song);
    for (int role = 0; role < shape.roles(); role++) {
      add(shape, role, order.placeOfRole[role]);
    }
    all.removeIf(kin -> kin.modules.size() > MOST_MODULES);
    all.forEach(kin -> fill(shape, kin));
    all.removeIf(kin -> isIdle(kin.turns));
  }

  private static boolean isIdle(int[][] turns) {
    return Arrays.stream(turns).allMatch(row -> Arrays.stream(row).allMatch(t -> t == 0));
  }

  private void add(Shape shape, int role, int place) {
    Kin merged = new Kin();
    List<Kin> joined =
        all.stream()
            .filter(
                kin -> Arrays.stream(shape.candidates[role]).anyMatch(m -> kin.modules.contains(m)))
            .toList();
    all.removeAll(joined);
    for (Kin kin : joined) {
      merged.roles.addAll(kin.roles);
      merged.places.addAll(kin.places);
      merged.modules.addAll(kin.modules);
    }
    merged.roles.add(role);
    merged.places.add(place);
    Arrays.stream(shape.candidates[role])
        .filter(m -> !merged.modules.contains(m))
        .forEach(merged.modules::add);
    all.add(merged);
  }

  private void fill(Shape shape, Kin kin) {
    sortByPlace(kin);
    kin.turns = new int[kin.roles.size()][kin.modules.size()];
    for (int r = 0; r < kin.turns.length; r++) {
      int role = kin.roles.get(r);
      Arrays.fill(kin.turns[r], NEVER);
      for (int module : shape.candidates[role]) {
        kin.turns[r][kin.modules.indexOf(module)] = turns(shape, role, module);
      }
    }
    kin.least = new int[kin.turns.length + 1][1 << kin.modules.size()];
    for (int[] row : kin.least) {
      Arrays.fill(row, UNKNOWN);
    }
  }

  private static void sortByPlace(Kin kin) {
    List<Integer> by = new ArrayList<>(kin.places);
    List<Integer> roles = new ArrayList<>(kin.roles);
    kin.places.sort(null);
    for (int i = 0; i < by.size(); i++) {
      kin.roles.set(i, roles.get(by.indexOf(kin.places.get(i))));
    }
  }

  /** The moves that a role's settings add on a module that does not play in this song so far. */
  private int turns(Shape shape, int role, int module) {
    Shape.Wants wants = shape.wants;
    int own = 0;
    int[][] onStrips = new int[shape.strips.size()][];
    for (int want : wants.ofRole()[role]) {
      int q = wants.strip()[want];
      if (q < 0 || StripChoice.isOwn(rig, shape, q, module)) {
        own += added(wants, want, module, rig.firstStrip[module][0]);
      } else {
        addOnStrips(shape, want, q, module, onStrips);
      }
    }
    for (int[] costs : onStrips) {
      own += costs == null ? 0 : Arrays.stream(costs).min().orElse(0);
    }
    return own;
  }

  private void addOnStrips(Shape shape, int want, int q, int module, int[][] onStrips) {
    int first = StripChoice.firstOfGroup(rig, shape, q, module);
    if (rig.closedControls[first].length > 0) {
      return;
    }
    int count = StripChoice.count(rig, shape, q, module);
    if (onStrips[q] == null) {
      onStrips[q] = new int[count];
    }
    for (int strip = 0; strip < count; strip++) {
      onStrips[q][strip] += added(shape.wants, want, module, first + strip);
    }
  }

  private int added(Shape.Wants wants, int want, int module, int strip) {
    int kind = rig.kindOfModule[module];
    int control = rig.firstControlOfStrip[strip] + wants.controlOf()[want][kind];
    if (controls.wants(control, song + 1)) {
      return 0;
    }
    long before = controls.cost(control);
    controls.want(
        control,
        song + 1,
        wants.low()[want][kind],
        wants.high()[want][kind],
        wants.nominal()[want][kind]);
    long after = controls.cost(control);
    controls.leave(control, song + 1);
    return Math.max(0, Weights.changeoverMoves(after) - Weights.changeoverMoves(before));
  }

  /** The turns that the roles from {@code place} on must add. */
  int atLeast(int place) {
    int sum = 0;
    for (Kin kin : all) {
      int first = 0;
      int used = 0;
      while (first < kin.roles.size() && kin.places.get(first) < place) {
        int module = layout.casting.module[song][kin.roles.get(first++)];
        used |= 1 << kin.modules.indexOf(module);
      }
      sum += least(kin, first, used);
    }
    return sum;
  }

  private int least(Kin kin, int role, int used) {
    if (role == kin.turns.length) {
      return 0;
    }
    if (kin.least[role][used] == UNKNOWN) {
      int least = NEVER;
      for (int m = 0; m < kin.turns[role].length; m++) {
        if ((used >> m & 1) == 0 && kin.turns[role][m] < NEVER) {
          least = Math.min(least, kin.turns[role][m] + least(kin, role + 1, used | 1 << m));
        }
      }
      kin.least[role][used] = least;
    }
    return kin.least[role][used];
  }
}
