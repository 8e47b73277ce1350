package entracte.stage;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** What happened, and when (milliseconds of the clock on the wall). */
public sealed interface Event {
  long atMillis();

  /**
   * The show begins.
   *
   * @param fingerprint of the show that it is
   * @param order the songs to play
   */
  record Begun(long atMillis, String fingerprint, List<Integer> order, TrueRig rig, Basis basis)
      implements Event {
    public Begun {
      order = List.copyOf(order);
    }

    /** A show of whose files nothing is known. */
    public Begun(long atMillis, String fingerprint, List<Integer> order, TrueRig rig) {
      this(atMillis, fingerprint, order, rig, Basis.unknown());
    }
  }

  /** A foot or a key. */
  record Pressed(long atMillis, Input input) implements Event {}

  /** A letter, which narrows a long menu. 8 takes one back. */
  record Typed(long atMillis, int letter) implements Event {}

  /**
   * A plan arrives.
   *
   * @param request which one it answers
   * @param order the songs that it leads to; what was asked for, less what cannot be played
   * @param ways the way to each of them; only to the first ones, if the rest takes longer
   * @param note what the player should know; empty for nothing
   * @param jumpers where the plan has the jumpers, by {@code module.jumper}
   */
  record Planned(
      long atMillis,
      int request,
      List<Integer> order,
      List<Way> ways,
      String note,
      Map<String, String> jumpers)
      implements Event {
    /** A plan that cares for no jumper. */
    public Planned(long atMillis, int request, List<Integer> order, List<Way> ways, String note) {
      this(atMillis, request, order, ways, note, Map.of());
    }

    /** The same plan, of which more is to be known. */
    public Planned noting(String more) {
      String all = (note + " " + more).strip();
      return new Planned(atMillis, request, order, ways, all, jumpers);
    }

    public Planned {
      order = List.copyOf(order);
      ways = List.copyOf(ways);
      jumpers = Collections.unmodifiableMap(new TreeMap<>(jumpers));
      if (order.size() < ways.size()) {
        throw new IllegalArgumentException("more ways than songs");
      }
    }
  }

  /** No plan was found; {@code reason} is a sentence. */
  record Unplanned(long atMillis, int request, String reason) implements Event {}

  /**
   * The show is taken up again after the program ended.
   *
   * @param changed whether the files of the set are others than before, so that the plan in force
   *     is none any more
   */
  record Resumed(long atMillis, Basis basis, boolean changed) implements Event {
    /** With the same files, or with such of which nothing is known. */
    public Resumed(long atMillis) {
      this(atMillis, Basis.unknown(), false);
    }
  }

  /** What the night is played by from this event on, if it brings that along. */
  default Basis basis() {
    return Basis.unknown();
  }
}
