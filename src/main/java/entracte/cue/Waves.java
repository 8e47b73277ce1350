package entracte.cue;

import entracte.plan.PluggedCord;
import entracte.plan.SongPlan;
import entracte.rig.Control;
import entracte.rig.Cord;
import entracte.rig.Module;
import entracte.rig.NameWords;
import entracte.rig.Position;
import entracte.rig.Scale;
import entracte.rig.Socket;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Which harmonics are heard of a module, by the names of the outputs that its sound is taken from
 * (their Fourier series): a sine has the first alone, a triangle and a square the odd ones, and so
 * has a pulse whose width knob stands in the middle. Any other wave is taken to have all.
 */
final class Waves {
  private static final Set<String> SINE = Set.of("sine", "sin");
  private static final Set<String> ODD = Set.of("triangle", "tri", "square", "sqr");
  private static final Set<String> PULSE = Set.of("pulse", "rectangle");
  private static final Set<String> WIDTH = Set.of("width", "pw", "pwm");
  private static final String NOTHING_BEATS = ", so nothing beats: use a tuner";

  private final SongPlan song;
  private final Audible audible;

  Waves(SongPlan song) {
    this.song = song;
    this.audible = new Audible(song);
  }

  /** Why nobody hears the harmonics of a pair beat; empty if somebody may. */
  Optional<String> lack(Beat beat, Module lower, Module upper) {
    return Stream.of(
            silence(lower), silence(upper), lack(lower, beat.high()), lack(upper, beat.low()))
        .flatMap(Optional::stream)
        .findFirst()
        .map(lack -> lack + NOTHING_BEATS);
  }

  private Optional<String> silence(Module module) {
    return audible.hearsItself(module)
        ? Optional.empty()
        : Optional.of(module.name() + " is not heard by itself");
  }

  private Optional<String> lack(Module module, int harmonic) {
    List<Socket> outs = audible.outs(module);
    List<String> names = outs.stream().map(this::wave).distinct().toList();
    return outs.isEmpty() || outs.stream().anyMatch(out -> has(out, harmonic))
        ? Optional.empty()
        : Optional.of(
            "the %s of %s %s no harmonic %d"
                .formatted(
                    String.join(" and ", names),
                    module.name(),
                    names.size() == 1 ? "has" : "have",
                    harmonic));
  }

  private boolean has(Socket out, int harmonic) {
    return harmonic == 1 || !says(out, SINE) && (harmonic % 2 == 1 || !isOdd(out));
  }

  private boolean isOdd(Socket out) {
    return says(out, ODD) || isSquare(out);
  }

  private String wave(Socket out) {
    return isSquare(out) ? "square " + out.jack().name() : out.jack().name();
  }

  /** A pulse of half and half, that nothing makes wider or narrower. */
  private boolean isSquare(Socket out) {
    return says(out, PULSE)
        && out.module().controls().stream().anyMatch(this::isInTheMiddle)
        && song.required().stream()
            .map(PluggedCord::cord)
            .map(Cord::sink)
            .noneMatch(in -> in.module().equals(out.module()) && says(in, WIDTH));
  }

  private boolean isInTheMiddle(Control knob) {
    Optional<Scale> scale = knob.scale();
    return scale.isPresent()
        && NameWords.say(knob.name(), WIDTH)
        && Objects.equals(
            song.positions().get(knob),
            new Position.At((scale.get().low() + scale.get().high()) / 2));
  }

  private static boolean says(Socket socket, Set<String> words) {
    return NameWords.say(socket.jack().name(), words);
  }
}
