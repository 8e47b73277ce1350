package entracte.rig;

import java.util.List;
import java.util.Optional;

/**
 * One physical knob or switch.
 *
 * @param number which of the group's equal strips, from 1
 * @param scale the knob's scale; empty for a switch
 * @param positions the switch's positions; empty for a knob
 */
public record Control(
    Module module,
    Group group,
    int number,
    String name,
    Optional<Scale> scale,
    List<String> positions) {
  public Control {
    positions = List.copyOf(positions);
  }

  static Control of(Module module, Group group, int number, Knob knob) {
    return new Control(module, group, number, knob.name(), Optional.of(knob.scale()), List.of());
  }

  static Control of(Module module, Group group, int number, Switch each) {
    return new Control(module, group, number, each.name(), Optional.empty(), each.positions());
  }

  public boolean isKnob() {
    return scale.isPresent();
  }

  /** {@code filter 1.cutoff}, {@code mix 1.2.level}. */
  @Override
  public String toString() {
    return module.name() + "." + local();
  }

  /** The name without the module: {@code 2.level}. */
  public String local() {
    return group.form() == Group.Form.OWN ? name : number + "." + name;
  }
}
