package entracte.plan;

import entracte.check.Part;
import entracte.check.Part.CastRole;
import entracte.check.Part.JackUse;
import entracte.check.Part.Owner;
import entracte.check.Part.Strip;
import entracte.plan.SongPlan.CastAs;
import entracte.rig.Control;
import entracte.rig.Group;
import entracte.rig.Module;
import entracte.rig.Socket;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** What a song needs, read through its casting: roles become modules, jack names become holes. */
record CastPart(Part part, SongPlan song) {

  /** The group of {@code module} in which a role's strip lies. */
  static Optional<Group> groupOf(Module module, Strip strip) {
    return strip.groupOf(module.kind());
  }

  /** The implied multiples: whatever is cast beyond the roles of the patch. */
  List<CastAs> implied() {
    return song.casting().subList(part.roles().size(), song.casting().size());
  }

  /** The modules that are not idle. */
  Set<Module> active() {
    return song.casting().stream().map(CastAs::module).collect(Collectors.toSet());
  }

  Socket socket(JackUse use) {
    Module module = moduleOf(use.owner());
    Group group = groupOf(use.owner());
    return new Socket(module, group, numberOf(use.owner()), group.jack(use.jack()).orElseThrow());
  }

  Control control(Owner owner, String name) {
    Module module = moduleOf(owner);
    Group group = groupOf(owner);
    int number = numberOf(owner);
    return module.controls().stream()
        .filter(c -> c.group().equals(group) && c.number() == number && c.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  /** Whether a role names this channel, be it only to set its level. */
  boolean namesChannel(Module module, int number) {
    for (int role = 0; role < part.roles().size(); role++) {
      CastAs cast = song.casting().get(role);
      List<Strip> strips = part.roles().get(role).channels();
      for (int strip = 0; cast.module().equals(module) && strip < strips.size(); strip++) {
        if (strips.get(strip).isChannel() && cast.strips().get(strip).number() == number) {
          return true;
        }
      }
    }
    return false;
  }

  /** A source as a musician would say it: {@code keys.pitch 2}, {@code blend.low.out}. */
  String nameOf(JackUse use) {
    CastRole role = part.roles().get(use.owner().role());
    if (use.owner().strip() == Owner.OWN) {
      return role.name() + "." + use.jack();
    }
    Strip strip = role.channels().get(use.owner().strip());
    return role.name() + "." + strip.label() + (strip.isChannel() ? "." + use.jack() : "");
  }

  private Module moduleOf(Owner owner) {
    return song.casting().get(owner.role()).module();
  }

  private Group groupOf(Owner owner) {
    Module module = moduleOf(owner);
    return owner.strip() == Owner.OWN
        ? module.kind().own()
        : groupOf(module, part.roles().get(owner.role()).channels().get(owner.strip()))
            .orElseThrow();
  }

  private int numberOf(Owner owner) {
    return owner.strip() == Owner.OWN
        ? 1
        : song.casting().get(owner.role()).strips().get(owner.strip()).number();
  }
}
