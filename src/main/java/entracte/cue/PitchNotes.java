package entracte.cue;

import entracte.plan.SongPlan;
import entracte.plan.SongPlan.CastAs;
import entracte.rig.Electrics;
import entracte.rig.Figures;
import entracte.rig.Module;
import entracte.rig.Socket;
import entracte.rig.Taper;
import entracte.setlist.KeyScale;
import entracte.setlist.Sound;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What becomes of the pitch on its way to each oscillator: volts an octave, cents a key, what a
 * passive multiple takes, and where a knob must stand for the scale that a patch wants.
 */
final class PitchNotes {
  /** What an ear hears in a melody (common practice; seen in a published user's account). */
  static final double HEARD_CENTS = 5;

  /** Nearer than this to the wanted step no ear tells the difference over an octave. */
  private static final double STEP_CENTS = HEARD_CENTS / 12;

  /** What {@link Taper} takes; 10 to 20 % are common practice. */
  private static final String AUDIO_TAPER = " passes 15 % in the middle";

  private static final double HUNDRED = 100;

  private final SongPlan song;
  private final PitchPaths paths;
  private final List<String> lines = new ArrayList<>();
  private final List<String> warnings = new ArrayList<>();
  private final Loads loads;

  private PitchNotes(SongPlan song) {
    this.song = song;
    this.paths = new PitchPaths(song);
    this.loads = new Loads(paths);
    song.casting().stream()
        .sorted(Comparator.comparing(cast -> Spot.of(cast.module()), HandOrder.SPOTS))
        .forEach(this::add);
    lines.addAll(loads.lines());
    warnings.addAll(loads.warnings());
  }

  /**
   * @param lines for whoever wants to know the patch
   * @param warnings for whoever tunes it in a hurry
   */
  record Told(List<String> lines, List<String> warnings) {}

  static Told of(SongPlan song) {
    PitchNotes notes = new PitchNotes(song);
    return new Told(List.copyOf(notes.lines), List.copyOf(notes.warnings));
  }

  private void add(CastAs cast) {
    Optional<KeyScale> wanted =
        Sound.of(cast.role(), song.song().patch().sound().scale()).flatMap(KeyScale::parse);
    for (PitchPaths.Path path : paths.into(cast.module())) {
      PitchRoute route = PitchRoute.into(path.cord(), song, paths);
      if (!route.isStraight() || wanted.isPresent() || !fits(cast.module(), route.root())) {
        step(cast.module(), route, wanted);
      }
      loads.add(cast.module(), route);
    }
  }

  /** Whether an octave of the keys is one of the oscillator; an envelope knows no octaves. */
  private static boolean fits(Module module, Socket root) {
    return !PitchPaths.givesPitch(root) || volts(root.module()) == volts(module);
  }

  private void step(Module module, PitchRoute route, Optional<KeyScale> wanted) {
    String way =
        route.through().isEmpty()
            ? ""
            : " through " + String.join(", ", route.through().stream().map(Module::name).toList());
    if (!route.clear()) {
      lines.add(
          module.name()
              + ": more than one voltage comes"
              + way
              + ", so no figure tells how far a key goes");
      return;
    }
    double arrives = route.factor() * loads.kept(route);
    KeyStep step = new KeyStep(arrives, volts(route.root().module()), volts(module));
    lines.add(
        module.name()
            + ": "
            + Wording.name(route.root())
            + way
            + ", "
            + figure(step.voltsPerOctave(), HUNDRED * HUNDRED)
            + " V an octave, "
            + Pitch.rounded(step.millivoltsPerKey())
            + " mV and "
            + Pitch.rounded(step.centsPerKey())
            + " cents a key"
            + ifLinear(route));
    if (wanted.isPresent()) {
      target(module, route, step, wanted.get().cents());
    } else if (route.isStraight()) {
      warnings.add(unfit(module, route, step));
    }
  }

  /** Where one knob on the way would give the wanted step, if it does not yet. */
  private void target(Module module, PitchRoute route, KeyStep step, double wanted) {
    if (route.attenuators().isEmpty()) {
      if (Math.abs(step.centsPerKey() - wanted) > STEP_CENTS) {
        warnings.add(
            module.name()
                + " goes "
                + Pitch.rounded(step.centsPerKey())
                + " cents a key, and no knob on the way makes it "
                + Pitch.rounded(wanted));
      }
      return;
    }
    PitchRoute.Attenuator last = route.attenuators().get(route.attenuators().size() - 1);
    double others = last.factor() == 0 ? 0 : step.factor() / last.factor();
    double figure = last.figureFor(step.factorFor(wanted) / others);
    boolean there = Math.abs(step.centsPerKey() - wanted) <= STEP_CENTS;
    if (others == 0 || !last.knob().scale().orElseThrow().contains(figure)) {
      warnings.add(Wording.name(last.knob()) + " cannot give " + Pitch.rounded(wanted) + " cents");
      return;
    }
    String to =
        "for "
            + Pitch.rounded(wanted)
            + " cents a key "
            + Wording.name(last.knob())
            + " at "
            + figure(figure, HUNDRED)
            + " of "
            + Figures.plain(last.knob().scale().orElseThrow().high())
            + ifLinear(route);
    lines.add(module.name() + ": " + to);
    if (!there) {
      warnings.add(to + "; it stands at " + Figures.plain(last.at()));
    } else if (last.taper() != Taper.LINEAR) {
      warnings.add(
          "try an octave on "
              + module.name()
              + (last.taper() == Taper.AUDIO
                  ? ": audio tapers differ from knob to knob"
                  : ": nobody has said that " + Wording.name(last.knob()) + " is linear"));
    }
  }

  /** No knob on the way and no wish: the two were not made for each other. */
  private static String unfit(Module module, PitchRoute route, KeyStep step) {
    Module keys = route.root().module();
    return module.name()
        + " goes "
        + Pitch.rounded(step.centsPerKey())
        + " cents a key: it takes "
        + figure(volts(module), HUNDRED)
        + " V an octave, and "
        + keys.name()
        + " gives "
        + figure(volts(keys), HUNDRED);
  }

  private static String ifLinear(PitchRoute route) {
    List<String> unsure =
        route.attenuators().stream()
            .filter(knob -> knob.taper() != Taper.LINEAR && knob.factor() != 1)
            .map(
                knob ->
                    Wording.name(knob.knob())
                        + (knob.taper() == Taper.AUDIO ? AUDIO_TAPER : " is linear"))
            .toList();
    return unsure.isEmpty() ? "" : ", if " + String.join(" and ", unsure);
  }

  private static double volts(Module module) {
    return module.kind().electrics().voltsPerOctave().orElse(Electrics.USUAL_VOLTS_PER_OCTAVE);
  }

  private static String figure(double value, double parts) {
    return Figures.plain(Math.round(value * parts) / parts);
  }
}
