package entracte.print;

import entracte.cue.CaseMap;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;

/**
 * Lays out pages. Letters are never smaller than what can be read from the given distance; what
 * does not fit goes on further pages. Where a sheet leaves room, its letters grow until they fill
 * the pages that it needs anyway.
 */
final class PageScribe implements Scribe {
  /** The foot of a page with the air above it, in lines. */
  private static final double FOOT = 1.5;

  /** Below this a page holds pictures and words in crumbs. */
  static final double LEAST_LINES = 10;

  private static final double STEP = 0.1;
  private static final double MOST = 1.5;

  /** The running order lies on the floor. */
  private static final double MOST_FOR_ORDER = 2.5;

  /** Lists of songs: a page that is not there need not be turned. */
  private static final Set<Part> LISTS = EnumSet.of(Part.ORDER, Part.ENGINEER);

  private final Lettering lettering;
  private final Paper paper;
  private final double capital;
  private final String set;
  private final List<Page> pages = new ArrayList<>();
  private final List<Function<Setter, Slab>> pieces = new ArrayList<>();

  /** How many of the pieces come up to and with the last step. */
  private int steps;

  private Part part = Part.ORDER;
  private String title = "";

  PageScribe(Lettering lettering, Paper paper, double capital, String set) {
    this.lettering = lettering;
    this.paper = paper;
    this.capital = capital;
    this.set = set;
  }

  /** All pages, numbered. */
  List<Page> pages() {
    flush();
    List<Page> numbered = new ArrayList<>();
    for (int i = 0; i < pages.size(); i++) {
      numbered.add(footed(pages.get(i), (i + 1) + "/" + pages.size()));
    }
    return numbered;
  }

  @Override
  public void section(Part next, String text) {
    flush();
    part = next;
    title = text;
  }

  @Override
  public void heading(String text) {
    pieces.add(setter -> setter.heading(text));
  }

  @Override
  public void text(String text) {
    pieces.add(setter -> setter.text(text));
  }

  @Override
  public void caution(String text) {
    pieces.add(setter -> setter.caution(text));
  }

  @Override
  public void tick(String number, String text) {
    pieces.add(setter -> setter.tick(number, text));
    steps = pieces.size();
  }

  @Override
  public void labelled(String label, List<String> items) {
    if (!items.isEmpty()) {
      pieces.add(setter -> setter.labelled(label, items));
    }
  }

  @Override
  public void entry(Entry entry) {
    pieces.add(setter -> setter.entry(entry));
  }

  @Override
  public void line(String label) {
    pieces.add(setter -> setter.acrossWith(label));
  }

  @Override
  public void picture(CaseMap map, List<Place> places) {
    if (!together(map, places)) {
      flush();
      List<List<Slab>> upright = drawn(map, places, paper.upright());
      List<List<Slab>> lying = canLie() ? drawn(map, places, paper.lying()) : List.of();
      boolean lies = !lying.isEmpty() && lying.size() <= upright.size();
      Paper.Format format = lies ? paper.lying() : paper.upright();
      List<List<Slab>> drawings = lies ? lying : upright;
      for (int i = 0; i < drawings.size(); i++) {
        add(format, drawings.get(i), false, capital, pictureTitle(i == 0 ? "" : " " + (i + 1)));
      }
    }
  }

  private String pictureTitle(String number) {
    return title + " (places" + number + ")";
  }

  private List<List<Slab>> drawn(CaseMap map, List<Place> places, Paper.Format format) {
    return new MapPages(lettering, map, capital, format.innerWidth())
        .pages(places, room(format, pictureTitle(" 99"), capital));
  }

  /** Whether a sheet on its side is still high enough for a picture in letters of this size. */
  private boolean canLie() {
    return paper.lying().innerHeight() >= LEAST_LINES * lettering.lineHeight(capital);
  }

