package entracte.stage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a night tells of the hands: how long each move of a changeover took. Told only of
 * changeovers that were played whole, move by move; where several moves were ticked off at once,
 * one was left, the way changed in the middle, or the program was started anew, the times would be
 * guesses. The set-up is not told of: nobody hurries there.
 */
public final class MoveTimes {
  private static final double MILLIS = 1000;

  private final Show show;
  private final List<Played> played = new ArrayList<>();
  private final List<Long> ends = new ArrayList<>();
  private long from;
  private boolean whole;

  private MoveTimes(Show show) {
    this.show = show;
  }

  /**
   * A changeover that was played whole.
   *
   * @param endedAtMillis when its last move was done
   * @param song its title
   * @param seconds of each move
   */
  public record Played(long endedAtMillis, String song, List<Move> moves, List<Double> seconds) {
    public Played {
      moves = List.copyOf(moves);
      seconds = List.copyOf(seconds);
    }
  }

  /** The changeovers of a night, the first first. */
  public static List<Played> of(Show show, List<Event> events) {
    MoveTimes times = new MoveTimes(show);
    Night night = Night.fresh();
    Show by = show;
    for (Event event : events) {
      by = event.basis().outline().orElse(by);
      Night next = Stage.after(by, night, event).night();
      times.look(night.now(), next.now(), event);
      night = next;
    }
    return List.copyOf(times.played);
  }

  private void look(State before, State after, Event event) {
    if (before.phase() == Phase.CHANGEOVER && after.phase() == Phase.SONG) {
      before.way().ifPresent(way -> finish(way));
    }
    if (after.phase() != Phase.CHANGEOVER) {
      whole = false;
      return;
    }
    boolean enters =
        before.phase() != Phase.CHANGEOVER
            || before.at() != after.at()
            || before.since() != after.since();
    if (enters) {
      ends.clear();
      from = after.since();
      whole = after.done().stream().allMatch(done -> done == Done.OPEN);
    } else if (!before.way().equals(after.way())) {
      changed(before.way(), event.atMillis());
    }
    whole &= !(event instanceof Event.Resumed) && !after.done().contains(Done.LEFT);
    count((int) after.done().stream().filter(done -> done == Done.DONE).count(), event.atMillis());
  }

  /** Nobody can move before there is a way; after the first move another one spoils the times. */
  private void changed(Optional<Way> before, long at) {
    whole &= ends.isEmpty();
    if (before.isEmpty()) {
      from = at;
    }
  }

  private void count(int done, long at) {
    if (done == ends.size() + 1) {
      ends.add(at);
    } else if (done < ends.size()) {
      ends.subList(done, ends.size()).clear();
    } else if (done > ends.size()) {
      whole = false;
    }
  }

  private void finish(Way way) {
    List<Double> seconds = new ArrayList<>();
    long last = from;
    for (long end : ends) {
      seconds.add((end - last) / MILLIS);
      last = end;
    }
    boolean forward = seconds.stream().allMatch(each -> each >= 0);
    if (whole && forward && !way.setUp() && ends.size() == way.moves().size() && !ends.isEmpty()) {
      played.add(new Played(last, show.title(way.song()), way.moves(), seconds));
    }
  }
}
