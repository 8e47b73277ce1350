package entracte.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import entracte.check.Checker;
import entracte.journal.JournalFile;
import entracte.journal.JournalRead;
import entracte.read.ReadSet;
import entracte.read.SetReader;
import entracte.stage.Around;
import entracte.stage.Night;
import entracte.stage.Phase;
import entracte.stage.Screen;
import entracte.stage.Show;
import entracte.stage.Stage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The whole program in a real terminal: it shows, it gives the terminal back, it survives. */
final class StageProcessTest {
  /** Keys that all say "next"; each another one, so that none is taken for a repeat. */
  private static final String[] NEXT = {"NPage", "Enter", "Down"};

  private static final Pattern MOVE = Pattern.compile("step (\\d+) of \\d+, .*");
  private static final Pattern PLACE = Pattern.compile("(changeover to|song) (\\d+) of \\d+.*");

  @TempDir Path folder;
  private Path set;
  private int pressed;

  @BeforeEach
  void aCopyOfTheKitchenTable() throws IOException {
    assumeTrue(Tmux.isHere(), "tmux is not installed");
    set = folder.resolve("set");
    Path from = Path.of("sets/kitchen-table");
    try (Stream<Path> all = Files.walk(from)) {
      all.forEach(file -> copy(file, set.resolve(from.relativize(file).toString())));
    }
  }

