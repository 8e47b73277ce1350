package entracte.check;

import entracte.check.Part.CastRole;
import entracte.check.Part.JackUse;
import entracte.check.Part.Net;
import entracte.check.Part.Owner;
import entracte.check.Part.Wanted;
import entracte.rig.Direction;
import entracte.rig.Electrics;
import entracte.rig.Figures;
import entracte.rig.Group;
import entracte.rig.Kind;
import entracte.rig.Knob;
import entracte.rig.Signal;
import entracte.rig.Taper;
import entracte.rig.Toggle;
import entracte.setlist.Interval;
import entracte.setlist.KeyScale;
import entracte.setlist.Sound;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * How far one key goes: an oscillator that takes another voltage for an octave than its keys give
 * is told of, and a wished scale that nothing on the way of the pitch can make.
 */
final class Tracking {
  private static final double CENTS_A_KEY = 100;
  private static final double HEARD_CENTS = 0.5;

  /** What four inputs on a passive multiple take, and a knob may make up for. */
  private static final double SLACK = 0.05;

  private static final double HUNDRED = 100;

  private final Findings findings;

  Tracking(Findings findings) {
    this.findings = findings;
  }

  /**
   * The way of a pitch from its first output.
   *
   * @param hops how many modules pass it on
   * @param attenuated whether a knob makes less of it
   * @param gain how many times a gain step makes more of it
   * @param passes the least and the most that the knobs let pass as the patch sets them
   */
  private record Way(JackUse root, int hops, boolean attenuated, double gain, Interval passes) {
    /** Whether a key may go so far with the knobs as they are set; a multiple takes a little. */
    boolean reaches(double wanted, double cents) {
      double slack = wanted * SLACK + HEARD_CENTS;
      return cents * passes.low() - slack <= wanted && wanted <= cents * passes.high() + slack;
    }
  }

  void check(Part part, List<RoleDraft> drafts) {
    for (Net net : part.nets()) {
      for (JackUse sink : net.sinks()) {
        Way way = way(part, net);
        if (Pitched.isPitch(sink.jack()) && givesPitch(part, way.root())) {
          check(part, way, sink, drafts.get(sink.owner().role()));
        }
      }
    }
  }

  private void check(Part part, Way way, JackUse sink, RoleDraft draft) {
    Optional<Double> gives = volts(part.roles().get(way.root().owner().role()));
    Optional<Double> takes = volts(part.roles().get(sink.owner().role()));
    if (gives.isEmpty() || takes.isEmpty()) {
      return;
    }
    String keys = part.roles().get(way.root().owner().role()).name();
    double cents = CENTS_A_KEY * gives.get() / takes.get() * way.gain();
    List<Sound.Wish> wishes = part.song().patch().sound().scale();
    Optional<Sound.Wish> wish =
        wishes.stream().filter(each -> each.role().equals(draft.name())).findFirst();
    if (wish.isPresent()) {
      KeyScale.parse(wish.get().value())
          .ifPresent(scale -> reach(wish.get(), scale.cents(), cents, way, keys));
    } else if (way.hops() == 0 && !gives.equals(takes)) {
      findings.warning(
          draft.sink(part.strip(sink), sink.jack()),
          "\"%s\" takes %s V an octave, and \"%s\" gives %s: a key goes %s cents"
              .formatted(
                  draft.name(), figure(takes.get()), keys, figure(gives.get()), figure(cents)),
          advice(gives.get(), takes.get()));
    } else if (way.hops() > 0 && !way.reaches(CENTS_A_KEY, cents)) {
      findings.warning(
          draft.sink(part.strip(sink), sink.jack()),
          "a key goes %s cents at \"%s\", as what is on the way of its pitch is set"
              .formatted(figure(cents * way.passes().nominal()), draft.name()),
          "If that is meant, say so with scale; else set the knob or the gain step otherwise.");
    }
  }

  private static String advice(double gives, double takes) {
    String way =
        takes < gives
            ? "Let an attenuator pass " + figure(HUNDRED * takes / gives) + " % of it"
            : "Play it from an output that gives as much";
    return way + ", or correct \"volts per octave\" of one of the two kinds.";
  }

  private void reach(Sound.Wish wish, double wanted, double cents, Way way, String keys) {
    boolean less = way.attenuated();
    boolean reached =
        less ? wanted <= cents + HEARD_CENTS : Math.abs(wanted - cents) <= HEARD_CENTS;
    if (reached && less && !way.reaches(wanted, cents)) {
      findings.warning(
          wish,
          "\"%s\" is to go %s cents a key, and the knob on the way as it is set makes it %s"
              .formatted(wish.role(), figure(wanted), figure(cents * way.passes().nominal())),
          "Set the knob otherwise, or change the wish.");
    } else if (!reached) {
      findings.warning(
          wish,
          "\"%s\" is to go %s cents a key, and %s the %s that come from \"%s\""
              .formatted(
                  wish.role(),
                  figure(wanted),
                  less ? "an attenuator only makes less of" : "nothing on the way changes",
                  figure(cents),
                  keys),
          less
              ? "Wish for less, or leave the wish out."
              : "Put an attenuator on the way of its pitch, or leave the wish out.");
    }
  }

