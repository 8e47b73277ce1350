package entracte.print;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import entracte.cue.KitchenDances;
import entracte.cue.Pace;
import entracte.cue.Paperwork;
import entracte.plan.Changeover;
import entracte.plan.Plan;
import entracte.plan.SongPlan;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

class SheetsTest {
  private final Paperwork papers = Paperwork.of(KitchenDances.plan(), Pace.estimated());

  private Sheets.Printed only(Part part) {
    return Sheets.pdf(papers, new Sheets.Options(Set.of(part), Paper.A4, Legibility.usual()));
  }

  @Test
  void theSameSetMakesTheSameBytes() {
    Paperwork again = Paperwork.of(KitchenDances.plan(), Pace.estimated());
    assertArrayEquals(
        Sheets.pdf(papers, Sheets.Options.usual()).bytes(),
        Sheets.pdf(again, Sheets.Options.usual()).bytes());
  }

  @Test
  void aSmallSetNeedsFewPages() {
    assertEquals(1, only(Part.ORDER).pages());
    assertEquals(3, only(Part.PATCHES).pages());
    assertEquals(1, only(Part.PACKING).pages());
    assertEquals(1, only(Part.COUNT_IN).pages());
    assertEquals(1, only(Part.ENGINEER).pages());
    assertTrue(only(Part.CHANGEOVERS).pages() <= 4);
    assertTrue(only(Part.SET_UP).pages() <= 3);
  }

  /** From the floor in dim light: what the help of the command shows. */
  @Test
  void largeLettersCostFewPages() {
    Legibility floor = new Legibility(1600, true);
    Sheets.Printed printed =
        Sheets.pdf(papers, new Sheets.Options(Set.of(Part.ORDER), Paper.A4, floor));
    assertTrue(printed.pages() <= 2, printed.pages() + " pages");
    assertTrue(printed.leastMm() >= Legibility.LEAST_PART * floor.capitalMm() - 1e-9);
  }

  @Test
  void thePdfHasALanguageATitleAndBookmarks() throws IOException {
    byte[] bytes = Sheets.pdf(papers, Sheets.Options.usual()).bytes();
    try (PDDocument pdf = Loader.loadPDF(bytes)) {
      assertEquals("en", pdf.getDocumentCatalog().getLanguage());
      assertEquals("Kitchen Dances", pdf.getDocumentInformation().getTitle());
      List<String> titles = new ArrayList<>();
      for (PDOutlineItem item : pdf.getDocumentCatalog().getDocumentOutline().children()) {
        titles.add(item.getTitle());
      }
      assertEquals(
          List.of(
              "Running order",
              "Set-up",
              "Changeovers",
              "Patches",
              "Packing",
              "Counting in",
              "For the engineer"),
          titles);
    }
  }

  @Test
  void whatIsNotChosenIsNotPrinted() {
    List<String> lines = Sheets.text(papers, EnumSet.of(Part.PACKING));
    assertEquals("Packing: Kitchen Dances", lines.get(0));
    assertTrue(lines.stream().noneMatch(line -> line.contains("PLUG")));
  }

  @Test
  void thePictureOfOneSongHoldsItsTitleAndNoOther() {
    String one = String.join("\n", Sheets.svg(papers, Sheets.Options.usual(), OptionalInt.of(2)));
    assertTrue(one.contains(">To 2 Two Kettles</text>"));
    assertTrue(!one.contains("Late Bus"));
    String all = String.join("\n", Sheets.svg(papers, Sheets.Options.usual(), OptionalInt.empty()));
    assertTrue(all.contains(">Set-up for 1 Plain Morning</text>") && all.contains("Late Bus"));
  }

  /** The chunks of a PNG are in W3C's PNG standard; the checks are made by ImageIO. */
  @Test
  void thePictureComesAsDotsToo() throws IOException {
    OptionalInt second = OptionalInt.of(2);
    byte[] png = Sheets.png(papers, Sheets.Options.usual(), second).orElseThrow();
    BufferedImage image = ImageIO.read(new ByteArrayInputStream(png));
    // A4 on its side is 297 mm wide; an inch is 25.4 mm.
    assertEquals(297 / 25.4 * 150, image.getWidth(), 1);
    assertEquals(0xFFFFFFFF, image.getRGB(0, 0));
    assertTrue(darkDots(image) > 0.01 * image.getWidth() * image.getHeight());
    assertArrayEquals(png, Sheets.png(papers, Sheets.Options.usual(), second).orElseThrow());
  }

  private static long darkDots(BufferedImage image) {
    return IntStream.range(0, image.getWidth())
        .mapToLong(
            x -> IntStream.range(0, image.getHeight()).filter(y -> dark(image, x, y)).count())
        .sum();
  }

  private static boolean dark(BufferedImage image, int x, int y) {
    return (image.getRGB(x, y) & 0xFF) < 128;
  }

  @Test
  void aPictureTooTallForProgramsIsNotDrawn() {
    Paperwork many = Paperwork.of(aHundredSongs(), Pace.estimated());
    assertTrue(Sheets.png(many, Sheets.Options.usual(), OptionalInt.empty()).isEmpty());
    assertTrue(Sheets.png(many, Sheets.Options.usual(), OptionalInt.of(99)).isPresent());
  }

  @Test
  void aHundredSongsNeedFewPagesEach() {
    Paperwork many = Paperwork.of(aHundredSongs(), Pace.estimated());
    int pages = Sheets.pdf(many, Sheets.Options.usual()).pages();
    assertTrue(pages >= 200 && pages <= 500, pages + " pages");
  }

  @Test
  @Tag("benchmark")
  void aHundredSongsArePrintedInLessThanTenSeconds() {
    Paperwork many = Paperwork.of(aHundredSongs(), Pace.estimated());
    long before = System.nanoTime();
    int pages = Sheets.pdf(many, Sheets.Options.usual()).pages();
    double seconds = (System.nanoTime() - before) / 1e9;
    System.out.printf("100 songs: %d pages in %.1f s%n", pages, seconds);
    assertTrue(seconds < 10, seconds + " s");
  }

  /** The three songs over and over, and the way to the first one from the last left out. */
  private static Plan aHundredSongs() {
    Plan three = KitchenDances.plan();
    List<SongPlan> songs = new ArrayList<>();
    List<Changeover> changeovers = new ArrayList<>();
    for (int i = 0; i < 100; i++) {
      songs.add(three.songs().get(i % 3));
      Changeover like = three.changeovers().get(i == 0 ? 0 : 1 + i % 2);
      changeovers.add(new Changeover(i, i == 0, like.actions()));
    }
    return new Plan(three.set(), three.start(), songs, three.jumpers(), changeovers);
  }
}
