package entracte.plan;

import java.util.List;

/**
 * The way from one song to the next, or from the start state to the first song.
 *
 * @param to the song it leads to, from 0
 * @param actions in no particular order; {@code cue} puts them in the order of the hands
 */
public record Changeover(int to, boolean setUp, List<Action> actions) {
  public Changeover {
    actions = List.copyOf(actions);
  }

  public int moves() {
    return actions.stream().mapToInt(Action::moves).sum();
  }

  /** How long it takes at a tempo. */
  public double seconds(Tempo tempo) {
    return actions.stream().mapToDouble(a -> a.seconds(tempo)).sum();
  }

  public int pulls() {
    return actions.stream().mapToInt(Action::pulls).sum();
  }

  public int plugs() {
    return actions.stream().mapToInt(Action::plugs).sum();
  }

  public int turns() {
    return actions.stream().mapToInt(Action::turns).sum();
  }

  public int flips() {
    return actions.stream().mapToInt(Action::flips).sum();
  }
}
