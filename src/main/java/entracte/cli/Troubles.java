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
 * went wrong last is said first, then what else is; ports that are not there are named together.
 * Before all that, until a press acknowledges it, comes what was found at the start.
 */
final class Troubles {
  /** What the ports that are not there are told under, together. */
  private static final String MISSING = "not there";

  private final Map<String, String> all = new LinkedHashMap<>();
  private final Set<String> missing = new LinkedHashSet<>();
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
    all.remove(port);
    missing.add(port);
    all.remove(MISSING);
    all.put(MISSING, missingOnes());
  }

  void clear(String about) {
    all.remove(about);
    there(about);
  }

  private void there(String port) {
    if (missing.remove(port) && missing.isEmpty()) {
      all.remove(MISSING);
    }
    all.computeIfPresent(MISSING, (about, before) -> missingOnes());
  }

  private String missingOnes() {
    return String.join(" and ", missing)
        + (missing.size() == 1 ? " is not there." : " are not there.");
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
