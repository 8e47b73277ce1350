package entracte.check;

import entracte.check.Part.JackUse;
import entracte.check.Part.Net;
import entracte.check.Part.Owner;
import entracte.check.Part.Wanted;
import entracte.rig.Figures;
import entracte.rig.PitchControl;
import entracte.setlist.Distance;
import entracte.setlist.Interval;
import entracte.setlist.Sound;
import entracte.setlist.TunedTo;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * What a patch tunes against another role can be reached from where it sets the two: an ear that
 * looks for a fifth does not leave an octave that is thrown wrong. Only told where both hang on the
 * same pitch, or both on none, and both are set to an octave; a slip is half a semitone or more.
 */
final class Attuned {
  private static final double LEAST_CENTS = 50;
  private static final double CENTS_PER_SEMITONE = 100;
  private static final double TENTHS = 10;

  private final Findings findings;

  Attuned(Findings findings) {
    this.findings = findings;
  }

  void check(Part part) {
    for (Sound.Wish wish : part.song().patch().sound().tune()) {
      TunedTo read = TunedTo.parse(wish.value()).orElse(null);
      if (read instanceof TunedTo.From from) {
        OptionalInt one = role(part, wish.role());
        OptionalInt other = role(part, from.role());
        if (one.isPresent() && other.isPresent()) {
          check(part, wish, from, one.getAsInt(), other.getAsInt());
        }
      }
    }
  }

  private static OptionalInt role(Part part, String name) {
    return IntStream.range(0, part.roles().size())
        .filter(role -> part.roles().get(role).name().equals(name))
        .findFirst();
  }

  private void check(Part part, Sound.Wish wish, TunedTo.From from, int one, int other) {
    Optional<Interval> high = cents(part, one);
    Optional<Interval> low = cents(part, other);
    if (high.isEmpty() || low.isEmpty() || !hangOnOnePitch(part, one, other)) {
      return;
    }
    double least = high.get().low() - low.get().high() - LEAST_CENTS;
    double most = high.get().high() - low.get().low() + LEAST_CENTS;
    if (from.cents() <= least || from.cents() >= most) {
      findings.warning(
          wish,
          "\"%s\" is to be %s, and octave and tune put it %s \"%s\""
              .formatted(
                  wish.role(),
                  wish.value(),
                  words(high.get().nominal() - low.get().nominal()),
                  from.role()),
          "Set the octave or the tune of one of the two otherwise, or change the wish.");
    }
  }

  private static String words(double cents) {
    double semitones = Math.abs(Math.round(cents / CENTS_PER_SEMITONE * TENTHS) / TENTHS);
    return semitones == 0
        ? "in unison with"
        : Figures.plain(semitones)
            + (semitones == 1 ? " semitone" : " semitones")
            + (cents < 0 ? " below" : " above");
  }

  /** How far above the key it sounds, in cents; empty if no octave is set. */
  private static Optional<Interval> cents(Part part, int role) {
    Optional<Double> octave =
        settings(part, role, PitchControl::isOctave)
            .filter(Wanted.Switch.class::isInstance)
            .map(Wanted.Switch.class::cast)
            .flatMap(flip -> PitchControl.factor(flip.position()).stream().boxed())
            .findFirst();
    Interval tune = tune(part, role);
    return octave
        .map(Distance::centsOf)
        .map(
            up ->
                new Interval(
                    up + CENTS_PER_SEMITONE * tune.low(),
                    up + CENTS_PER_SEMITONE * tune.high(),
                    up + CENTS_PER_SEMITONE * tune.nominal()));
  }

  /** In semitones; a knob that the patch does not name may be turned to any of its scale. */
  private static Interval tune(Part part, int role) {
    Optional<Interval> named =
        settings(part, role, PitchControl::isTune)
            .filter(Wanted.Knob.class::isInstance)
            .map(wanted -> ((Wanted.Knob) wanted).interval())
            .findFirst();
    return named.orElseGet(
        () ->
            part.roles().get(role).candidates().stream()
                .flatMap(module -> module.kind().own().knobs().stream())
                .filter(knob -> PitchControl.isTune(knob.name()))
                .findFirst()
                .map(knob -> new Interval(knob.scale().low(), knob.scale().high(), 0))
                .orElse(Interval.exactly(0)));
  }

  private static Stream<Wanted> settings(Part part, int role, Predicate<String> named) {
    Owner owner = new Owner(role, Owner.OWN);
    return part.settings().stream()
        .filter(wanted -> wanted.owner().equals(owner) && named.test(wanted.control()));
  }

  /** Whether both follow the same jack of a module that nothing comes into, or both none. */
  private static boolean hangOnOnePitch(Part part, int one, int other) {
    List<Root> roots = roots(part, one);
    return roots.equals(roots(part, other))
        && roots.stream().noneMatch(root -> isFed(part, root.role()));
  }

  /** Equal jacks give the same. */
  private record Root(int role, String jack) {}

  private static List<Root> roots(Part part, int role) {
    return part.nets().stream()
        .filter(net -> net.sinks().stream().anyMatch(s -> isPitchOf(role, s)))
        .map(Net::source)
        .map(source -> new Root(source.owner().role(), source.jack()))
        .toList();
  }

  private static boolean isPitchOf(int role, JackUse sink) {
    return sink.owner().role() == role && Pitched.isPitch(sink.jack());
  }

  private static boolean isFed(Part part, int role) {
    return part.nets().stream()
        .anyMatch(net -> net.sinks().stream().anyMatch(s -> s.owner().role() == role));
  }
}
