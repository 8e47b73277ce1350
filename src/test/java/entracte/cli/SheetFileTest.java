package entracte.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assumptions.assumeFalse;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SheetFileTest {
  @TempDir Path folder;
  private Path file;
  private SheetFile sheet;

  @BeforeEach
  void nameTheFile() {
    file = folder.resolve("sheet.txt");
    sheet = at(file);
  }

  private static SheetFile at(Path file) {
    return new SheetFile(file, "First Night");
  }

  @Test
  void anUntouchedSheetIsWrittenAnew() throws IOException {
    sheet.write(List.of("first"));
    sheet.write(List.of("second"));
    assertEquals("second", Files.readAllLines(file).get(0));
  }

  @Test
  void aSheetEditedByHandIsLeftAlone() throws IOException {
    sheet.write(List.of("first"));
    String edited = Files.readString(file).replace("first", "first, but slower");
    Files.writeString(file, edited);
    assertThrows(Stop.class, () -> sheet.write(List.of("second")));
    assertEquals(edited, Files.readString(file));
  }

  @Test
  void whatSomebodyAddsBelowIsKeptToo() throws IOException {
    sheet.write(List.of("first"));
    Files.writeString(file, Files.readString(file) + "my note\n");
    assertThrows(Stop.class, () -> sheet.write(List.of("second")));
  }

  @Test
  void aFileOfAnotherOriginIsLeftAlone() throws IOException {
    Files.writeString(file, "shopping\n");
    Stop stop = assertThrows(Stop.class, () -> sheet.demandFree());
    assertEquals(ExitCode.TROUBLE, stop.exitCode());
    assertEquals(
        file + " is there already and is not an untouched sheet of mine, so I leave it alone",
        stop.getMessage());
  }

  @Test
  void aFolderOrALinkIsLeftAlone() throws IOException {
    assertThrows(Stop.class, () -> at(folder).demandFree());
    sheet.write(List.of("first"));
    Path link = Files.createSymbolicLink(folder.resolve("link.txt"), file);
    assertThrows(Stop.class, () -> at(link).write(List.of("second")));
  }

  @Test
  void bytesThatAreNoTextAreLeftAlone() throws IOException {
    Files.write(file, new byte[] {(byte) 0xC3, 0x28, 0});
    assertThrows(Stop.class, () -> sheet.demandFree());
  }

  @Test
  void everySealIsKnownAgainAndKeepsTheContent() throws IOException {
    byte[] content = {'a', (byte) 0xFF, 0, '\n'};
    for (SheetFile.Seal seal : SheetFile.Seal.values()) {
      Path sealed = folder.resolve(seal + ".out");
      at(sealed).write(content, seal);
      at(sealed).write(content, seal);
      byte[] all = Files.readAllBytes(sealed);
      assertArrayEquals(content, Arrays.copyOf(all, content.length));
      all[1] = 'b';
      Files.write(sealed, all);
      assertThrows(Stop.class, () -> at(sealed).demandFree());
    }
  }

  /** ImageIO reads what ImageIO did not write so: the remark does no harm. */
  @Test
  void aPictureSaysWithinItselfThatItIsOurs() throws IOException {
    BufferedImage drawn = new BufferedImage(3, 2, BufferedImage.TYPE_BYTE_GRAY);
    ByteArrayOutputStream png = new ByteArrayOutputStream();
    ImageIO.write(drawn, "png", png);
    Path picture = folder.resolve("map.png");
    at(picture).writePng(png.toByteArray());
    at(picture).writePng(png.toByteArray());
    SheetFile other = new SheetFile(picture, "Другой");
    assertThrows(Stop.class, () -> other.writePng(png.toByteArray()));
    assertEquals(3, ImageIO.read(picture.toFile()).getWidth());
    byte[] all = Files.readAllBytes(picture);
    all[20]++;
    Files.write(picture, all);
    assertThrows(Stop.class, () -> at(picture).writePng(png.toByteArray()));
    Files.write(picture, png.toByteArray());
    assertThrows(Stop.class, () -> at(picture).demandFree());
  }

  @Test
  void theSheetOfAnotherSetIsLeftAloneAndNamed() throws IOException {
    new SheetFile(file, "Été -- Пять").write(List.of("first"));
    new SheetFile(file, "Été -- Пять").write(List.of("second"));
    Stop stop = assertThrows(Stop.class, () -> sheet.write(List.of("third")));
    assertEquals(
        file + " is the sheet of another set, Été __ Пять, so I leave it alone", stop.getMessage());
    assertEquals("second", Files.readAllLines(file).get(0));
  }

  /** As sheets were signed before they named their set. */
  @Test
  void aSheetThatNamesNoSetIsWrittenAnew() throws IOException {
    byte[] old = "first\n".getBytes(StandardCharsets.UTF_8);
    Files.writeString(
        file, "first\nWritten by entracte; sum " + SheetFile.sum(old, old.length) + "\n");
    sheet.write(List.of("second"));
    assertEquals("second", Files.readAllLines(file).get(0));
  }

  @Test
  void aMissingFolderIsTrouble() {
    Path nowhere = folder.resolve("no/sheet.txt");
    Stop stop = assertThrows(Stop.class, () -> at(nowhere).write(List.of("any")));
    assertEquals("there is no folder " + folder.resolve("no"), stop.getMessage());
  }

  /** The system names the half-written file beside it, which nobody asked for. */
  @Test
  void aFolderThatMayNotBeChangedIsToldWithoutTheNameOfOurOwnFile() {
    Stop denied = Stop.unwritable(file, new AccessDeniedException(folder + "/.sheet.txt.7.part"));
    assertEquals(file + " cannot be written: its folder may not be changed", denied.getMessage());
    assertEquals("Look at the permissions of the folder, or write to another.", denied.advice());
    Stop locked =
        Stop.unwritable(
            file,
            new FileSystemException(folder + "/.sheet.txt.7.part", null, "Read-only file system"));
    assertEquals(file + " cannot be written: Read-only file system", locked.getMessage());
    assertEquals("Try another folder, or make room in this one.", locked.advice());
    assertEquals(ExitCode.TROUBLE, locked.exitCode());
  }

  @Test
  void aReadOnlyFolderIsToldSo() {
    Path made = folder.resolve("closed");
    assumeTrue(made.toFile().mkdir() && made.toFile().setWritable(false));
    assumeFalse(Files.isWritable(made), "root may write everything");
    Path wanted = made.resolve("sheet.txt");
    Stop stop = assertThrows(Stop.class, () -> at(wanted).write(List.of("any")));
    assertEquals(wanted + " cannot be written: its folder may not be changed", stop.getMessage());
  }

  @Test
  void nothingElseIsLeftInTheFolder() throws IOException {
    sheet.write(List.of("first"));
    try (var entries = Files.list(folder)) {
      assertEquals(List.of(file), entries.toList());
    }
  }
}
