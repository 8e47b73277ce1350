package entracte.check;

import entracte.finding.NearestName;
import entracte.rig.Direction;
import entracte.rig.Group;
import entracte.rig.Jack;
import entracte.rig.Kind;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Reads what is asked of one role as one kind understands it. It remembers the plugs and channels
 * already asked for, so everything asked of the role goes through one reading, in order.
 */
final class KindReading {
  private final Kind kind;
  private final String role;
  private final Map<String, Integer> plugs = new HashMap<>();
  private final Set<String> numbered = new HashSet<>();
  private final Set<String> channels = new HashSet<>();

  KindReading(Kind kind, String role) {
    this.kind = kind;
    this.role = role;
  }

  /** Finds the jack: an exact name first, then the n-th of equal jacks. */
  Reply<JackShape> jack(JackAsk ask) {
    if (!ask.channel().isEmpty()) {
      return channelJack(ask);
    }
    Optional<Jack> own = kind.own().jack(ask.jack());
    if (own.isPresent()) {
      return plug(ask, 1, new JackShape(ask.jack(), 0, false, own.get().direction()));
    }
    Optional<Group> equal = kind.equalJacks(ask.jack());
    if (equal.isPresent()) {
      return plug(ask, equal.get().count(), equalJack(equal.get(), 0));
    }
    return numberedJack(ask);
  }

  private Reply<JackShape> numberedJack(JackAsk ask) {
    int space = ask.jack().lastIndexOf(' ');
    int number = Digits.number(ask.jack().substring(space + 1));
    Optional<Group> equal =
        space < 0 || number < 0
            ? Optional.empty()
            : kind.equalJacks(ask.jack().substring(0, space).strip());
    if (equal.isEmpty()) {
      return Reply.lacking(Lack.ofName(noJack(ask.jack()), jackAdvice(ask)));
    }
    Group group = equal.get();
    if (number < 1 || number > group.count()) {
      return Reply.lacking(
          Lack.ofName(
              noJack(ask.jack()),
              "Its jacks \"%s\" are numbered 1 to %d.".formatted(group.name(), group.count())));
    }
    return plug(ask, group.count(), equalJack(group, number));
  }

  private static JackShape equalJack(Group group, int number) {
    return new JackShape(group.name(), number, true, group.jacks().get(0).direction());
  }

  private Reply<JackShape> channelJack(JackAsk ask) {
    Optional<Lack> lack = channel(ask.channel());
    if (lack.isPresent()) {
      return Reply.lacking(lack.get());
    }
    Optional<Jack> jack = kind.channels().orElseThrow().jack(ask.jack());
    if (jack.isEmpty()) {
      return Reply.lacking(
          Lack.ofName("has channels without a jack \"" + ask.jack() + "\"", jackAdvice(ask)));
    }
    return plug(ask, 1, new JackShape(ask.jack(), 0, false, jack.get().direction()));
  }

  private Reply<JackShape> plug(JackAsk ask, int count, JackShape shape) {
    if (shape.direction() == (ask.source() ? Direction.IN : Direction.OUT)) {
      String way = ask.source() ? "an input" : "an output";
      String predicate = "has \"%s\" as %s".formatted(shape.jack(), way);
      return Reply.lacking(new Lack(Lack.About.DIRECTION, predicate, "", ""));
    }
    String hole = ask.channel() + "." + shape.jack();
    boolean again = shape.number() > 0 && !numbered.add(hole + "." + shape.number());
    if (again || plugs.merge(hole, 1, Integer::sum) > count) {
      return Reply.lacking(tooManyPlugs(ask, again ? 1 : count));
    }
    return Reply.found(shape);
  }

  private Lack tooManyPlugs(JackAsk ask, int count) {
    if (count > 1) {
      return Lack.ofName(
          "has %d jacks \"%s\", and \"%s\" uses more".formatted(count, ask.jack(), role),
          ask.source() ? "" : "Blend what goes there in a mixer.");
    }
    String predicate = "has one jack \"%s\", and \"%s\" uses it twice".formatted(ask.jack(), role);
    return ask.source()
        ? new Lack(
            Lack.About.NAME,
            predicate,
            "\"" + ask.end() + "\" is the source of two connections",
            "List all its sinks in one connection; a multiple is found for it.")
        : new Lack(
            Lack.About.NAME,
            predicate,
            "\"" + ask.end() + "\" is fed twice",
            "A jack takes one plug: blend the two signals in a mixer first.");
  }

  /** Whether the kind has that channel, and enough of them. */
  Optional<Lack> channel(String label) {
    Optional<Group> group = kind.channels();
    if (group.isEmpty()) {
      return Optional.of(Lack.ofName("has no channels", "Leave out \"." + label + "\"."));
    }
    int count = group.get().count();
    int number = Digits.number(label);
    if (number == 0 || number > count) {
      return Optional.of(
          Lack.ofName("has no channel " + label, "Its channels are numbered 1 to " + count + "."));
    }
    channels.add(label);
    return channels.size() <= count
        ? Optional.empty()
        : Optional.of(
            Lack.ofName("has %d channels, and \"%s\" uses more".formatted(count, role), ""));
  }

  private static String noJack(String name) {
    return "has no jack \"" + name + "\"";
  }

  /** Where the jack may be instead: in the channels, on the module itself, or nearly so called. */
  private String jackAdvice(JackAsk ask) {
    boolean inChannel = !ask.channel().isEmpty();
    if (inChannel && hasOwnJack(ask.jack())) {
      return "It is a jack of the whole module: write \"%s.%s\".".formatted(role, ask.jack());
    }
    if (!inChannel && kind.channels().flatMap(c -> c.jack(ask.jack())).isPresent()) {
      return "It is a jack of each channel: write \"%1$s.1.%2$s\", or name a channel as you like."
          .formatted(role, ask.jack());
    }
    Direction wrong = ask.source() ? Direction.IN : Direction.OUT;
    List<String> known = new ArrayList<>();
    for (Group group : kind.groups()) {
      if (inChannel == (group.form() == Group.Form.CHANNELS)) {
        group.jacks().stream()
            .filter(jack -> jack.direction() != wrong)
            .forEach(jack -> known.add(jack.name()));
      }
    }
    return NearestName.advice(ask.jack(), known);
  }

  private boolean hasOwnJack(String name) {
    return kind.own().jack(name).isPresent() || kind.equalJacks(name).isPresent();
  }
}
