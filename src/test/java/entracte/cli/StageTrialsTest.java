package entracte.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import entracte.port.Loopback;
import entracte.stage.Input;
import entracte.terminal.Key;
import entracte.terminal.Window;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code check --stage} on a first set, at places that are ready and at others. */
class StageTrialsTest {
  @TempDir Path folder;
  private final Typist typist = new Typist();
  private Path set;

  @BeforeEach
  void writeASet() throws IOException {
    set = folder.resolve("night");
    FirstSet.write(set);
    savedOn("2026-02-01T10:00:00Z");
  }

  @AfterEach
  void pullAll() {
    Loopback.pullAll();
  }

  private void savedOn(String when) throws IOException {
    try (Stream<Path> all = Files.walk(set)) {
      for (Path each : (Iterable<Path>) all.filter(Files::isRegularFile)::iterator) {
        Files.setLastModifiedTime(each, FileTime.from(Instant.parse(when)));
      }
    }
  }

  private void rigHas(String lines) throws IOException {
    Path rig = set.resolve("rig.yaml");
    Files.writeString(rig, Files.readString(rig) + lines);
    savedOn("2026-02-01T10:00:00Z");
  }

  private int tried() {
    return typist.type("check", set.toString(), "--stage");
  }

  /** What is said of one trial, on one line. */
  private String told(String what) {
    String blank = " ".repeat(21);
    String text = typist.out().replace("\n" + blank, " ").replaceAll(" +", " ");
    return text.lines().filter(l -> l.contains(" " + what + " ")).findFirst().orElse(text);
  }

  private void at(Path powers, Map<String, String> environment, Optional<Window> window) {
    Venue old = typist.venue();
    typist.at(new Venue(powers, environment, window, old.zone(), old.keys(), old.footSeconds()));
  }

  private void supply(String name, Map<String, String> files) throws IOException {
    Path supply = Files.createDirectories(folder.resolve("powers").resolve(name));
    for (Map.Entry<String, String> file : files.entrySet()) {
      Files.writeString(supply.resolve(file.getKey()), file.getValue() + "\n");
    }
    at(folder.resolve("powers"), typist.venue().environment(), typist.venue().window());
  }

  @Test
  void whereAllIsWellItReadsLikeThis() {
    assertEquals(0, tried(), typist.err());
    assertEquals(
        """
        No mistakes found; the set can be planned.
        ready      journal   It can be kept in %s.
        ready      disk      There is room on it.
        ready      terminal  It has 80 columns and 24 rows.
        ready      letters   The terminal is told to show UTF-8.
        ready      titles    Every title can be shown in large letters.
        look       power     The system does not tell whether it runs on mains or on a
                             battery. Plug the power supply in, where nobody kicks it out.
        look       clock     It is 19:00 on Sunday 1 March 2026 (Z), says the computer.
                             Look whether it is right.
        ready      ports     The rig names no MIDI gear, so none is needed.
        ready      pedal     The rig names no foot switch; keys say next.
        All that could be tried is ready; to look at yourself: 2.
        """
            .formatted(set.resolve("stage.journal"))
            .replaceAll("\\s+", " "),
        typist.out().replaceAll("\\s+", " "));
  }

  @Test
  void nothingIsLeftBesideTheSet() throws IOException {
    List<Path> before = names();
    tried();
    assertEquals(before, names());
  }

  private List<Path> names() throws IOException {
    try (Stream<Path> all = Files.walk(set)) {
      return all.sorted().toList();
    }
  }

  @Test
  void aJournalThatAnotherStageHasOpenIsNotReady() throws IOException {
    Path journal = Files.createFile(set.resolve("stage.journal"));
    try (FileChannel other = FileChannel.open(journal, StandardOpenOption.WRITE)) {
      assertTrue(other.tryLock().isValid());
      assertEquals(3, tried());
      assertTrue(told("journal").startsWith("NOT READY journal"), typist.out());
    }
    assertEquals(0, tried());
  }

  @Test
  void aJournalThatIsNoneIsToldAndLeftAsItIs() throws IOException {
    Path journal = Files.writeString(set.resolve("stage.journal"), "half a li");
    assertEquals(0, tried());
    assertTrue(told("journal").startsWith("look journal "), typist.out());
    assertEquals("half a li", Files.readString(journal));
  }

  @Test
  void aFolderInPlaceOfTheJournalIsNotReady() throws IOException {
    Files.createDirectory(set.resolve("stage.journal"));
    assertEquals(3, tried());
    assertTrue(told("journal").contains("is no ordinary file."), typist.out());
  }

  @Test
  void aWindowTooSmallIsNotReadyAndASmallOneIsTold() {
    at(folder, Map.of("LANG", "C.UTF-8"), Optional.of(new Window(39, 24)));
    assertEquals(3, tried());
    assertEquals(
        "NOT READY terminal It has 39 columns and 24 rows; the stage needs 40 and 12. Make the"
            + " window larger, or its letters smaller.",
        told("terminal"));
    at(folder, Map.of("LANG", "C.UTF-8"), Optional.of(new Window(40, 12)));
    assertEquals(0, tried());
    assertTrue(told("terminal").startsWith("look terminal"), typist.out());
    at(folder, Map.of("LANG", "C.UTF-8"), Optional.empty());
    assertEquals(3, tried());
  }

