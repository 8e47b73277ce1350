package entracte.print;

import entracte.cue.CaseMap;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * Lays one sheet out on pages. Letters are never smaller than what can be read from the given
 * distance; what does not fit goes on further pages. Where a sheet leaves room, its letters grow
 * until they fill the pages that it needs anyway.
 */
final class Layout {
  /** Below this a page holds pictures and words in crumbs. */
  static final double LEAST_LINES = 10;

  /** The foot of a page with the air above it, in lines. */
  private static final double FOOT = 1.5;

  private static final double STEP = 0.1;
  private static final double MOST = 1.5;

  /** The running order lies on the floor. */
  private static final double MOST_FOR_ORDER = 2.5;

  /** A list that needs more pages than this is no list to be seen at once, and is not dense. */
  private static final int MOST_DENSE = 2;

  private final Lettering lettering;
  private final Paper paper;
  private final double capital;
  private final Sheet sheet;
  private final List<Page> pages = new ArrayList<>();

  /**
   * What stands on a sheet.
   *
   * @param steps how many of the pieces come up to and with the last step
   */
  record Sheet(Part part, String title, List<Function<Setter, Slab>> pieces, int steps) {
    Sheet {
      pieces = List.copyOf(pieces);
    }
  }

  /** How a list of songs saves pages: a page that is not there need not be turned. */
  private enum Look {
    ROOMY,
    DENSE,
    /** Dense, and without a title. */
    BARE
  }

  /** What stands above a page, with what tells it from the other pages of its sheet. */
  private record Head(String text, String tail) {
    static final Head NONE = of("");

    static Head of(String text) {
      return new Head(text, "");
    }
  }

  /**
   * Pages in letters of one size.
   *
   * @param withSteps how many of them there are up to the last step: hands turn no page that larger
   *     letters alone would cost them
   */
  private record Dealt(List<List<Slab>> pages, int withSteps, double scale, Look look) {
    int count() {
      return pages.size();
    }

    boolean isWorseThan(Dealt other) {
      return count() > other.count() || withSteps > other.withSteps();
    }
  }

  /**
   * @param capital the least height of a capital letter, in mm
   */
  Layout(Lettering lettering, Paper paper, double capital, Sheet sheet) {
    this.lettering = lettering;
    this.paper = paper;
    this.capital = capital;
    this.sheet = sheet;
  }

  /** The pages of a sheet without a picture. */
  List<Page> plain() {
    written(sheet.pieces());
    return List.copyOf(pages);
  }

  /**
   * The pages of a sheet and its picture: all on one page if it has room; else the steps first, and
   * the picture on a page of its own, with the rest of the sheet below it if that saves a page.
   */
  List<Page> pictured(CaseMap map, List<Place> places) {
    if (!onOnePage(map, places, true)
        && !onOnePage(map, places, false)
        && !restBelow(map, places, paper.lying())
        && !restBelow(map, places, paper.upright())) {
      apart(map, places);
    }
    return List.copyOf(pages);
  }

  private boolean restBelow(CaseMap map, List<Place> places, Paper.Format format) {
    return (format.equals(paper.upright()) || canLie())
        && (restBelow(map, places, true, format) || restBelow(map, places, false, format));
  }

  private void written(List<Function<Setter, Slab>> pieces) {
    Dealt best = deal(pieces, 1, Look.ROOMY);
    for (Look look : looks()) {
      Dealt other = deal(pieces, 1, look);
      boolean saves = other.count() < best.count() && other.count() <= MOST_DENSE;
      best = saves ? other : best;
    }
    double most = sheet.part() == Part.ORDER ? MOST_FOR_ORDER : MOST;
    for (double larger = 1 + STEP; larger <= most; larger += STEP) {
      Dealt grown = deal(pieces, larger, best.look());
      if (grown.isWorseThan(best)) {
        break;
      }
      best = grown;
    }
    for (int i = 0; i < best.count(); i++) {
      Head head = i == 0 ? Head.of(sheet.title()) : new Head(sheet.title(), " (" + (i + 1) + ")");
      Head above = best.look() == Look.BARE ? Head.NONE : head;
      add(paper.upright(), best.pages().get(i), best.scale(), above);
    }
  }

