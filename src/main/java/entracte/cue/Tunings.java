package entracte.cue;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;

/**
 * What the ear has seen to so far on a night, by the names of modules.
 *
 * @param ears what the pitch of each hung on as it was tuned; what was tuned last stands last
 * @param touched whose knobs or switches were moved since, so that it wants tuning wherever they
 *     stand
 */
public record Tunings(Map<String, Ear> ears, Set<String> touched) {
  public Tunings {
    ears = Collections.unmodifiableMap(new LinkedHashMap<>(ears));
    touched = Set.copyOf(touched);
  }

  /** Of a night of which nothing is known, or in which nothing was tuned. */
  public static Tunings none() {
    return new Tunings(Map.of(), Set.of());
  }

  boolean isEmpty() {
    return ears.isEmpty() && touched.isEmpty();
  }

  /** After the ear has seen to a module. */
  public Tunings tuned(String module, Ear ear) {
    Map<String, Ear> later = new LinkedHashMap<>(ears);
    later.remove(module);
    later.put(module, ear);
    Set<String> still = new LinkedHashSet<>(touched);
    still.remove(module);
    return new Tunings(later, still);
  }

  /** After a hand was at what a module's pitch hangs on; of no account if it never was tuned. */
  public Tunings touched(String module) {
    if (!ears.containsKey(module)) {
      return this;
    }
    Map<String, Ear> left = new LinkedHashMap<>(ears);
    left.remove(module);
    Set<String> more = new LinkedHashSet<>(touched);
    more.add(module);
    return new Tunings(left, more);
  }
}
