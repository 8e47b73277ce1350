package entracte.check;

import entracte.check.Part.JackUse;
import entracte.check.Part.Net;
import entracte.check.Part.Owner;
import entracte.rig.Direction;
import entracte.rig.Group;
import entracte.rig.Kind;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

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
  private final List<List<Integer>> next = new ArrayList<>();
  private final List<List<Integer>> previous = new ArrayList<>();
  private final List<List<Integer>> outsOfRole = new ArrayList<>();
  private final BitSet connected = new BitSet();

  PatchGraph(Part part) {
    this.part = part;
    part.roles().forEach(role -> outsOfRole.add(new ArrayList<>()));
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
    Integer known = numbers.get(node);
    if (known != null) {
      return known;
    }
    int number = nodes.size();
    numbers.put(node, number);
    nodes.add(node);
    next.add(new ArrayList<>());
    previous.add(new ArrayList<>());
    connected.set(node.role());
    if (node.side() == Side.OUT) {
      outsOfRole.get(node.role()).add(number);
    }
    return number;
  }

  private void link(int from, int to) {
    next.get(from).add(to);
    previous.get(to).add(from);
  }

  private void linkThrough(Node in) {
    int from = numbers.get(in);
    for (int out : outsOfRole.get(in.role())) {
      int channel = nodes.get(out).channel();
      if (in.channel() == channel || in.channel() == Owner.OWN || channel == Owner.OWN) {
        link(from, out);
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
    return node.channel() == Owner.OWN
        ? role.name()
        : role.name() + "." + role.channels().get(node.channel()).label();
  }

  boolean isConnected(int role) {
    return connected.get(role);
  }

  /** Whether a signal can go nowhere from these nodes but to one of them. */
  boolean isEnd(List<Integer> knot) {
    Set<Integer> inside = new HashSet<>(knot);
    return knot.stream().allMatch(node -> inside.containsAll(next.get(node)));
  }

  /** Sets of nodes of which each reaches each, in the order of their first nodes. */
  List<List<Integer>> knots() {
    return Knots.of(next).stream().sorted(Comparator.comparing(knot -> knot.get(0))).toList();
  }

  /** The nodes from which a signal may come to one of {@code goals}, these included. */
  BitSet leadingTo(BitSet goals) {
    BitSet seen = (BitSet) goals.clone();
    Deque<Integer> open = new ArrayDeque<>();
    goals.stream().forEach(open::add);
    while (!open.isEmpty()) {
      for (int from : previous.get(open.remove())) {
        if (!seen.get(from)) {
          seen.set(from);
          open.add(from);
        }
      }
    }
    return seen;
  }

  /** The shortest way from {@code node} back to itself, without its return; empty if none. */
  List<Integer> loop(int node) {
    Map<Integer, Integer> from = new HashMap<>();
    Deque<Integer> open = new ArrayDeque<>(List.of(node));
    while (!open.isEmpty()) {
      int at = open.remove();
      for (int to : next.get(at)) {
        if (to == node) {
          return wayTo(at, node, from);
        }
        if (from.putIfAbsent(to, at) == null) {
          open.add(to);
        }
      }
    }
    return List.of();
  }

  private static List<Integer> wayTo(int end, int start, Map<Integer, Integer> from) {
    List<Integer> way = new ArrayList<>(List.of(end));
    while (way.get(way.size() - 1) != start) {
      way.add(from.get(way.get(way.size() - 1)));
    }
    Collections.reverse(way);
    return way;
  }
}
