package entracte;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;

/** The house table: which package may use which, of ours and from outside. */
final class House {
  static final String ROOT = "entracte";

  private static final Map<String, Row> ROWS = new LinkedHashMap<>();

  /**
   * @param ours the packages it may import
   * @param outside the first parts of the names of outside packages it may import
   */
  record Row(Set<String> ours, Set<String> outside) {}

  static {
    row("finding", Set.of(), Set.of());
    row("rig", Set.of(), Set.of());
    row("midi", Set.of(), Set.of());
    row("setlist", Set.of("rig", "midi"), Set.of());
    row("read", Set.of("finding", "rig", "midi", "setlist"), Set.of("org.yaml.snakeyaml"));
    row("check", Set.of("finding", "rig", "setlist"), Set.of());
    row("plan", Set.of("rig", "setlist", "check"), Set.of());
    row("cue", Set.of("rig", "midi", "setlist", "plan"), Set.of());
    row("rehearsal", Set.of("rig", "setlist", "plan", "cue"), Set.of("org.hipparchus"));
    row("stage", Set.of("finding", "midi", "cue", "rehearsal"), Set.of());
    row("journal", Set.of("cue", "stage"), Set.of());
    row(
        "print",
        Set.of("cue", "rehearsal"),
        Set.of("org.apache.pdfbox", "org.apache.fontbox", "javax.imageio"));
    row("terminal", Set.of("stage"), Set.of("com.googlecode.lanterna"));
    row("port", Set.of("finding", "midi"), Set.of("javax.sound.midi"));
    row("cli", Set.copyOf(ROWS.keySet()), Set.of("picocli", "javax.management"));
  }

  private House() {}

  private static void row(String name, Set<String> ours, Set<String> outside) {
    ROWS.put(name, new Row(ours, outside));
  }

  static Map<String, Row> rows() {
    return ROWS;
  }

  /** Our package of a class's package name; empty for one of nobody's. */
  static String packageOf(String fullPackage) {
    return fullPackage.startsWith(ROOT + ".") ? fullPackage.substring(ROOT.length() + 1) : "";
  }
}
