package entracte.print;

import entracte.cue.Cue;
import entracte.cue.Paperwork;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/** The papers of a set as PDF and as plain text, and their pictures alone: the front door. */
public final class Sheets {
  /** What a page of typewriter text holds between decent margins. */
  public static final int TEXT_WIDTH = 72;

  /** Below this a page holds words in crumbs. */
  private static final double LEAST_EMS = 9;

  /** What programs for pictures open without trouble. */
  private static final long MOST_DOTS = 16_000;

  private Sheets() {}

  /**
   * How it is printed.
   *
   * @param parts which papers
   */
  public record Options(Set<Part> parts, Paper paper, Legibility legibility) {
    public Options {
      parts = Set.copyOf(parts);
    }

    public static Options usual() {
      return new Options(Part.all(), Paper.A4, Legibility.usual());
    }
  }

  /**
   * A file and what is to be said about it.
   *
   * @param leastMm the height of the smallest capitals
   * @param missing the characters that the font lacks and that are printed as question marks
   */
  public record Printed(byte[] bytes, int pages, double leastMm, List<String> missing) {
    public Printed {
      missing = List.copyOf(missing);
    }
  }

  /** Why nothing can be printed so; empty if it can. A sentence without its full stop. */
  public static Optional<String> refusal(Options options) {
    double capital = options.legibility().capitalMm();
    Lettering lettering = new Lettering();
    Paper.Format upright = options.paper().upright();
    boolean fits =
        upright.innerWidth() >= LEAST_EMS * lettering.em(Face.PLAIN, capital)
            && upright.innerHeight() >= Layout.LEAST_LINES * lettering.lineHeight(capital);
    return fits
        ? Optional.empty()
        : Optional.of(
            String.format(
                Locale.ROOT,
                "letters of %.1f mm leave no room on %s",
                capital,
                options.paper().word()));
  }

  /** The papers as a PDF; the options must not be refused. */
  public static Printed pdf(Paperwork papers, Options options) {
    demandRoom(options);
    Lettering lettering = new Lettering();
    double capital = options.legibility().capitalMm();
    String set = papers.sheet().set();
    PageScribe scribe = new PageScribe(lettering, options.paper(), capital, set);
    new Author(papers, scribe).dictate(options.parts());
    List<Page> pages = scribe.pages();
    double least = pages.stream().mapToDouble(Page::smallest).min().orElse(capital);
    String subject =
        String.format(
            Locale.ROOT,
            "Capital letters of %.1f mm or more, to be read from %.1f m",
            least,
            options.legibility().distanceMm() / 1000);
    byte[] bytes = PdfBook.write(set, subject, pages, lettering);
    return new Printed(bytes, pages.size(), least, lettering.missing());
  }

  private static void demandRoom(Options options) {
    refusal(options)
        .ifPresent(
            why -> {
              throw new IllegalArgumentException(why);
            });
  }

  /** The same as text, no line wider than {@link #TEXT_WIDTH}. */
  public static List<String> text(Paperwork papers, Set<Part> parts) {
    TextScribe scribe = new TextScribe(TEXT_WIDTH);
    new Author(papers, scribe).dictate(parts);
    return scribe.lines();
  }

  /**
   * The pictures of the case below each other, as SVG.
   *
   * @param song the number of the only song wanted; empty for all
   */
  public static List<String> svg(Paperwork papers, Options options, OptionalInt song) {
    Lettering lettering = new Lettering();
    Page page = pictures(papers, options, song, lettering);
    return SvgPicture.lines(
        papers.sheet().set(),
        page.format().width(),
        page.format().height(),
        page.marks(),
        lettering);
  }

  /**
   * The same as a PNG; empty where it would be too tall for programs that show pictures.
   *
   * @param song the number of the only song wanted; empty for all
   */
  public static Optional<byte[]> png(Paperwork papers, Options options, OptionalInt song) {
    Lettering lettering = new Lettering();
    Page page = pictures(papers, options, song, lettering);
    if (PngPicture.dots(page.format().height()) > MOST_DOTS) {
      return Optional.empty();
    }
    String set = papers.sheet().set();
    return Optional.of(PngPicture.bytes(PdfBook.write(set, "", List.of(page), lettering)));
  }

  /** Whether any of the pictures that are asked for has a place on it. */
  public static boolean hasPicture(Paperwork papers, Set<Part> parts, OptionalInt song) {
    return !pictured(papers, parts, song).isEmpty();
  }

  private static List<Cue> pictured(Paperwork papers, Set<Part> parts, OptionalInt song) {
    return papers.sheet().cues().stream()
        .filter(cue -> parts.contains(cue.setUp() ? Part.SET_UP : Part.CHANGEOVERS))
        .filter(cue -> song.isEmpty() || song.getAsInt() == cue.number())
        .filter(cue -> !Place.of(cue).isEmpty())
        .toList();
  }

  /** All pictures on one page that is as high as they are. */
  private static Page pictures(
      Paperwork papers, Options options, OptionalInt song, Lettering lettering) {
    demandRoom(options);
    Paper.Format lying = options.paper().lying();
    double capital = options.legibility().capitalMm();
    Setter setter = new Setter(lettering, capital, lying.innerWidth());
    MapPages maps = new MapPages(lettering, papers.map(), true, capital, lying.innerWidth());
    List<Slab> slabs = new ArrayList<>();
    for (Cue cue : pictured(papers, options.parts(), song)) {
      slabs.add(setter.title(cue.heading()));
      maps.pages(Place.of(cue), Double.MAX_VALUE).forEach(slabs::addAll);
    }
    Slab whole = Slab.joined(slabs);
    double margin = lying.margin();
    List<Mark> marks = whole.marks().stream().map(m -> m.shifted(margin, margin)).toList();
    Paper.Format format = new Paper.Format(lying.width(), whole.height() + 2 * margin, margin);
    return new Page(format, Part.CHANGEOVERS, papers.sheet().set(), true, marks);
  }
}
