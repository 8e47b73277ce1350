package entracte.rig;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * A module in the case. Two modules of one rig never share a name, so a module is the same as
 * another if their names are.
 *
 * @param row from 0 at the top
 * @param centreCm the distance of its centre from the left edge of its row
 */
public record Module(String name, Kind kind, int row, double centreCm) {

  /** Every jack, in the order of the groups. */
  public List<Socket> sockets() {
    List<Socket> all = new ArrayList<>();
    for (Group group : kind.groups()) {
      for (int number = 1; number <= group.count(); number++) {
        for (Jack jack : group.jacks()) {
          all.add(new Socket(this, group, number, jack));
        }
      }
    }
    return all;
  }

  /** Every knob and switch, in the order of the groups, knobs before switches. */
  public List<Control> controls() {
    List<Control> all = new ArrayList<>();
    for (Group group : kind.groups()) {
      for (int number = 1; number <= group.count(); number++) {
        for (Knob knob : group.knobs()) {
          all.add(Control.of(this, group, number, knob));
        }
        for (Switch each : group.switches()) {
          all.add(Control.of(this, group, number, each));
        }
      }
    }
    return all;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Module module && module.name.equals(name);
  }

  @Override
  public int hashCode() {
    return Objects.hash(name);
  }

  @Override
  public String toString() {
    return name;
  }
}
