package entracte.plan;

import java.util.Arrays;
import java.util.List;
import java.util.function.BiPredicate;

/**
 * The largest number of disjoint pairs between two lists, by augmenting paths (Berge 1957; the
 * simple search of Kuhn 1955). The verifier's own, so as to share nothing with the search: time
 * left x pairs, memory left + right.
 */
final class LargestPairing<L, R> {
  private static final int FREE = -1;

  private final List<L> left;
  private final List<R> right;
  private final BiPredicate<L, R> fits;
  private final int[] partnerOfRight;

  private LargestPairing(List<L> left, List<R> right, BiPredicate<L, R> fits) {
    this.left = left;
    this.right = right;
    this.fits = fits;
    this.partnerOfRight = new int[right.size()];
    Arrays.fill(partnerOfRight, FREE);
  }

  static <L, R> int size(List<L> left, List<R> right, BiPredicate<L, R> fits) {
    LargestPairing<L, R> pairing = new LargestPairing<>(left, right, fits);
    int size = 0;
    for (int each = 0; each < left.size(); each++) {
      if (pairing.findPartner(each, new boolean[right.size()])) {
        size++;
      }
    }
    return size;
  }

  private boolean findPartner(int one, boolean[] tried) {
    for (int other = 0; other < right.size(); other++) {
      if (!tried[other] && fits.test(left.get(one), right.get(other))) {
        tried[other] = true;
        if (partnerOfRight[other] == FREE || findPartner(partnerOfRight[other], tried)) {
          partnerOfRight[other] = one;
          return true;
        }
      }
    }
    return false;
  }
}
