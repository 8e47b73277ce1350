package entracte.check;

import entracte.check.RoleDraft.Offer;
import entracte.finding.NearestName;
import entracte.rig.Kind;
import entracte.rig.Module;
import entracte.setlist.Patch;
import entracte.setlist.Role;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The roles of one song by name: those of its patch first, then the modules that it names outright,
 * in the order in which they are first named.
 */
final class Drafts {
  /**
   * Whose jack or control is meant.
   *
   * @param channel empty for the module's own
   */
  record Owned(RoleDraft role, String channel) {}

  /** Whoever mistypes more names than this has another trouble, and looking for all takes long. */
  private static final int MOST_ADVISED = 20;

  private final RigIndex rig;
  private final Findings findings;
  private final Map<String, RoleDraft> byName = new LinkedHashMap<>();
  private final Set<String> unknown = new HashSet<>();

  Drafts(RigIndex rig, Patch patch, Findings findings) {
    this.rig = rig;
    this.findings = findings;
    for (Role role : patch.roles()) {
      RoleDraft draft = declared(role);
      if (byName.putIfAbsent(role.name(), draft) != null) {
        findings.error(
            role, "the role \"" + role.name() + "\" stands twice", "Call one of them otherwise.");
      }
    }
  }

  Collection<RoleDraft> all() {
    return byName.values();
  }

  /**
   * Finds an owner: a role, then a module, then either of them with a channel behind the last dot.
   * An unknown name is reported once for the song.
   *
   * @param piece what to point at, or {@code whole} if nobody knows where it stands
   */
  Optional<Owned> owner(String text, Object piece, Object whole) {
    if (text.isEmpty()) {
      findings.error(
          piece,
          whole,
          "there is no role or module before the jack",
          "Write a role or a module, a dot, and its jack: \"lead.pitch\".");
      return Optional.empty();
    }
    Optional<RoleDraft> plain = named(text, whole);
    if (plain.isPresent()) {
      return Optional.of(new Owned(plain.get(), ""));
    }
    int dot = text.lastIndexOf('.');
    String base = dot < 0 ? "" : text.substring(0, dot).strip();
    String channel = text.substring(dot + 1).strip();
    Optional<RoleDraft> owner = base.isEmpty() ? Optional.empty() : named(base, whole);
    if (owner.isEmpty() || channel.isEmpty()) {
      reportUnknown(base.isEmpty() || channel.isEmpty() ? text : base, piece, whole);
      return Optional.empty();
    }
    int number = Digits.number(channel);
    return Optional.of(new Owned(owner.get(), number < 0 ? channel : String.valueOf(number)));
  }

  private Optional<RoleDraft> named(String name, Object piece) {
    RoleDraft known = byName.get(name);
    if (known == null) {
      Optional<Module> module = rig.module(name);
      if (module.isPresent()) {
        known = outright(module.get(), piece);
        byName.put(name, known);
      }
    }
    return Optional.ofNullable(known);
  }

  private static RoleDraft outright(Module module, Object piece) {
    Offer offer = new Offer(module.kind(), List.of(module));
    return new RoleDraft(module.name(), piece, false, true, List.of(offer));
  }

  private void reportUnknown(String name, Object piece, Object whole) {
    if (unknown.add(name)) {
      Set<String> known = new LinkedHashSet<>();
      if (unknown.size() <= MOST_ADVISED) {
        known.addAll(byName.keySet());
        known.addAll(rig.moduleNames());
      }
      findings.error(
          piece,
          whole,
          "\"" + name + "\" is no role of this patch and no module of the rig",
          NearestName.advice(name, known));
    }
  }

  private RoleDraft declared(Role role) {
    List<Offer> offers = offers(role);
    if (role.accepts().isEmpty()) {
      findings.error(
          role,
          "the role \"" + role.name() + "\" does not say what may play it",
          "Name a kind, a list of kinds, or one module.");
    } else if (!offers.isEmpty() && offers.stream().allMatch(o -> o.modules().isEmpty())) {
      findings.error(
          role,
          "the rig has no module of kind \"" + offers.get(0).kind().name() + "\"",
          "The role \"" + role.name() + "\" needs one.");
    }
    boolean pinned = offers.size() == 1 && rig.kind(role.accepts().get(0)).isEmpty();
    return new RoleDraft(role.name(), role, true, pinned, offers);
  }

  /** Nothing if one is unknown: then it is not known either what all lack, or how few they are. */
  private List<Offer> offers(Role role) {
    Set<String> accepted = new LinkedHashSet<>(role.accepts());
    List<Offer> offers = new ArrayList<>();
    accepted.forEach(name -> offer(role, name).ifPresent(offers::add));
    return offers.size() < accepted.size() ? List.of() : offers;
  }

  private Optional<Offer> offer(Role role, String accepted) {
    Optional<Kind> kind = rig.kind(accepted);
    if (kind.isPresent()) {
      return Optional.of(new Offer(kind.get(), rig.ofKind(accepted)));
    }
    Optional<Module> module = rig.module(accepted);
    if (module.isPresent()) {
      return Optional.of(new Offer(module.get().kind(), List.of(module.get())));
    }
    Set<String> known = new LinkedHashSet<>(rig.kindNames());
    known.addAll(rig.moduleNames());
    findings.error(
        accepted,
        role,
        "\"" + accepted + "\" is no kind and no module of the rig",
        NearestName.advice(accepted, known));
    return Optional.empty();
  }
}
