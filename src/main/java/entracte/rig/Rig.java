package entracte.rig;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;

/**
 * The whole instrument.
 *
 * @param kinds every kind that the rig's file describes, used or not
 * @param rows the modules, top row first, left to right
 * @param hands what is assumed of whoever plays it
 * @param warmth how it drifts
 */
public record Rig(
    String name,
    List<Kind> kinds,
    List<List<Module>> rows,
    CordStock cords,
    double rowHeightCm,
    List<Gear> gear,
    Optional<FootSwitch> footSwitch,
    Hands hands,
    Warmth warmth) {
  public static final double DEFAULT_ROW_HEIGHT_CM = 25;

  /** What a cord needs beyond the straight way: it hangs, and its plugs take room. */
  private static final double SLACK = 1.2;

  private static final double PLUGS_CM = 10;

  public Rig {
    kinds = List.copyOf(kinds);
    rows = rows.stream().map(List::copyOf).toList();
    gear = List.copyOf(gear);
  }

  /** A rig that says nothing of its drift. */
  public Rig(
      String name,
      List<Kind> kinds,
      List<List<Module>> rows,
      CordStock cords,
      double rowHeightCm,
      List<Gear> gear,
      Optional<FootSwitch> footSwitch,
      Hands hands) {
    this(name, kinds, rows, cords, rowHeightCm, gear, footSwitch, hands, Warmth.unsaid());
  }

  /** A rig that says nothing of the hands and of its drift. */
  public Rig(
      String name,
      List<Kind> kinds,
      List<List<Module>> rows,
      CordStock cords,
      double rowHeightCm,
      List<Gear> gear,
      Optional<FootSwitch> footSwitch) {
    this(name, kinds, rows, cords, rowHeightCm, gear, footSwitch, Hands.usual());
  }

  /** The same rig with other modules in its rows. */
  public Rig withRows(List<List<Module>> others) {
    return new Rig(name, kinds, others, cords, rowHeightCm, gear, footSwitch, hands, warmth);
  }

  /** Every module, top row first, left to right. */
  public List<Module> modules() {
    return rows.stream().flatMap(List::stream).toList();
  }

  public Optional<Module> module(String moduleName) {
    return modules().stream().filter(m -> m.name().equals(moduleName)).findFirst();
  }

  public Optional<Kind> kind(String kindName) {
    return kinds.stream().filter(k -> k.name().equals(kindName)).findFirst();
  }

  /** The straight distance between the centres of two modules, in cm. */
  public double distanceCm(Module a, Module b) {
    return Math.hypot(a.centreCm() - b.centreCm(), (a.row() - b.row()) * rowHeightCm);
  }

  /** The length that a cord between two modules needs, in cm, before it is rounded up. */
  public double reachCm(Module a, Module b) {
    return SLACK * distanceCm(a, b) + PLUGS_CM;
  }

  /** The length in stock that a cord between two modules needs; empty if none is long enough. */
  public OptionalInt cordLengthCm(Module a, Module b) {
    return cords.lengthFor(reachCm(a, b));
  }

  /** The same rig with other cords in the bag. */
  public Rig withCords(CordStock others) {
    return new Rig(name, kinds, rows, others, rowHeightCm, gear, footSwitch, hands, warmth);
  }

  /** The same rig with one more module, at the right end of the row that has the last such. */
  public Rig withOneMore(Kind kind) {
    int row =
        modules().stream().filter(m -> m.kind().equals(kind)).mapToInt(Module::row).max().orElse(0);
    double edgeCm =
        rows.get(row).stream()
            .mapToDouble(m -> m.centreCm() + m.kind().widthCm() / 2)
            .max()
            .orElse(0);
    Module more = new Module(freeName(kind), kind, row, edgeCm + kind.widthCm() / 2);
    List<List<Module>> longer = new ArrayList<>(rows);
    longer.set(row, Stream.concat(rows.get(row).stream(), Stream.of(more)).toList());
    return withRows(longer);
  }

  private String freeName(Kind kind) {
    String free = "another " + kind.name();
    while (module(free).isPresent() || kind(free).isPresent()) {
      free = "yet " + free;
    }
    return free;
  }

  /** The same rig without one of its modules; what stands beside the hole stays in its place. */
  public Rig without(Module missing) {
    return withRows(
        rows.stream().map(row -> row.stream().filter(m -> !m.equals(missing)).toList()).toList());
  }
}
