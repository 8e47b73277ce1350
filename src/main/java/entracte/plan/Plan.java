package entracte.plan;

import entracte.check.PlayableSet;
import entracte.rig.Jumper;
import entracte.rig.Module;
import entracte.setlist.SetList;
import java.util.List;
import java.util.Map;

/**
 * A whole plan of a set.
 *
 * @param jumpers the position of every jumper that some song cares about
 * @param changeovers the set-up first, then one to each further song
 */
public record Plan(
    PlayableSet set,
    Start start,
    List<SongPlan> songs,
    Map<JumperIn, String> jumpers,
    List<Changeover> changeovers) {
  public Plan {
    songs = List.copyOf(songs);
    jumpers = Map.copyOf(jumpers);
    changeovers = List.copyOf(changeovers);
  }

  /** One physical jumper. */
  public record JumperIn(Module module, Jumper jumper) {
    @Override
    public String toString() {
      return module.name() + "." + jumper.name();
    }
  }

  /** The set as the musician wrote it. */
  public SetList setList() {
    return set.setList();
  }

  /** The moves in all changeovers; the set-up is not counted unless it happens in mid-set. */
  public int moves() {
    return changeovers.stream().filter(c -> !c.setUp()).mapToInt(Changeover::moves).sum();
  }

  /** The time of all changeovers at a tempo; the set-up is not counted unless in mid-set. */
  public double seconds(Tempo tempo) {
    return changeovers.stream().filter(c -> !c.setUp()).mapToDouble(c -> c.seconds(tempo)).sum();
  }

  /** The moves before the first song. */
  public int setUpMoves() {
    return changeovers.stream().filter(Changeover::setUp).mapToInt(Changeover::moves).sum();
  }
}
