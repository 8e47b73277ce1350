package entracte.plan;

/** A set of small numbers, quick to fill and to empty, read in the order they came. */
final class IntBag {
  private final int[] members;
  private final boolean[] has;
  private int size;

  IntBag(int limit) {
    members = new int[limit];
    has = new boolean[limit];
  }

  void add(int member) {
    if (!has[member]) {
      has[member] = true;
      members[size++] = member;
    }
  }

  int size() {
    return size;
  }

  int get(int place) {
    return members[place];
  }

  void clear() {
    for (int i = 0; i < size; i++) {
      has[members[i]] = false;
    }
    size = 0;
  }
}
