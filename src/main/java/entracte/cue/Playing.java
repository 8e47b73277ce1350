package entracte.cue;

import entracte.plan.SongPlan;
import entracte.rig.Control;
import entracte.rig.Cord;
import entracte.rig.Direction;
import entracte.rig.Module;
import entracte.rig.NameWords;
import entracte.rig.Position;
import entracte.rig.Socket;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Who plays what in a patch: what each hand and the wheel move, as the kind of the keyboard tells,
 * and whether each note starts an envelope anew. A jack that is played by a hand and by the wheel
 * alike is the wheel's while a switch of its module stands at a position named for the wheel.
 */
final class Playing {
  private static final String WHEEL = "wheel";

  /** Whoever plays, where the patch does not part the hands. */
  private static final String EITHER = "either hand";

  private static final Set<String> RESTART = Set.of("trigger", "retrigger", "gate mode");

  private final SongPlan song;
  private final PitchPaths paths;

  private Playing(SongPlan song) {
    this.song = song;
    this.paths = new PitchPaths(song);
  }

  static List<String> of(SongPlan song) {
    Playing playing = new Playing(song);
    List<String> lines = new ArrayList<>(playing.players());
    lines.addAll(playing.restarts());
    return lines;
  }

  /**
   * Who plays the output; empty if nobody has said. Where the wheel has taken one of the outputs of
   * two hands, the other is played by either.
   */
  static Optional<String> player(Socket out, SongPlan song) {
    List<String> players = players(out);
    List<String> hands = players.stream().filter(who -> !who.equals(WHEEL)).toList();
    boolean wheel = wheelMode(out, song);
    if (players.contains(WHEEL) && (hands.isEmpty() || wheel)) {
      return Optional.of(WHEEL);
    }
    return wheel || hands.size() > 1
        ? hands.stream().findFirst().map(any -> EITHER)
        : hands.stream().findFirst();
  }

  /** As the kind tells; where it says nothing of the jack, the jack's name may be the wheel's. */
  private static List<String> players(Socket out) {
    String jack = out.jack().name();
    List<String> players = new ArrayList<>();
    out.module()
        .kind()
        .electrics()
        .playedBy()
        .forEach((who, jacks) -> players.addAll(jacks.contains(jack) ? List.of(who) : List.of()));
    boolean named = NameWords.say(jack, Set.of(WHEEL));
    return players.isEmpty() && named ? List.of(WHEEL) : players;
  }

  /** Whether the wheel moves anything in the song, so that it could bend what is tuned. */
  static boolean movesWheel(SongPlan song) {
    return song.required().stream()
        .anyMatch(cord -> player(cord.cord().source(), song).stream().anyMatch(WHEEL::equals));
  }

  private static boolean wheelMode(Socket out, SongPlan song) {
    return out.module().controls().stream()
        .map(control -> song.positions().get(control))
        .anyMatch(at -> at instanceof Position.Thrown t && t.position().contains(WHEEL));
  }

  /** {@code left hand: osc 1 pitch, env 1 gate}. */
  private List<String> players() {
    Map<String, Set<String>> moved = new LinkedHashMap<>();
    song.casting().stream()
        .flatMap(cast -> cast.module().kind().electrics().playedBy().keySet().stream())
        .forEach(who -> moved.put(who, new LinkedHashSet<>()));
    song.required().stream()
        .map(plugged -> plugged.cord())
        .filter(cord -> cord.sink().jack().direction() != Direction.TAP)
        .sorted(Comparator.comparing(cord -> Spot.of(cord.sink()), HandOrder.SPOTS))
        .forEach(cord -> note(cord, moved));
    return moved.entrySet().stream()
        .filter(entry -> !entry.getValue().isEmpty())
        .sorted(Comparator.comparing(entry -> entry.getKey().equals(WHEEL) ? 1 : 0))
        .map(entry -> entry.getKey() + ": " + String.join(", ", entry.getValue()))
        .toList();
  }

  private void note(Cord cord, Map<String, Set<String>> moved) {
    player(paths.root(cord), song)
        .ifPresent(
            who ->
                moved
                    .computeIfAbsent(who, name -> new LinkedHashSet<>())
                    .add(Wording.name(cord.sink())));
  }

  /** {@code env 1 trigger: legato}. */
  private List<String> restarts() {
    List<String> lines = new ArrayList<>();
    List<Module> gated =
        song.required().stream().map(plugged -> plugged.cord().sink().module()).distinct().toList();
    for (Module module : gated) {
      for (Control control : module.controls()) {
        boolean restart = RESTART.contains(control.name().toLowerCase(Locale.ROOT));
        Position at = song.positions().get(control);
        if (restart && !control.isKnob() && at != null) {
          lines.add(Wording.name(control) + ": " + at);
        }
      }
    }
    return lines.stream().sorted().toList();
  }
}
