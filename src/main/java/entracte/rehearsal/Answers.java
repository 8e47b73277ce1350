package entracte.rehearsal;

import java.util.List;
import java.util.Optional;

/** Questions that take Enter or a few letters; anything else is asked again. */
final class Answers {
  /** Ends the rehearsal; also what counts as said once there is nobody to answer. */
  static final String END = "q";

  private final Dialogue dialogue;

  Answers(Dialogue dialogue) {
    this.dialogue = dialogue;
  }

  void say(String line) {
    dialogue.say(line);
  }

  void list(List<String> lines) {
    dialogue.list(lines);
  }

  /**
   * The answer: empty for Enter, {@link #END}, or one of {@code letters}.
   *
   * @param question which names them all
   */
  String to(String question, String letters) {
    while (true) {
      Optional<String> answer = dialogue.ask(question);
      if (answer.isEmpty() || answer.get().equals(END)) {
        return END;
      }
      if (answer.get().isEmpty() || answer.get().length() == 1 && letters.contains(answer.get())) {
        return answer.get();
      }
    }
  }
}
