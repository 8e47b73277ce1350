package entracte.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/**
 * Proves how few moves the changeovers of a window of neighbouring songs can have, by depth-first
 * search over castings, song by song and role by role. A partly cast window is a problem with fewer
 * demands (a jack whose cord is not yet known keeps no other away), so its exact cost is a lower
 * bound; the songs that follow add at least what smaller windows were proved to cost. Iterative
 * deepening (Korf 1985) asks for one move more each time, so that a proof cut short still leaves a
 * bound.
 *
 * <p>The bag is taken to be endless until a song is cast; cords may be parked until every song is
 * cast, even if the set forbids it; and channels that can be shut are shut for nothing in the song
 * that is being cast, until it is cast: then {@link ShutChoices} are tried one by one. No casting
 * is left out but mirror images: of modules, or strips, that are alike and have not been used so
 * far, only the first is tried.
 */
final class WindowProof {
  private final Problem problem;
  private final RigIndex rig;
  private final Alike alike;
  private final Casting casting;
  private final Ledger ledger;
  private final int[][] orders;
  private final int[] following;
  private final int[] moduleUses;
  private final int[] stripUses;
  private final boolean[] shutForFree;
  private final ShutChoices choices;
  private final BooleanSupplier stop;
  private int limit;
  private long nodesLeft;
  private boolean cut;
  private boolean exact;
  private Optional<Casting> found = Optional.empty();

  /**
   * @param following for each song of the window, what the changeovers after it cost at least
   */
  WindowProof(Problem window, int[] following, BooleanSupplier stop) {
    problem = window;
    rig = window.rig;
    this.following = following.clone();
    this.stop = stop;
    alike = new Alike(window);
    casting = new Casting(window.songs(), rig.strips());
    orders = new int[window.songs()][];
    for (int s = 0; s < window.songs(); s++) {
      take(s, 0);
    }
    for (boolean[] shut : casting.shut) {
      Arrays.fill(shut, true);
    }
    shutForFree = new boolean[window.songs()];
    Arrays.fill(shutForFree, true);
    ledger = new Ledger(window, new Layout(window, casting, shutForFree, true), Stock.LOOSE);
    choices = new ShutChoices(ledger.layout);
    moduleUses = new int[rig.modules.size()];
    stripUses = new int[rig.strips()];
  }

  /** Starts a song afresh in one of its shapes. */
  private void take(int song, int shape) {
    Shape taken = problem.shapes.get(song).get(shape);
    casting.shape[song] = shape;
    casting.module[song] = new int[taken.roles()];
    Arrays.fill(casting.module[song], Casting.UNCAST);
    casting.strip[song] = new int[taken.strips.size()];
    Arrays.fill(casting.strip[song], CordLedger.NOTHING);
    orders[song] = RoleOrder.of(taken);
  }

  private Shape shape(int song) {
    return problem.shapes.get(song).get(casting.shape[song]);
  }

  /**
   * A lower bound on the moves of the window: as good as {@code nodes} steps can prove, and no
   * better than {@code enough}.
   */
  int prove(int atLeast, int enough, long nodes) {
    nodesLeft = nodes;
    int bound = atLeast;
    while (bound < enough) {
      limit = bound + 1;
      cut = false;
      exact = begins(0);
      if (exact || cut) {
        return bound;
      }
      bound++;
    }
    return bound;
  }

  /** Whether the bound proved last is the least cost itself. */
  boolean isExact() {
    return exact;
  }

  long nodesLeft() {
    return nodesLeft;
  }

  /** Whether some casting of a song and all that follow keeps the moves below the limit. */
  private boolean begins(int song) {
    if (song == problem.songs()) {
      return isTrue();
    }
    for (int shape = 0; shape < problem.shapes.get(song).size(); shape++) {
      take(song, shape);
      if (reaches(song, 0)) {
        return true;
      }
    }
    return false;
  }

  /** Whether what is now cast as a whole keeps below the limit by the set's own rules. */
  private boolean isTrue() {
    Ledger real = problem.parking ? ledger : new Ledger(problem, casting.copy(), Stock.LOOSE);
    long moves = real.moves();
    Truth truth = new Truth(real.layout);
    if (moves < limit * Weights.CHANGEOVER && truth.bagMayRunEmpty()) {
      moves = Math.max(moves, real.turning() + truth.plugging());
    }
    if (moves >= limit * Weights.CHANGEOVER) {
      return false;
    }
    found = Optional.of(casting.copy());
    return true;
  }

  /** Whether the songs cast so far keep below the limit even if the bag may run empty. */
  private boolean bagAllows(int song) {
    Truth truth = new Truth(ledger.layout);
    return song + 1 == problem.songs()
        || !truth.bagMayRunEmpty()
        || Weights.changeoverMoves(ledger.turning() + truth.pluggingBound()) + following[song]
            < limit;
  }

  /** The casting that has the bound for its cost, if the bound is exact and one was met. */
  Optional<Casting> found() {
    return found;
  }

  /** Whether some casting of the rest keeps the moves below the limit. */
  private boolean reaches(int song, int place) {
    if (place == orders[song].length) {
      return complete(song);
    }
    int role = orders[song][place];
    Shape shape = shape(song);
    boolean freshTried = false;
    for (int module : shape.candidates[role]) {
      if (isTaken(song, module) || isMirrored(shape, role, module)) {
        continue;
      }
      int[] strips = new int[shape.strips.size()];
      if (strips(song, place, module, shape.firstStrip[role], strips)) {
        return true;
      }
    }
    return false;
  }

