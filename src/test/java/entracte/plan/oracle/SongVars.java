package entracte.plan.oracle;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.Literal;
import entracte.check.Part;
import entracte.check.Part.CastRole;
import entracte.check.Part.JackUse;
import entracte.check.Part.Net;
import entracte.check.Part.Owner;
import entracte.check.Part.Strip;
import entracte.rig.Cord;
import entracte.rig.Module;
import entracte.rig.Rig;
import entracte.rig.Socket;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** One song's casting and the cords that follow from it, as variables. */
final class SongVars {
  final Part part;

  /** By role: the module that plays it. */
  final List<Map<Module, Literal>> cast = new ArrayList<>();

  /** By role and strip: the physical strip. */
  final List<List<Map<Spot, Literal>>> strips = new ArrayList<>();

  /** By net: the multiples that split it, if it has several sinks. */
  final List<Optional<Chain>> chains = new ArrayList<>();

  final List<Hop> hops = new ArrayList<>();

  private final Cp cp;

  SongVars(Cp cp, Rig rig, Part part) {
    this.cp = cp;
    this.part = part;
    part.roles().forEach(this::addRole);
    part.nets().forEach(net -> addNet(rig, net));
    everyModule().values().forEach(cp::atMostOne);
  }

  private void addRole(CastRole role) {
    Map<Module, Literal> byModule = new LinkedHashMap<>();
    role.candidates().forEach(m -> byModule.put(m, cp.bool(role.name() + " on " + m)));
    cp.exactlyOne(byModule.values());
    cast.add(byModule);
    List<Map<Spot, Literal>> byStrip = new ArrayList<>();
    role.channels().forEach(strip -> byStrip.add(addStrip(role.name(), strip, byModule)));
    strips.add(byStrip);
    Map<List<Object>, List<Literal>> users = new LinkedHashMap<>();
    for (int strip = 0; strip < byStrip.size(); strip++) {
      String jack = role.channels().get(strip).jack();
      byStrip.get(strip).forEach((spot, literal) -> add(users, List.of(spot, jack), literal));
    }
    users.values().forEach(cp::atMostOne);
  }

  private Map<Spot, Literal> addStrip(String role, Strip strip, Map<Module, Literal> byModule) {
    Map<Spot, Literal> bySpot = new LinkedHashMap<>();
    byModule.forEach(
        (module, here) -> {
          List<BoolVar> spots = new ArrayList<>();
          for (Spot spot : Spot.candidates(module, strip)) {
            spots.add(cp.bool(role + "." + strip.label() + " on " + module + spot.number()));
            bySpot.put(spot, spots.get(spots.size() - 1));
          }
          cp.equal(here, Cp.sum(spots));
        });
    return bySpot;
  }

  private void addNet(Rig rig, Net net) {
    Map<Socket, Literal> source = holes(net.source());
    if (net.sinks().size() == 1) {
      chains.add(Optional.empty());
      JackUse sink = net.sinks().get(0);
      boolean oneModule = sink.owner().role() == net.source().owner().role();
      hops.add(new Hop(cp, source, holes(sink), oneModule));
      return;
    }
    Chain chain = new Chain(cp, rig, net.sinks().size());
    chains.add(Optional.of(chain));
    hops.add(new Hop(cp, source, chain.in(0), false));
    for (int link = 1; link < chain.length(); link++) {
      hops.add(new Hop(cp, chain.on(link - 1), chain.in(link), false));
    }
    for (int sink = 0; sink < net.sinks().size(); sink++) {
      hops.add(new Hop(cp, chain.to(sink), holes(net.sinks().get(sink)), false));
    }
  }

  private Map<Socket, Literal> holes(JackUse use) {
    Map<Socket, Literal> holes = new LinkedHashMap<>();
    spots(use.owner()).forEach((spot, literal) -> holes.put(spot.socket(use.jack()), literal));
    return holes;
  }

  /** Where an owner's jacks and controls may be. */
  Map<Spot, Literal> spots(Owner owner) {
    if (owner.strip() != Owner.OWN) {
      return strips.get(owner.role()).get(owner.strip());
    }
    Map<Spot, Literal> own = new LinkedHashMap<>();
    cast.get(owner.role()).forEach((module, literal) -> own.put(Spot.own(module), literal));
    return own;
  }

  /** Each module with whatever may use it, roles first, multiples after. */
  Map<Module, List<Literal>> everyModule() {
    Map<Module, List<Literal>> users = new LinkedHashMap<>();
    everyUser().forEach(each -> each.forEach((module, literal) -> add(users, module, literal)));
    return users;
  }

  /** Whatever wants a module of its own: roles, then multiples. */
  List<Map<Module, Literal>> everyUser() {
    List<Map<Module, Literal>> users = new ArrayList<>(cast);
    chains.forEach(chain -> chain.ifPresent(each -> users.addAll(each.members)));
    return users;
  }

  /** One if the module is not idle. */
  LinearExpr active(Module module) {
    return Cp.sum(everyModule().getOrDefault(module, List.of()));
  }

  /** One if a role names this strip. */
  List<Literal> namers(Spot spot) {
    return strips.stream()
        .flatMap(List::stream)
        .filter(each -> each.containsKey(spot))
        .map(each -> each.get(spot))
        .toList();
  }

  /** Each cord that the song may require, with what would require it. */
  Map<Cord, List<BoolVar>> required() {
    Map<Cord, List<BoolVar>> required = new LinkedHashMap<>();
    for (Hop hop : hops) {
      hop.cords.forEach(
          (cord, made) -> required.computeIfAbsent(cord, c -> new ArrayList<>()).add(made));
    }
    return required;
  }

  private static <K> void add(Map<K, List<Literal>> lists, K key, Literal literal) {
    lists.computeIfAbsent(key, k -> new ArrayList<>()).add(literal);
  }
}
