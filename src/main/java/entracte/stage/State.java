package entracte.stage;

import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The night at one moment. Songs in {@code order} before {@code at} have been played.
 *
 * @param at the song that sounds or is coming, an index in {@code order}
 * @param section which part of the song, 0 for its beginning
 * @param ways the ways to the songs from {@code firstWay} on; fewer while a plan is awaited
 * @param base the rig when the way ahead began
 * @param done what became of each move of the way ahead
 * @param since when the phase began
 * @param began when the first song began; 0 before that
 * @param lockedUntil until when the foot is not heard, because something was sent
 * @param request the last plan asked for, from 1
 * @param waiting whether it is still awaited
 * @param held a plan that arrived while a menu was open: its lines stay under the finger
 * @param first what to do before the way that is awaited
 * @param ready whether what can be made ready is shown during the song
 * @param notice one sentence for the player; empty for none
 */
record State(
    Phase phase,
    List<Integer> order,
    int at,
    int section,
    List<Way> ways,
    int firstWay,
    TrueRig base,
    List<Done> done,
    long since,
    long began,
    long lockedUntil,
    int request,
    boolean waiting,
    Optional<Event.Planned> held,
    List<Move> first,
    Set<String> dead,
    Optional<Menu> menu,
    boolean ready,
    String notice) {
  State {
    order = List.copyOf(order);
    ways = List.copyOf(ways);
    done = List.copyOf(done);
    first = List.copyOf(first);
    dead = Set.copyOf(dead);
  }

  static State unplanned() {
    return new State(
        Phase.WAITING,
        List.of(),
        0,
        0,
        List.of(),
        0,
        TrueRig.bare(),
        List.of(),
        0,
        0,
        0,
        0,
        false,
        Optional.empty(),
        List.of(),
        Set.of(),
        Optional.empty(),
        false,
        "");
  }

  /** Which song the way ahead leads to, an index in {@code order}. */
  int ahead() {
    return phase == Phase.SONG || phase == Phase.PAUSE ? at + 1 : at;
  }

  /** The way ahead; empty while it is worked out, and after the last song. */
  Optional<Way> way() {
    int index = ahead() - firstWay;
    return index >= 0 && index < ways.size() ? Optional.of(ways.get(index)) : Optional.empty();
  }

  /** The first move that is open; empty if none is. */
  Optional<Integer> current() {
    int index = done.indexOf(Done.OPEN);
    return index < 0 || way().isEmpty() ? Optional.empty() : Optional.of(index);
  }

  /** The rig as it stands now. */
  TrueRig rig() {
    TrueRig rig = base;
    List<Move> moves = way().map(Way::moves).orElse(List.of());
    for (int move = 0; move < moves.size() && move < done.size(); move++) {
      if (done.get(move) == Done.DONE) {
        rig = rig.after(moves.get(move).changes());
      }
    }
    return rig;
  }
}
