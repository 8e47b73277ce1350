package entracte.cli;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What is wrong around the stage at the moment, each under the name of what it is wrong with. What
 * went wrong last is said first, then what else is; ports that are not there are named together,
 * and once, with the gear that something was meant for, and so are those that are back. Before all
 * that, until a press acknowledges it, comes what was found at the start.
 */
final class Troubles {
  /** What the ports that are not there are told under, together. */
  private static final String MISSING = "not there";

  private static final String BACK = "back";

  private final Map<String, String> all = new LinkedHashMap<>();
  private final Map<String, Set<String>> missing = new LinkedHashMap<>();
  private final Set<String> back = new LinkedHashSet<>();
  private String found = "";

  void found(String sentence) {
    found = sentence;
  }

  void acknowledge() {
    found = "";
  }

  void tell(String about, String sentence) {
    there(about);
    if (!sentence.isEmpty() && !sentence.equals(all.get(about))) {
      all.remove(about);
      all.put(about, sentence);
    }
  }

  /** A port is not there. */
  void missing(String port) {
    clear(port);
    missing.putIfAbsent(port, new LinkedHashSet<>());
    sayMissingFirst();
  }

  /** Something was meant for gear that hangs on a port that is not there. */
  void unreached(String port, String gear) {
    all.remove(gear);
    missing.computeIfAbsent(port, any -> new LinkedHashSet<>()).add(gear);
    sayMissingFirst();
  }

  /** A port that gear hangs on is there again; it was sent nothing yet. */
  void back(String port) {
    there(port);
    back.add(port);
    all.remove(BACK);
    all.put(BACK, backAgain());
  }

  /** Everything was sent again. */
  void caughtUp() {
    back.clear();
    all.remove(BACK);
  }

  private void sayMissingFirst() {
    all.remove(MISSING);
    all.put(MISSING, missingOnes());
  }

  void clear(String about) {
    all.remove(about);
    there(about);
  }

  private void there(String port) {
    if (missing.remove(port) != null && missing.isEmpty()) {
      all.remove(MISSING);
    }
    if (back.remove(port) && back.isEmpty()) {
      all.remove(BACK);
    }
    all.computeIfPresent(MISSING, (about, before) -> missingOnes());
    all.computeIfPresent(BACK, (about, before) -> backAgain());
  }

  /** {@code Stage Piano and Pedal are not there. Not reached: piano.} */
  private String missingOnes() {
    Set<String> gear = new LinkedHashSet<>();
    missing.values().forEach(gear::addAll);
    String unreached = gear.isEmpty() ? "" : " Not reached: " + String.join(", ", gear) + ".";
    return together(missing.keySet()) + " not there." + unreached;
  }

  private String backAgain() {
    String sent = back.size() == 1 ? "It was" : "They were";
    return together(back) + " back. " + sent + " sent nothing; F2 sends everything again.";
  }

  /** {@code Stage Piano, Drum Box and Pedal are}. */
  private static String together(Set<String> ports) {
    List<String> names = List.copyOf(ports);
    String last = names.get(names.size() - 1);
    String before = String.join(", ", names.subList(0, names.size() - 1));
    return before.isEmpty() ? last + " is" : before + " and " + last + " are";
  }

  /** Sentences in one line; empty if all is well. */
  String say() {
    if (!found.isEmpty()) {
      return found;
    }
    List<String> sentences = new ArrayList<>(all.values());
    Collections.reverse(sentences);
    return String.join(" ", sentences);
  }
}
