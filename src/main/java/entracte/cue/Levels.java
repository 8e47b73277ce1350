package entracte.cue;

import entracte.plan.SongPlan;
import entracte.plan.SongPlan.CastAs;
import entracte.rig.Control;
import entracte.rig.GainStep;
import entracte.rig.Group;
import entracte.rig.Module;
import entracte.rig.Position;
import entracte.rig.Scale;
import entracte.setlist.Sound;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How loud a song is by its gain steps and the knobs that attenuate, as far as they are known: for
 * each voice the decibels on its way out, and of the voices the loudest. Envelopes, filters and
 * amplifiers add to it what no setting tells, so only differences between songs are worth a word.
 */
final class Levels {
  /** Twice the voltage; less than that a fader rides over (common practice). */
  static final double JUMP_DB = 6;

  private final SongPlan song;
  private final List<String> steps = new ArrayList<>();
  private final List<String> driven = new ArrayList<>();
  private final OptionalDouble loudest;

  Levels(SongPlan song) {
    this.song = song;
    song.casting().forEach(this::step);
    loudest =
        Voices.ways(song).stream()
            .filter(way -> way.size() > 1)
            .mapToDouble(this::decibels)
            .filter(Double::isFinite)
            .max();
  }

  /** One line for each gain step: {@code mix 1 gain at x10: +20 dB, and drive is wanted}. */
  List<String> steps() {
    return List.copyOf(steps);
  }

  /** What the desk should know of the step from another song; empty if it is small. */
  Optional<String> against(Levels before) {
    if (loudest.isEmpty() || before.loudest.isEmpty()) {
      return Optional.empty();
    }
    double jump = loudest.getAsDouble() - before.loudest.getAsDouble();
    String why = driven.isEmpty() ? "" : "; " + String.join(", ", driven) + ", so less comes out";
    return Math.abs(jump) < JUMP_DB
        ? Optional.empty()
        : Optional.of(
            "about "
                + GainStep.words(jump)
                + " against the song before by gain steps and levels"
                + (jump > 0 ? why : ""));
  }

  private void step(CastAs cast) {
    Optional<String> drive = Sound.of(cast.role(), song.song().patch().sound().drive());
    for (Control control : cast.module().controls()) {
      double factor = gain(control);
      if (factor > 1) {
        String wanted =
            drive
                .map(said -> ", and drive is " + said + (said.equals("wanted") ? "" : KEEP_DOWN))
                .orElse("");
        String at = song.positions().get(control).toString();
        String decibels = GainStep.words(GainStep.decibels(factor));
        steps.add(Wording.name(control) + " at " + at + ": " + decibels + wanted);
        drive
            .filter("wanted"::equals)
            .ifPresent(
                said -> driven.add(cast.module().name() + " drives what follows on purpose"));
      }
    }
  }

  private static final String KEEP_DOWN = ": keep what comes into it as much lower";

  private double gain(Control control) {
    Position at = song.positions().get(control);
    return control.isKnob() || at == null ? 1 : GainStep.factor(at.toString()).orElse(1);
  }

  /** The decibels from the start of a way to its end. */
  private double decibels(List<Module> way) {
    double sum = 0;
    for (int i = 1; i < way.size(); i++) {
      int channel = channelInto(way.get(i - 1), way.get(i));
      for (Control control : way.get(i).controls()) {
        boolean own = control.group().form() == Group.Form.OWN;
        if (own || control.number() == channel) {
          sum += GainStep.decibels(gain(control) * part(control));
        }
      }
    }
    return sum;
  }

  private int channelInto(Module from, Module to) {
    return song.required().stream()
        .map(plugged -> plugged.cord())
        .filter(c -> c.source().module().equals(from) && c.sink().module().equals(to))
        .filter(c -> c.sink().group().form() == Group.Form.CHANNELS)
        .mapToInt(c -> c.sink().number())
        .findFirst()
        .orElse(0);
  }

  /** What an attenuating knob lets pass, taken as linear; all of it if it is another knob. */
  private double part(Control control) {
    Position at = song.positions().get(control);
    boolean attenuates =
        control.isKnob()
            && control.module().kind().electrics().attenuator(control.name()).isPresent();
    if (!attenuates || !(at instanceof Position.At figure)) {
      return 1;
    }
    Scale scale = control.scale().orElseThrow();
    return (figure.value() - scale.low()) / (scale.high() - scale.low());
  }
}