  /** The foot of the running order names the set anyway; the engineer needs the title. */
  private List<Look> looks() {
    return switch (sheet.part()) {
      case ORDER -> List.of(Look.DENSE, Look.BARE);
      case ENGINEER -> List.of(Look.DENSE);
      case SET_UP, CHANGEOVERS, PATCHES, PACKING, COUNT_IN -> List.of();
    };
  }

  private Dealt deal(List<Function<Setter, Slab>> pieces, double scale, Look look) {
    Paper.Format format = paper.upright();
    List<Slab> slabs = slabs(pieces, format, scale, look != Look.ROOMY);
    double room =
        room(format, look == Look.BARE ? Head.NONE : new Head(sheet.title(), " (99)"), scale);
    int steps = Math.min(sheet.steps(), slabs.size());
    int withSteps = Slab.pages(slabs.subList(0, steps), room).size();
    return new Dealt(Slab.pages(slabs, room), withSteps, scale, look);
  }

  private List<Slab> slabs(
      List<Function<Setter, Slab>> pieces, Paper.Format format, double scale, boolean dense) {
    Setter setter = new Setter(lettering, scale * capital, format.innerWidth(), dense);
    return pieces.stream().map(piece -> piece.apply(setter)).toList();
  }

  /** Puts the picture below the whole sheet, as large as both have room. */
  private boolean onOnePage(CaseMap map, List<Place> places, boolean worded) {
    MapPages maps = maps(map, worded, paper.upright());
    List<Slab> best = List.of();
    double scale = 1;
    for (double larger = 1; larger <= MOST; larger += STEP) {
      List<Slab> picture = maps.whole(places, larger);
      List<Slab> slabs = new ArrayList<>(slabs(sheet.pieces(), paper.upright(), larger, false));
      slabs.addAll(picture);
      if (picture.isEmpty()
          || height(slabs) > room(paper.upright(), Head.of(sheet.title()), larger)) {
        break;
      }
      best = slabs;
      scale = larger;
    }
    if (!best.isEmpty()) {
      add(paper.upright(), best, scale, Head.of(sheet.title()));
    }
    return !best.isEmpty();
  }

  /** Puts what is not needed while hands move below the picture. */
  private boolean restBelow(CaseMap map, List<Place> places, boolean worded, Paper.Format format) {
    int first = onTheFirstPages();
    List<Function<Setter, Slab>> rest = sheet.pieces().subList(first, sheet.pieces().size());
    if (first == 0 || rest.isEmpty()) {
      return false;
    }
    MapPages maps = maps(map, worded, format);
    List<Slab> best = List.of();
    double scale = 1;
    for (double larger = 1; larger <= MOST; larger += STEP) {
      double room = room(format, pictureTitle(""), larger);
      List<Slab> slabs = new ArrayList<>(maps.single(places, larger, room));
      slabs.addAll(slabs(rest, format, larger, false));
      if (height(slabs) > room || larger > 1 && maps.whole(places, larger).isEmpty()) {
        break;
      }
      best = slabs;
      scale = larger;
    }
    if (!best.isEmpty()) {
      written(sheet.pieces().subList(0, first));
      add(format, best, scale, pictureTitle(""));
    }
    return !best.isEmpty();
  }

  /** How many pieces have room on the pages that the steps need, with the steps. */
  private int onTheFirstPages() {
    int count = sheet.steps();
    int pages = deal(sheet.pieces().subList(0, count), 1, Look.ROOMY).count();
    while (count < sheet.pieces().size()
        && deal(sheet.pieces().subList(0, count + 1), 1, Look.ROOMY).count() == pages) {
      count++;
    }
    return count;
  }

