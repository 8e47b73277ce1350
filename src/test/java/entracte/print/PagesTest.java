package entracte.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import entracte.cue.KitchenDances;
import entracte.cue.Pace;
import entracte.cue.Paperwork;
import entracte.print.Mark.Path;
import entracte.print.Mark.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** On every paper and from every distance: nothing is cut off, nothing overlaps. */
class PagesTest {
  private static final double ROUNDING_MM = 0.01;

  /** There the details may be as small as ISO 9241-3 allows. */
  private static final Set<Part> LISTS = Set.of(Part.ORDER, Part.ENGINEER);

  private static final Paperwork PAPERS = Paperwork.of(KitchenDances.plan(), Pace.estimated());

  static Stream<Arguments> papersAndDistances() {
    return Stream.of(Paper.values())
        .flatMap(
            paper ->
                Stream.of(300.0, 700.0, 1000.0, 1600.0, 2400.0)
                    .map(mm -> new Legibility(mm, false))
                    .filter(l -> Sheets.refusal(options(paper, l)).isEmpty())
                    .map(l -> Arguments.of(paper, l)));
  }

  private static Sheets.Options options(Paper paper, Legibility legibility) {
    return new Sheets.Options(Part.all(), paper, legibility);
  }

  @ParameterizedTest
  @MethodSource("papersAndDistances")
  void everythingIsOnThePaperOnceAndBesideTheRest(Paper paper, Legibility legibility) {
    look(PAPERS, paper, legibility);
  }

  @ParameterizedTest
  @EnumSource(Paper.class)
  void thePapersThatNobodyWantsAreSoToo(Paper paper) {
    look(HardPaperwork.papers(), paper, Legibility.usual());
  }

  /** The greatest distance that is not refused, to a centimetre. */
  @ParameterizedTest
  @EnumSource(Paper.class)
  void whatIsNotRefusedFits(Paper paper) {
    double mm = 300;
    while (Sheets.refusal(options(paper, new Legibility(mm + 10, false))).isEmpty()) {
      mm += 10;
    }
    look(PAPERS, paper, new Legibility(mm, false));
    look(HardPaperwork.papers(), paper, new Legibility(mm, false));
  }

  private static void look(Paperwork papers, Paper paper, Legibility legibility) {
    Lettering lettering = new Lettering();
    double capital = legibility.capitalMm();
    PageScribe scribe = new PageScribe(lettering, paper, capital, "Kitchen Dances");
    new Author(papers, scribe).dictate(Part.all());
    List<Page> pages = scribe.pages();
    assertTrue(pages.size() >= Part.values().length);
    for (Page page : pages) {
      List<Box> boxes = new ArrayList<>();
      for (Words words : words(page)) {
        double least = capital * (LISTS.contains(page.part()) ? Legibility.LEAST_PART : 1);
        assertTrue(words.capital() >= least - 1e-9, words.text() + " is too small");
        boxes.add(Box.of(words, lettering));
      }
      boxes.forEach(box -> assertTrue(box.isOn(page.format()), box + " is cut off"));
      assertEquals(List.of(), overlaps(boxes));
      paths(page).forEach(path -> assertTrue(isOn(path, page.format()), path + " is cut off"));
    }
  }

  /** The room that letters take between their line's top and bottom. */
  private record Box(String text, double left, double top, double right, double bottom) {
    static Box of(Words words, Lettering lettering) {
      double top = words.baseline() - words.capital();
      double drop = 0.23 * lettering.em(words.face(), words.capital());
      double right = words.x() + words.width();
      return new Box(words.text(), words.x(), top, right, words.baseline() + drop);
    }

    boolean isOn(Paper.Format format) {
      return left >= format.margin() - ROUNDING_MM
          && top >= format.margin() - ROUNDING_MM
          && right <= format.width() - format.margin() + ROUNDING_MM
          && bottom <= format.height() - format.margin() + ROUNDING_MM;
    }

    boolean overlaps(Box other) {
      return left < other.right - ROUNDING_MM
          && other.left < right - ROUNDING_MM
          && top < other.bottom - ROUNDING_MM
          && other.top < bottom - ROUNDING_MM;
    }
  }

  private static List<String> overlaps(List<Box> boxes) {
    List<String> overlaps = new ArrayList<>();
    for (int i = 0; i < boxes.size(); i++) {
      for (int j = i + 1; j < boxes.size(); j++) {
        if (boxes.get(i).overlaps(boxes.get(j))) {
          overlaps.add(boxes.get(i) + " and " + boxes.get(j));
        }
      }
    }
    return overlaps;
  }

  private static boolean isOn(Path path, Paper.Format format) {
    return path.points().stream()
        .allMatch(
            p -> p.x() >= 0 && p.y() >= 0 && p.x() <= format.width() && p.y() <= format.height());
  }

  private static List<Words> words(Page page) {
    Sorter sorter = new Sorter();
    page.marks().forEach(mark -> mark.draw(sorter));
    return sorter.words;
  }

  private static List<Path> paths(Page page) {
    Sorter sorter = new Sorter();
    page.marks().forEach(mark -> mark.draw(sorter));
    return sorter.paths;
  }

  private static final class Sorter implements Mark.Pen {
    private final List<Words> words = new ArrayList<>();
    private final List<Path> paths = new ArrayList<>();

    @Override
    public void words(Words each) {
      words.add(each);
    }

    @Override
    public void path(Path path) {
      paths.add(path);
    }
  }
}
