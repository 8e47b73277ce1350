package entracte.check;

import entracte.finding.NearestName;
import entracte.rig.Figures;
import entracte.rig.Group;
import entracte.rig.Jumper;
import entracte.rig.Kind;
import entracte.rig.Knob;
import entracte.rig.Scale;
import entracte.rig.Switch;
import entracte.setlist.Interval;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads what a patch sets, as one kind understands it: a knob first, then a switch, a jumper. */
final class ControlReading {
  private static final Pattern ENDS =
      Pattern.compile("(-?\\d{1,9}(?:\\.\\d{1,9})?)\\s*\\.\\.\\s*(-?\\d{1,9}(?:\\.\\d{1,9})?)");

  private final Kind kind;
  private final KindReading channels;

  /**
   * @param channels the reading of the same role's jacks, which counts its channels
   */
  ControlReading(Kind kind, KindReading channels) {
    this.kind = kind;
    this.channels = channels;
  }

  Reply<ControlShape> control(ControlAsk ask) {
    Group group = kind.own();
    if (!ask.channel().isEmpty()) {
      Optional<Lack> lack = channels.channel(ask.channel());
      if (lack.isPresent()) {
        return Reply.lacking(lack.get());
      }
      group = kind.channels().orElseThrow();
    }
    Optional<Knob> knob = group.knob(ask.control());
    if (knob.isPresent()) {
      return turned(knob.get(), ask.value());
    }
    Optional<Switch> flipped = group.switchNamed(ask.control());
    if (flipped.isPresent()) {
      return thrown(flipped.get(), ask.value());
    }
    Optional<Jumper> jumper =
        ask.channel().isEmpty() ? kind.jumper(ask.control()) : Optional.empty();
    return jumper.isPresent() ? bridged(jumper.get(), ask.value()) : unknown(ask, group);
  }

  private static Reply<ControlShape> turned(Knob knob, String value) {
    Scale scale = knob.scale();
    String range = Figures.plain(scale.low()) + " to " + Figures.plain(scale.high());
    Optional<Interval> interval = Interval.parse(value);
    if (interval.isEmpty() && Interval.parse(value.replace(',', '.')).isPresent()) {
      return wrongValue(
          "has a knob \"%s\", and \"%s\" is no figure".formatted(knob.name(), value),
          "Write %s, with a point.".formatted(value.replace(',', '.')));
    }
    if (interval.isEmpty()) {
      return wrongValue(
          "has a knob \"%s\", and \"%s\" is no figure".formatted(knob.name(), value),
          withRoom(value)
              .map("Write \"%s\": the middle, and the room on both sides."::formatted)
              .orElse(
                  "Write a figure from %s, or one with room to spare, such as \"%s +-0.5\"."
                      .formatted(range, Figures.plain((scale.low() + scale.high()) / 2))));
    }
    double nominal = interval.get().nominal();
    if (!scale.contains(nominal)) {
      return wrongValue(
          "has \"%s\" from %s, and %s is off that scale"
              .formatted(knob.name(), range, Figures.plain(nominal)),
          "The nearest figure is %s."
              .formatted(Figures.plain(nominal < scale.low() ? scale.low() : scale.high())));
    }
    return Reply.found(new ControlShape.Knob(interval.get()));
  }

  /** Who writes {@code 2.5..3.5}, as a scale is written, means {@code 3 +-0.5}. */
  private static Optional<String> withRoom(String value) {
    Matcher ends = ENDS.matcher(value);
    if (!ends.matches()) {
      return Optional.empty();
    }
    double low = Double.parseDouble(ends.group(1));
    double high = Double.parseDouble(ends.group(2));
    return low < high
        ? Optional.of(Figures.plain((low + high) / 2) + " +-" + Figures.plain((high - low) / 2))
        : Optional.empty();
  }

  private static Reply<ControlShape> thrown(Switch flipped, String value) {
    return flipped.positions().contains(value)
        ? Reply.found(new ControlShape.Switch(value))
        : noPosition("switch", flipped.name(), value, flipped.positions());
  }

  private static Reply<ControlShape> bridged(Jumper jumper, String value) {
    return jumper.positions().contains(value)
        ? Reply.found(new ControlShape.Jumper(value))
        : noPosition("jumper", jumper.name(), value, jumper.positions());
  }

  private static Reply<ControlShape> noPosition(
      String what, String name, String value, List<String> positions) {
    return wrongValue(
        "has a %s \"%s\" without a position \"%s\"".formatted(what, name, value),
        NearestName.advice(value, positions));
  }

  private static Reply<ControlShape> wrongValue(String predicate, String advice) {
    return Reply.lacking(Lack.ofValue(predicate, advice));
  }

  private static Reply<ControlShape> wrongName(String predicate, String advice) {
    return Reply.lacking(Lack.ofName(predicate, advice));
  }

  private Reply<ControlShape> unknown(ControlAsk ask, Group group) {
    String name = ask.control();
    String owner = ask.role().name();
    if (!ask.channel().isEmpty()) {
      String predicate = "has channels without a knob or switch \"" + name + "\"";
      return namesOf(kind.own(), kind.jumpers()).contains(name)
          ? wrongName(predicate, "It belongs to the whole module: set it under \"" + owner + "\".")
          : wrongName(predicate, NearestName.advice(name, namesOf(group, List.of())));
    }
    String predicate = "has no knob, switch or jumper \"" + name + "\"";
    boolean inChannel =
        kind.channels().filter(c -> namesOf(c, List.of()).contains(name)).isPresent();
    return inChannel
        ? wrongName(
            predicate,
            "Each channel has one: set it under \"%s.1\", or name a channel.".formatted(owner))
        : wrongName(predicate, NearestName.advice(name, namesOf(group, kind.jumpers())));
  }

  private static List<String> namesOf(Group group, List<Jumper> jumpers) {
    List<String> names = new ArrayList<>();
    group.knobs().forEach(knob -> names.add(knob.name()));
    group.switches().forEach(flipped -> names.add(flipped.name()));
    jumpers.forEach(jumper -> names.add(jumper.name()));
    return names;
  }
}
