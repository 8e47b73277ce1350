package entracte.check;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/** Names in a sentence. */
final class Quoted {
  /** A list of more is cut, lest one mistake fill the screen. */
  private static final int MOST = 12;

  private Quoted() {}

  /** {@code "a"}, {@code "a" and "b"}, {@code "a", "b" and "c"}. */
  static String list(Collection<String> names) {
    return joined(names.stream().map(name -> '"' + name + '"').toList());
  }

  /** {@code a}, {@code a and b}, {@code a, b and c}; the last of very many is how many more. */
  static String joined(List<String> all) {
    List<String> parts = new ArrayList<>(all.subList(0, Math.min(all.size(), MOST)));
    if (all.size() > MOST) {
      parts.set(MOST - 1, (all.size() - MOST + 1) + " more");
    }
    int last = parts.size() - 1;
    return last < 1
        ? String.join("", parts)
        : String.join(", ", parts.subList(0, last)) + " and " + parts.get(last);
  }

  /** {@code 1 module}, {@code 2 modules}. */
  static String count(int number, String one) {
    return number + " " + one + (number == 1 ? "" : "s");
  }
}
