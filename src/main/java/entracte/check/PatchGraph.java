package entracte.check;

import entracte.check.Part.JackUse;
import entracte.check.Part.Net;
import entracte.check.Part.Owner;
import entracte.check.Part.Strip;
import entracte.rig.Direction;
import entracte.rig.Group;
import entracte.rig.Kind;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Where the signals of a song run. The nodes are the ins and outs of each role, and of each of its
 * channels. An in acts on the outs of its own channel and on those of the whole module; one of the
 * whole module acts on all. A module need not pass on everything that comes in, so a way found here
 * need not be one that a signal takes; but where none is found, there is none.
 */
final class PatchGraph {
  /** What a node is to its role. */
  enum Side {
    IN,
    OUT,
    /** Where what comes in ends, because no out is used. */
    END
  }

  /**
   * @param channel the role's strip, if it is a channel; else {@link Owner#OWN}
   */
  record Node(int role, int channel, Side side) {}

  private final Part part;
  private final List<Node> nodes = new ArrayList<>();
  private final Map<Node, Integer> numbers = new HashMap<>();
  private final List<BitSet> next = new ArrayList<>();
  private final List<BitSet> previous = new ArrayList<>();

  PatchGraph(Part part) {
    this.part = part;
    for (Net net : part.nets()) {
      int source = number(node(net.source(), Side.OUT));
      for (JackUse sink : net.sinks()) {
        link(source, number(node(sink, Side.IN)));
      }
    }
    for (Node node : List.copyOf(nodes)) {
      if (node.side() == Side.IN) {
        linkThrough(node);
      }
    }
  }

  private Node node(JackUse jack, Side side) {
    Owner owner = jack.owner();
    boolean channel =
        owner.strip() != Owner.OWN
            && part.roles().get(owner.role()).channels().get(owner.strip()).isChannel();
    return new Node(owner.role(), channel ? owner.strip() : Owner.OWN, side);
  }

  private int number(Node node) {
    return numbers.computeIfAbsent(
        node,
        fresh -> {
          nodes.add(fresh);
          next.add(new BitSet());
          previous.add(new BitSet());
          return nodes.size() - 1;
        });
  }

  private void link(int from, int to) {
    next.get(from).set(to);
    previous.get(to).set(from);
  }

  private void linkThrough(Node in) {
    int from = numbers.get(in);
    for (Node out : List.copyOf(nodes)) {
      boolean reaches =
          in.channel() == out.channel() || in.channel() == Owner.OWN || out.channel() == Owner.OWN;
      if (out.side() == Side.OUT && out.role() == in.role() && reaches) {
        link(from, numbers.get(out));
      }
    }
    if (next.get(from).isEmpty()) {
      int channel = isSeparate(in.role()) ? in.channel() : Owner.OWN;
      link(from, number(new Node(in.role(), channel, Side.END)));
    }
  }

  /** Whether what goes into a channel of the role can leave by that channel only. */
  private boolean isSeparate(int role) {
    Kind kind = part.roles().get(role).candidates().get(0).kind();
    return kind.groups().stream()
        .filter(PatchGraph::hasOuts)
        .allMatch(group -> group.form() == Group.Form.CHANNELS);
  }

  private static boolean hasOuts(Group group) {
    return group.jacks().stream().anyMatch(jack -> jack.direction() != Direction.IN);
  }

  /** Every node by its number, the source of the first connection first. */
  List<Node> nodes() {
    return nodes;
  }

  /** How the patch calls a node: {@code blend}, {@code halves.low}. */
  String name(int number) {
    Node node = nodes.get(number);
    Part.CastRole role = part.roles().get(node.role());
    if (node.channel() == Owner.OWN) {
      return role.name();
    }
    Strip strip = role.channels().get(node.channel());
    return role.name() + "." + strip.label();
  }

  boolean isConnected(int role) {
    return nodes.stream().anyMatch(node -> node.role() == role);
  }

  /** The nodes from which a signal may come to one of {@code goals}, these included. */
  BitSet leadingTo(BitSet goals) {
    return closure(goals, previous);
  }

  /** The nodes to which a signal may come from {@code node}, itself included. */
  BitSet reachedFrom(int node) {
    return closure(only(node), next);
  }

  /** The nodes that {@code node} both reaches and is reached from, itself included. */
  BitSet knotOf(int node) {
    BitSet knot = reachedFrom(node);
    knot.and(leadingTo(only(node)));
    return knot;
  }

  private static BitSet only(int node) {
    BitSet set = new BitSet();
    set.set(node);
    return set;
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

  /** The shortest way from {@code node} back to itself, without its return; empty if none. */
  List<Integer> loop(int node) {
    int[] from = new int[nodes.size()];
    Arrays.fill(from, -1);
    Deque<Integer> open = new ArrayDeque<>(List.of(node));
    while (!open.isEmpty()) {
      int at = open.remove();
      if (next.get(at).get(node)) {
        return wayTo(at, node, from);
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