  /** Back from the output that feeds an input, through whatever passes the pitch on. */
  private static Way way(Part part, Net net) {
    JackUse out = net.source();
    boolean attenuated = false;
    double gain = 1;
    Interval passes = Interval.exactly(1);
    int hops = 0;
    Optional<Net> before = before(part, out);
    while (before.isPresent() && hops < part.nets().size()) {
      Owner owner = out.owner();
      hops++;
      attenuated |= attenuates(kind(part, out));
      gain *= gain(part, owner);
      passes = passes(part, out, before.get(), passes);
      out = before.get().source();
      before = before(part, out);
    }
    return new Way(out, hops, attenuated, gain, passes);
  }

  /** What feeds the module or the channel of an output, if nothing but one input does. */
  private static Optional<Net> before(Part part, JackUse out) {
    if (Pitched.hasPitch(part, out.owner().role(), Direction.OUT)) {
      return Optional.empty();
    }
    return part.nets().stream()
        .filter(net -> net.sinks().stream().anyMatch(sink -> passes(part, sink, out)))
        .findFirst();
  }

  private static boolean passes(Part part, JackUse in, JackUse out) {
    boolean same = in.owner().role() == out.owner().role();
    boolean strip = out.owner().strip() == Owner.OWN || in.owner().equals(out.owner());
    return same && strip && (in.jack().equals("in") || ins(kind(part, in)) == 1);
  }

  private static long ins(Kind kind) {
    return kind.groups().stream()
        .flatMap(group -> group.jacks().stream())
        .filter(jack -> jack.direction() == Direction.IN)
        .count();
  }

  private static boolean attenuates(Kind kind) {
    return kind.groups().stream()
        .map(Group::knobs)
        .flatMap(List::stream)
        .anyMatch(knob -> kind.electrics().attenuator(knob.name()).isPresent());
  }

  /** With what the knobs of one more module let pass; one that is not set may pass anything. */
  private static Interval passes(Part part, JackUse out, Net in, Interval before) {
    Kind kind = kind(part, out);
    Interval passes = before;
    for (Group group : kind.groups()) {
      for (Knob knob : group.knobs()) {
        Optional<Taper> taper = kind.electrics().attenuator(knob.name());
        if (taper.isPresent()) {
          Interval more = set(part, out, in, knob, taper.get());
          passes =
              new Interval(
                  passes.low() * more.low(),
                  passes.high() * more.high(),
                  passes.nominal() * more.nominal());
        }
      }
    }
    return passes;
  }

  private static Interval set(Part part, JackUse out, Net in, Knob knob, Taper taper) {
    List<Owner> owners =
        Stream.concat(
                Stream.of(out.owner()),
                in.sinks().stream().filter(sink -> passes(part, sink, out)).map(JackUse::owner))
            .toList();
    return part.settings().stream()
        .filter(each -> owners.contains(each.owner()) && each.control().equals(knob.name()))
        .filter(Wanted.Knob.class::isInstance)
        .map(each -> ((Wanted.Knob) each).interval())
        .map(
            at ->
                interval(
                    part(knob, taper, at.low()), part(knob, taper, at.high()), at, knob, taper))
        .findFirst()
        .orElse(new Interval(0, 1, 1));
  }

  private static Interval interval(double one, double other, Interval at, Knob knob, Taper taper) {
    double least = knob.scale().low() < 0 && at.contains(0) ? 0 : Math.min(one, other);
    return new Interval(least, Math.max(one, other), part(knob, taper, at.nominal()));
  }

  /** A knob with zero in the middle turns the voltage round; as far goes a key all the same. */
  private static double part(Knob knob, Taper taper, double at) {
    double low = Math.max(0, knob.scale().low());
    double turned = (Math.abs(at) - low) / (knob.scale().high() - low);
    return taper.passes(Math.max(0, Math.min(1, turned)));
  }

  private static double gain(Part part, Owner owner) {
    Kind kind = part.roles().get(owner.role()).candidates().get(0).kind();
    return part.settings().stream()
        .filter(Wanted.Switch.class::isInstance)
        .map(Wanted.Switch.class::cast)
        .filter(each -> each.owner().role() == owner.role())
        .flatMapToDouble(each -> Toggle.of(kind, each.control()).gain(each.position()).stream())
        .reduce(1, (a, b) -> a * b);
  }

  /**
   * A kind that says what the jack carries is believed; else all that a keyboard gives is pitch.
   */
  private static boolean givesPitch(Part part, JackUse root) {
    return kind(part, root)
        .electrics()
        .signal(root.jack())
        .map(Signal.PITCH::equals)
        .orElse(Pitched.hasPitch(part, root.owner().role(), Direction.OUT));
  }

  private static Kind kind(Part part, JackUse jack) {
    return part.roles().get(jack.owner().role()).candidates().get(0).kind();
  }

  /** Empty if the candidates differ. */
  private static Optional<Double> volts(CastRole role) {
    List<Double> volts =
        role.candidates().stream()
            .map(module -> module.kind().electrics().voltsPerOctave())
            .map(each -> each.orElse(Electrics.USUAL_VOLTS_PER_OCTAVE))
            .distinct()
            .toList();
    return volts.size() == 1 ? Optional.of(volts.get(0)) : Optional.empty();
  }

  private static String figure(double value) {
    return Figures.plain(Math.round(value * HUNDRED) / HUNDRED);
  }
}
