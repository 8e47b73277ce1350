package entracte.cue;

import entracte.plan.SongPlan;
import entracte.plan.SongPlan.CastAs;
import entracte.rig.Control;
import entracte.rig.Module;
import entracte.rig.Position;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * What the oscillators of a song are tuned to while the A above middle C is held (A4 = 440 Hz): the
 * frequency by the octave switch (8 foot sounds as written, 16 an octave lower) and the tune knob,
 * whose figures are read as semitones. Where the pitch comes through another module that may bend
 * it, such as an attenuator, nothing can be worked out, and the line says so.
 */
final class TuningTargets {
  private static final Set<String> OCTAVE = Set.of("octave", "range", "footage");
  private static final Set<String> TUNE = Set.of("tune", "tuning", "coarse", "transpose");
  private static final double WRITTEN_PITCH_FEET = 8;
  private static final double SEMITONES = 12;

  private record Voice(Module module, double hertz) {}

  private final SongPlan song;
  private final PitchPaths paths;
  private final List<Voice> voices = new ArrayList<>();
  private final List<String> lines = new ArrayList<>();

  private TuningTargets(SongPlan song) {
    this.song = song;
    this.paths = new PitchPaths(song);
  }

  /** One line for each oscillator, left to right; each against the first, too. */
  static List<String> of(SongPlan song) {
    TuningTargets targets = new TuningTargets(song);
    song.casting().stream()
        .map(CastAs::module)
        .filter(PitchPaths::hasPitchInput)
        .sorted(Comparator.comparing(Spot::of, HandOrder.SPOTS))
        .forEach(targets::add);
    return List.copyOf(targets.lines);
  }

  private void add(Module module) {
    OptionalDouble feet = feet(module);
    if (isBent(module)) {
      lines.add(module.name() + ": its pitch comes through another module; tune it by ear");
    } else if (feet.isPresent()) {
      double semitones =
          position(module, TUNE).stream()
              .findFirst()
              .map(Position::toString)
              .map(Double::parseDouble)
              .orElse(0.0);
      double hertz =
          Pitch.A4_HZ
              * WRITTEN_PITCH_FEET
              / feet.getAsDouble()
              * Math.pow(2, semitones / SEMITONES);
      Voice voice = new Voice(module, hertz);
      lines.add(module.name() + ": " + Pitch.rounded(hertz) + " Hz" + against(voice));
      voices.add(voice);
    }
  }

  private String against(Voice voice) {
    if (voices.isEmpty()) {
      return "";
    }
    Voice first = voices.get(0);
    boolean below = voice.hertz() < first.hertz();
    double low = Math.min(voice.hertz(), first.hertz());
    double high = Math.max(voice.hertz(), first.hertz());
    String place = low == high ? "" : below ? " below" : " above";
    Pitch pitch = new Pitch(low, high);
    return low == high
        ? ", in unison with " + first.module().name() + ", without a beat"
        : ", " + pitch.words() + place + " " + first.module().name();
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

  /** Whether what the pitch comes from is itself fed by a cord. */
  private boolean isBent(Module module) {
    return paths.into(module).stream()
        .anyMatch(
            path ->
                song.required().stream()
                    .anyMatch(c -> c.cord().sink().module().equals(path.root().module())));
  }
}