  private static void copy(Path from, Path to) {
    try {
      Files.copy(from, to);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void press(Tmux tmux) throws Exception {
    tmux.keys(NEXT[pressed++ % NEXT.length]);
  }

  @Test
  void itShowsHearsAndGivesTheTerminalBack() throws Exception {
    try (Tmux tmux = new Tmux(folder).start(80, 24, "", set)) {
      tmux.await(row -> row.startsWith("step 1 of 25,"));
      press(tmux);
      tmux.await(row -> row.startsWith("step 2 of 25,"));
      assertEquals("1", tmux.says("alternate_on"));
      assertEquals("0", tmux.says("cursor_flag"));
      tmux.resize(40, 12);
      List<String> small = tmux.await(row -> row.startsWith("next: this move is done"));
      assertEquals(12, small.size());
      assertTrue(small.get(3).startsWith("step 2 of 25,"), small.get(3));
      tmux.keys("C-c");
      tmux.await(row -> row.equals("the stage ended with 0"));
      restored(tmux);
    }
  }

  private void restored(Tmux tmux) throws Exception {
    assertEquals("0", tmux.says("alternate_on"));
    assertEquals("1", tmux.says("cursor_flag"));
    while (!Files.exists(folder.resolve("after")) || Files.size(folder.resolve("after")) == 0) {
      Thread.sleep(5);
    }
    assertEquals(
        Files.readString(folder.resolve("before")), Files.readString(folder.resolve("after")));
  }

  @Test
  void aSignalThatEndsItLeavesTheTerminalWhole() throws Exception {
    for (String signal : List.of("-TERM", "-HUP", "-INT")) {
      Files.deleteIfExists(folder.resolve("after"));
      try (Tmux tmux = new Tmux(folder).start(80, 24, "", set)) {
        tmux.await(row -> row.startsWith("step "));
        tmux.kill(signal);
        tmux.await(row -> row.startsWith("the stage ended with "));
        restored(tmux);
      }
    }
  }

  /** The shell lets no file grow any more; that is how a full disk looks to the program. */
  @Test
  void aDiskThatIsFullIsToldAndTheShowGoesOn() throws Exception {
    Path journal = set.resolve("stage.journal");
    try (Tmux tmux = new Tmux(folder).start(80, 24, "", set)) {
      tmux.await(row -> row.startsWith("step 1 of 25,"));
      tmux.kill("-KILL");
    }
    long blocks = Files.size(journal) / 1024 + 1;
    try (Tmux tmux = new Tmux(folder).start(80, 24, "ulimit -f " + blocks, set)) {
      tmux.await(row -> row.startsWith("step 1 of 25,"));
      int move = 1;
      while (tmux.screen().stream().noneMatch(row -> row.startsWith("This night is not kept"))) {
        assertTrue(move < 25, "the limit was never reached");
        press(tmux);
        move++;
        String shown = "step " + move + " of 25,";
        tmux.await(row -> row.startsWith(shown));
      }
      tmux.kill("-KILL");
      int kept = progress(replay(JournalFile.read(journal))) % 1000;
      assertTrue(kept == move - 1 || kept == move - 2, kept + " of " + move);
    }
  }

  @Test
  void whereverItIsKilledItResumesAtTheSameMove() throws Exception {
    killAndResume(10, 1);
  }

  @Test
  @Tag("heavy")
  void killedAHundredTimesItResumesAtTheSameMove() throws Exception {
    killAndResume(100, 2);
  }

  /** One night, killed again and again: at the start, between presses and in their midst. */
  private void killAndResume(int kills, long seed) throws Exception {
    Random random = new Random(seed);
    Path journal = set.resolve("stage.journal");
    for (int kill = 0; kill < kills; kill++) {
      Night before = replay(JournalFile.read(journal));
      if (before.phase() == Phase.END) {
        Files.delete(journal);
        before = Night.fresh();
      }
      try (Tmux tmux = new Tmux(folder).start(80, 24, "", set)) {
        tmux.pid();
        int shown = progress(before);
        int presses = 0;
        if (kill % 4 == 3) {
          Thread.sleep(random.nextInt(1200));
        } else {
          resumesAt(tmux, before);
          presses = 1 + random.nextInt(4);
          for (int press = 0; press < presses; press++) {
            press(tmux);
          }
          Thread.sleep(random.nextInt(60));
          shown = progress(tmux.screen());
        }
        tmux.kill("-KILL");
        int kept = progress(replay(JournalFile.read(journal)));
        assertTrue(kept >= shown, "of " + shown + " only " + kept + " was kept");
      }
    }
  }

  /** The screen is the one that the journal tells of, but for its clock. */
  private void resumesAt(Tmux tmux, Night before) throws Exception {
    List<String> screen =
        tmux.await(
            row ->
                MOVE.matcher(row).matches()
                    || row.contains("in the song")
                    || row.startsWith("Before you play, check:")
                    || row.startsWith("end"));
    if (before.phase() == Phase.WAITING) {
      return;
    }
    Around around = new Around(0, "", Map.of(), "");
    List<String> drawn = Screen.draw(show(), before, around, 80, 24).rows();
    assertEquals(progress(drawn), progress(screen), String.join("\n", screen));
    assertEquals(drawn.get(4), screen.get(4));
  }

  private Show show() {
    ReadSet read = SetReader.read(set);
    return ShowMaker.show(
        Checker.check(read.setList().orElseThrow(), read.places()).set().orElseThrow().setList());
  }

  private Night replay(JournalRead read) {
    return Stage.replay(show(), read.events());
  }

  private int progress(Night night) {
    return progress(Screen.draw(show(), night, new Around(0, "", Map.of(), ""), 80, 24).rows());
  }

  /** How far the night is, as a screen tells it: thousands for songs, ones for moves done. */
  private static int progress(List<String> screen) {
    if (screen.isEmpty() || screen.get(0).startsWith("end")) {
      return screen.isEmpty() ? 0 : Integer.MAX_VALUE;
    }
    Matcher place = PLACE.matcher(screen.get(0));
    int song = place.matches() ? 2 * Integer.parseInt(place.group(2)) : 2;
    boolean sounds = screen.get(0).startsWith("song");
    int[] moves =
        screen.stream()
            .map(MOVE::matcher)
            .filter(Matcher::matches)
            .mapToInt(m -> Integer.parseInt(m.group(1)) - 1)
            .toArray();
    boolean allDone = screen.stream().anyMatch(row -> row.startsWith("Before you play, check:"));
    int done = moves.length > 0 ? moves[0] : allDone ? 999 : 0;
    return 1000 * (song + (sounds ? 1 : 0)) + (sounds ? 0 : done);
  }
}
