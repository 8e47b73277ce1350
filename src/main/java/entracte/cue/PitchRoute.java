package entracte.cue;

import entracte.plan.SongPlan;
import entracte.rig.Control;
import entracte.rig.Cord;
import entracte.rig.Direction;
import entracte.rig.Electrics;
import entracte.rig.Group;
import entracte.rig.Module;
import entracte.rig.Position;
import entracte.rig.Scale;
import entracte.rig.Signal;
import entracte.rig.Socket;
import entracte.rig.Taper;
import entracte.rig.Toggle;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The way of a pitch from the keys to one input, back through everything that passes it on: a slew
 * limiter as it is, an attenuator less of it, a mixer by the level of the channel and the gain.
 *
 * @param root the jack that the pitch comes from in the end
 * @param cords the cords into the inputs on the way, the last one first
 * @param through the modules on the way, the nearest to the keys first
 * @param attenuators the knobs on the way
 * @param gains the gain steps on the way, as factors
 * @param clear whether nothing else is added to it on the way
 */
record PitchRoute(
    Socket root,
    List<Cord> cords,
    List<Module> through,
    List<Attenuator> attenuators,
    List<Double> gains,
    boolean clear) {

  /** A knob that lets a part of the pitch pass. */
  record Attenuator(Control knob, double at, Taper taper) {
    private Scale scale() {
      return knob.scale().orElseThrow();
    }

    /**
     * The part that passes, if the knob goes as its taper; one with zero in the middle turns the
     * voltage round.
     */
    double factor() {
      Scale scale = scale();
      double turned =
          scale.low() < 0 ? at / scale.high() : (at - scale.low()) / (scale.high() - scale.low());
      return Math.signum(turned) * taper.passes(Math.abs(turned));
    }

    /** Where the knob would have to stand for a factor. */
    double figureFor(double factor) {
      Scale scale = scale();
      double turned = Math.signum(factor) * taper.turned(Math.abs(factor));
      return scale.low() < 0
          ? turned * scale.high()
          : scale.low() + turned * (scale.high() - scale.low());
    }
  }

  PitchRoute {
    cords = List.copyOf(cords);
    through = List.copyOf(through);
    attenuators = List.copyOf(attenuators);
    gains = List.copyOf(gains);
  }

  /** Follows the pitch back from the cord in an oscillator. */
  static PitchRoute into(Cord cord, SongPlan song, PitchPaths paths) {
    List<Cord> cords = new ArrayList<>(List.of(cord));
    List<Module> through = new ArrayList<>();
    List<Attenuator> knobs = new ArrayList<>();
    List<Double> gains = new ArrayList<>();
    Socket root = paths.root(cord);
    boolean clear = true;
    while (!through.contains(root.module())) {
      List<Cord> fed = fed(root, song, paths);
      if (fed.isEmpty()) {
        break;
      }
      cords.add(fed.get(0));
      through.add(0, root.module());
      clear &= fed.size() == 1;
      pass(root, fed.get(0).sink(), song, knobs, gains);
      root = paths.root(fed.get(0));
    }
    return new PitchRoute(root, cords, through, knobs, gains, clear);
  }

  /** The part of the keyboard's voltage that arrives. */
  double factor() {
    double knobs = attenuators.stream().mapToDouble(Attenuator::factor).reduce(1, (a, b) -> a * b);
    return gains.stream().mapToDouble(Double::doubleValue).reduce(knobs, (a, b) -> a * b);
  }

  /** Whether it arrives as it left the keys. */
  boolean isStraight() {
    return clear && attenuators.isEmpty() && gains.stream().allMatch(gain -> gain == 1);
  }

  /** The cords into what passes on to this output: the same channel, or all of the module. */
  private static List<Cord> fed(Socket out, SongPlan song, PitchPaths paths) {
    boolean control =
        out.module().kind().electrics().signal(out.jack().name()).stream()
            .anyMatch(signal -> signal != Signal.PITCH);
    boolean channel = out.group().form() == Group.Form.CHANNELS;
    List<Cord> into =
        song.required().stream()
            .map(plugged -> plugged.cord())
            .filter(cord -> !control && cord.sink().module().equals(out.module()))
            .filter(cord -> !channel || cord.sink().number() == out.number())
            .toList();
    List<Cord> plain =
        into.stream()
            .filter(cord -> cord.sink().jack().name().equals("in") || isOnly(cord.sink()))
            .toList();
    return plain.isEmpty() ? added(into, paths) : plain;
  }

  /** A kind may add the voltages of several inputs; one that comes from keys leads the way back. */
  private static List<Cord> added(List<Cord> into, PitchPaths paths) {
    boolean plays = into.stream().anyMatch(cord -> PitchPaths.hasPitchInput(cord.sink().module()));
    return into.stream()
        .filter(cord -> !plays && !Audible.isMoved(cord.sink()) && !carriesSound(cord.sink()))
        .sorted(Comparator.comparing(cord -> !PitchPaths.givesPitch(paths.root(cord))))
        .toList();
  }

  private static boolean carriesSound(Socket in) {
    return in.jack().name().equals("audio")
        || in.module().kind().electrics().signal(in.jack().name()).stream()
            .anyMatch(Signal.AUDIO::equals);
  }

  private static boolean isOnly(Socket in) {
    return in.group().jacks().stream().filter(j -> j.direction() == Direction.IN).count() == 1
        && in.group().form() != Group.Form.EQUAL_JACKS;
  }

  private static void pass(
      Socket out, Socket in, SongPlan song, List<Attenuator> knobs, List<Double> gains) {
    Electrics electrics = out.module().kind().electrics();
    for (Control control : out.module().controls()) {
      boolean own = control.group().form() == Group.Form.OWN;
      boolean same = control.group().equals(in.group()) && control.number() == in.number();
      Optional<Position> at = Optional.ofNullable(song.positions().get(control));
      if ((own || same) && at.isPresent()) {
        if (at.get() instanceof Position.At figure) {
          electrics
              .attenuator(control.name())
              .ifPresent(taper -> knobs.add(new Attenuator(control, figure.value(), taper)));
        } else {
          Toggle.of(control).gain(at.get().toString()).ifPresent(gains::add);
        }
      }
    }
  }
}
