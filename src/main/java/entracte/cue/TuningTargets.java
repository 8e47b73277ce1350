package entracte.cue;

import entracte.plan.SongPlan;
import entracte.plan.SongPlan.CastAs;
import entracte.rig.Control;
import entracte.rig.Module;
import entracte.rig.Position;
import entracte.setlist.Distance;
import entracte.setlist.Note;
import entracte.setlist.PitchStandard;
import entracte.setlist.TunedTo;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;

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

  private static final Set<String> OCTAVE = Set.of("octave", "range", "footage");
  private static final Set<String> TUNE = Set.of("tune", "tuning", "coarse", "transpose");
  private static final double WRITTEN_PITCH_FEET = 8;
  private static final double CENTS_PER_SEMITONE = 100;

  private final SongPlan song;
  private final PitchStandard standard;
  private final PitchPaths paths;
  private final TuneWishes wishes;
  private final Map<Module, Double> hertz = new LinkedHashMap<>();
  private final List<String> lines = new ArrayList<>();

  private TuningTargets(SongPlan song, PitchStandard standard) {
    this.song = song;
    this.standard = standard;
    this.paths = new PitchPaths(song);
    this.wishes = new TuneWishes(song);
  }

  /** Which key is held, and a line for each oscillator that begins with its name and a colon. */
  static List<String> of(SongPlan song, PitchStandard standard) {
    TuningTargets targets = new TuningTargets(song, standard);
    List<Module> modules =
        song.casting().stream()
            .map(CastAs::module)
            .filter(m -> !targets.paths.into(m).isEmpty() || targets.wishes.of(m).isPresent())
            .sorted(Comparator.comparing(Spot::of, HandOrder.SPOTS))
            .toList();
    targets.wishes.referencesFirst(modules).forEach(targets::add);
    if (!targets.lines.isEmpty()) {
      targets.lines.add(0, targets.held());
    }
    return List.copyOf(targets.lines);
  }

  private String held() {
    Note note = standard.tuneOn();
    String name = note.equals(Note.A4) ? "A4, the A above middle C," : note.name();
    return HELD + name + " held (" + Pitch.rounded(note.hertz(standard.a4Hz())) + " Hz)";
  }

  private void add(Module module) {
    TunedTo wish = wishes.of(module).orElse(null);
    if (wish instanceof TunedTo.At at) {
      double note = at.note().hertz(standard.a4Hz());
      hertz.put(module, note);
      lines.add(module.name() + ": " + at.note().name() + ", " + Pitch.rounded(note) + " Hz");
    } else if (wish instanceof TunedTo.From from) {
      lines.add(module.name() + ": " + from(module, from));
    } else if (isBent(module)) {
      lines.add(module.name() + ": its pitch comes through another module; tune it by ear");
    } else {
      feet(module).ifPresent(feet -> bySettings(module, feet));
    }
  }

  /** Against its reference: the size, then what to listen to. */
  private String from(Module module, TunedTo.From from) {
    Module reference = wishes.reference(module).orElseThrow();
    String size =
        TuneWishes.against(from)
            + " "
            + reference.name()
            + (from.cents() == 0 ? "" : " (" + size(from) + ")");
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

  private static String size(TunedTo.From from) {
    double cents = from.distance().cents();
    return Pitch.rounded(cents) + " cents, ratio " + new Pitch(1, Distance.ratioOf(cents)).ratio();
  }

  private static String beats(double base, double target) {
    double low = Math.min(base, target);
    double high = Math.max(base, target);
    return Beat.near(new Pitch(low, high).cents())
        .map(
            beat ->
                ", "
                    + Beat.rate(beat.perSecond(low, high))
                    + "; a cent changes that by "
                    + Pitch.rounded(beat.perSecondForACent(high)))
        .orElse("");
  }

  private void bySettings(Module module, double feet) {
    double semitones =
        position(module, TUNE).stream()
            .findFirst()
            .map(Position::toString)
            .map(Double::parseDouble)
            .orElse(0.0);
    double held = standard.tuneOn().hertz(standard.a4Hz());
    double sounds =
        held * WRITTEN_PITCH_FEET / feet * Distance.ratioOf(CENTS_PER_SEMITONE * semitones);
    lines.add(module.name() + ": " + Pitch.rounded(sounds) + " Hz" + against(module, sounds));
    hertz.put(module, sounds);
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
    String place = sounds < other ? " below " : " above ";
    return ", " + pitch.words() + place + first.getKey().name();
  }

  private OptionalDouble feet(Module module) {
    return position(module, OCTAVE).stream()
        .map(Position::toString)
        .filter(text -> text.matches("(?:64|32|16|8|4|2|1)'?"))
        .mapToDouble(text -> Double.parseDouble(text.replace("'", "")))
        .findFirst();
  }

  private List<Position> position(Module module, Set<String> words) {
    return module.controls().stream()
        .filter(control -> isNamed(control, words))
        .map(control -> song.positions().get(control))
        .filter(java.util.Objects::nonNull)
        .toList();
  }

  private static boolean isNamed(Control control, Set<String> words) {
    return words.contains(control.name().toLowerCase(Locale.ROOT));
  }

  /** Whether the pitch arrives otherwise than it left the keys. */
  private boolean isBent(Module module) {
    return paths.into(module).stream()
        .anyMatch(path -> !PitchRoute.into(path.cord(), song, paths).isStraight());
  }
}
