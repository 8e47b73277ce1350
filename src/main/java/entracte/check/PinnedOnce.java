package entracte.check;

import entracte.rig.Module;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** No module is named by two roles, or by a role and outright. */
final class PinnedOnce {
  private final Findings findings;

  PinnedOnce(Findings findings) {
    this.findings = findings;
  }

  /** Reports each role whose one module another role has; returns the roles that are left. */
  List<RoleDraft> check(List<RoleDraft> roles) {
    Map<Module, RoleDraft> pinned = new HashMap<>();
    List<RoleDraft> left = new ArrayList<>();
    for (RoleDraft role : roles) {
      RoleDraft first = role.isPinned() ? pinned.putIfAbsent(module(role), role) : null;
      if (first == null) {
        left.add(role);
      } else {
        report(first, role);
      }
    }
    return left;
  }

  private static Module module(RoleDraft pinned) {
    return pinned.offers().get(0).modules().get(0);
  }

  private void report(RoleDraft first, RoleDraft second) {
    String module = module(second).name();
    if (second.isDeclared()) {
      findings.error(
          second.piece(),
          "\"%s\" and \"%s\" both name the module \"%s\""
              .formatted(first.name(), second.name(), module),
          "Two roles never share a module: make them one role, or name another module.");
    } else {
      findings.error(
          second.piece(),
          "the module \"%s\" plays the role \"%s\"".formatted(module, first.name()),
          "Write \"" + first.name() + "\" here.");
    }
  }
}
