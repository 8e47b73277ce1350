package entracte.plan;

import entracte.check.Part;
import entracte.check.Part.JumperNeed;
import entracte.plan.Plan.JumperIn;
import entracte.rig.Module;
import java.util.function.Consumer;

/** Every jumper has one position for the whole set, which every song that cares agrees with. */
final class VerifyJumpers {
  private VerifyJumpers() {}

  static void check(Plan plan, Consumer<String> complain) {
    plan.jumpers()
        .forEach(
            (jumper, position) -> {
              if (!jumper.module().kind().jumpers().contains(jumper.jumper())
                  || !jumper.jumper().positions().contains(position)) {
                complain.accept("jumper %s cannot stand at %s".formatted(jumper, position));
              }
            });
    for (int song = 0; song < plan.songs().size(); song++) {
      Part part = plan.set().parts().get(song);
      for (JumperNeed need : part.jumpers()) {
        Module module = plan.songs().get(song).casting().get(need.role()).module();
        if (!agrees(plan, module, need)) {
          complain.accept(
              "song %d, %s: jumper %s of %s is not at %s"
                  .formatted(song + 1, part.song().name(), need.jumper(), module, need.position()));
        }
      }
    }
  }

  private static boolean agrees(Plan plan, Module module, JumperNeed need) {
    return module
        .kind()
        .jumper(need.jumper())
        .map(jumper -> plan.jumpers().get(new JumperIn(module, jumper)))
        .filter(need.position()::equals)
        .isPresent();
  }
}
