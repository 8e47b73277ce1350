package entracte.check;

import entracte.rig.CordStock;
import entracte.rig.Gear;
import entracte.rig.Kind;
import entracte.rig.Module;
import entracte.rig.Rig;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.UnaryOperator;

/** Makes a rig in a few lines, for tests of every package. */
public final class RigBuilder {
  private final Map<String, Kind> kinds = new LinkedHashMap<>();
  private final List<Kind> allKinds = new ArrayList<>();
  private final List<List<Module>> rows = new ArrayList<>();
  private final List<Gear> gear = new ArrayList<>();
  private CordStock cords = CordStock.unlimited();
  private double rowHeightCm = Rig.DEFAULT_ROW_HEIGHT_CM;

  public static RigBuilder rig() {
    return new RigBuilder();
  }

  /**
   * A rig of common kinds, and no modules yet: keys, oscillator, lfo, filter, amplifier, envelope,
   * mixer (4 channels), multiple (4 taps), output.
   */
  public static RigBuilder commonKinds() {
    return rig()
        .kind("keys", k -> k.out("pitch 1", "pitch 2", "gate 1", "gate 2", "wheel"))
        .kind(
            "oscillator",
            k ->
                k.in("pitch x2", "fm", "sync")
                    .out("saw", "pulse", "sine")
                    .knob("tune", -5, 5)
                    .knob("width", 0, 10)
                    .flip("octave", "32", "16", "8", "4", "2"))
        .kind("lfo", k -> k.in("pitch").out("sine", "pulse").knob("rate", 0, 10))
        .kind(
            "filter",
            k ->
                k.in("audio", "cutoff cv")
                    .out("out")
                    .knob("cutoff", 0, 10)
                    .knob("resonance", 0, 10)
                    .flip("slope", "steep", "other")
                    .jumper("other slope", "2-pole", "3-pole"))
        .kind("amplifier", k -> k.in("audio", "level cv").out("out").knob("level", 0, 10))
        .kind("envelope", k -> k.in("gate").out("out").knob("attack", 0, 10).knob("decay", 0, 10))
        .kind("mixer", k -> k.out("out").channels(4))
        .kind("multiple", k -> k.taps(4))
        .kind("output", k -> k.in("left", "right"));
  }

  public RigBuilder kind(String name, UnaryOperator<KindBuilder> parts) {
    Kind kind = parts.apply(new KindBuilder(name)).build();
    kinds.putIfAbsent(name, kind);
    allKinds.add(kind);
    return this;
  }

  /** A row of modules, from left to right, each {@code "osc 1: oscillator"}. */
  public RigBuilder row(String... modules) {
    List<Module> row = new ArrayList<>();
    double edgeCm = 0;
    for (String each : modules) {
      String[] parts = each.split(": ");
      Kind kind = kinds.get(parts[1]);
      row.add(new Module(parts[0], kind, rows.size(), edgeCm + kind.widthCm() / 2));
      edgeCm += kind.widthCm();
    }
    rows.add(row);
    return this;
  }

  public RigBuilder cords(int count) {
    cords = CordStock.ofAnyLength(count);
    return this;
  }

  public RigBuilder cords(Map<Integer, Integer> countByLengthCm) {
    cords = new CordStock(new TreeMap<>(countByLengthCm));
    return this;
  }

  public RigBuilder rowHeight(double cm) {
    rowHeightCm = cm;
    return this;
  }

  public RigBuilder gear(String name, String port, int channel, int programsFrom) {
    gear.add(new Gear(name, port, channel, programsFrom));
    return this;
  }

  public Rig build() {
    return new Rig("test rig", allKinds, rows, cords, rowHeightCm, gear, Optional.empty());
  }
}
