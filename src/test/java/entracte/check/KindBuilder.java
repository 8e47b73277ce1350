package entracte.check;

import entracte.rig.Direction;
import entracte.rig.Group;
import entracte.rig.Jack;
import entracte.rig.Jumper;
import entracte.rig.Kind;
import entracte.rig.Knob;
import entracte.rig.Position;
import entracte.rig.Scale;
import entracte.rig.Switch;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Makes a kind as a rig's file would: {@code in("pitch x2", "fm")} are two equal jacks and one. */
public final class KindBuilder {
  private final String name;
  private final List<Jack> jacks = new ArrayList<>();
  private final List<Knob> knobs = new ArrayList<>();
  private final List<Switch> switches = new ArrayList<>();
  private final List<Jumper> jumpers = new ArrayList<>();
  private final List<Group> groups = new ArrayList<>();
  private final Set<String> leaves = new HashSet<>();
  private double widthCm = Kind.DEFAULT_WIDTH_CM;

  KindBuilder(String name) {
    this.name = name;
  }

  public KindBuilder in(String... names) {
    return jacks(Direction.IN, names);
  }

  public KindBuilder out(String... names) {
    return jacks(Direction.OUT, names);
  }

  private KindBuilder jacks(Direction direction, String... names) {
    for (String each : names) {
      int times = each.lastIndexOf(" x");
      if (times > 0 && each.substring(times + 2).matches("\\d+")) {
        equalJacks(
            each.substring(0, times), Integer.parseInt(each.substring(times + 2)), direction);
      } else {
        jacks.add(new Jack(each, direction));
      }
    }
    return this;
  }

  public KindBuilder taps(int count) {
    equalJacks("tap", count, Direction.TAP);
    return this;
  }

  private void equalJacks(String jack, int count, Direction direction) {
    groups.add(
        new Group(
            Group.Form.EQUAL_JACKS,
            jack,
            count,
            List.of(new Jack(jack, direction)),
            List.of(),
            List.of(),
            Map.of()));
  }

  public KindBuilder knob(String knob, double low, double high) {
    knobs.add(new Knob(knob, new Scale(low, high)));
    return this;
  }

  public KindBuilder flip(String flipped, String... positions) {
    switches.add(new Switch(flipped, List.of(positions)));
    return this;
  }

  public KindBuilder jumper(String jumper, String... positions) {
    jumpers.add(new Jumper(jumper, List.of(positions)));
    return this;
  }

  public KindBuilder leaves(String... outputs) {
    leaves.addAll(List.of(outputs));
    return this;
  }

  public KindBuilder width(double cm) {
    widthCm = cm;
    return this;
  }

  /** Channels with an input {@code in} and a knob {@code level} from 0 to 10, shut at 0. */
  public KindBuilder channels(int count) {
    return channels(count, Map.of("level", new Position.At(0)));
  }

  public KindBuilder channels(int count, Map<String, Position> closed) {
    return channels(count, closed, "in");
  }

  /**
   * Channels with a knob {@code level} and these jacks; {@code out} is an output, others inputs.
   */
  public KindBuilder channels(int count, Map<String, Position> closed, String... names) {
    List<Jack> each = new ArrayList<>();
    for (String jack : names) {
      each.add(new Jack(jack, jack.equals("out") ? Direction.OUT : Direction.IN));
    }
    groups.add(
        new Group(
            Group.Form.CHANNELS,
            "",
            count,
            each,
            List.of(new Knob("level", new Scale(0, 10))),
            List.of(),
            closed));
    return this;
  }

  Kind build() {
    List<Group> all = new ArrayList<>();
    all.add(new Group(Group.Form.OWN, "", 1, jacks, knobs, switches, Map.of()));
    all.addAll(groups);
    return new Kind(name, all, jumpers, widthCm, leaves);
  }
}
