package entracte.cue;

import entracte.plan.SongPlan;
import entracte.plan.SongPlan.CastAs;
import entracte.rig.Control;
import entracte.rig.GainStep;
import entracte.rig.Group;
import entracte.rig.Module;
import entracte.rig.Position;
import entracte.rig.Scale;
import entracte.rig.Taper;
import entracte.rig.Toggle;
import entracte.setlist.Sound;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * How loud a song is by its gain steps and the knobs that attenuate, as far as they are known: for
 * each voice the decibels on its way out, and of the voices the loudest. Envelopes, filters and
 * amplifiers add to it what no setting tells, so only differences between songs are worth a word:
 * that of the loudest voices, or else of gain steps below them.
 */
final class Levels {
  /** Twice the voltage; less than that a fader rides over (common practice). */
  static final double JUMP_DB = 6;

  private static final String KEEP_DOWN = ": keep what comes into it as much lower";

  private final SongPlan song;
  private final List<String> steps = new ArrayList<>();
  private final Set<String> driven = new LinkedHashSet<>();
  private final Map<Control, Double> gains = new LinkedHashMap<>();
  private final Optional<Way> loudest;

  /** A knob of which nobody has said how it goes, and where it stands. */
  private record Guess(String knob, double at) {}

  /**
   * How loud a voice comes out.
   *
   * @param guessed the knobs on its way of which nobody has said how they go
   */
  private record Way(double decibels, Set<Guess> guessed) {}

  Levels(SongPlan song) {
    this.song = song;
    song.casting().forEach(this::step);
    loudest =
        Voices.ways(song).stream()
            .filter(way -> way.size() > 1)
            .map(this::decibels)
            .filter(way -> Double.isFinite(way.decibels()))
            .max(Comparator.comparingDouble(Way::decibels));
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
    double jump = jump(before);
    String why = driven.isEmpty() ? "" : "; " + String.join(", ", driven) + ", so less comes out";
    if (Math.abs(jump) < JUMP_DB) {
      List<String> thrown = thrown(before);
      return thrown.isEmpty()
          ? Optional.empty()
          : Optional.of(
              String.join(", ", thrown)
                  + " against the song before, and the loudest voice about as loud as it was"
                  + why);
    }
    Set<String> guessed = guessedApart(loudest.get().guessed(), before.loudest.get().guessed());
    String taking =
        guessed.isEmpty() ? "" : " (taking " + String.join(" and ", guessed) + " as linear)";
    return Optional.of(
        "the loudest voice about "
            + GainStep.words(jump)
            + " against the song before by gain steps and levels"
            + taking
            + (jump > 0 ? why : ""));
  }

  private double jump(Levels before) {
    return loudest.isEmpty() || before.loudest.isEmpty()
        ? 0
        : loudest.get().decibels() - before.loudest.get().decibels();
  }

  /** What the one who brings the level up must know before it is loud; empty if it is not. */
  String rise(Levels before) {
    double jump = jump(before);
    return jump < JUMP_DB
        ? ""
        : " from zero: about " + Math.round(jump) + " dB louder than the song before";
  }

  /** Gain steps of both songs that stand otherwise: {@code mix 1 gain +20 dB}. */
  private List<String> thrown(Levels before) {
    return gains.entrySet().stream()
        .filter(entry -> before.gains.containsKey(entry.getKey()))
        .map(e -> Map.entry(e.getKey(), e.getValue() - before.gains.get(e.getKey())))
        .filter(entry -> Math.abs(entry.getValue()) >= JUMP_DB)
        .map(entry -> Wording.name(entry.getKey()) + " " + GainStep.words(entry.getValue()))
        .toList();
  }

  /** What stands alike in both songs makes no difference, however it goes. */
  private static Set<String> guessedApart(Set<Guess> one, Set<Guess> other) {
    Set<String> apart = new TreeSet<>();
    Stream.concat(one.stream(), other.stream())
        .filter(guess -> !(one.contains(guess) && other.contains(guess)))
        .forEach(guess -> apart.add(guess.knob()));
    return apart;
  }