  /**
   * The drawing on pages of its own; its words must cost no page. What would begin a further page
   * of the sheet stands below it, if its last page has room.
   */
  private void apart(CaseMap map, List<Place> places) {
    Drawing plain = drawing(map, places, false);
    Drawing worded = drawing(map, places, true);
    boolean saysMore =
        worded.pages().size() <= plain.pages().size()
            && worded.tallest() <= room(worded.format(), pictureTitle(" 99"), 1);
    Drawing best = saysMore ? worded : plain;
    int first = onTheFirstPages();
    List<Function<Setter, Slab>> pieces = sheet.pieces();
    List<Slab> rest = slabs(pieces.subList(first, pieces.size()), best.format(), 1, false);
    boolean below =
        first > 0
            && height(best.last()) + height(rest) <= room(best.format(), pictureTitle(" 99"), 1);
    if (!pieces.isEmpty()) {
      written(below ? pieces.subList(0, first) : pieces);
    }
    for (int i = 0; i < best.pages().size(); i++) {
      Head head = pictureTitle(i == 0 ? "" : " " + (i + 1));
      List<Slab> slabs = new ArrayList<>(best.pages().get(i));
      slabs.addAll(below && i == best.pages().size() - 1 ? rest : List.of());
      add(best.format(), slabs, 1, head);
    }
  }

  private record Drawing(Paper.Format format, List<List<Slab>> pages) {
    double tallest() {
      return pages.stream().mapToDouble(Layout::height).max().orElse(0);
    }

    List<Slab> last() {
      return pages.get(pages.size() - 1);
    }
  }

  private Drawing drawing(CaseMap map, List<Place> places, boolean worded) {
    List<List<Slab>> upright = drawn(map, places, worded, paper.upright());
    List<List<Slab>> lying = canLie() ? drawn(map, places, worded, paper.lying()) : List.of();
    boolean lies = !lying.isEmpty() && lying.size() <= upright.size();
    return lies ? new Drawing(paper.lying(), lying) : new Drawing(paper.upright(), upright);
  }

  private Head pictureTitle(String number) {
    return new Head(sheet.title(), " (places" + number + ")");
  }

  private List<List<Slab>> drawn(
      CaseMap map, List<Place> places, boolean worded, Paper.Format format) {
    return maps(map, worded, format).pages(places, room(format, pictureTitle(" 99"), 1));
  }

  private MapPages maps(CaseMap map, boolean worded, Paper.Format format) {
    return new MapPages(lettering, map, worded, capital, format.innerWidth());
  }

  /** Whether a sheet on its side is still high enough for a picture in letters of this size. */
  private boolean canLie() {
    return paper.lying().innerHeight() >= LEAST_LINES * lettering.lineHeight(capital);
  }

  private static double height(List<Slab> slabs) {
    return slabs.stream().mapToDouble(Slab::height).sum();
  }

  /** What a page has between its title and its foot. */
  private double room(Paper.Format format, Head head, double scale) {
    double foot = FOOT * lettering.lineHeight(capital);
    return format.innerHeight() - title(format, head, scale).height() - foot;
  }

  private Slab title(Paper.Format format, Head head, double scale) {
    return head.equals(Head.NONE)
        ? Slab.empty(0)
        : new Setter(lettering, scale * capital, format.innerWidth())
            .title(head.text(), head.tail());
  }

  private void add(Paper.Format format, List<Slab> slabs, double scale, Head head) {
    List<Slab> all = new ArrayList<>(List.of(title(format, head, scale)));
    all.addAll(slabs);
    List<Mark> marks =
        Slab.joined(all).marks().stream()
            .map(mark -> mark.shifted(format.margin(), format.margin()))
            .toList();
    pages.add(new Page(format, sheet.part(), sheet.title(), pages.isEmpty(), marks));
  }
}
