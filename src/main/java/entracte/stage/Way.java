package entracte.stage;

import entracte.cue.Cue;
import java.util.List;

/**
 * The way to one song.
 *
 * @param song its index in the show
 * @param setUp whether nobody waits
 * @param seconds how long it is expected to take
 * @param runs how many timed runs the seconds come from; 0 for none
 * @param lookAt what to look at before playing
 */
public record Way(
    int song, boolean setUp, List<Move> moves, double seconds, int runs, List<String> lookAt) {
  public Way {
    moves = List.copyOf(moves);
    lookAt = List.copyOf(lookAt);
  }

  public static Way of(int song, Cue cue) {
    return new Way(
        song,
        cue.setUp(),
        cue.steps().stream().map(Move::of).toList(),
        cue.seconds(),
        cue.runs(),
        cue.lookAt());
  }

  int count() {
    return moves.stream().mapToInt(Move::moves).sum();
  }

  /** The same way with other moves, which nobody has timed. */
  Way with(List<Move> others) {
    return new Way(song, setUp, others, seconds, 0, lookAt);
  }
}
