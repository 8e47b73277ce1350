package entracte.check;

import java.util.Collection;
import java.util.List;

/** Names in a sentence. */
final class Quoted {
  private Quoted() {}

  /** {@code "a"}, {@code "a" and "b"}, {@code "a", "b" and "c"}. */
  static String list(Collection<String> names) {
    return joined(names.stream().map(name -> '"' + name + '"').toList());
  }

  /** {@code a}, {@code a and b}, {@code a, b and c}. */
  static String joined(List<String> parts) {
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