  /** The song is cast: decides which of its channels are shut, at their true cost. */
  private boolean complete(int song) {
    List<Integer> open = choices.openTo(song);
    toggle(song, open);
    shutForFree[song] = false;
    List<Integer> held = open.stream().filter(strip -> choices.holds(song, strip)).toList();
    boolean found = shut(song, held, 0);
    shutForFree[song] = true;
    toggle(song, open);
    return found;
  }

  private boolean shut(int song, List<Integer> held, int from) {
    if (from == held.size()) {
      return isBelowLimit(song) && bagAllows(song) && begins(song + 1);
    }
    if (shut(song, held, from + 1)) {
      return true;
    }
    List<Integer> one = List.of(held.get(from));
    toggle(song, one);
    boolean found = shut(song, held, from + 1);
    toggle(song, one);
    return found;
  }

  private void toggle(int song, List<Integer> strips) {
    if (!strips.isEmpty()) {
      strips.forEach(strip -> ledger.edits().toggle(song, strip));
      ledger.apply();
      ledger.accept();
    }
  }

  private boolean isTaken(int song, int module) {
    for (int other : casting.module[song]) {
      if (other == module) {
        return true;
      }
    }
    return false;
  }

  /** Whether an unused module has a twin before it that is unused as well. */
  private boolean isMirrored(Shape shape, int role, int module) {
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

  /** Chooses a physical strip for each strip of the role from {@code q} on. */
  private boolean strips(int song, int place, int module, int q, int[] strips) {
    Shape shape = shape(song);
    int role = orders[song][place];
    if (q == shape.firstStrip[role + 1]) {
      return cast(song, place, module, strips);
    }
    int first = StripChoice.firstOfGroup(rig, shape, q, module);
    int number = shape.strips.get(q).number();
    if (StripChoice.isOwn(rig, shape, q, module)) {
      strips[q] = first;
      return strips(song, place, module, q + 1, strips);
    }
    int count = StripChoice.count(rig, shape, q, module);
    boolean freshTried = false;
    for (int strip = first; strip < first + count; strip++) {
      boolean wrong = number > 0 && strip != first + number - 1;
      boolean fresh = stripUses[strip] == 0 && !alike.stripIsSpecial[strip];
      if (wrong || (fresh && freshTried) || isTaken(shape, role, q, strip, strips)) {
        continue;
      }
      freshTried |= fresh;
      strips[q] = strip;
      stripUses[strip]++;
      boolean found = strips(song, place, module, q + 1, strips);
      stripUses[strip]--;
      if (found || cut) {
        return found;
      }
    }
    return false;
  }

  private static boolean isTaken(Shape shape, int role, int q, int strip, int[] strips) {
    for (int before = shape.firstStrip[role]; before < q; before++) {
      if (strips[before] == strip) {
        return true;
      }
    }
    return false;
  }

  private boolean cast(int song, int place, int module, int[] strips) {
    if (--nodesLeft < 0 || ((nodesLeft & 255) == 0 && stop.getAsBoolean())) {
      cut = true;
      return false;
    }
    int role = orders[song][place];
    put(song, role, module, strips);
    moduleUses[module]++;
    boolean found = isBelowLimit(song) && reaches(song, place + 1);
    if (!found && !cut) {
      found = shutBefore(song, place, role);
    }
    moduleUses[module]--;
    put(song, role, Casting.UNCAST, casting.strip[song].clone());
    return found;
  }

  /** Tries to have had the channels that a role takes shut in songs before. */
  private boolean shutBefore(int song, int place, int role) {
    Shape shape = shape(song);
    List<List<Integer>> songs = new ArrayList<>();
    List<Integer> strips = new ArrayList<>();
    for (int q = shape.firstStrip[role]; q < shape.firstStrip[role + 1]; q++) {
      int strip = casting.strip[song][q];
      if (strip >= 0 && rig.closedControls[strip].length > 0) {
        List<Integer> before = choices.before(song, strip);
        if (!before.isEmpty()) {
          strips.add(strip);
          songs.add(before);
        }
      }
    }
    return !strips.isEmpty() && shutBefore(song, place, strips, songs, 0, false);
  }

  private boolean shutBefore(
      int song, int place, List<Integer> strips, List<List<Integer>> songs, int from, boolean any) {
    if (from == strips.size()) {
      return any && isBelowLimit(song) && reaches(song, place + 1);
    }
    boolean found = shutBefore(song, place, strips, songs, from + 1, any);
    int shut = 0;
    List<Integer> strip = List.of(strips.get(from));
    while (!found && !cut && shut < songs.get(from).size()) {
      toggle(songs.get(from).get(shut++), strip);
      found = shutBefore(song, place, strips, songs, from + 1, true);
    }
    while (shut > 0) {
      toggle(songs.get(from).get(--shut), strip);
    }
    return found;
  }

  private void put(int song, int role, int module, int[] strips) {
    Shape shape = shape(song);
    ledger.edits().recast(casting, song, role, module);
    for (int q = shape.firstStrip[role]; q < shape.firstStrip[role + 1]; q++) {
      int strip = module == Casting.UNCAST ? CordLedger.NOTHING : strips[q];
      ledger.edits().takeStrip(song, q, strip);
    }
    ledger.apply();
    ledger.accept();
  }

  private boolean isBelowLimit(int song) {
    return ledger.layout.faults() == 0
        && Weights.changeoverMoves(ledger.moves()) + following[song] < limit;
  }
}