  private void step(CastAs cast) {
    Optional<String> drive = Sound.of(cast.role(), song.song().patch().sound().drive());
    for (Control control : cast.module().controls()) {
      double factor = gain(control);
      if (!control.isKnob() && Toggle.of(control).hasGain()) {
        gains.put(control, GainStep.decibels(factor));
      }
      if (factor > 1) {
        String wanted =
            drive
                .map(said -> ", and drive is " + said + (said.equals("wanted") ? "" : KEEP_DOWN))
                .orElse("");
        String at = song.positions().get(control).toString();
        String decibels = GainStep.words(GainStep.decibels(factor));
        String size = at.equals(decibels) ? "" : ": " + decibels;
        steps.add(Wording.name(control) + " at " + at + size + wanted);
        drive.filter("wanted"::equals).ifPresent(said -> driven.add(wanted(cast)));
      }
    }
    String name = cast.module().name();
    if (drive.isPresent() && steps.stream().noneMatch(line -> line.startsWith(name + " "))) {
      steps.add(name + ": drive is " + drive.get());
    }
  }

  /** {@code distortion by mix 1 is wanted}. */
  private static String wanted(CastAs cast) {
    return "distortion by " + cast.module().name() + " is wanted";
  }

  /** Whatever a patch drives on purpose, by a gain step or otherwise. */
  static List<String> wanted(SongPlan song) {
    return song.casting().stream()
        .filter(
            cast ->
                Sound.of(cast.role(), song.song().patch().sound().drive())
                    .filter("wanted"::equals)
                    .isPresent())
        .map(Levels::wanted)
        .toList();
  }

  private double gain(Control control) {
    Position at = song.positions().get(control);
    return control.isKnob() || at == null ? 1 : Toggle.of(control).gain(at.toString()).orElse(1);
  }

  /** What is up before and after and so while plugs move: {@code mix 1 gain stays at x10}. */
  static List<String> stayingUp(SongPlan before, SongPlan song) {
    Levels levels = new Levels(song);
    return Stream.of(before, song)
        .flatMap(each -> each.casting().stream())
        .map(CastAs::module)
        .distinct()
        .flatMap(module -> module.controls().stream())
        .filter(control -> levels.gain(control) > 1)
        .filter(control -> song.positions().get(control).equals(before.positions().get(control)))
        .map(control -> Wording.name(control) + " stays at " + song.positions().get(control))
        .toList();
  }

  /** From the start of a way to its end. */
  private Way decibels(List<Module> way) {
    double sum = 0;
    Set<Guess> guessed = new HashSet<>();
    for (int i = 1; i < way.size(); i++) {
      Module module = way.get(i);
      double own = factor(module, control -> control.group().form() == Group.Form.OWN, guessed);
      double loudest =
          channelsInto(way.get(i - 1), module)
              .mapToDouble(n -> factor(module, c -> isInChannel(c, n), guessed))
              .max()
              .orElse(1);
      sum += GainStep.decibels(own * loudest);
    }
    return new Way(sum, guessed);
  }

  private static boolean isInChannel(Control control, int number) {
    return control.group().form() == Group.Form.CHANNELS && control.number() == number;
  }

  private double factor(Module module, Predicate<Control> which, Set<Guess> guessed) {
    return module.controls().stream()
        .filter(which)
        .mapToDouble(control -> gain(control) * part(control, guessed))
        .reduce(1, (a, b) -> a * b);
  }

  /** Both waves of one oscillator may go into the same mixer. */
  private IntStream channelsInto(Module from, Module to) {
    return song.required().stream()
        .map(plugged -> plugged.cord())
        .filter(c -> c.source().module().equals(from) && c.sink().module().equals(to))
        .filter(c -> c.sink().group().form() == Group.Form.CHANNELS)
        .mapToInt(c -> c.sink().number());
  }

  /** What an attenuating knob lets pass; all of it if it is another knob. */
  private double part(Control control, Set<Guess> guessed) {
    Optional<Taper> taper =
        control.isKnob()
            ? control.module().kind().electrics().attenuator(control.name())
            : Optional.empty();
    if (taper.isEmpty() || !(song.positions().get(control) instanceof Position.At figure)) {
      return 1;
    }
    if (taper.get() == Taper.UNKNOWN) {
      guessed.add(new Guess(control.module().name() + " " + control.name(), figure.value()));
    }
    Scale scale = control.scale().orElseThrow();
    return taper.get().passes((figure.value() - scale.low()) / (scale.high() - scale.low()));
  }
}
