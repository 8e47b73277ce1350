package entracte.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import entracte.cue.Cue;
import entracte.cue.CueSheet;
import entracte.cue.KitchenDances;
import entracte.cue.Pace;
import entracte.cue.Paperwork;
import entracte.cue.Verb;
import entracte.print.Poppler.Leaf;
import entracte.print.Poppler.Picture;
import entracte.print.Poppler.Word;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The PDF as another program reads it. */
class ReadBackTest {
  private static final double POINTS_PER_MM = 72 / 25.4;
  private static final int DOTS_PER_INCH = 300;
  private static final double DOTS_PER_POINT = DOTS_PER_INCH / 72.0;

  /** Words all of capitals without a tail: the verbs of the steps. */
  private static final Pattern TALL = Pattern.compile("[A-IK-PR-Z]{3,}");

  @TempDir Path folder;

  private final Paperwork papers = Paperwork.of(KitchenDances.plan(), Pace.estimated());

  private Poppler read(Paperwork what, Set<Part> parts, Paper paper, Legibility legibility)
      throws IOException {
    Sheets.Options options = new Sheets.Options(parts, paper, legibility);
    return new Poppler(folder, Sheets.pdf(what, options).bytes());
  }

  @ParameterizedTest
  @CsvSource({"A4, 700", "LETTER, 1000", "A5, 500", "STAND, 700", "A4, 1600"})
  void everyMoveIsOnPaperOnceAndInTheOrderOfTheHands(Paper paper, double distance)
      throws IOException {
    Set<Part> parts = EnumSet.of(Part.SET_UP, Part.CHANGEOVERS);
    String text = read(papers, parts, paper, new Legibility(distance, false)).text();
    int from = 0;
    int steps = 0;
    for (Cue cue : papers.sheet().cues()) {
      for (int i = 0; i < cue.steps().size(); i++) {
        String wanted = (i + 1) + " " + cue.steps().get(i).text();
        int found = text.indexOf(wanted, from);
        assertTrue(found >= from, wanted + " is missing after " + from + " in " + text);
        from = found + wanted.length();
        steps++;
      }
    }
    assertEquals(steps, verbs(text));
  }

  private static long verbs(String text) {
    String verbs = Stream.of(Verb.values()).map(Verb::name).collect(Collectors.joining("|"));
    return Pattern.compile("\\b(?:" + verbs + ")\\b").matcher(text).results().count();
  }

  @ParameterizedTest
  @CsvSource({"A4, 700", "LETTER, 1600", "A5, 700", "STAND, 1000"})
  void noWordIsCutOffOrLiesOverAnother(Paper paper, double distance) throws IOException {
    Poppler pdf = read(papers, Part.all(), paper, new Legibility(distance, false));
    for (Leaf leaf : pdf.leaves()) {
      List<Word> words = leaf.words();
      for (int i = 0; i < words.size(); i++) {
        Word word = words.get(i);
        assertTrue(word.left() >= 0 && word.right() <= leaf.width(), word + " is cut off");
        assertTrue(word.top() >= 0 && word.bottom() <= leaf.height(), word + " is cut off");
        for (Word other : words.subList(i + 1, words.size())) {
          assertTrue(!word.overlaps(other), word + " lies over " + other);
        }
      }
    }
  }

  @ParameterizedTest
  @CsvSource({"700, false", "1600, false", "700, true"})
  void theInkOfTheSmallestCapitalsIsAsTallAsIso9241Wants(double distance, boolean dim)
      throws IOException {
    Poppler pdf = read(papers, EnumSet.of(Part.SET_UP), Paper.A4, new Legibility(distance, dim));
    List<Double> heights = new ArrayList<>();
    int page = 1;
    for (Leaf leaf : pdf.leaves()) {
      Picture picture = pdf.picture(page++, DOTS_PER_INCH);
      leaf.words().stream()
          .filter(word -> TALL.matcher(word.text()).matches())
          .forEach(word -> heights.add(inkMm(picture, word)));
    }
    assertTrue(heights.size() > 10, "only " + heights.size() + " words were measured");
    double smallest = heights.stream().mapToDouble(Double::doubleValue).min().orElseThrow();
    double dot = 25.4 / DOTS_PER_INCH;
    // NUREG-0700 1.3.1-4: height = 6.283 D (MA) / 21600; ISO 9241-3: 20 minutes preferred.
    double wanted = 6.283 * distance * 20 / 21600 * (dim ? 1.5 : 1);
    assertTrue(smallest >= wanted - dot, smallest + " mm is less than " + wanted);
    assertTrue(smallest <= 1.6 * wanted, smallest + " mm is far more than " + wanted);
  }

