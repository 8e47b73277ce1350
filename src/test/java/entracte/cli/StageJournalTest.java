package entracte.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import entracte.journal.JournalFile;
import entracte.stage.Event;
import entracte.stage.Input;
import entracte.stage.Night;
import entracte.stage.SmallShow;
import entracte.stage.Stage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A night that was broken off is taken up where it was. */
final class StageJournalTest {
  @TempDir Path folder;

  /** Plays presses into a journal until it is killed; run as a process of its own. */
  public static void main(String[] args) throws Exception {
    SmallShow small = new SmallShow();
    StageJournal.Opened opened = StageJournal.open(Path.of(args[0]), small.show, false);
    small.night = opened.night();
    if (!opened.resumed()) {
      small.begin();
      for (Event event : small.events) {
        opened.file().add(event);
      }
    }
    for (int press = 0; ; press++) {
      Input input = press % 7 == 6 ? Input.UNDO : press % 3 == 2 ? Input.BACK : Input.NEXT;
      Event event = new Event.Pressed(press * 1000L, input);
      small.take(event);
      opened.file().add(event);
      System.out.println(place(small.night));
      System.out.flush();
    }
  }

  private StageJournal.Opened open(SmallShow small, boolean anew) throws Exception {
    return StageJournal.open(folder, small.show, anew);
  }

  private void play(SmallShow small) throws Exception {
    StageJournal.Opened opened = open(small, false);
    for (Event event : small.events) {
      opened.file().add(event);
    }
    opened.file().close();
  }

  @Test
  void theSameMoveIsFoundAgain() throws Exception {
    SmallShow small = new SmallShow().begin().next(7);
    play(small);
    StageJournal.Opened again = open(small, false);
    again.file().close();
    assertTrue(again.resumed());
    assertEquals(small.night, again.night());
  }

  @Test
  void aNightThatIsOverIsPutAside() throws Exception {
    SmallShow small = new SmallShow().begin().next(30);
    play(small);
    StageJournal.Opened again = open(small, false);
    again.file().close();
    assertFalse(again.resumed());
    assertTrue(Files.size(folder.resolve("stage-1.journal")) > 0);
    assertEquals(Night.fresh(), again.night());
  }

  @Test
  void aNewNightIsBegunIfWanted() throws Exception {
    play(new SmallShow().begin().next(3));
    StageJournal.Opened again = open(new SmallShow(), true);
    again.file().close();
    assertFalse(again.resumed());
  }

  /**
   * A process that plays is killed without warning at random moments. What it had said is done is
   * in the journal: the night that is read back is one it announced, at most one press further on.
   */
  @Test
  void nothingAnnouncedIsLostWhenTheProcessIsKilled() throws Exception {
    Random random = new Random(9);
    Path said = folder.resolve("said");
    for (int kill = 0; kill < 5; kill++) {
      Files.deleteIfExists(folder.resolve("stage.journal"));
      Process player =
          new ProcessBuilder(
                  Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                  "-cp",
                  System.getProperty("java.class.path"),
                  StageJournalTest.class.getName(),
                  folder.toString())
              .redirectOutput(said.toFile())
              .start();
      int enough = 1 + random.nextInt(200);
      while (player.isAlive() && announced(said).size() < enough) {
        Thread.sleep(1);
      }
      assertTrue(player.isAlive(), "the player ended by itself");
      player.destroyForcibly().waitFor(20, TimeUnit.SECONDS);
      List<String> lines = announced(said);
      List<Event> events = JournalFile.read(folder.resolve("stage.journal")).events();
      assertTrue(reaches(events, lines.get(lines.size() - 1)));
    }
  }

  /** The whole lines of the file. */
  private static List<String> announced(Path said) throws Exception {
    String text = Files.readString(said);
    return text.substring(0, text.lastIndexOf('\n') + 1).lines().toList();
  }

  /** Whether the last announced night is the last of the journal, or the one before. */
  private static boolean reaches(List<Event> events, String announced) {
    SmallShow small = new SmallShow();
    Night night = Night.fresh();
    Night before = night;
    for (Event event : events) {
      before = night;
      night = Stage.after(small.show, night, event).night();
    }
    String said = announced.strip();
    return said.equals(place(night)) || said.equals(place(before));
  }

  private static String place(Night night) {
    return night.phase() + " " + night.rig().cords() + " " + night.rig().positions();
  }
}
