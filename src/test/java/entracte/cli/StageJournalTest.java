package entracte.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import entracte.journal.JournalFile;
import entracte.stage.Basis;
import entracte.stage.Event;
import entracte.stage.Input;
import entracte.stage.Night;
import entracte.stage.Show;
import entracte.stage.SmallShow;
import entracte.stage.Stage;
import entracte.stage.TrueRig;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
    StageJournal.Opened opened =
        StageJournal.open(Path.of(args[0]), small.show, unknown(Path.of(args[0])), false);
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

  private static SetFiles unknown(Path set) {
    return new SetFiles(set, List.of(), Map.of());
  }

  private StageJournal.Opened open(SmallShow small, boolean anew) throws Exception {
    return StageJournal.open(folder, small.show, unknown(folder), anew);
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

  /** Names are mended between soundcheck and show. */
  @Test
  void theSameNightGoesOnUnderAnotherName() throws Exception {
    Show show = new SmallShow().show;
    String old = show.fingerprint().replace("Kitchen; ", "Kichen; ").replace("Late", "Lat");
    StageJournal.Opened first = open(new SmallShow(), false);
    first.file().add(new Event.Begun(0, old, List.of(0, 1, 2, 3), TrueRig.bare()));
    first.file().close();
    StageJournal.Opened again = open(new SmallShow(), false);
    again.file().close();
    assertTrue(again.resumed());
    assertEquals(
        "The same night goes on, but the set was called Kichen and is Kitchen; song 4 was called"
            + " Lat and is Late.",
        again.note());
  }

  private StageJournal.Opened openWith(Map<String, String> files) throws Exception {
    SetFiles now = new SetFiles(folder, List.of(), files);
    return StageJournal.open(folder, new SmallShow().show, now, false);
  }

  /** What is said of the set's name is said of its files, too. */
  @Test
  void aFileThatWasChangedInMidNightIsTold() throws Exception {
    Basis then = new Basis(Map.of("rig.yaml", "1", "patches/low.yaml", "2"), Optional.empty());
    StageJournal.Opened first = openWith(then.files());
    Show show = new SmallShow().show;
    List<Integer> order = List.of(0, 1, 2, 3);
    first.file().add(new Event.Begun(0, show.fingerprint(), order, TrueRig.bare(), then));
    first.file().close();
    StageJournal.Opened same = openWith(then.files());
    same.file().close();
    assertFalse(same.changed());
    assertEquals("", same.note());
    Map<String, String> later = Map.of("rig.yaml", "9", "patches/low.yaml", "2");
    StageJournal.Opened again = openWith(later);
    assertTrue(again.changed());
    assertEquals(
        "The same night goes on, but rig.yaml was changed, so what comes is planned again.",
        again.note());
    again.file().add(new Event.Resumed(1, new Basis(later, Optional.empty()), true));
    again.file().close();
    StageJournal.Opened known = openWith(later);
    known.file().close();
    assertFalse(known.changed(), "it was told once");
  }

  @Test
  void otherSongsOrAnotherOrderAreAnotherNight() throws Exception {
    Show show = new SmallShow().show;
    assertEquals(Optional.of(List.of()), show.renamedSince(show.fingerprint()));
    for (String other :
        List.of(
            "Kitchen; Clock; Kettle; Enamel; Late; Drone",
            "Kitchen; Kettle; Clock; Enamel; Drone",
            "Kitchen; One; Two; Three; Late; Drone",
            "")) {
      assertEquals(Optional.empty(), show.renamedSince(other), other);
    }
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

  private Path journal() {
    return folder.resolve("stage.journal");
  }

  @Test
  void aTornLineIsToldOnTheScreenFromTheStart() throws Exception {
    SmallShow small = new SmallShow().begin().next(7);
    play(small);
    Files.writeString(journal(), "0badc0de 12\tpres", StandardOpenOption.APPEND);
    StageJournal.Opened again = open(small, false);
    again.file().close();
    assertEquals(small.night, again.night());
    assertEquals(
        "The journal's last line was torn and dropped (16 bytes). Look whether the last press"
            + " counts.",
        again.note());
  }

  @Test
  void aFileOfSomebodyElseIsPutAsideWhole() throws Exception {
    Files.writeString(journal(), "what we ate on tour");
    StageJournal.Opened opened = open(new SmallShow(), false);
    opened.file().close();
    assertEquals(
        "stage.journal was no journal of a night. It is kept as stage-1.journal.", opened.note());
    assertEquals("what we ate on tour", Files.readString(folder.resolve("stage-1.journal")));
  }

  /** What stands behind the spoilt line cannot be believed, but somebody may mend it. */
  @Test
  void aSpoiltJournalIsCopiedBeforeItIsCutShort() throws Exception {
    SmallShow small = new SmallShow().begin().next(7);
    play(small);
    byte[] bytes = Files.readAllBytes(journal());
    bytes[bytes.length / 2] ^= 1;
    Files.write(journal(), bytes);
    StageJournal.Opened again = open(small, false);
    again.file().add(new Event.Pressed(1, Input.NEXT));
    again.file().close();
    assertTrue(again.resumed());
    assertArrayEquals(bytes, Files.readAllBytes(folder.resolve("stage-1.journal")));
  }

  @Test
  void oneSetIsPlayedByOneStage() throws Exception {
    play(new SmallShow().begin().next(3));
    StageJournal.Opened first = open(new SmallShow(), false);
    for (boolean anew : new boolean[] {false, true}) {
      Stop stop = assertThrows(Stop.class, () -> open(new SmallShow(), anew));
      assertEquals("another stage is playing this set", stop.getMessage());
    }
    assertTrue(Files.notExists(folder.resolve("stage-1.journal")));
    first.file().close();
  }

  /** The link goes aside; what it leads to is left alone. */
  @Test
  void aLinkToAnotherFileIsNotWrittenThrough() throws Exception {
    Path other = Files.writeString(folder.resolve("diary.txt"), "dear diary");
    Files.createSymbolicLink(journal(), other.getFileName());
    StageJournal.Opened opened = open(new SmallShow(), false);
    opened.file().add(new Event.Resumed(1));
    opened.file().close();
    assertEquals("dear diary", Files.readString(other));
    assertTrue(Files.isSymbolicLink(folder.resolve("stage-1.journal")));
    assertFalse(Files.isSymbolicLink(journal()));
  }

  @Test
  void aLinkToAJournalIsFollowed() throws Exception {
    SmallShow small = new SmallShow().begin().next(7);
    play(small);
    Path elsewhere = Files.createDirectory(folder.resolve("disk")).resolve("night");
    Files.move(journal(), elsewhere);
    Files.createSymbolicLink(journal(), elsewhere);
    StageJournal.Opened again = open(small, false);
    again.file().close();
    assertEquals(small.night, again.night());
  }

  @Test
  void aLinkThatLeadsNowhereIsNoFreeName() throws Exception {
    Files.createSymbolicLink(folder.resolve("stage-1.journal"), Path.of("nowhere"));
    Files.writeString(journal(), "what we ate on tour");
    open(new SmallShow(), false).file().close();
    assertEquals("what we ate on tour", Files.readString(folder.resolve("stage-2.journal")));
  }

  @Test
  void whereNoJournalCanBeTheShowGoesOnWithout() throws Exception {
    Files.createDirectory(journal());
    StageJournal.Opened opened = open(new SmallShow(), false);
    IOException told =
        assertThrows(IOException.class, () -> opened.file().add(new Event.Resumed(1)));
    assertEquals("stage.journal is no ordinary file", told.getMessage());
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