  /** LC_ALL goes before LC_CTYPE, and that before LANG (POSIX.1-2017, chapter 8.2). */
  @Test
  void theAlphabetIsWhatTheFirstNameSays() {
    Optional<Window> window = typist.venue().window();
    at(folder, Map.of("LANG", "C.UTF-8", "LC_ALL", "C"), window);
    tried();
    assertTrue(told("letters").startsWith("look letters The terminal is told to show C,"));
    at(folder, Map.of("LANG", "C", "LC_CTYPE", "de_DE.utf8", "LC_ALL", ""), window);
    tried();
    assertTrue(told("letters").startsWith("ready letters"), typist.out());
  }

  @Test
  void aTitleWithoutLargeLettersIsNamed() throws IOException {
    Path file = set.resolve("set.yaml");
    Files.writeString(file, Files.readString(file).replace("song: Second", "song: \u4E8C"));
    savedOn("2026-02-01T10:00:00Z");
    assertEquals(0, tried());
    assertTrue(told("titles").startsWith("look titles Only in small letters: \u4E8C."));
  }

  @Test
  void mainsAreReadyAndAnEmptyBatteryIsNot() throws IOException {
    supply("BAT0", Map.of("type", "Battery", "status", "Discharging", "capacity", "23"));
    assertEquals(3, tried());
    assertEquals(
        "NOT READY power The computer runs on its battery, 23 per cent full. Plug the power supply"
            + " in, where nobody kicks it out.",
        told("power"));
    supply("BAT0", Map.of("capacity", "80"));
    assertEquals(0, tried());
    assertTrue(told("power").startsWith("look power"), typist.out());
    supply("AC", Map.of("type", "Mains", "online", "1"));
    assertEquals(0, tried());
    assertEquals("ready power The computer runs on mains.", told("power"));
  }

  @Test
  void aClockBehindTheFilesIsNotReady() throws IOException {
    savedOn("2026-04-01T10:00:00Z");
    assertEquals(3, tried());
    assertTrue(told("clock").startsWith("NOT READY clock It is 19:00 on Sunday 1 March 2026"));
  }

  @Test
  void aPortThatIsThereIsOpenedAndSentNothing() throws IOException {
    rigHas("gear:\n  piano: {port: Stage Piano, channel: 1, programs from: 1}\n");
    assertEquals(3, tried());
    assertTrue(
        told("port").startsWith("NOT READY port Not usable: there is no port Stage Piano."),
        typist.out());
    Loopback piano = Loopback.gear("Stage Piano [hw:3,0,0]", "");
    assertEquals(0, tried());
    assertEquals("ready port Stage Piano is there and free.", told("port"));
    assertEquals(List.of(), piano.taken());
  }

  @Test
  void aPedalThatAnswersIsReadyAndASilentOneIsNot() throws Exception {
    rigHas("foot switch: {port: Pedal, press: cc 64}\n");
    assertEquals(3, tried());
    assertTrue(told("pedal").startsWith("NOT READY pedal Not usable: there is no port Pedal."));
    assertEquals("", typist.err());
    Loopback pedal = Loopback.pedal("Pedal");
    assertEquals(3, tried());
    assertTrue(told("pedal").startsWith("NOT READY pedal No cc 64 came from Pedal."));
    CountDownLatch done = new CountDownLatch(1);
    Thread foot = new Thread(() -> press(pedal, done));
    foot.start();
    Venue old = typist.venue();
    typist.at(new Venue(old.powers(), old.environment(), old.window(), old.zone(), old.keys(), 20));
    assertEquals(0, tried());
    done.countDown();
    foot.join();
    assertEquals("ready pedal It answers with cc 64.", told("pedal"));
    assertEquals("Press the pedal now; it has 20 s.\n", typist.err());
  }

  private static void press(Loopback pedal, CountDownLatch done) {
    try {
      while (!done.await(20, TimeUnit.MILLISECONDS)) {
        pedal.give(0xB0, 64, 127);
      }
    } catch (InterruptedException ended) {
      Thread.currentThread().interrupt();
    }
  }

  @Test
  void aPedalThatTypesMustSayNext() throws IOException {
    rigHas("foot switch: {press: page down}\n");
    assertEquals("NOT READY pedal No key came. Is it plugged in, or paired?", typed(null));
    assertEquals(
        "ready pedal It answers with a key that says next.", typed(new Key.Says(Input.NEXT)));
    assertTrue(typed(new Key.Letter('x')).startsWith("NOT READY pedal Its key does not say next."));
  }

  private String typed(Key key) {
    Venue old = typist.venue();
    typist.at(
        new Venue(
            old.powers(),
            old.environment(),
            old.window(),
            old.zone(),
            seconds -> Optional.ofNullable(key),
            1));
    tried();
    return told("pedal");
  }

  @Test
  void aSetWithMistakesIsNotTried() throws IOException {
    Files.writeString(set.resolve("set.yaml"), "set: Nothing\n");
    assertEquals(1, tried());
    assertFalse(typist.out().contains("terminal"), typist.out());
  }

  @Test
  void asJsonTheTrialsStandBesideTheFindings() {
    assertEquals(0, typist.type("check", set.toString(), "--stage", "--json"));
    assertTrue(typist.out().contains("\"what\": \"journal\""), typist.out());
  }
}
