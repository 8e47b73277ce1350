package entracte.cue;

import entracte.plan.Plan;
import entracte.plan.SongPlan;
import entracte.rig.CordStock;
import entracte.rig.FootSwitch;
import entracte.rig.Gear;
import entracte.rig.Module;
import entracte.rig.Rig;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * What goes into the van and has to come back out of the hall: each line a thing to count.
 *
 * @param cords by length: the most that are plugged at once, and spares
 * @param modules by kind, with their names
 * @param gear leads and tools, what follows along, and the foot switch
 */
public record Packing(List<String> cords, List<String> modules, List<String> gear) {
  /** Common practice: one cord in ten, and never none, to take the place of one that fails. */
  private static final int CORDS_PER_SPARE = 10;

  public Packing {
    cords = List.copyOf(cords);
    modules = List.copyOf(modules);
    gear = List.copyOf(gear);
  }

  static Packing of(Plan plan) {
    Rig rig = plan.setList().rig();
    return new Packing(cords(plan, rig.cords()), modules(rig), gear(plan));
  }

  /** All lines in their order. */
  public List<String> lines() {
    return Stream.of(cords, modules, gear).flatMap(List::stream).toList();
  }

  private static List<String> cords(Plan plan, CordStock stock) {
    Map<Integer, Integer> most = new TreeMap<>();
    for (SongPlan song : plan.songs()) {
      Map<Integer, Integer> now = new TreeMap<>();
      song.cords().forEach(cord -> now.merge(cord.lengthCm(), 1, Integer::sum));
      now.forEach((length, count) -> most.merge(length, count, Math::max));
    }
    List<String> lines = new ArrayList<>();
    most.forEach((length, count) -> lines.add(cordLine(length, count, stock)));
    return lines;
  }

  private static String cordLine(int length, int count, CordStock stock) {
    String name = length == CordStock.ANY_LENGTH ? "patch cords" : "cords of " + length + " cm";
    int wanted = (count + CORDS_PER_SPARE - 1) / CORDS_PER_SPARE;
    int left = stock.countByLengthCm().getOrDefault(length, 0) - count;
    int spares = Math.min(wanted, Math.max(0, left));
    String spare =
        spares == 0 ? "no spare in the bag" : spares + (spares == 1 ? " spare" : " spares");
    return (count + spares) + " " + name + ": " + count + " at the most at once, " + spare;
  }

  private static List<String> modules(Rig rig) {
    Map<String, List<String>> byKind = new LinkedHashMap<>();
    for (Module module : rig.modules()) {
      byKind.computeIfAbsent(module.kind().name(), kind -> new ArrayList<>()).add(module.name());
    }
    return byKind.entrySet().stream()
        .map(e -> e.getValue().size() + " x " + e.getKey() + ": " + String.join(", ", e.getValue()))
        .toList();
  }

  private static List<String> gear(Plan plan) {
    Rig rig = plan.setList().rig();
    List<String> lines = new ArrayList<>(List.of("mains lead or supply of the case"));
    lines.addAll(toTheDesk(rig));
    if (!plan.jumpers().isEmpty()) {
      lines.add("screwdriver for the panels, to set jumpers");
    }
    if (!rig.gear().isEmpty() || rig.footSwitch().isPresent()) {
      lines.add("computer with this program and its supply; MIDI interface or USB lead");
    }
    for (Gear each : rig.gear()) {
      lines.add(each.name() + ", its power and its MIDI lead (channel " + each.channel() + ")");
    }
    rig.footSwitch().map(Packing::pedal).ifPresent(lines::add);
    return lines;
  }

  /** One for each jack that leaves the rig without a patch cord. */
  private static List<String> toTheDesk(Rig rig) {
    List<String> lines =
        rig.modules().stream()
            .flatMap(
                module ->
                    module.kind().leaves().stream()
                        .sorted()
                        .map(jack -> "audio lead to the desk, from " + module.name() + " " + jack))
            .toList();
    return lines.isEmpty() ? List.of("audio lead to the desk") : lines;
  }

  private static String pedal(FootSwitch pedal) {
    return "foot switch and its lead (" + pedal.press() + ")";
  }
}
