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
 * @param notes what helps with it, shown while it is at hand
 */
public record Move(
    Verb verb,
    String text,
    int moves,
    List<Spot> reach,
    List<Change> changes,
    boolean unheard,
    List<String> notes) {
  public Move {
    reach = List.copyOf(reach);
    changes = List.copyOf(changes);
    notes = List.copyOf(notes);
  }

  /** A move of which nothing more is to be said. */
  public Move(
      Verb verb, String text, int moves, List<Spot> reach, List<Change> changes, boolean unheard) {
    this(verb, text, moves, reach, changes, unheard, List.of());
  }

  public static Move of(Step step) {
    return new Move(
        step.verb(),
        step.text(),
        step.moves(),
        step.reach(),
        step.changes(),
        step.unheard(),
        step.notes());
  }
}
