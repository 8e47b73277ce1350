package entracte.stage;

import entracte.cue.Change;
import entracte.cue.Spot;
import entracte.cue.Step;
import entracte.cue.Verb;
import java.util.List;

/**
 * One line for the hands, as the stage shows it.
 *
 * @param moves how many moves it counts
 * @param unheard whether it can be done while the song before still sounds
 */
public record Move(
    Verb verb, String text, int moves, List<Spot> reach, List<Change> changes, boolean unheard) {
  public Move {
    reach = List.copyOf(reach);
    changes = List.copyOf(changes);
  }

  public static Move of(Step step) {
    return new Move(
        step.verb(), step.text(), step.moves(), step.reach(), step.changes(), step.unheard());
  }
}
