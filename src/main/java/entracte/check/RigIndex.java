package entracte.check;

import entracte.rig.Kind;
import entracte.rig.Module;
import entracte.rig.Rig;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The names of a rig, each found at once. Of two things with one name the first is meant. */
final class RigIndex {
  private final Rig rig;
  private final Map<String, Kind> kinds = new LinkedHashMap<>();
  private final Map<String, Module> modules = new LinkedHashMap<>();
  private final Map<String, List<Module>> byKind = new LinkedHashMap<>();
  private final Map<String, Integer> numbers = new HashMap<>();
  private final List<Module> multiples;

  RigIndex(Rig rig) {
    this.rig = rig;
    for (Kind kind : rig.kinds()) {
      kinds.putIfAbsent(kind.name(), kind);
    }
    for (Module module : rig.modules()) {
      if (modules.putIfAbsent(module.name(), module) == null) {
        numbers.put(module.name(), numbers.size());
        byKind.computeIfAbsent(module.kind().name(), name -> new ArrayList<>()).add(module);
      }
    }
    multiples = modules.values().stream().filter(m -> Chains.splits(m.kind())).toList();
  }

  Rig rig() {
    return rig;
  }

  Optional<Kind> kind(String name) {
    return Optional.ofNullable(kinds.get(name));
  }

  Optional<Module> module(String name) {
    return Optional.ofNullable(modules.get(name));
  }

  /** The modules of a kind, top row first, left to right. */
  List<Module> ofKind(String kindName) {
    return Collections.unmodifiableList(byKind.getOrDefault(kindName, List.of()));
  }

  /** Every module, top row first, left to right. */
  Collection<Module> modules() {
    return Collections.unmodifiableCollection(modules.values());
  }

  /** The modules that can split a signal. */
  List<Module> multiples() {
    return multiples;
  }

  /** The place of a module in {@link #modules}, from 0. */
  int number(Module module) {
    return numbers.get(module.name());
  }

  /** The places of some modules. */
  int[] numbers(List<Module> some) {
    int[] places = new int[some.size()];
    for (int i = 0; i < places.length; i++) {
      places[i] = number(some.get(i));
    }
    return places;
  }

  Collection<String> kindNames() {
    return Collections.unmodifiableCollection(kinds.keySet());
  }

  Collection<String> moduleNames() {
    return Collections.unmodifiableCollection(modules.keySet());
  }
}
