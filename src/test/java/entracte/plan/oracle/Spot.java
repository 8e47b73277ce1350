package entracte.plan.oracle;

import entracte.check.Part.Strip;
import entracte.rig.Group;
import entracte.rig.Jack;
import entracte.rig.Module;
import entracte.rig.Socket;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** One strip of a module: a channel, an equal jack, a tap, or all that the module has once. */
record Spot(Module module, Group group, int number) {
  static Spot own(Module module) {
    return new Spot(module, module.kind().own(), 1);
  }

  /**
   * The strips of {@code module} that {@code strip} of a patch may be; none if it has no such. A
   * jack that is there only once counts as a strip too.
   */
  static List<Spot> candidates(Module module, Strip strip) {
    List<Spot> spots = new ArrayList<>();
    Optional<Group> group =
        strip.isChannel()
            ? module.kind().channels()
            : module.kind().groups().stream()
                .filter(g -> g.form() != Group.Form.CHANNELS && g.jack(strip.jack()).isPresent())
                .findFirst();
    int count = group.map(Group::count).orElse(0);
    for (int number = 1; number <= count; number++) {
      if (strip.number() == 0 || strip.number() == number) {
        spots.add(new Spot(module, group.get(), number));
      }
    }
    return spots;
  }

  Socket socket(String jackName) {
    Jack jack = group.jack(jackName).orElseThrow();
    return new Socket(module, group, number, jack);
  }
}
