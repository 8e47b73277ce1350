package entracte.cue;

import entracte.plan.SongPlan;
import entracte.rig.Module;
import entracte.rig.PitchControl;
import entracte.rig.Position;
import entracte.setlist.Distance;
import entracte.setlist.Note;
import entracte.setlist.PitchStandard;
import entracte.setlist.TunedTo;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * What the oscillators of a song are tuned to while one key is held, in the order of tuning: none
 * before what it is tuned against. A patch may say it ({@code tune: {fifth: pure fifth above
 * low}}); else the frequency follows from the octave switch (8 foot sounds as written, 16 an octave
 * lower) and the tune knob, whose figures are read as semitones. Where a pitch comes through
 * another module that may bend it, such as an attenuator, nothing can be worked out unless the
 * patch says it, and the line says so.
 */
final class TuningTargets {
  /** How the line begins that says which key is held. */
  private static final String HELD = "with ";

  private static final double CENTS_PER_SEMITONE = 100;

  private final SongPlan song;
  private final PitchStandard standard;
  private final PitchPaths paths;
  private final TuneWishes wishes;
  private final Map<Module, Double> hertz = new LinkedHashMap<>();

  private TuningTargets(SongPlan song, PitchStandard standard) {
    this.song = song;
    this.standard = standard;
    this.paths = new PitchPaths(song);
    this.wishes = new TuneWishes(song);
  }

  /** Which key is held, and a line for each oscillator that begins with its name and a colon. */
  static List<String> of(SongPlan song, PitchStandard standard) {
    return of(song, standard, any -> true, Set.of());
  }

  /**
   * The same for some of the oscillators; no line at all if nothing is known of them. Where no
   * patch says against what, one that can be trusted is the measure of the others.
   */
  static List<String> of(
      SongPlan song, PitchStandard standard, Predicate<Module> wanted, Collection<Module> trusted) {
    TuningTargets targets = new TuningTargets(song, standard);
    Comparator<Module> trustedFirst = Comparator.comparing(module -> !trusted.contains(module));
    Comparator<Module> order = trustedFirst.thenComparing(Tuning.IN_HAND_ORDER);
    List<String> lines = new ArrayList<>();
    for (Module module : targets.wishes.tuned(song, targets.paths, order)) {
      Optional<String> line = targets.target(module);
      line.filter(any -> wanted.test(module)).ifPresent(lines::add);
    }
    if (!lines.isEmpty()) {
      lines.add(0, targets.held());
    }
    return List.copyOf(lines);
  }

  private String held() {
    Note note = standard.tuneOn();
    String name = note.equals(Note.A4) ? "A4, the A above middle C," : note.name();
    return HELD + name + " held (" + Pitch.rounded(note.hertz(standard.a4Hz())) + " Hz)";
  }

  private Optional<String> target(Module module) {
    return target(module, wishes.of(module).orElse(null)).map(it -> module.name() + ": " + it);
  }

  private Optional<String> target(Module module, TunedTo wish) {
    if (wish instanceof TunedTo.At at) {
      double note = at.note().hertz(standard.a4Hz());
      hertz.put(module, note);
      return Optional.of(at.note().name() + ", " + Pitch.rounded(note) + " Hz");
    }
    if (wish instanceof TunedTo.From from) {
      return Optional.of(from(module, from));
    }
    return isBent(module)
        ? Optional.of("no frequency follows from what its pitch comes through; tune it by ear")
        : octave(module).map(octave -> bySettings(module, octave));
  }

  /** Against its reference: the size, then what to listen to. */
  private String from(Module module, TunedTo.From from) {
    Module reference = wishes.reference(module).orElseThrow();
    String size =
        TuneWishes.against(from)
            + " "
            + reference.name()
            + (from.cents() == 0 ? "" : " (" + size(from.distance()) + ")");
    String lower = (from.below() ? module : reference).name();
    String upper = (from.below() ? reference : module).name();
    String listen =
        Beat.near(from.distance().cents()).map(b -> ": " + b.words(lower, upper)).orElse("");
    Double base = hertz.get(reference);
    if (base == null) {
      return size + listen;
    }
    double target = base * Distance.ratioOf(from.cents());
    hertz.put(module, target);
    return Pitch.rounded(target) + " Hz, " + size + listen + beats(base, target);
  }

  /** In cents and as a ratio, without the one that it is written in. */
  private static String size(Distance distance) {
    String cents = Pitch.rounded(distance.cents()) + " cents";
    String ratio = "ratio " + new Pitch(1, Distance.ratioOf(distance.cents())).ratio();
    return switch (distance.unit()) {
      case CENTS -> ratio;
      case RATIO -> cents;
      case NAME -> cents + ", " + ratio;
    };
  }

  private static String beats(double base, double target) {
    double low = Math.min(base, target);
    double high = Math.max(base, target);
    return Beat.near(new Pitch(low, high).cents())
        .map(beat -> ", " + beat.count(low, high))
        .orElse("");
  }

  private String bySettings(Module module, double octave) {
    double semitones =
        positions(module, PitchControl::isTune)
            .map(Position::toString)
            .mapToDouble(Double::parseDouble)
            .findFirst()
            .orElse(0);
    double held = standard.tuneOn().hertz(standard.a4Hz());
    double sounds = held * octave * Distance.ratioOf(CENTS_PER_SEMITONE * semitones);
    String target = Pitch.rounded(sounds) + " Hz" + against(module, sounds);
    hertz.put(module, sounds);
    return target;
  }

  private String against(Module module, double sounds) {
    if (hertz.isEmpty()) {
      return "";
    }
    Map.Entry<Module, Double> first = hertz.entrySet().iterator().next();
    double other = first.getValue();
    if (sounds == other) {
      return ", in unison with " + first.getKey().name() + ", without a beat";
    }
    Pitch pitch = new Pitch(Math.min(sounds, other), Math.max(sounds, other));
    String place = sounds < other ? "below " : "above ";
    return ", " + pitch.words(place + first.getKey().name());
  }

  /** How many times the frequency of the key. */
  private Optional<Double> octave(Module module) {
    return positions(module, PitchControl::isOctave)
        .flatMap(at -> PitchControl.factor(at.toString()).stream().boxed())
        .findFirst();
  }

  private Stream<Position> positions(Module module, Predicate<String> named) {
    return module.controls().stream()
        .filter(control -> named.test(control.name()))
        .flatMap(control -> Optional.ofNullable(song.positions().get(control)).stream());
  }

  /** Whether the pitch arrives otherwise than it left the keys. */
  private boolean isBent(Module module) {
    return paths.into(module).stream()
        .anyMatch(path -> !PitchRoute.into(path.cord(), song, paths).isStraight());
  }
}
