package entracte.check;

import entracte.check.Part.JackUse;
import entracte.check.Part.Net;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Deque;
import java.util.List;

/**
 * Which role of a song feeds which. Within a role every input is taken to act on every output, so a
 * way found here need not be one that a signal takes; none found here is none.
 */
final class PatchGraph {
  private final List<BitSet> next = new ArrayList<>();
  private final List<BitSet> previous = new ArrayList<>();

  PatchGraph(Part part) {
    for (int role = 0; role < part.roles().size(); role++) {
      next.add(new BitSet());
      previous.add(new BitSet());
    }
    for (Net net : part.nets()) {
      for (JackUse sink : net.sinks()) {
        next.get(net.source().owner().role()).set(sink.owner().role());
        previous.get(sink.owner().role()).set(net.source().owner().role());
      }
    }
  }

  int roles() {
    return next.size();
  }

  boolean feeds(int role, int other) {
    return next.get(role).get(other);
  }

  boolean isConnected(int role) {
    return isFed(role) || !next.get(role).isEmpty();
  }

  boolean isFed(int role) {
    return !previous.get(role).isEmpty();
  }

  /** The roles from which a signal may come to one of {@code goals}, these included. */
  BitSet leadingTo(BitSet goals) {
    return closure(goals, previous);
  }

  /** The roles to which a signal may come from {@code role}, itself included. */
  BitSet reachedFrom(int role) {
    BitSet start = new BitSet();
    start.set(role);
    return closure(start, next);
  }

  private static BitSet closure(BitSet start, List<BitSet> steps) {
    BitSet seen = (BitSet) start.clone();
    Deque<Integer> open = new ArrayDeque<>();
    start.stream().forEach(open::add);
    while (!open.isEmpty()) {
      BitSet fresh = (BitSet) steps.get(open.remove()).clone();
      fresh.andNot(seen);
      seen.or(fresh);
      fresh.stream().forEach(open::add);
    }
    return seen;
  }

  /** The shortest way from {@code role} back to itself, without its return; empty if none. */
  List<Integer> loop(int role) {
    int[] from = new int[roles()];
    Arrays.fill(from, -1);
    Deque<Integer> open = new ArrayDeque<>(List.of(role));
    while (!open.isEmpty()) {
      int at = open.remove();
      if (feeds(at, role)) {
        return wayTo(at, role, from);
      }
      next.get(at).stream()
          .filter(to -> from[to] < 0)
          .forEach(
              to -> {
                from[to] = at;
                open.add(to);
              });
    }
    return List.of();
  }

  private static List<Integer> wayTo(int end, int start, int[] from) {
    List<Integer> way = new ArrayList<>(List.of(end));
    while (way.get(0) != start) {
      way.add(0, from[way.get(0)]);
    }
    return way;
  }
}
