package entracte.plan;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/**
 * Proves how few moves the changeovers of a window of neighbouring songs can have, by depth-first
 * search over castings, song by song, role by role and strip by strip. A partly cast window is a
 * problem with fewer demands (a jack whose cord is not yet known keeps no other away), so its exact
 * cost is a lower bound; the songs that follow add at least what smaller windows were proved to
 * cost. Iterative deepening (Korf 1985) asks for one move more each time, so that a proof cut short
 * still leaves a bound.
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
  private final Twins twins;
  private final Casting casting;
  private final Ledger ledger;
  private final Decisions[] decisions;
  private final int[] following;
  private final boolean[] shutForFree;
  private final ShutChoices choices;
  private final WindowTruth truth;
  private final Optional<PastStates> pasts;
  private final Outlook[] outlooks;
  private final BooleanSupplier stop;
  private final int share;
  private final int shares;
  private int limit;
  private long nodesLeft;
  private boolean cut;
  private boolean exact;

  /** Whether the set's own rules forbade what the window's allow: pasts do not tell of those. */
  private boolean overruled;

  private Optional<Casting> found = Optional.empty();

  /**
   * @param following for each song of the window, what the changeovers after it cost at least
   */
  WindowProof(Problem window, int[] following, BooleanSupplier stop) {
    this(window, following, stop, 0, 1);
  }

  /**
   * One of several that share the work: each goes on only from such beginnings as are its own, so
   * that what all of them try in vain is in vain.
   */
  WindowProof(Problem window, int[] following, BooleanSupplier stop, int share, int shares) {
    this.share = share;
    this.shares = shares;
    problem = window;
    rig = window.rig;
    this.following = following.clone();
    this.stop = stop;
    twins = new Twins(window);
    casting = new Casting(window.songs(), rig.strips());
    decisions = new Decisions[window.songs()];
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
    truth = new WindowTruth(window, ledger);
    outlooks = new Outlook[window.songs()];
    pasts =
        PastStates.suit(window)
            ? Optional.of(new PastStates(new Past(window, ledger.layout)))
            : Optional.empty();
  }

  /** Starts a song afresh in one of its shapes. */
  private void take(int song, int shape) {
    Shape taken = problem.shapes[song][shape];
    casting.shape[song] = shape;
    casting.module[song] = new int[taken.roles()];
    Arrays.fill(casting.module[song], Casting.UNCAST);
    casting.strip[song] = new int[taken.strips.size()];
    Arrays.fill(casting.strip[song], CordLedger.NOTHING);
    decisions[song] = new Decisions(taken);
  }

  private Shape shape(int song) {
    return problem.shape(casting, song);
  }

  /**
   * A lower bound on the moves of the window: as good as {@code nodes} steps can prove, and no
   * better than {@code enough}.
   */
  int prove(int atLeast, int enough, long nodes) {
    nodesLeft = nodes;
    int bound = atLeast;
    while (bound < enough && isInVain(bound + 1)) {
      bound++;
    }
    return bound;
  }

  /** Allows so many steps from now on. */
  void allow(long nodes) {
    nodesLeft = nodes;
  }

  /** Whether no casting, of those that are its own, keeps below a limit, as far as steps last. */
  boolean isInVain(int below) {
    limit = below;
    cut = false;
    exact = begins(0);
    return !exact && !cut;
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
    for (int shape = 0; shape < problem.shapes[song].length; shape++) {
      take(song, shape);
      outlooks[song] = new Outlook(ledger, song, decisions[song]);
      if (reaches(song, 0)) {
        return true;
      }
    }
    return false;
  }

  private boolean isTrue() {
    if (!truth.holds(limit)) {
      overruled = true;
      return false;
    }
    found = Optional.of(casting.copy());
    return true;
  }

  private boolean bagAllows(int song) {
    boolean allows = song + 1 == problem.songs() || truth.bagAllows(limit, following[song]);
    overruled |= !allows;
    return allows;
  }

  /** The casting that has the bound for its cost, if the bound is exact and one was met. */
  Optional<Casting> found() {
    return found;
  }

  /** Whether some casting of the rest keeps the moves below the limit. */
  private boolean reaches(int song, int place) {
    Decisions order = decisions[song];
    if (place == order.places()) {
      return complete(song);
    }
    if (pasts.isEmpty() || !order.isCrossroads(song, place)) {
      return decides(song, place);
    }
    int left = limit - Weights.changeoverMoves(ledger.moves());
    PastStates.Visit visit = pasts.get().visit(song, place, left);
    if (visit.isInVain() || (song == 1 && place == 0 && visit.share(shares) != share)) {
      return false;
    }
    boolean before = overruled;
    overruled = false;
    boolean reached = decides(song, place);
    if (!reached && !cut && !overruled) {
      visit.wasInVain();
    }
    overruled |= before;
    return reached;
  }

  private boolean decides(int song, int place) {
    Decisions order = decisions[song];
    return order.role[place] >= 0
        ? casts(song, place, order.role[place])
        : chooses(song, place, order.strip[place]);
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
      return isBelowLimit(song, decisions[song].places()) && bagAllows(song) && begins(song + 1);
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

  /** Tries every module for a role. */
  private boolean casts(int song, int place, int role) {
    Shape shape = shape(song);
    for (int module : shape.candidates[role]) {
      if (ledger.layout.isCast(song, module) || twins.isMirrored(shape, role, module)) {
        continue;
      }
      if (isOver()) {
        return false;
      }
      put(song, role, module);
      twins.use(module, 1);
      boolean found = isBelowLimit(song, place + 1) && reaches(song, place + 1);
      twins.use(module, -1);
      put(song, role, Casting.UNCAST);
      if (found || cut) {
        return found;
      }
    }
    return false;
  }

  /** Tries every strip of a role's module; of those that nothing tells apart, the first. */
  private boolean chooses(int song, int place, int q) {
    Shape shape = shape(song);
    int module = casting.module[song][shape.roleOfStrip[q]];
    int first = StripChoice.firstOfGroup(rig, shape, q, module);
    if (StripChoice.isOwn(rig, shape, q, module)) {
      putStrip(song, q, first);
      boolean found = isBelowLimit(song, place + 1) && reaches(song, place + 1);
      putStrip(song, q, CordLedger.NOTHING);
      return found;
    }
    int number = shape.strips.get(q).number();
    int count = StripChoice.count(rig, shape, q, module);
    boolean freshTried = false;
    for (int strip = first; strip < first + count; strip++) {
      boolean wrong = number > 0 && strip != first + number - 1;
      boolean fresh = twins.isFresh(strip);
      if (wrong || (fresh && freshTried) || ledger.layout.isNamed(song, strip)) {
        continue;
      }
      freshTried |= fresh;
      if (isOver()) {
        return false;
      }
      boolean found = takes(song, place, q, strip);
      if (found || cut) {
        return found;
      }
    }
    return false;
  }

  private boolean takes(int song, int place, int q, int strip) {
    twins.useStrip(strip, 1);
    putStrip(song, q, strip);
    boolean found = isBelowLimit(song, place + 1) && reaches(song, place + 1);
    if (!found && !cut && rig.closedControls[strip].length > 0) {
      found = shutBefore(song, place, strip, choices.before(song, strip));
    }
    putStrip(song, q, CordLedger.NOTHING);
    twins.useStrip(strip, -1);
    return found;
  }

  private boolean isOver() {
    cut |= --nodesLeft < 0 || ((nodesLeft & 255) == 0 && stop.getAsBoolean());
    return cut;
  }

  /** Tries to have had a channel shut in songs before, in one more each time. */
  private boolean shutBefore(int song, int place, int strip, List<Integer> songs) {
    boolean found = false;
    int shut = 0;
    while (!found && !cut && shut < songs.size()) {
      toggle(songs.get(shut++), List.of(strip));
      found = isBelowLimit(song, place + 1) && reaches(song, place + 1);
    }
    while (shut > 0) {
      toggle(songs.get(--shut), List.of(strip));
    }
    return found;
  }

  /** Its strips come later, the only one there is as well: an {@link Outlook} counts on that. */
  private void put(int song, int role, int module) {
    Shape shape = shape(song);
    ledger.edits().recast(casting, song, role, module);
    for (int q = shape.firstStrip[role]; q < shape.firstStrip[role + 1]; q++) {
      ledger.edits().takeStrip(song, q, CordLedger.NOTHING);
    }
    ledger.apply();
    ledger.accept();
  }

  private void putStrip(int song, int q, int strip) {
    int role = shape(song).roleOfStrip[q];
    ledger.edits().recast(casting, song, role, casting.module[song][role]);
    ledger.edits().takeStrip(song, q, strip);
    ledger.apply();
    ledger.accept();
  }

  private boolean isBelowLimit(int song, int place) {
    int sure = Weights.changeoverMoves(ledger.moves()) + following[song];
    return !ledger.layout.isHopeless()
        && sure < limit
        && sure + outlooks[song].atLeast(ledger, place) < limit;
  }
}
