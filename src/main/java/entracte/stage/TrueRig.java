package entracte.stage;

import entracte.cue.Change;
import entracte.cue.Tunings;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * What is plugged and where controls stand, by names, and what is in tune. A control that is
 * missing stands nobody knows where.
 *
 * @param jumpers where jumpers stand inside the case, by {@code module.jumper}; nobody moves them
 *     during a show
 * @param tunings what the ear has seen to
 * @param levelDown whether the main level was lowered and not raised since
 */
public record TrueRig(
    List<Change.Plugged> cords,
    Map<String, String> positions,
    Map<String, String> jumpers,
    Tunings tunings,
    boolean levelDown) {
  public TrueRig {
    cords = List.copyOf(cords);
    positions = Collections.unmodifiableMap(new TreeMap<>(positions));
    jumpers = Collections.unmodifiableMap(new TreeMap<>(jumpers));
  }

  /** A rig on which nothing was tuned yet. */
  public TrueRig(
      List<Change.Plugged> cords, Map<String, String> positions, Map<String, String> jumpers) {
    this(cords, positions, jumpers, Tunings.none(), false);
  }

  /** A rig of whose jumpers nothing is known. */
  public TrueRig(List<Change.Plugged> cords, Map<String, String> positions) {
    this(cords, positions, Map.of());
  }

  /** Nothing plugged, nothing known. */
  public static TrueRig bare() {
    return new TrueRig(List.of(), Map.of());
  }

  /** With every cord out and no control or tuning to rely on. */
  TrueRig cleared() {
    return new TrueRig(List.of(), Map.of(), jumpers, Tunings.none(), levelDown);
  }

  /** A song sounds: the main level is up, whoever raised it. */
  TrueRig sounding() {
    return new TrueRig(cords, positions, jumpers, tunings, false);
  }

  private TrueRig with(List<Change.Plugged> others) {
    return new TrueRig(others, positions, jumpers, tunings, levelDown);
  }

  /** What is known of a jumper already stays. */
  TrueRig withJumpers(Map<String, String> more) {
    Map<String, String> all = new TreeMap<>(more);
    all.putAll(jumpers);
    return new TrueRig(cords, positions, all, tunings, levelDown);
  }

  TrueRig after(List<Change> changes) {
    List<Change.Plugged> newCords = new ArrayList<>(cords);
    Map<String, String> newPositions = new TreeMap<>(positions);
    Tunings newTunings = tunings;
    boolean down = levelDown;
    for (Change change : changes) {
      if (change instanceof Change.Plugged plugged) {
        newCords.add(plugged);
      } else if (change instanceof Change.Pulled pulled) {
        newCords.removeIf(cord -> joins(cord, pulled.source(), pulled.sink()));
      } else if (change instanceof Change.Set set) {
        newPositions.put(set.control(), set.position());
      } else if (change instanceof Change.Tuned tuned) {
        newTunings = newTunings.tuned(tuned.module(), tuned.ear());
      } else if (change instanceof Change.Touched touched) {
        newTunings = newTunings.touched(touched.module());
      } else if (change instanceof Change.Level level) {
        down = level.down();
      }
    }
    return new TrueRig(newCords, newPositions, jumpers, newTunings, down);
  }

  TrueRig without(Change.Plugged gone) {
    return with(cords.stream().filter(cord -> !cord.equals(gone)).toList());
  }

  /** Without the cords that have a plug in one of the module's jacks. */
  TrueRig withoutModule(String module) {
    return with(
        cords.stream().filter(c -> !isOf(c.source(), module) && !isOf(c.sink(), module)).toList());
  }

  private static boolean isOf(String jack, String module) {
    return jack.startsWith(module + ".");
  }

  private static boolean joins(Change.Plugged cord, String one, String other) {
    return cord.source().equals(one) && cord.sink().equals(other)
        || cord.source().equals(other) && cord.sink().equals(one);
  }

  boolean takes(String jack) {
    return cords.stream().anyMatch(c -> c.source().equals(jack) || c.sink().equals(jack));
  }
}
