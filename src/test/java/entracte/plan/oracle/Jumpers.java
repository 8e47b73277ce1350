package entracte.plan.oracle;

import com.google.ortools.sat.BoolVar;
import entracte.check.Part.JumperNeed;
import entracte.plan.Plan.JumperIn;
import entracte.rig.Jumper;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** One position for the whole set of every jumper that some song cares about. */
final class Jumpers {
  final Map<JumperIn, Map<String, BoolVar>> positions = new LinkedHashMap<>();

  Jumpers(Cp cp, List<SongVars> songs) {
    for (SongVars song : songs) {
      for (JumperNeed need : song.part.jumpers()) {
        song.cast
            .get(need.role())
            .forEach(
                (module, here) -> {
                  Jumper jumper = module.kind().jumper(need.jumper()).orElseThrow();
                  Map<String, BoolVar> all =
                      positions.computeIfAbsent(
                          new JumperIn(module, jumper), key -> choices(cp, jumper));
                  cp.implies(here, all.get(need.position()));
                });
      }
    }
  }

  private static Map<String, BoolVar> choices(Cp cp, Jumper jumper) {
    Map<String, BoolVar> all = new LinkedHashMap<>();
    jumper.positions().forEach(each -> all.put(each, cp.bool(jumper.name() + " at " + each)));
    cp.exactlyOne(all.values());
    return all;
  }
}
