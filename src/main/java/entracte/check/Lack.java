package entracte.check;

/**
 * Why a kind of module will not do for a role.
 *
 * @param predicate what is wrong with the kind, to stand after its name: {@code has no jack "fm"}
 * @param sentence what is wrong with the patch, if the kind is the only one; empty if the predicate
 *     says it
 * @param advice empty if there is nothing to add
 */
record Lack(About about, String predicate, String sentence, String advice) {
  /** What of the written line is wrong. */
  enum About {
    /** The name of a jack, channel or control. */
    NAME,
    /** The value of a setting. */
    VALUE,
    /** The jack carries the signal the other way; {@link WrongWay} sees both ends and tells. */
    DIRECTION
  }

  static Lack ofName(String predicate, String advice) {
    return new Lack(About.NAME, predicate, "", advice);
  }

  static Lack ofValue(String predicate, String advice) {
    return new Lack(About.VALUE, predicate, "", advice);
  }

  /** The whole message; {@code subject} is the kind or the module that was asked. */
  String message(String subject) {
    return sentence.isEmpty() ? subject + " " + predicate : sentence;
  }
}
