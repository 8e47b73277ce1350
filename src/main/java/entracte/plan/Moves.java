package entracte.plan;

import java.util.SplittableRandom;

/**
 * Proposes changes to a casting:
 *
 * <ul>
 *   <li>two modules exchange what they play, in one song or in a run of songs;
 *   <li>two equal strips of a module exchange what they serve, likewise;
 *   <li>a channel is shut or opened in the songs that leave it alone.
 * </ul>
 *
 * <p>Runs of songs matter: two lives that cross over at one song are joined better by exchanging
 * all that follows than by a detour through every song. And most of the exchanges bring a cord to
 * where its fellow is in the songs before or after, so that it may stay in.
 */
final class Moves {
  /** Of ten exchanges of modules, how many bring a cord to where its fellow is. */
  private static final int FOLLOWING = 6;

  /** Most cords are where their fellows are already. */
  private static final int TRIES = 8;

  /** Of so many exchanges three go on to other songs. */
  private static final int RUNS_ARE_RARE = 10;

  private final Problem problem;
  private final RigIndex rig;
  private final Ledger ledger;
  private final Casting casting;
  private final SplittableRandom random;
  private final int[][] freeRoles;
  private final int[][] equalStrips;
  private final int[] shuttable;
  private int from;
  private int to;

  Moves(Problem problem, Ledger ledger, SplittableRandom random) {
    this.problem = problem;
    this.ledger = ledger;
    this.random = random;
    rig = problem.rig;
    casting = ledger.layout.casting;
    MoveTables tables = new MoveTables(problem, casting);
    freeRoles = tables.freeRoles();
    equalStrips = tables.equalStrips();
    shuttable = problem.parking ? tables.shuttable() : new int[0];
  }

  /** Whether there is anything to choose. */
  boolean any() {
    return hasFreeRoles() || equalStrips.length > 0 || shuttable.length > 0;
  }

  private boolean hasFreeRoles() {
    for (int[] roles : freeRoles) {
      if (roles.length > 0) {
        return true;
      }
    }
    return false;
  }

  /** The first song of the change proposed last, and the one after its last. */
  int from() {
    return from;
  }

  int to() {
    return to;
  }

  /** Lists a random change in the ledger's edits; false if the throw came to nothing. */
  boolean propose() {
    int dice = random.nextInt(10);
    if (dice < 6) {
      return exchangeModules();
    }
    if (dice < 9 || shuttable.length == 0) {
      return exchangeStrips();
    }
    return toggle();
  }

  private boolean exchangeModules() {
    boolean follows = random.nextInt(10) < FOLLOWING;
    for (int i = 0; i < TRIES; i++) {
      int song = random.nextInt(problem.songs());
      int[] free = freeRoles[song];
      if (free.length > 0 && exchangeModules(song, free[random.nextInt(free.length)], follows)) {
        return true;
      }
    }
    return false;
  }

  private boolean exchangeModules(int song, int role, boolean follows) {
    int[] candidates = shape(song).candidates[role];
    int a = casting.module[song][role];
    int b = follows ? besideACord(song, role) : candidates[random.nextInt(candidates.length)];
    if (b == CordLedger.NOTHING || a == b || !mayExchange(song, role, b, a)) {
      return false;
    }
    chooseRun(song);
    for (int s = from; s < to; s++) {
      int played = s == song ? role : roleOn(s, a);
      if (mayExchange(s, played, b, a)) {
        exchange(s, played, a, b);
      } else if (s > song) {
        break;
      }
    }
    return true;
  }

  /** The module on which one of the role's cords could stay in its other jack. */
  private int besideACord(int song, int role) {
    Shape shape = shape(song);
    int[] cords = shape.cordsOfRole[role];
    if (cords.length == 0) {
      return CordLedger.NOTHING;
    }
    int cord = cords[random.nextInt(cords.length)];
    boolean isSource = shape.roleOfEnd[2 * cord] == role;
    int socket = fellow(song, isSource ? 2 * cord : 2 * cord + 1);
    return socket == CordLedger.NOTHING ? CordLedger.NOTHING : rig.moduleOfSocket[socket];
  }

  /** What the jack at the other end of a cord is joined with when it is next or last in use. */
  private int fellow(int song, int end) {
    CordLedger cords = ledger.layout.cords;
    int opposite = ledger.layout.socket(song, end ^ 1);
    int use =
        random.nextBoolean()
            ? cords.previousUse(opposite, song + 1)
            : cords.nextUse(opposite, song + 1);
    if (use == CordLedger.NOTHING) {
      return use;
    }
    return end % 2 == 0 ? cords.sourceOf[use] : cords.sinkOf[use];
  }

  /**
   * A run of songs that holds {@code song}: mostly it alone, at times on to one side or both, and
   * then mostly not far, for a long run takes long to try.
   */
  private void chooseRun(int song) {
    int dice = random.nextInt(RUNS_ARE_RARE);
    boolean back = dice == 0 || dice == 2;
    boolean on = dice == 1 || dice == 2;
    from = back ? Math.max(0, song - far(song + 1)) : song;
    to = on ? Math.min(problem.songs(), song + 1 + far(problem.songs() - song)) : song + 1;
  }

  /** Up to as much as {@code most}, each doubling as likely as the one before. */
  private int far(int most) {
    return (int) Math.pow(most, random.nextDouble());
  }

  private Shape shape(int song) {
    return problem.shape(casting, song);
  }

  private int roleOn(int song, int module) {
    int[] modules = casting.module[song];
    for (int role = 0; role < modules.length; role++) {
      if (modules[role] == module) {
        return role;
      }
    }
    return -1;
  }

