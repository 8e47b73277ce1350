package entracte.check;

import entracte.rig.Module;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;

/**
 * Every role finds a module of its own, or the roles that stand in each other's way are named: a
 * set of roles that together have fewer candidates than members (Hall 1935). The set reported is a
 * smallest one in which no role could be spared, and then every other role that has no candidate
 * outside it.
 */
final class EnoughModules {
  private final RigIndex rig;
  private final Findings findings;

  EnoughModules(RigIndex rig, Findings findings) {
    this.rig = rig;
    this.findings = findings;
  }

  /** Whether each role finds a module of its own. */
  boolean check(Collection<RoleDraft> drafts, Function<RoleDraft, List<Module>> players) {
    List<RoleDraft> roles = new ArrayList<>();
    for (RoleDraft draft : drafts) {
      if (!players.apply(draft).isEmpty()) {
        roles.add(draft);
      }
    }
    boolean enough = true;
    Crowd inTheWay = new Crowd(roles, players).tooMany();
    while (!inTheWay.roles.isEmpty()) {
      enough = false;
      Crowd crowd = inTheWay.smallest();
      List<RoleDraft> all = crowd.joinedBy(roles);
      report(all, crowd.modules());
      roles.removeAll(new HashSet<>(all));
      inTheWay = new Crowd(roles, players).tooMany();
    }
    return enough;
  }

  private void report(List<RoleDraft> roles, Set<Module> modules) {
    List<String> names = roles.stream().map(RoleDraft::name).toList();
    Set<String> kinds = new LinkedHashSet<>();
    modules.forEach(module -> kinds.add(module.kind().name()));
    String kind = kinds.iterator().next();
    boolean allOfOneKind = kinds.size() == 1 && rig.ofKind(kind).size() == modules.size();
    String needed = Quoted.count(roles.size(), "module");
    String list = Quoted.joined(modules.stream().map(Module::name).toList());
    findings.error(
        roles.get(roles.size() - 1).piece(),
        Quoted.list(names)
            + (allOfOneKind
                ? " need %s of kind \"%s\", and the rig has %d: %s"
                    .formatted(needed, kind, modules.size(), list)
                : " need %s, and only %d will do: %s".formatted(needed, modules.size(), list)),
        "Spare a role, or let one of them be played by another kind.");
  }

  /** Some roles and their candidates. */
  private final class Crowd {
    private final List<RoleDraft> roles;
    private final Function<RoleDraft, List<Module>> players;

    Crowd(List<RoleDraft> roles, Function<RoleDraft, List<Module>> players) {
      this.roles = roles;
      this.players = players;
    }

    private Matching matching() {
      List<int[]> options = new ArrayList<>();
      for (RoleDraft role : roles) {
        options.add(rig.numbers(players.apply(role)));
      }
      return new Matching(options, rig.modules().size());
    }

    boolean fits() {
      return matching().complete();
    }

    /** Some of the roles that have fewer candidates than members; none if all fit. */
    Crowd tooMany() {
      return new Crowd(matching().tooMany().stream().mapToObj(roles::get).toList(), players);
    }

    /** Spares one role after another while the rest still does not fit. */
    Crowd smallest() {
      Crowd crowd = this;
      for (RoleDraft role : roles) {
        List<RoleDraft> others = new ArrayList<>(crowd.roles);
        others.remove(role);
        Crowd smaller = new Crowd(others, players);
        if (!smaller.fits()) {
          crowd = smaller;
        }
      }
      return crowd;
    }

    /** These roles and all others that have no candidate but theirs. */
    List<RoleDraft> joinedBy(List<RoleDraft> others) {
      Set<Module> theirs = modules();
      return others.stream().filter(role -> theirs.containsAll(players.apply(role))).toList();
    }

    /** In the order of the rig. */
    Set<Module> modules() {
      Set<Module> inOrder = new TreeSet<>(Comparator.comparingInt(rig::number));
      roles.forEach(role -> inOrder.addAll(players.apply(role)));
      return inOrder;
    }
  }
}