  private static double inkMm(Picture picture, Word word) {
    int rows =
        picture.inkRows(
            (int) Math.floor(word.left() * DOTS_PER_POINT),
            (int) Math.floor(word.top() * DOTS_PER_POINT),
            (int) Math.ceil(word.right() * DOTS_PER_POINT),
            (int) Math.ceil(word.bottom() * DOTS_PER_POINT));
    return rows * 25.4 / DOTS_PER_INCH;
  }

  @Test
  void noWordAtAllIsSmallerThanTheRest() throws IOException {
    Legibility legibility = Legibility.usual();
    double least = Double.MAX_VALUE;
    for (Leaf leaf : read(papers, Part.all(), Paper.A4, legibility).leaves()) {
      for (Word word : leaf.words()) {
        least = Math.min(least, word.bottom() - word.top());
      }
    }
    // The box of a word is at least as tall as the font's em, of which a capital is 0.73.
    assertTrue(least >= legibility.capitalMm() / 0.73 * POINTS_PER_MM, "a word of " + least);
  }

  /** ISO 9241-3: 16 minutes of arc are the least; NUREG-0700 1.3.1-4 for the height. */
  @Test
  void evenAListThatIsSetDenselyKeepsToTheLeastAngle() throws IOException {
    Legibility floor = new Legibility(1600, true);
    Poppler pdf = read(papers, EnumSet.of(Part.ORDER), Paper.A4, floor);
    Picture picture = pdf.picture(1, DOTS_PER_INCH);
    // All songs are in D minor: the key stands among the details.
    Word key =
        pdf.leaves().get(0).words().stream()
            .filter(word -> word.text().equals("D"))
            .findFirst()
            .orElseThrow();
    double capital = inkMm(picture, key);
    double dot = 25.4 / DOTS_PER_INCH;
    assertTrue(capital >= 1.5 * 6.283 * 1600 * 16 / 21600 - dot, "a capital of " + capital);
    assertTrue(capital < floor.capitalMm(), capital + " is not small: nothing was tested");
    assertTrue(pdf.leaves().size() <= 2);
  }

  @Test
  void anyTitleIsPrintedAndReadBack() throws IOException {
    String title = "Élégie für Świt, Άνοιξη, Рассвет in F♯ and B♭";
    Poppler pdf = read(named(title), Part.all(), Paper.A4, Legibility.usual());
    assertTrue(pdf.text().contains(title), pdf.text());
    assertTrue(pdf.about().contains("Title: " + " ".repeat(10) + title), pdf.about());
  }

  /** Nothing hangs on a colour, or on a grey that red light swallows. */
  @Test
  void everyDotIsBlackOrWhite() throws IOException {
    Poppler pdf = read(papers, EnumSet.of(Part.CHANGEOVERS), Paper.A4, Legibility.usual());
    Picture picture = pdf.hardPicture(1, 60);
    Set<Integer> greys = picture.greys();
    assertEquals(Set.of(0, 255), greys);
  }

  @Test
  void whatTheFontLacksIsAskedAboutOnPaperAndReported() throws IOException {
    Sheets.Printed printed = Sheets.pdf(named("Tea 茶"), Sheets.Options.usual());
    assertEquals(List.of("茶 (U+8336)"), printed.missing());
    assertTrue(new Poppler(folder, printed.bytes()).text().contains("Tea ?"));
  }

  /** The other reader turns what it finds drawn from the right into the order it is read in. */
  @Test
  void hebrewIsDrawnFromTheRightAndReadBackAsWritten() throws IOException {
    String title = "Bar \u05E9\u05D9\u05E8 \u05E2\u05E8\u05D1";
    Sheets.Printed printed = Sheets.pdf(named(title), Sheets.Options.usual());
    assertEquals(List.of(), printed.missing());
    String text = new Poppler(folder, printed.bytes()).text().replaceAll("[\u202A-\u202E]", "");
    assertTrue(text.contains("\u05E9\u05D9\u05E8"), text);
    assertTrue(!text.contains("\u05E8\u05D9\u05E9"), text);
  }

  @Test
  void lettersThatWouldHaveToJoinAreReportedAndNotDrawnWrong() throws IOException {
    Sheets.Printed printed = Sheets.pdf(named("Bar \u0644\u064A\u0644"), Sheets.Options.usual());
    assertEquals(List.of("\u0644 (U+0644)", "\u064A (U+064A)"), printed.missing());
    assertTrue(new Poppler(folder, printed.bytes()).text().contains("Bar ???"));
  }

  private Paperwork named(String title) {
    CueSheet sheet = papers.sheet();
    CueSheet other =
        new CueSheet(
            title,
            sheet.rig(),
            sheet.cautions(),
            sheet.jumpers(),
            sheet.cues(),
            sheet.aboutTimes());
    return new Paperwork(
        other, papers.map(), papers.start(), papers.songs(), papers.plugged(), papers.packing());
  }
}
