package entracte.check;

/**
 * Why a kind of module will not do for a role.
 *
 * @param predicate what is wrong with the kind, to stand after its name: {@code has no jack "fm"}
 * @param sentence what is wrong with the patch, if the kind is the only one; empty if the predicate
 *     says it
 * @param advice empty if there is nothing to add
 * @param wrongWay whether the jack is there but carries the signal the other way; such ends are
 *     reported by {@link WrongWay}, which sees both
 */
record Lack(String predicate, String sentence, String advice, boolean wrongWay) {
  static Lack of(String predicate, String advice) {
    return new Lack(predicate, "", advice, false);
  }

  /** The whole message; {@code subject} is the kind or the module that was asked. */
  String message(String subject) {
    return sentence.isEmpty() ? subject + " " + predicate : sentence;
  }
}
