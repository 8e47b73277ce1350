package entracte.check;

import entracte.rig.Kind;
import entracte.rig.Module;
import entracte.setlist.Patch;
import entracte.setlist.Role;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Names of roles that could be read in two ways. The role is always meant; players should know. */
final class RoleNames {
  private final RigIndex rig;
  private final Findings findings;

  RoleNames(RigIndex rig, Findings findings) {
    this.rig = rig;
    this.findings = findings;
  }

  void check(Patch patch) {
    Map<String, Role> roles = new HashMap<>();
    patch.roles().forEach(role -> roles.putIfAbsent(role.name(), role));
    for (Role role : patch.roles()) {
      checkModule(role);
      checkDot(role, roles);
    }
  }

  /** No harm is done where nothing else could play the role anyway. */
  private void checkModule(Role role) {
    Optional<Module> namesake = rig.module(role.name());
    if (namesake.isPresent() && !players(role).allMatch(namesake.get()::equals)) {
      findings.warning(
          role,
          "\"" + role.name() + "\" is a role of this patch and a module of the rig",
          "The role is meant, and another module may play it; a name of its own would be clearer.");
    }
  }

  private Stream<Module> players(Role role) {
    return role.accepts().stream()
        .flatMap(
            accepted ->
                rig.kind(accepted).isPresent()
                    ? rig.ofKind(accepted).stream()
                    : rig.module(accepted).stream());
  }

  /** {@code blend.low} may be a role, or the channel {@code low} of the role {@code blend}. */
  private void checkDot(Role role, Map<String, Role> roles) {
    int dot = role.name().lastIndexOf('.');
    String before = dot < 0 ? "" : role.name().substring(0, dot).strip();
    Role owner = roles.get(before);
    Stream<Kind> kinds =
        owner == null
            ? rig.module(before).map(Module::kind).stream()
            : owner.accepts().stream().flatMap(name -> kinds(name).stream());
    if (kinds.anyMatch(kind -> kind.channels().isPresent())) {
      findings.warning(
          role,
          "\"%s\" looks like a channel of \"%s\"".formatted(role.name(), before),
          "It is taken for the role; a name without the dot would be clearer.");
    }
  }

  private List<Kind> kinds(String accepted) {
    return rig.kind(accepted).or(() -> rig.module(accepted).map(Module::kind)).stream().toList();
  }
}
