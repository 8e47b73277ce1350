package entracte.cue;

import java.util.List;

/**
 * One line for the hands.
 *
 * @param text what to do, its verb first
 * @param why the reason, as a sentence without its full stop; empty for the fixed steps
 * @param moves how many moves it counts; none for levels and tuning
 * @param reach the spots that the hands go to, in their order; empty for the main level
 * @param size how far: the part of its scale that a knob turns, the positions that a switch passes,
 *     what the tuning knob stands at when a module is tuned; 0 for anything else
 * @param forSong the song that needs it, from 0; later than the coming song if it is done early
 * @param early whether the coming song would sound the same without it
 * @param touches what is done at each place, for a picture of the case; empty for the main level
 * @param changes what it leaves changed on the rig. A cord of which one plug hangs loose counts as
 *     where it was, until that plug is in its new jack
 * @param unheard whether it can be done while the song before still sounds
 * @param notes what helps the one who does it, such as the frequency to tune to
 */
public record Step(
    Verb verb,
    String text,
    String why,
    int moves,
    List<Spot> reach,
    double size,
    int forSong,
    boolean early,
    List<Touch> touches,
    List<Change> changes,
    boolean unheard,
    List<String> notes) {
  public Step {
    notes = List.copyOf(notes);
    changes = List.copyOf(changes);
    reach = List.copyOf(reach);
    touches = List.copyOf(touches);
    if (!text.startsWith(verb.name())) {
      throw new IllegalArgumentException("the verb comes first: " + text);
    }
  }

  /** A step that leaves the rig as it was. */
  Step(
      Verb verb,
      String text,
      String why,
      int moves,
      List<Spot> reach,
      double size,
      int forSong,
      boolean early,
      List<Touch> touches) {
    this(verb, text, why, moves, reach, size, forSong, early, touches, List.of(), false, List.of());
  }

  /** A step of which no picture is drawn. */
  public Step(
      Verb verb,
      String text,
      String why,
      int moves,
      List<Spot> reach,
      double size,
      int forSong,
      boolean early) {
    this(verb, text, why, moves, reach, size, forSong, early, List.of());
  }

  /** A step that has no size and of which no picture is drawn. */
  public Step(
      Verb verb, String text, String why, int moves, List<Spot> reach, int forSong, boolean early) {
    this(verb, text, why, moves, reach, 0, forSong, early);
  }

  /** The same step, of which more is known. */
  Step leaving(List<Change> newChanges, boolean newUnheard) {
    return new Step(
        verb,
        text,
        why,
        moves,
        reach,
        size,
        forSong,
        early,
        touches,
        newChanges,
        newUnheard,
        notes);
  }

  /** The same step with notes. */
  Step noting(List<String> newNotes) {
    return new Step(
        verb, text, why, moves, reach, size, forSong, early, touches, changes, unheard, newNotes);
  }

  /** Whether the hands cross from one row of modules to another. */
  public boolean crossesRows() {
    return reach.stream().mapToInt(Spot::row).distinct().count() > 1;
  }

  /** Whether a cord comes out of the bag or goes back to it: both of its plugs are in the step. */
  public boolean wholeCord() {
    return (verb == Verb.PLUG || verb == Verb.PULL) && moves == 2;
  }
}
