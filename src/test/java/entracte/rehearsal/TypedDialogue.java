package entracte.rehearsal;

import java.time.Instant;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;

/**
 * A player who types answers written down beforehand, and takes some seconds for each. The clock
 * stands still but for these.
 */
final class TypedDialogue implements Dialogue {
  static final Instant BEGIN = Instant.parse("2026-03-01T19:00:00Z");

  private final Deque<String> answers;
  private final double secondsEach;
  private final List<String> said = new ArrayList<>();
  private double seconds;

  TypedDialogue(double secondsEach, List<String> answers) {
    this.secondsEach = secondsEach;
    this.answers = new ArrayDeque<>(answers);
  }

  @Override
  public void say(String line) {
    said.add(line);
  }

  @Override
  public Optional<String> ask(String line) {
    said.add(line);
    seconds += secondsEach;
    return Optional.ofNullable(answers.poll());
  }

  List<String> said() {
    return said;
  }

  Clock clock() {
    return new Clock(
        () -> BEGIN.plusMillis(Math.round(seconds * 1000)), () -> Math.round(seconds * 1e9));
  }
}
