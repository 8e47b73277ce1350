package entracte.cue;

import entracte.plan.PluggedCord;
import entracte.plan.SongPlan;
import entracte.rig.Cord;
import entracte.rig.Module;
import entracte.rig.NameWords;
import entracte.rig.Signal;
import entracte.rig.Socket;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;

/**
 * Which modules of a song are heard: those whose cords lead out of the rig in the end. What shakes
 * another module is heard through it, and not by itself. Where no cord of the song comes to a way
 * out, nobody has drawn it, and all are taken for heard.
 */
final class Audible {
  /** What an input is called that is moved by a voltage, where no kind says what it takes. */
  private static final Set<String> MOVED =
      Set.of(
          "cv",
          "fm",
          "pm",
          "am",
          "mod",
          "modulation",
          "control",
          "pitch",
          "gate",
          "trigger",
          "clock",
          "reset",
          "sync",
          "amplitude",
          "cutoff",
          "width",
          "pwm",
          "rate",
          "velocity");

  private static final Set<String> SOUND = Set.of("audio", "in", "input", "signal");

  private final List<Cord> cords;
  private final Set<Module> heard;
  private final Set<Module> themselves;

  Audible(SongPlan song) {
    cords = song.required().stream().map(PluggedCord::cord).toList();
    heard = leadingOut(any -> true);
    themselves = leadingOut(cord -> takesSound(cord.sink()));
  }

  private Set<Module> leadingOut(Predicate<Cord> along) {
    Set<Module> out = new HashSet<>();
    cords.stream()
        .map(cord -> cord.sink().module())
        .filter(module -> module.kind().isOutlet())
        .forEach(out::add);
    boolean grows = !out.isEmpty();
    while (grows) {
      grows = false;
      for (Cord cord : cords) {
        boolean leads = along.test(cord) && out.contains(cord.sink().module());
        grows |= leads && out.add(cord.source().module());
      }
    }
    return out;
  }

  boolean hears(Module module) {
    return heard.isEmpty() || heard.contains(module);
  }

  /** Whether its own sound comes out, and not only what it does to another. */
  boolean hearsItself(Module module) {
    return heard.isEmpty() || themselves.contains(module);
  }

  /** The jacks that the module's own sound is taken from on its way out. */
  List<Socket> outs(Module module) {
    return cords.stream()
        .filter(cord -> cord.source().module().equals(module))
        .filter(cord -> takesSound(cord.sink()) && themselves.contains(cord.sink().module()))
        .map(Cord::source)
        .distinct()
        .toList();
  }

  /** An oscillator sounds by itself: what comes into it only moves it, unless its kind says so. */
  private static boolean takesSound(Socket sink) {
    boolean sounds = NameWords.say(sink.jack().name(), SOUND);
    return sink.module()
        .kind()
        .electrics()
        .signal(sink.jack().name())
        .map(Signal.AUDIO::equals)
        .orElse(!isMoved(sink) && (sounds || !PitchPaths.hasPitchInput(sink.module())));
  }

  /** Whether an input is named for what its voltage moves. */
  static boolean isMoved(Socket sink) {
    return NameWords.say(sink.jack().name(), MOVED);
  }
}
