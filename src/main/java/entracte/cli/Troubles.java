package entracte.cli;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * What is wrong around the stage at the moment, each under the name of what it is wrong with. What
 * went wrong last is said; when it is well again, what went wrong before it. Before all that, until
 * a press acknowledges it, comes what was found at the start.
 */
final class Troubles {
  private final Map<String, String> all = new LinkedHashMap<>();
  private String found = "";

  void found(String sentence) {
    found = sentence;
  }

  void acknowledge() {
    found = "";
  }

  void tell(String about, String sentence) {
    if (!sentence.isEmpty() && !sentence.equals(all.get(about))) {
      all.remove(about);
      all.put(about, sentence);
    }
  }

  void clear(String about) {
    all.remove(about);
  }

  /** One sentence; empty if all is well. */
  String say() {
    if (!found.isEmpty()) {
      return found;
    }
    String last = "";
    for (String sentence : all.values()) {
      last = sentence;
    }
    return last;
  }
}
