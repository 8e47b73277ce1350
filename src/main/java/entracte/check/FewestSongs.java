package entracte.check;

import java.util.BitSet;
import java.util.List;
import java.util.Optional;

/**
 * A smallest set of songs of which, whatever the combination, one fails: a smallest hitting set.
 *
 * <p>Sizes are tried from 1 up. The first combination that no chosen song fails at must be failed
 * by one of those still to be chosen, so only the songs that fail at it are branched over. Exact
 * while no more than {@link #MOST_TRIALS} choices are tried; beyond, songs are spared one after
 * another, which leaves a set of which none could be spared.
 */
final class FewestSongs {
  private static final int MOST_TRIALS = 20_000;

  private final List<BitSet> failing;
  private final int songs;
  private int trials;

  /**
   * @param failing for each combination the songs that fail at it, at least one
   */
  FewestSongs(List<BitSet> failing, int songs) {
    this.failing = failing;
    this.songs = songs;
  }

  BitSet find() {
    BitSet bound = noneToSpare();
    for (int size = 1; size < bound.cardinality(); size++) {
      Optional<BitSet> found = grow(new BitSet(), size);
      if (found.isPresent() || trials > MOST_TRIALS) {
        return found.orElse(bound);
      }
    }
    return bound;
  }

  private Optional<BitSet> grow(BitSet chosen, int more) {
    Optional<BitSet> open = failing.stream().filter(f -> !f.intersects(chosen)).findFirst();
    if (open.isEmpty()) {
      return Optional.of(chosen);
    }
    BitSet options = open.get();
    for (int song = options.nextSetBit(0);
        more > 0 && song >= 0 && trials++ < MOST_TRIALS;
        song = options.nextSetBit(song + 1)) {
      BitSet with = (BitSet) chosen.clone();
      with.set(song);
      Optional<BitSet> found = grow(with, more - 1);
      if (found.isPresent()) {
        return found;
      }
    }
    return Optional.empty();
  }

  private BitSet noneToSpare() {
    BitSet kept = new BitSet();
    kept.set(0, songs);
    for (int song = 0; song < songs; song++) {
      kept.clear(song);
      if (!failing.stream().allMatch(kept::intersects)) {
        kept.set(song);
      }
    }
    return kept;
  }
}
