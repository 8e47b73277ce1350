package entracte.plan;

import java.util.Arrays;

/**
 * Changes to a casting that are tried together: roles of songs that take other modules or strips,
 * and channels that are shut or opened in a song. Applying the same edits twice changes nothing.
 */
final class Edits {
  private static final int TOGGLE = -1;

  private final Problem problem;
  private final int[][] module;
  private final int[][] strip;
  private final boolean[][] recast;
  private final IntBag listed;
  private final int mostCordsPerSong;
  private int[] songs = new int[16];
  private int[] roles = new int[16];
  private int[] strips = new int[16];
  private int size;

  Edits(Problem problem) {
    this.problem = problem;
    int songCount = problem.songs();
    module = new int[songCount][];
    strip = new int[songCount][];
    recast = new boolean[songCount][];
    int mostCords = 0;
    for (int s = 0; s < songCount; s++) {
      int mostRoles = 0;
      int mostStrips = 0;
      for (Shape shape : problem.shapes[s]) {
        mostRoles = Math.max(mostRoles, shape.roles());
        mostStrips = Math.max(mostStrips, shape.strips.size());
        mostCords = Math.max(mostCords, shape.cords());
      }
      module[s] = new int[mostRoles];
      strip[s] = new int[mostStrips];
      recast[s] = new boolean[mostRoles];
    }
    listed = new IntBag(Math.max(1, mostCords * songCount));
    mostCordsPerSong = Math.max(1, mostCords);
  }

  /**
   * Lists a role of a song; its strips are taken over from the casting until {@link #takeStrip}.
   */
  void recast(Casting casting, int song, int role, int newModule) {
    Shape shape = problem.shape(casting, song);
    if (!recast[song][role]) {
      recast[song][role] = true;
      push(song, role, 0);
      for (int q = shape.firstStrip[role]; q < shape.firstStrip[role + 1]; q++) {
        strip[song][q] = casting.strip[song][q];
      }
    }
    module[song][role] = newModule;
  }

  void takeStrip(int song, int stripOfShape, int physical) {
    strip[song][stripOfShape] = physical;
  }

  void toggle(int song, int physicalStrip) {
    push(song, TOGGLE, physicalStrip);
  }

  private void push(int song, int role, int physicalStrip) {
    if (size == songs.length) {
      songs = Arrays.copyOf(songs, 2 * size);
      roles = Arrays.copyOf(roles, 2 * size);
      strips = Arrays.copyOf(strips, 2 * size);
    }
    songs[size] = song;
    roles[size] = role;
    strips[size++] = physicalStrip;
  }

  int size() {
    return size;
  }

  int song(int i) {
    return songs[i];
  }

  int role(int i) {
    return roles[i];
  }

  boolean isToggle(int i) {
    return roles[i] == TOGGLE;
  }

  int strip(int i) {
    return strips[i];
  }

  boolean lists(int song, int role) {
    return recast[song][role];
  }

  int module(int song, int role) {
    return module[song][role];
  }

  /** The module of a role once the edits are in. */
  int newModule(Layout layout, int song, int role) {
    return recast[song][role] ? module[song][role] : layout.casting.module[song][role];
  }

  /** Whether some role of the song is listed to take the module. */
  boolean seats(int song, int newModule) {
    for (int i = 0; i < size; i++) {
      if (songs[i] == song && roles[i] != TOGGLE && module[song][roles[i]] == newModule) {
        return true;
      }
    }
    return false;
  }

  /** The socket of an end once the edits are in; -1 if it then has no module or no strip. */
  int socket(Layout layout, int song, int end) {
    Shape shape = layout.shape(song);
    int role = shape.roleOfEnd[end];
    if (!recast[song][role]) {
      return layout.socket(song, end);
    }
    RigIndex rig = problem.rig;
    int newModule = module[song][role];
    if (newModule == Casting.UNCAST) {
      return CordLedger.NOTHING;
    }
    int q = shape.stripOfEnd[end];
    int physical = q < 0 ? rig.firstStrip[newModule][0] : strip[song][q];
    if (physical == CordLedger.NOTHING) {
      return CordLedger.NOTHING;
    }
    int jack = shape.jackOfEnd[end][rig.kindOfModule[newModule]];
    return rig.firstSocketOfStrip[physical] + jack;
  }

  /** The cords, each once, each with its song, of which an end is listed to move. */
  IntBag cords(Layout layout) {
    listed.clear();
    for (int i = 0; i < size; i++) {
      if (!isToggle(i)) {
        for (int cord : layout.shape(songs[i]).cordsOfRole[roles[i]]) {
          listed.add(songs[i] * mostCordsPerSong + cord);
        }
      }
    }
    return listed;
  }

  int songOfCord(int member) {
    return member / mostCordsPerSong;
  }

  int numberOfCord(int member) {
    return member % mostCordsPerSong;
  }

  /** Exchanges what the edits list and what the layout has. */
  void swapIn(Layout layout) {
    IntBag moved = cords(layout);
    for (int i = 0; i < moved.size(); i++) {
      layout.unplug(songOfCord(moved.get(i)), numberOfCord(moved.get(i)));
    }
    for (int i = 0; i < size; i++) {
      if (!isToggle(i)) {
        layout.unseat(songs[i], roles[i]);
      }
    }
    for (int i = 0; i < size; i++) {
      if (!isToggle(i)) {
        exchange(layout, songs[i], roles[i]);
      }
    }
    for (int i = 0; i < size; i++) {
      if (!isToggle(i)) {
        layout.seat(songs[i], roles[i]);
      }
    }
    for (int i = 0; i < moved.size(); i++) {
      layout.plug(songOfCord(moved.get(i)), numberOfCord(moved.get(i)));
    }
    for (int i = 0; i < size; i++) {
      if (isToggle(i)) {
        layout.toggleShut(songs[i], strips[i]);
      }
    }
  }

  private void exchange(Layout layout, int song, int role) {
    Casting casting = layout.casting;
    int keep = casting.module[song][role];
    casting.module[song][role] = module[song][role];
    module[song][role] = keep;
    Shape shape = layout.shape(song);
    for (int q = shape.firstStrip[role]; q < shape.firstStrip[role + 1]; q++) {
      keep = casting.strip[song][q];
      casting.strip[song][q] = strip[song][q];
      strip[song][q] = keep;
    }
  }

  void clear() {
    for (int i = 0; i < size; i++) {
      if (!isToggle(i)) {
        recast[songs[i]][roles[i]] = false;
      }
    }
    size = 0;
  }
}
