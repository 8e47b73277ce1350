package entracte.check;

/** Numbers in names: the channel {@code 2}, the jack {@code pitch 2}. */
final class Digits {
  private static final int LONGEST = 6;

  private Digits() {}

  /**
   * The number that {@code text} is; -1 if it is a name. A figure too long for any panel is big.
   */
  static int number(String text) {
    if (text.isEmpty() || !text.chars().allMatch(c -> c >= '0' && c <= '9')) {
      return -1;
    }
    return text.length() > LONGEST ? Integer.MAX_VALUE : Integer.parseInt(text);
  }
}
