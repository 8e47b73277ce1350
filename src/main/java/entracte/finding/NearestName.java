package entracte.finding;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/**
 * Finds the name that was most likely meant by one that nobody knows.
 *
 * <p>Distance is that of optimal string alignment: a letter left out, put in, changed, or swapped
 * with its neighbour counts one, and no stretch is edited twice (the restricted form of the
 * distance of Damerau, 1964). Capitals count nothing. A name is near if at most a third of its
 * letters are wrong, and one letter is forgiven in names of three. Time is the product of the two
 * lengths for each candidate; candidates whose lengths differ too much cost nothing.
 */
public final class NearestName {
  /** Beyond this a name is prose, and nobody mistyped it. */
  private static final int LONGEST = 80;

  /** Beyond this a list of names is no musician's. */
  private static final int MOST_KNOWN = 2000;

  private static final int SHORTEST_FORGIVEN = 3;
  private static final int LETTERS_PER_SLIP = 3;

  /** How many names an advice lists before it says how many more there are. */
  private static final int LISTED = 8;

  /** So many are listed whole: who looks for a key wants to see them all. */
  private static final int LISTED_WHOLE = 16;

  private NearestName() {}

  /** The nearest of {@code known} (of its first 2000), if any is near; of equals the first. */
  public static Optional<String> of(String wanted, Collection<String> known) {
    int allowed = allowed(wanted);
    String best = null;
    int bestDistance = allowed + 1;
    for (String candidate : (Iterable<String>) known.stream().limit(MOST_KNOWN)::iterator) {
      if (Math.abs(candidate.length() - wanted.length()) < bestDistance) {
        int distance = distance(fold(wanted), fold(candidate));
        if (distance < bestDistance) {
          best = candidate;
          bestDistance = distance;
        }
      }
    }
    return Optional.ofNullable(best);
  }

  /**
   * Advice on an unknown name: the near one; else what is known, in the order given; empty if
   * nothing is.
   */
  public static String advice(String wanted, Collection<String> known) {
    return of(wanted, known)
        .map(near -> "Did you mean \"" + near + "\"?")
        .orElseGet(() -> known.isEmpty() ? "" : "Known here: " + list(known) + ".");
  }

  private static String list(Collection<String> known) {
    String first = String.join(", ", known.stream().limit(LISTED).toList());
    return known.size() <= LISTED_WHOLE
        ? String.join(", ", known)
        : first + " and " + (known.size() - LISTED) + " more";
  }

  /** How many slips are forgiven; -1 if the name is no candidate for mistyping. */
  private static int allowed(String wanted) {
    if (wanted.length() > LONGEST) {
      return -1;
    }
    return wanted.length() < SHORTEST_FORGIVEN ? 0 : wanted.length() / LETTERS_PER_SLIP;
  }

  private static String fold(String name) {
    return name.toLowerCase(Locale.ROOT);
  }

  /** Optimal string alignment; three rows are enough, since a swap looks two rows back. */
  static int distance(String a, String b) {
    int[] before = new int[b.length() + 1];
    int[] last = new int[b.length() + 1];
    int[] row = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      last[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      row[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int change = last[j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        row[j] = Math.min(change, 1 + Math.min(last[j], row[j - 1]));
        if (swapped(a, i, b, j)) {
          row[j] = Math.min(row[j], before[j - 2] + 1);
        }
      }
      int[] spare = before;
      before = last;
      last = row;
      row = spare;
    }
    return last[b.length()];
  }

  private static boolean swapped(String a, int i, String b, int j) {
    return i > 1
        && j > 1
        && a.charAt(i - 1) == b.charAt(j - 2)
        && a.charAt(i - 2) == b.charAt(j - 1);
  }
}