  /** Whether a role may go to module {@code to} and what is played there to {@code from}. */
  private boolean mayExchange(int song, int role, int to, int from) {
    return mayPlay(song, role, to) && mayPlay(song, roleOn(song, to), from);
  }

  private boolean mayPlay(int song, int role, int module) {
    if (role < 0) {
      return true;
    }
    for (int candidate : shape(song).candidates[role]) {
      if (candidate == module) {
        return true;
      }
    }
    return false;
  }

  private void exchange(int song, int roleOnA, int a, int b) {
    int roleOnB = roleOn(song, b);
    moveRole(song, roleOnA, b);
    moveRole(song, roleOnB, a);
    if (rig.kindOfModule[a] == rig.kindOfModule[b]) {
      int strips = rig.endOfModule(a) - rig.firstStrip[a][0];
      for (int i = 0; i < strips; i++) {
        exchangeShut(song, rig.firstStrip[a][0] + i, rig.firstStrip[b][0] + i);
      }
    }
  }

  private void moveRole(int song, int role, int module) {
    if (role < 0) {
      return;
    }
    Edits edits = ledger.edits();
    Shape shape = shape(song);
    int old = casting.module[song][role];
    edits.recast(casting, song, role, module);
    if (rig.kindOfModule[old] == rig.kindOfModule[module]) {
      int shift = rig.firstStrip[module][0] - rig.firstStrip[old][0];
      for (int q = shape.firstStrip[role]; q < shape.firstStrip[role + 1]; q++) {
        edits.takeStrip(song, q, casting.strip[song][q] + shift);
      }
    } else {
      int[] physical = new int[shape.strips.size()];
      StripChoice.lowest(rig, shape, role, module, physical);
      for (int q = shape.firstStrip[role]; q < shape.firstStrip[role + 1]; q++) {
        edits.takeStrip(song, q, physical[q]);
      }
    }
  }

  private void exchangeShut(int song, int a, int b) {
    if (casting.shut[a][song] != casting.shut[b][song]) {
      ledger.edits().toggle(song, a);
      ledger.edits().toggle(song, b);
    }
  }

  private boolean exchangeStrips() {
    if (equalStrips.length == 0) {
      return false;
    }
    int song = random.nextInt(problem.songs());
    if (random.nextBoolean()) {
      return exchangeForACord(song);
    }
    int[] group = equalStrips[random.nextInt(equalStrips.length)];
    return exchangeStrips(
        song, group[random.nextInt(group.length)], group[random.nextInt(group.length)]);
  }

  /** Takes another strip for one end of a cord, so that it could stay in at the other. */
  private boolean exchangeForACord(int song) {
    Shape shape = shape(song);
    if (shape.cords() == 0) {
      return false;
    }
    int end = random.nextInt(2 * shape.cords());
    int strip = shape.stripOfEnd[end];
    int module = casting.module[song][shape.roleOfEnd[end]];
    if (strip < 0 || StripChoice.isOwn(rig, shape, strip, module)) {
      return false;
    }
    int socket = fellow(song, end);
    int other = socket == CordLedger.NOTHING ? CordLedger.NOTHING : rig.stripOfSocket[socket];
    int first = StripChoice.firstOfGroup(rig, shape, strip, module);
    boolean isEqual =
        other >= first && other < first + StripChoice.count(rig, shape, strip, module);
    return isEqual && exchangeStrips(song, casting.strip[song][strip], other);
  }

  private boolean exchangeStrips(int song, int a, int b) {
    if (a == b) {
      return false;
    }
    chooseRun(song);
    boolean any = false;
    for (int s = from; s < to; s++) {
      any |= exchangeInSong(s, a, b);
    }
    return any;
  }

  private boolean exchangeInSong(int song, int a, int b) {
    int role = roleOn(song, rig.moduleOfStrip[a]);
    if (role < 0) {
      return false;
    }
    Shape shape = shape(song);
    int stripA = -1;
    int stripB = -1;
    for (int q = shape.firstStrip[role]; q < shape.firstStrip[role + 1]; q++) {
      int physical = casting.strip[song][q];
      if ((physical == a || physical == b) && shape.strips.get(q).number() > 0) {
        return false;
      }
      stripA = physical == a ? q : stripA;
      stripB = physical == b ? q : stripB;
    }
    if (stripA < 0 && stripB < 0) {
      return false;
    }
    Edits edits = ledger.edits();
    edits.recast(casting, song, role, casting.module[song][role]);
    if (stripA >= 0) {
      edits.takeStrip(song, stripA, b);
    }
    if (stripB >= 0) {
      edits.takeStrip(song, stripB, a);
    }
    exchangeShut(song, a, b);
    return true;
  }

  /** Shuts or opens a channel in one song, or from its last use to its next. */
  private boolean toggle() {
    int strip = shuttable[random.nextInt(shuttable.length)];
    int song = random.nextInt(problem.songs());
    if (ledger.layout.isNamed(song, strip)) {
      return false;
    }
    int first = song;
    int end = song + 1;
    int dice = random.nextInt(4);
    while (dice < 3 && first > 0 && !ledger.layout.isNamed(first - 1, strip)) {
      first--;
    }
    while (dice < 3 && end < problem.songs() && !ledger.layout.isNamed(end, strip)) {
      end++;
    }
    boolean now = casting.shut[strip][song];
    for (int s = first; s < end; s++) {
      if (casting.shut[strip][s] == now) {
        ledger.edits().toggle(s, strip);
      }
    }
    return true;
  }
}
