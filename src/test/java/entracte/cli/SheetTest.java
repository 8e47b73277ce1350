package entracte.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What {@code sheet} does with options that cannot be done as typed: it says so, writes nothing.
 */
class SheetTest {
  private static final String SET = "sets/kitchen-table";

  @TempDir Path folder;
  private final Typist typist = new Typist();

  private String refused(int exitCode, String name, String... options) {
    List<String> words = new ArrayList<>(List.of("sheet", SET, "--seconds", "0.2"));
    words.addAll(List.of("-o", folder.resolve(name).toString()));
    words.addAll(List.of(options));
    assertEquals(exitCode, typist.type(words.toArray(String[]::new)));
    assertFalse(Files.exists(folder.resolve(name)), name + " was written");
    return typist.err();
  }

  @ParameterizedTest
  @CsvSource({"a.pdf", "a.txt", "a.svg", "a.png"})
  void inMidSetThereIsNoSetUpToPrint(String name) {
    assertTrue(
        refused(2, name, "--mid-set", "--pages", "set-up")
            .startsWith("entracte: nothing would stand on these papers, so I write none\n"),
        typist.err());
  }

  @Test
  void aPictureIsOfAWayAndNotOfAList() {
    assertEquals(
        """
        entracte: a .png holds pictures alone, and these papers have none
          Write a .pdf or .txt, or choose set-up or changeovers with --pages.
        """,
        refused(2, "a.png", "--pages", "packing,order"));
  }

  @Test
  void thePictureOfASongThatIsNotAmongThePapersIsRefused() {
    assertEquals(
        """
        entracte: nothing moves on the ways that were chosen, so there is no picture
          Choose another --song, or other --pages.
        """,
        refused(2, "a.svg", "--pages", "changeovers", "--song", "1"));
  }

  @Test
  void oneSongIsForPicturesOnly() {
    assertEquals(
        """
        entracte: --song chooses a picture, and a .pdf holds whole papers
          Write a .svg or .png, or leave --song out.
        """,
        refused(2, "a.pdf", "--song", "2"));
  }

  /** 25 cm is the near point of an eye by the convention for magnifiers. */
  @Test
  void nobodyReadsFromNearerThanAnEyeSees() {
    assertTrue(refused(2, "a.pdf", "--distance", "24.9cm").contains("less than 25cm"));
    assertTrue(refused(2, "a.pdf", "--from", "10 cm").contains("less than 25cm"));
  }

  @Test
  void aStateAndADistanceAreNotBothFrom() {
    assertEquals(
        """
        entracte: --from is there twice
          Say with --from where the rig starts, and with --distance where the eye is.
          Add --help to see what can be typed.
        """,
        refused(2, "a.pdf", "--from", "st.yaml", "--from", "1.2m"));
  }

  /** A text is as wide as a page of typewriter, whatever the letters of a PDF would be. */
  @Test
  void plainTextHasNoPaperToBeTooSmall() {
    Path text = folder.resolve("a.txt");
    String[] words = {
      "sheet", SET, "-o", text.toString(), "--paper", "a5", "--from", "6m", "--dim"
    };
    assertEquals(0, typist.type(words), typist.err());
    assertTrue(Files.exists(text));
  }

  @Test
  void theSheetOfAnotherSetIsLeftAlone() throws IOException {
    Path file = folder.resolve("a.pdf");
    assertEquals(0, typist.type("sheet", SET, "-o", file.toString(), "--pages", "packing"));
    byte[] before = Files.readAllBytes(file);
    Path mine = folder.resolve("mine");
    FirstSet.write(mine);
    assertEquals(3, typist.type("sheet", mine.toString(), "-o", file.toString()));
    assertEquals(
        "entracte: "
            + file
            + " is the sheet of another set, Kitchen Table, so I leave it alone\n"
            + "  Give another name, or move that file away yourself.\n",
        typist.err());
    assertTrue(Arrays.equals(before, Files.readAllBytes(file)));
  }
}
