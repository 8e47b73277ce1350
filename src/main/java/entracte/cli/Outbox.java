package entracte.cli;

import entracte.midi.Dispatch;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** What was given to the ports and has not left yet. */
final class Outbox {
  /** Longer than any wire takes for what a song sends; beyond it a port takes nothing. */
  private static final long STUCK_MILLIS = 3000;

  private final List<Waiting> waiting = new ArrayList<>();

  private record Waiting(Dispatch dispatch, long until) {}

  void given(List<Dispatch> dispatches, long nowMillis) {
    for (Dispatch dispatch : dispatches) {
      long waits = dispatch.messages().stream().mapToLong(Dispatch.Timed::waitMillis).sum();
      waiting.add(new Waiting(dispatch, nowMillis + waits + STUCK_MILLIS));
    }
  }

  /** A dispatch has left, or will not. */
  void back(Dispatch dispatch) {
    for (int i = 0; i < waiting.size(); i++) {
      if (waiting.get(i).dispatch().equals(dispatch)) {
        waiting.remove(i);
        return;
      }
    }
  }

  /** The names of the outlets that something is still to leave by. */
  Set<String> outlets() {
    return waiting.stream()
        .map(each -> each.dispatch().outlet().name())
        .collect(Collectors.toUnmodifiableSet());
  }

  /** The first dispatch that should have left long ago. */
  Optional<Dispatch> stuck(long nowMillis) {
    return waiting.stream().filter(w -> w.until() < nowMillis).findFirst().map(Waiting::dispatch);
  }
}
