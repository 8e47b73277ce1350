package entracte.cue;

import entracte.rig.Module;
import entracte.rig.Rig;
import java.util.List;

/**
 * The case from the front, as far as the rig's file tells: which module stands where, and how wide.
 *
 * @param rows top row first, each from left to right
 * @param sweepDegrees the angle a knob turns from one end of its scale to the other
 */
public record CaseMap(List<List<Panel>> rows, double sweepDegrees) {
  public CaseMap {
    rows = rows.stream().map(List::copyOf).toList();
  }

  /**
   * The front of one module.
   *
   * @param leftCm from the left end of its row
   */
  public record Panel(String module, double leftCm, double widthCm) {}

  static CaseMap of(Rig rig) {
    return new CaseMap(
        rig.rows().stream().map(row -> row.stream().map(CaseMap::panel).toList()).toList(),
        rig.hands().sweepDegrees());
  }

  private static Panel panel(Module module) {
    double width = module.kind().widthCm();
    return new Panel(module.name(), module.centreCm() - width / 2, width);
  }
}
