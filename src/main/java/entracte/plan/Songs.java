package entracte.plan;

/**
 * Sets of songs as bits, many sets in one array: set i of an array with {@code words} words a set
 * takes the words from {@code i * words} on. Bit t stands for column t: column 0 is the start
 * state, column t the t-th song.
 */
final class Songs {
  private Songs() {}

  static int words(int columns) {
    return (columns + Long.SIZE - 1) / Long.SIZE;
  }

  static boolean has(long[] sets, int base, int t) {
    return (sets[base + (t >> 6)] >>> t & 1) != 0;
  }

  static void add(long[] sets, int base, int t) {
    sets[base + (t >> 6)] |= 1L << t;
  }

  static void drop(long[] sets, int base, int t) {
    sets[base + (t >> 6)] &= ~(1L << t);
  }

  /** The first member from t on; {@code none} if there is none. */
  static int next(long[] sets, int base, int words, int t, int none) {
    int word = t >> 6;
    if (word >= words) {
      return none;
    }
    long bits = sets[base + word] >>> t << t;
    while (bits == 0) {
      if (++word == words) {
        return none;
      }
      bits = sets[base + word];
    }
    return (word << 6) + Long.numberOfTrailingZeros(bits);
  }

  /** The last member up to t; -1 if there is none. */
  static int previous(long[] sets, int base, int t) {
    if (t < 0) {
      return -1;
    }
    int word = t >> 6;
    long bits = sets[base + word] << (63 - (t & 63)) >>> (63 - (t & 63));
    while (bits == 0) {
      if (--word < 0) {
        return -1;
      }
      bits = sets[base + word];
    }
    return (word << 6) + 63 - Long.numberOfLeadingZeros(bits);
  }
}
