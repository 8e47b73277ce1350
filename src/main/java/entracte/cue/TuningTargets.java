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
  private final Waves waves;
  private final Map<Module, Double> hertz = new LinkedHashMap<>();

  /** How others sound when a module is tuned ahead of its song; empty if it is not. */
  private final Map<Module, Double> standing = new LinkedHashMap<>();

  private TuningTargets(SongPlan song, PitchStandard standard) {
    this.song = song;
    this.standard = standard;
    this.paths = new PitchPaths(song);
    this.wishes = new TuneWishes(song);
    this.waves = new Waves(song);
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
    return targets.headed(targets.lines(wanted, trusted));
  }

  /**
   * Those of the song itself that have a step, then of what is tuned in the set-up for later songs:
   * measured against what stands by then as the first song wants it.
   */
  static List<String> ahead(SongPlan song, PitchStandard standard, Tuning.Ahead tuning) {
    TuningTargets now = new TuningTargets(song, standard);
    List<String> lines = now.lines(tuning.tuned()::contains, tuning.trusted());
    for (Tuning.Early early : tuning.early()) {
      TuningTargets later = new TuningTargets(early.song(), standard);
      later.standing.putAll(now.hertz);
      String head = early.module().name() + ": ";
      later.lines(early.module()::equals, List.of()).stream()
          .map(line -> head + "for song " + early.number() + ", " + line.substring(head.length()))
          .forEach(lines::add);
    }
    return now.headed(lines);
  }

  private List<String> lines(Predicate<Module> wanted, Collection<Module> trusted) {
    Comparator<Module> trustedFirst = Comparator.comparing(module -> !trusted.contains(module));
    Comparator<Module> order = trustedFirst.thenComparing(Tuning.IN_HAND_ORDER);
    List<String> lines = new ArrayList<>();
    for (Module module : wishes.tuned(song, paths, order)) {
      Optional<String> line = target(module);
      line.filter(any -> wanted.test(module)).ifPresent(lines::add);
    }
    return lines;
  }

  private List<String> headed(List<String> lines) {
    return lines.isEmpty() ? List.of() : Stream.concat(Stream.of(held()), lines.stream()).toList();
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
    Module lower = from.below() ? module : reference;
    Module upper = from.below() ? reference : module;
    Optional<Beat> near = Beat.near(from.distance().cents());
    Optional<String> lack = near.flatMap(beat -> waves.lack(beat, lower, upper));
    String listen =
        lack.or(() -> near.map(beat -> beat.words(lower.name(), upper.name())))
            .map(words -> ": " + words)
            .orElse("");
    Double base = hertz.get(reference);
    if (base == null) {
      return size + listen;
    }
    double target = base * Distance.ratioOf(from.cents());
    hertz.put(module, target);
    return Pitch.rounded(target)
        + " Hz, "
        + size
        + listen
        + (lack.isEmpty() ? beats(base, target) : "");
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
    Map<Module, Double> others = standing.isEmpty() ? hertz : standing;
    if (others.isEmpty()) {
      return "";
    }
    Map.Entry<Module, Double> first = others.entrySet().iterator().next();
    double other = first.getValue();
    if (sounds == other) {
      return ", in unison with " + first.getKey().name() + ", without a beat";
    }
    Pitch pitch = new Pitch(Math.min(sounds, other), Math.max(sounds, other));
    String place = (sounds < other ? "below " : "above ") + first.getKey().name();
    Module lower = sounds < other ? module : first.getKey();
    Module upper = sounds < other ? first.getKey() : module;
    return ", "
        + Beat.near(pitch.cents())
            .filter(any -> standing.isEmpty())
            .flatMap(beat -> waves.lack(beat, lower, upper))
            .map(lack -> pitch.words(place, "; " + lack))
            .orElse(pitch.words(place));
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
