package entracte.stage;

import entracte.midi.Dispatch;
import java.util.List;
import java.util.Set;

/** What the world shall do. */
public sealed interface Effect {
  /** Send to the gear. */
  record Send(List<Dispatch> dispatches) implements Effect {
    public Send {
      dispatches = List.copyOf(dispatches);
    }
  }

  /** What is sent beside this is all that the place in the show asks for, on every port. */
  record CaughtUp() implements Effect {}

  /**
   * Plan the ways to {@code order}, from the rig as it stands.
   *
   * @param midShow whether somebody waits already
   * @param dead the modules that are of no use any more
   */
  record Plan(int request, List<Integer> order, TrueRig rig, boolean midShow, Set<String> dead)
      implements Effect {
    public Plan {
      order = List.copyOf(order);
      dead = Set.copyOf(dead);
    }
  }

  /** The player leaves. */
  record Leave() implements Effect {}
}
