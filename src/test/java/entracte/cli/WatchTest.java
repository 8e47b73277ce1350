package entracte.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Somebody edits a set while {@code plan --watch} runs; nobody waits for a clock. */
class WatchTest {
  private static final String WAITING = "Waiting for the next save; Ctrl-C ends.\n";

  @TempDir Path folder;
  private final Typist typist = new Typist();

  /** What is done to the files, one after the other, whenever the command waits. */
  private final Deque<Edit> edits = new ArrayDeque<>();

  private final List<List<Path>> waitedFor = new ArrayList<>();

  private interface Edit {
    void run() throws IOException;
  }

  @BeforeEach
  void writeASet() {
    FirstSet.write(folder.resolve("night"));
    typist.saving(
        (files, before) -> {
          waitedFor.add(files);
          return edited();
        });
  }

  private boolean edited() {
    if (edits.isEmpty()) {
      return false;
    }
    try {
      edits.remove().run();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return true;
  }

  private Path file(String name) {
    return folder.resolve("night").resolve(name);
  }

  private Edit replace(String name, String old, String now) {
    return () -> {
      String text = Files.readString(file(name));
      assertTrue(text.contains(old), text);
      Files.writeString(file(name), text.replace(old, now));
    };
  }

  private int watch(String... more) {
    List<String> words = new ArrayList<>(List.of("plan", folder.resolve("night").toString()));
    words.addAll(List.of(more));
    words.addAll(List.of("--watch", "-q"));
    return typist.type(words.toArray(String[]::new));
  }

  private String planned() {
    Typist other = new Typist();
    assertEquals(0, other.type("plan", folder.resolve("night").toString(), "-q"), other.err());
    return other.out();
  }

  @Test
  void everySaveIsPlannedAsIfNothingHadBeenPlannedBefore() {
    final String first = planned();
    edits.add(replace("patches/two-voices.yaml", "octave: 8", "octave: 16"));
    edits.add(replace("set.yaml", "low-voice.yaml", "two-voices.yaml"));
    assertEquals(0, watch());
    assertTrue(typist.out().startsWith(first), typist.out());
    assertTrue(typist.out().endsWith(planned()), typist.out());
    assertEquals(3, typist.err().split(WAITING, -1).length - 1, typist.err());
  }

  @Test
  void theMovesBeforeAndAfterASaveAreToldTogether() {
    edits.add(replace("set.yaml", "low-voice.yaml", "two-voices.yaml"));
    watch();
    String told = WAITING + "Moves between songs: (\\d+), before this save (\\d+)\\.\n" + WAITING;
    Matcher moves = Pattern.compile(told).matcher(typist.err());
    assertTrue(moves.matches(), typist.err());
    assertTrue(Integer.parseInt(moves.group(1)) < Integer.parseInt(moves.group(2)));
  }

  @Test
  void aBrokenFileIsToldAndTheLastPlanStands() {
    edits.add(replace("set.yaml", "songs:", "songs"));
    edits.add(replace("set.yaml", "songs", "songs:"));
    assertEquals(0, watch());
    String plan = planned();
    assertEquals(plan + plan, typist.out());
    List<String> said = typist.err().lines().toList();
    assertTrue(said.get(1).startsWith(file("set.yaml") + ":"), typist.err());
    assertTrue(said.contains("The last plan stands. " + WAITING.strip()), typist.err());
    assertTrue(said.get(said.size() - 2).startsWith("As many moves"), typist.err());
  }

  @Test
  void aSetThatIsBrokenFromTheBeginningIsWaitedFor() throws IOException {
    replace("set.yaml", "songs:", "songs").run();
    edits.add(replace("set.yaml", "songs", "songs:"));
    assertEquals(0, watch());
    assertEquals(planned(), typist.out());
    assertFalse(typist.err().contains("The last plan stands"), typist.err());
  }

  @Test
  void aFileThatIsGoneForAMomentIsWaitedFor() {
    Path aside = folder.resolve("aside");
    edits.add(() -> Files.move(file("set.yaml"), aside));
    edits.add(() -> Files.move(aside, file("set.yaml")));
    assertEquals(0, watch());
    assertEquals(planned() + planned(), typist.out());
  }

  @Test
  void aSetThatIsNotThereAtAllEndsTheCommand() {
    assertEquals(3, typist.type("plan", folder.resolve("no").toString(), "--watch"));
    assertEquals(List.of(), waitedFor);
  }

  @Test
  void everyFileOfTheSetIsWaitedForAndWhatItStartsFrom() throws IOException {
    Path state = Files.writeString(folder.resolve("state.yaml"), "state: bare\n");
    watch("--from", state.toString());
    assertEquals(
        List.of(
            file("set.yaml"),
            file("rig.yaml"),
            file("patches/low-voice.yaml"),
            file("patches/two-voices.yaml"),
            state),
        waitedFor.get(0));
  }

  @Test
  void aSaveIsSeenOnceTheFilesAreStill() throws InterruptedException {
    Path set = file("set.yaml");
    List<Path> files = List.of(set, file("rig.yaml"));
    Deque<Edit> meanwhile = new ArrayDeque<>();
    meanwhile.add(() -> {});
    meanwhile.add(() -> Files.writeString(set, "set: Half"));
    meanwhile.add(() -> Files.writeString(set, "set: Half a line, and the other half\n"));
    meanwhile.add(() -> {});
    LookingOut looking = new LookingOut(() -> run(meanwhile.remove()));
    assertTrue(looking.await(files, FileLooks.of(files)));
    assertEquals(0, meanwhile.size());
  }

  @Test
  void aFileThatTakesThePlaceOfAnotherIsASave() throws Exception {
    Path set = file("set.yaml");
    FileLooks before = FileLooks.of(List.of(set));
    Path other = Files.copy(set, folder.resolve("other"), StandardCopyOption.COPY_ATTRIBUTES);
    Files.move(other, set, StandardCopyOption.REPLACE_EXISTING);
    assertFalse(before.equals(FileLooks.of(List.of(set))));
  }

  private static void run(Edit edit) {
    try {
      edit.run();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
