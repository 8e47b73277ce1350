package entracte.plan;

import entracte.check.Part;
import entracte.check.Part.CastRole;
import entracte.check.Part.Strip;
import entracte.plan.SongPlan.CastAs;
import entracte.plan.SongPlan.StripAs;
import entracte.rig.Group;
import entracte.rig.Module;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;

/** Every role has a module of its own that can play it, every strip a number of its own. */
final class VerifyCasting {
  private final Part part;
  private final SongPlan song;
  private final Consumer<String> complain;
  private boolean passed = true;

  private VerifyCasting(Part part, SongPlan song, Consumer<String> complain) {
    this.part = part;
    this.song = song;
    this.complain = complain;
  }

  /** False if the casting is so wrong that its cords cannot be worked out. */
  static boolean passes(Part part, SongPlan song, Consumer<String> complain) {
    VerifyCasting check = new VerifyCasting(part, song, complain);
    check.everyRole();
    check.noModuleTwice();
    check.onlyMultiplesBeyond();
    return check.passed;
  }

  private void fault(String complaint) {
    passed = false;
    complain.accept(complaint);
  }

  private void everyRole() {
    for (int index = 0; index < part.roles().size(); index++) {
      CastRole role = part.roles().get(index);
      if (index >= song.casting().size() || !song.casting().get(index).role().equals(role.name())) {
        fault("role " + role.name() + " is not cast in its place");
        return;
      }
      CastAs cast = song.casting().get(index);
      if (!role.candidates().contains(cast.module())) {
        fault("%s cannot play %s".formatted(cast.module(), role.name()));
      } else {
        everyStrip(role, cast);
      }
    }
  }

  private void everyStrip(CastRole role, CastAs cast) {
    if (cast.strips().size() != role.channels().size()) {
      fault("%s needs %d strips".formatted(role.name(), role.channels().size()));
      return;
    }
    Set<Object> taken = new HashSet<>();
    for (int index = 0; index < cast.strips().size(); index++) {
      Strip wanted = role.channels().get(index);
      StripAs given = cast.strips().get(index);
      String name = role.name() + "." + wanted.label();
      if (!isOneOf(cast.module(), wanted, given)) {
        fault("%s is no strip of %s".formatted(name, cast.module()));
      }
      if (wanted.number() != 0 && wanted.number() != given.number()) {
        fault("%s is cast on number %d".formatted(name, given.number()));
      }
      if (!taken.add(List.of(wanted.jack(), given.number()))) {
        fault("%s shares number %d".formatted(name, given.number()));
      }
    }
  }

  private static boolean isOneOf(Module module, Strip wanted, StripAs given) {
    Optional<Group> group = CastPart.groupOf(module, wanted);
    return group.isPresent()
        && given.label().equals(wanted.label())
        && given.number() >= 1
        && given.number() <= group.get().count();
  }

  private void noModuleTwice() {
    Set<Module> taken = new HashSet<>();
    for (CastAs cast : song.casting()) {
      if (!taken.add(cast.module())) {
        fault("%s plays two roles".formatted(cast.module()));
      }
    }
  }

  private void onlyMultiplesBeyond() {
    song.casting().stream()
        .skip(part.roles().size())
        .filter(cast -> cast.module().kind().taps() == 0)
        .forEach(cast -> fault("%s is no role of the patch".formatted(cast.role())));
  }
}