  /** Puts the picture on the one page of its steps, as large as both have room; if they have. */
  private boolean together(CaseMap map, List<Place> places) {
    Paper.Format format = paper.upright();
    MapPages maps = new MapPages(lettering, map, capital, format.innerWidth());
    List<Slab> best = List.of();
    double scale = 1;
    for (double larger = 1; larger <= MOST; larger += STEP) {
      List<Slab> picture = maps.whole(places, larger);
      List<Slab> slabs = new ArrayList<>(slabs(format, larger, false));
      slabs.addAll(picture);
      if (picture.isEmpty() || Slab.pages(slabs, room(format, larger)).size() > 1) {
        break;
      }
      best = slabs;
      scale = larger;
    }
    if (!best.isEmpty()) {
      add(format, best, true, scale * capital, title);
      clear();
    }
    return !best.isEmpty();
  }

  private void flush() {
    if (pieces.isEmpty()) {
      return;
    }
    Paper.Format format = paper.upright();
    Dealt best = deal(format, 1, false);
    boolean dense = LISTS.contains(part) && deal(format, 1, true).count() < best.count();
    best = dense ? deal(format, 1, true) : best;
    double most = part == Part.ORDER ? MOST_FOR_ORDER : MOST;
    for (double larger = 1 + STEP; larger <= most; larger += STEP) {
      Dealt grown = deal(format, larger, dense);
      if (grown.count() > best.count() || grown.withSteps() > best.withSteps()) {
        break;
      }
      best = grown;
    }
    for (int i = 0; i < best.count(); i++) {
      String head = i == 0 ? title : title + " (" + (i + 1) + ")";
      add(format, best.pages().get(i), i == 0, best.scale() * capital, head);
    }
    clear();
  }

  private void clear() {
    pieces.clear();
    steps = 0;
  }

  /**
   * The pages of a sheet in letters of one size.
   *
   * @param withSteps how many of them there are up to the last step: hands turn no page that larger
   *     letters alone would cost them
   */
  private record Dealt(List<List<Slab>> pages, int withSteps, double scale) {
    int count() {
      return pages.size();
    }
  }

  private Dealt deal(Paper.Format format, double scale, boolean dense) {
    List<Slab> slabs = slabs(format, scale, dense);
    double room = room(format, scale);
    int withSteps = Slab.pages(slabs.subList(0, steps), room).size();
    return new Dealt(Slab.pages(slabs, room), withSteps, scale);
  }

  private List<Slab> slabs(Paper.Format format, double scale, boolean dense) {
    Setter setter = new Setter(lettering, scale * capital, format.innerWidth(), dense);
    return pieces.stream().map(piece -> piece.apply(setter)).toList();
  }

  /** With a title that says which page of its sheet it is. */
  private double room(Paper.Format format, double scale) {
    return room(format, title + " (99)", scale * capital);
  }

  /** What a page has between its title and its foot. */
  private double room(Paper.Format format, String head, double size) {
    double titled = new Setter(lettering, size, format.innerWidth()).title(head).height();
    return format.innerHeight() - titled - FOOT * lettering.lineHeight(capital);
  }

  private void add(Paper.Format format, List<Slab> slabs, boolean first, double size, String head) {
    Slab top = new Setter(lettering, size, format.innerWidth()).title(head);
    List<Slab> all = new ArrayList<>(List.of(top));
    all.addAll(slabs);
    Slab whole = Slab.joined(all);
    List<Mark> marks =
        whole.marks().stream().map(m -> m.shifted(format.margin(), format.margin())).toList();
    pages.add(new Page(format, part, title, first, marks));
  }

  private Page footed(Page page, String number) {
    Paper.Format format = page.format();
    double baseline =
        format.height()
            - format.margin()
            - lettering.lineHeight(capital)
            + lettering.baseline(capital);
    double right = lettering.width(number, Face.PLAIN, capital);
    double left = format.innerWidth() - right - lettering.em(Face.PLAIN, capital);
    List<Mark> marks = new ArrayList<>(page.marks());
    List<String> name = lettering.wrap(set, Face.PLAIN, capital, left, 0);
    marks.add(lettering.words(name.get(0), Face.PLAIN, format.margin(), baseline, capital));
    double x = format.width() - format.margin() - right;
    marks.add(lettering.words(number, Face.PLAIN, x, baseline, capital));
    return new Page(format, page.part(), page.title(), page.first(), marks);
  }
}
