package entracte.stage;

import entracte.cue.Change;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * What is plugged and where controls stand, by names. A control that is missing stands nobody knows
 * where.
 *
 * @param jumpers where jumpers stand inside the case, by {@code module.jumper}; nobody moves them
 *     during a show
 */
public record TrueRig(
    List<Change.Plugged> cords, Map<String, String> positions, Map<String, String> jumpers) {
  public TrueRig {
    cords = List.copyOf(cords);
    positions = Collections.unmodifiableMap(new TreeMap<>(positions));
    jumpers = Collections.unmodifiableMap(new TreeMap<>(jumpers));
  }

  /** A rig of whose jumpers nothing is known. */
  public TrueRig(List<Change.Plugged> cords, Map<String, String> positions) {
    this(cords, positions, Map.of());
  }

  /** Nothing plugged, nothing known. */
  public static TrueRig bare() {
    return new TrueRig(List.of(), Map.of());
  }

  /** With every cord out and no control to rely on. */
  TrueRig cleared() {
    return new TrueRig(List.of(), Map.of(), jumpers);
  }

  /** What is known of a jumper already stays. */
  TrueRig withJumpers(Map<String, String> more) {
    Map<String, String> all = new TreeMap<>(more);
    all.putAll(jumpers);
    return new TrueRig(cords, positions, all);
  }

  TrueRig after(List<Change> changes) {
    List<Change.Plugged> newCords = new ArrayList<>(cords);
    Map<String, String> newPositions = new TreeMap<>(positions);
    for (Change change : changes) {
      if (change instanceof Change.Plugged plugged) {
        newCords.add(plugged);
      } else if (change instanceof Change.Pulled pulled) {
        newCords.removeIf(cord -> joins(cord, pulled.source(), pulled.sink()));
      } else if (change instanceof Change.Set set) {
        newPositions.put(set.control(), set.position());
      }
    }
    return new TrueRig(newCords, newPositions, jumpers);
  }

  TrueRig without(Change.Plugged gone) {
    return new TrueRig(
        cords.stream().filter(cord -> !cord.equals(gone)).toList(), positions, jumpers);
  }

  /** Without the cords that have a plug in one of the module's jacks. */
  TrueRig withoutModule(String module) {
    return new TrueRig(
        cords.stream().filter(c -> !isOf(c.source(), module) && !isOf(c.sink(), module)).toList(),
        positions,
        jumpers);
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
