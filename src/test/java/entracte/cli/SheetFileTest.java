package entracte.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SheetFileTest {
  @TempDir Path folder;
  private Path file;

  @BeforeEach
  void nameTheFile() {
    file = folder.resolve("sheet.txt");
  }

  @Test
  void anUntouchedSheetIsWrittenAnew() throws IOException {
    SheetFile.write(file, List.of("first"));
    SheetFile.write(file, List.of("second"));
    assertEquals("second", Files.readAllLines(file).get(0));
  }

  @Test
  void aSheetEditedByHandIsLeftAlone() throws IOException {
    SheetFile.write(file, List.of("first"));
    String edited = Files.readString(file).replace("first", "first, but slower");
    Files.writeString(file, edited);
    assertThrows(Stop.class, () -> SheetFile.write(file, List.of("second")));
    assertEquals(edited, Files.readString(file));
  }

  @Test
  void whatSomebodyAddsBelowIsKeptToo() throws IOException {
    SheetFile.write(file, List.of("first"));
    Files.writeString(file, Files.readString(file) + "my note\n");
    assertThrows(Stop.class, () -> SheetFile.write(file, List.of("second")));
  }

  @Test
  void aFileOfAnotherOriginIsLeftAlone() throws IOException {
    Files.writeString(file, "shopping\n");
    Stop stop = assertThrows(Stop.class, () -> SheetFile.demandFree(file));
    assertEquals(ExitCode.TROUBLE, stop.exitCode());
    assertEquals(
        file + " is there already and is not an untouched sheet of mine, so I leave it alone",
        stop.getMessage());
  }

  @Test
  void aFolderOrALinkIsLeftAlone() throws IOException {
    assertThrows(Stop.class, () -> SheetFile.demandFree(folder));
    SheetFile.write(file, List.of("first"));
    Path link = Files.createSymbolicLink(folder.resolve("link.txt"), file);
    assertThrows(Stop.class, () -> SheetFile.write(link, List.of("second")));
  }

  @Test
  void bytesThatAreNoTextAreLeftAlone() throws IOException {
    Files.write(file, new byte[] {(byte) 0xC3, 0x28, 0});
    assertThrows(Stop.class, () -> SheetFile.demandFree(file));
  }

  @Test
  void everySealIsKnownAgainAndKeepsTheContent() throws IOException {
    byte[] content = {'a', (byte) 0xFF, 0, '\n'};
    for (SheetFile.Seal seal : SheetFile.Seal.values()) {
      Path sealed = folder.resolve(seal + ".out");
      SheetFile.write(sealed, content, seal);
      SheetFile.write(sealed, content, seal);
      byte[] all = Files.readAllBytes(sealed);
      assertArrayEquals(content, Arrays.copyOf(all, content.length));
      all[1] = 'b';
      Files.write(sealed, all);
      assertThrows(Stop.class, () -> SheetFile.demandFree(sealed));
    }
  }

  @Test
  void aMissingFolderIsTrouble() {
    Path nowhere = folder.resolve("no/sheet.txt");
    Stop stop = assertThrows(Stop.class, () -> SheetFile.write(nowhere, List.of("any")));
    assertEquals("there is no folder " + folder.resolve("no"), stop.getMessage());
  }

  @Test
  void nothingElseIsLeftInTheFolder() throws IOException {
    SheetFile.write(file, List.of("first"));
    try (var entries = Files.list(folder)) {
      assertEquals(List.of(file), entries.toList());
    }
  }
}
