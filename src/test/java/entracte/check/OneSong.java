package entracte.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import entracte.finding.Finding;
import entracte.read.ReadSet;
import entracte.read.SetReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/**
 * A rig, a patch and a set as a musician writes them: files that the readers have nothing against.
 */
final class OneSong {
  private static final String SET = "set: s\nrig: rig.yaml\nsongs:\n  - {song: a, patch: p.yaml}\n";

  private OneSong() {}

  /** What the checks say of a set of one song. */
  static List<Finding> findings(Path folder, String rig, String patch) throws IOException {
    return findings(folder, rig, patch, SET);
  }

  /** The same of a set that names {@code rig.yaml} and {@code p.yaml}. */
  static List<Finding> findings(Path folder, String rig, String patch, String set)
      throws IOException {
    Files.writeString(folder.resolve("rig.yaml"), rig);
    Files.writeString(folder.resolve("p.yaml"), patch);
    Files.writeString(folder.resolve("set.yaml"), set);
    ReadSet read = SetReader.read(folder);
    assertEquals(List.of(), read.findings());
    return Checker.check(read.setList().orElseThrow(), read.places()).findings();
  }
}
