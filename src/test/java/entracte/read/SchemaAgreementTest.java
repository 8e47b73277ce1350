package entracte.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Schema and reader agree about files, good and bent: what the one takes the other takes, and what
 * the one refuses the other refuses, but for the mistakes that a schema cannot see ({@link
 * Unseen}).
 */
class SchemaAgreementTest {
  private static final long SEED = 20260401;
  private static final int ROUNDS = 1200;
  private static final int MANY_ROUNDS = 60_000;

  private static final String RIG_FILE = "harbour-case.yaml";
  private static final String PATCH_FILE = "patches/two-hands.yaml";
  private static final String SET_FILE = "set.yaml";

  @TempDir Path path;

  private final Map<String, SchemaJudge> judges =
      Map.of(
          SET_FILE, new SchemaJudge(Schema.SET),
          RIG_FILE, new SchemaJudge(Schema.RIG),
          PATCH_FILE, new SchemaJudge(Schema.PATCH));

  @Test
  void theFilesToBendAreGood() {
    Folder folder = FullFiles.in(path);
    assertEquals(List.of(), folder.findings());
    judges.forEach(
        (name, judge) -> assertEquals(List.of(), judge.faults(FullFiles.text(name)), name));
  }

  @Test
  void bentFilesAreJudgedAlike() {
    judge(SEED, ROUNDS);
  }

  @Test
  @Tag("heavy")
  void veryManyBentFilesAreJudgedAlike() {
    judge(SEED + 1, MANY_ROUNDS);
  }

  private void judge(long seed, int rounds) {
    Random random = new Random(seed);
    FileBender bender = new FileBender(random);
    Folder folder = FullFiles.in(path);
    List<String> quarrels = new ArrayList<>();
    int good = 0;
    int broken = 0;
    for (int round = 0; round < rounds; round++) {
      String name = List.of(SET_FILE, RIG_FILE, PATCH_FILE).get(round % 3);
      String bent = bender.bend(FullFiles.text(name));
      ReadSet read = folder.with(name, bent).read();
      List<String> faults = judges.get(name).faults(bent);
      folder.with(name, FullFiles.text(name));
      good += !read.hasErrors() && faults.isEmpty() ? 1 : 0;
      broken += read.hasErrors() && !faults.isEmpty() ? 1 : 0;
      if (faults.isEmpty() ? Unseen.leavesAny(read, bent) : !read.hasErrors()) {
        quarrels.add(name + "\n" + folder.lines(read.findings()) + "\n" + faults + "\n" + bent);
      }
    }
    assertEquals(List.of(), quarrels);
    assertTrue(good > rounds / 10 && broken > rounds / 3, good + " good, " + broken + " broken");
  }
}
