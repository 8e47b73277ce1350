package entracte.plan.sample;

import entracte.plan.sample.Player.Hole;
import entracte.rig.Cord;
import entracte.rig.Module;
import entracte.rig.Rig;
import entracte.rig.Socket;
import entracte.setlist.Connection;
import entracte.setlist.End;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The connections of a patch while it is made, and cords that would make them. A connection for
 * which there is no multiple left is refused, so that what is accepted can be plugged.
 */
final class Wiring {
  private final Rig rig;
  private final List<Module> multiples;
  private final Map<Hole, List<Hole>> nets = new LinkedHashMap<>();

  /**
   * @param multiples those that the patch has not taken for itself, largest first
   */
  Wiring(Rig rig, List<Module> multiples) {
    this.rig = rig;
    this.multiples = multiples;
  }

  /** Leaves a multiple to the patch; false if the connections need it. */
  boolean giveUp(Module multiple) {
    multiples.remove(multiple);
    if (chains() != null) {
      return true;
    }
    multiples.add(multiple);
    multiples.sort(Comparator.comparing(m -> -m.kind().taps()));
    return false;
  }

  /** Connects two holes; false if a multiple is missing. */
  boolean connect(Hole source, Hole sink) {
    List<Hole> sinks = nets.computeIfAbsent(source, s -> new ArrayList<>());
    sinks.add(sink);
    if (chains() == null) {
      sinks.remove(sink);
      nets.values().removeIf(List::isEmpty);
      return false;
    }
    return true;
  }

  /** The roles and modules that have a cord. */
  Set<String> names() {
    Set<String> names = new HashSet<>();
    nets.forEach(
        (source, sinks) -> {
          names.add(owner(source));
          sinks.forEach(sink -> names.add(owner(sink)));
        });
    return names;
  }

  private static String owner(Hole hole) {
    return hole.name().replaceFirst("[.].*", "");
  }

  List<Connection> connections() {
    List<Connection> all = new ArrayList<>();
    nets.forEach(
        (source, sinks) ->
            all.add(
                new Connection(
                    new End(source.name()), sinks.stream().map(s -> new End(s.name())).toList())));
    return all;
  }

  /** The multiples for each source with several sinks; null if there are too few. */
  private Map<Hole, List<Module>> chains() {
    Map<Hole, List<Module>> chains = new LinkedHashMap<>();
    int next = 0;
    for (Map.Entry<Hole, List<Hole>> net : nets.entrySet()) {
      int sinks = net.getValue().size();
      if (sinks > 1) {
        int links = RigMaker.linksFor(rig, sinks);
        if (next + links > multiples.size()) {
          return null;
        }
        List<Module> chain = multiples.subList(next, next + links);
        if (chain.stream().mapToInt(m -> m.kind().taps()).sum() + 1 - 2 * links < sinks) {
          return null;
        }
        chains.put(net.getKey(), chain);
        next += links;
      }
    }
    return chains;
  }

  /** Cords that make the connections. */
  List<Cord> cords() {
    List<Cord> cords = new ArrayList<>();
    Map<Hole, List<Module>> chains = chains();
    nets.forEach(
        (source, sinks) -> {
          if (sinks.size() == 1) {
            cords.add(new Cord(source.socket(), sinks.get(0).socket()));
          } else {
            addChain(source.socket(), chains.get(source), sinks, cords);
          }
        });
    return cords;
  }

  private static void addChain(
      Socket source, List<Module> chain, List<Hole> sinks, List<Cord> cords) {
    Socket before = source;
    int next = 0;
    for (int link = 0; link < chain.size(); link++) {
      List<Socket> taps = chain.get(link).sockets();
      cords.add(new Cord(before, taps.get(0)));
      int last = taps.size() - 1;
      before = taps.get(last);
      int to = link == chain.size() - 1 ? last : last - 1;
      for (int tap = 1; tap <= to && next < sinks.size(); tap++) {
        cords.add(new Cord(taps.get(tap), sinks.get(next++).socket()));
      }
    }
  }
}
