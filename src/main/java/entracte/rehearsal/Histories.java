package entracte.rehearsal;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** All runs, sorted by changeover and within each by time. */
final class Histories {
  private final Map<String, List<Run>> byMark = new LinkedHashMap<>();

  Histories(List<Run> runs) {
    runs.stream()
        .sorted(Comparator.comparing(Run::when))
        .forEach(run -> byMark.computeIfAbsent(run.mark(), m -> new ArrayList<>()).add(run));
  }

  Collection<List<Run>> all() {
    return byMark.values();
  }

  /** The runs of one changeover, the first first. */
  List<Run> of(String mark) {
    return List.copyOf(byMark.getOrDefault(mark, List.of()));
  }

  int size() {
    return byMark.values().stream().mapToInt(List::size).sum();
  }
}
