package entracte.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import entracte.finding.Finding;
import entracte.finding.Severity;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Schema and reader agree about files, good and bent: what the one takes the other takes, and what
 * the one refuses the other refuses, but for the mistakes that a schema cannot see, listed here.
 */
class SchemaAgreementTest {
  private static final long SEED = 20260401;
  private static final int ROUNDS = 1200;
  private static final int MANY_ROUNDS = 60_000;

  private static final String RIG_FILE = "harbour-case.yaml";
  private static final String PATCH_FILE = "patches/two-hands.yaml";
  private static final String SET_FILE = "set.yaml";

  /** What takes two places, two files or sums to see. */
  private static final Pattern UNSEEN =
      Pattern.compile(
          ".*(there is no file |is a folder, not a file|there is no kind |does not rise"
              + "|are counted twice|no inherited connection|is a (set|rig|patch|state), not a "
              + "|out of reach of any hands|has \".*\" twice|less than no time"
              + "|is no tuning of A4"
              + ").*");

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
      List<Finding> read = mistakes(folder.with(name, bent).read());
      List<String> faults = judges.get(name).faults(bent);
      folder.with(name, FullFiles.text(name));
      good += read.isEmpty() && faults.isEmpty() ? 1 : 0;
      broken += !read.isEmpty() && !faults.isEmpty() ? 1 : 0;
      boolean seen = read.stream().anyMatch(mistake -> isSeen(mistake, bent));
      if (faults.isEmpty() ? seen : read.isEmpty()) {
        quarrels.add(name + "\n" + folder.lines(read) + "\n" + faults + "\n" + bent);
      }
    }
    assertEquals(List.of(), quarrels);
    assertTrue(good > rounds / 10 && broken > rounds / 3, good + " good, " + broken + " broken");
  }

  /** Whether a mistake is of those that a schema can see. */
  private static boolean isSeen(Finding mistake, String bent) {
    boolean closed =
        mistake.message().endsWith(" is not a figure")
            && bent.lines().toList().get(mistake.place().line() - 1).contains("closed:");
    return !closed && !UNSEEN.matcher(mistake.message()).matches();
  }

  private static List<Finding> mistakes(ReadSet read) {
    return read.findings().stream()
        .filter(finding -> finding.severity() == Severity.ERROR)
        .toList();
  }
}
