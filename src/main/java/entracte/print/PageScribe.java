package entracte.print;

import entracte.cue.CaseMap;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * Lays out pages. Letters are never smaller than what can be read from the given distance; what
 * does not fit goes on further pages. Where a sheet leaves room, its letters grow until they fill
 * the pages that it needs anyway.
 */
final class PageScribe implements Scribe {
  /** The foot of a page with the air above it, in lines. */
  private static final double FOOT = 1.5;

  private static final double STEP = 0.1;
  private static final double MOST = 1.5;

  /** The running order lies on the floor. */
  private static final double MOST_FOR_ORDER = 2.5;

  private final Lettering lettering;
  private final Paper paper;
  private final double capital;
  private final String set;
  private final List<Page> pages = new ArrayList<>();
  private final List<Function<Setter, Slab>> pieces = new ArrayList<>();
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
      Paper.Format lying = paper.lying();
      new MapPages(lettering, map, capital, lying.innerWidth())
          .pages(places, room(lying, title, capital))
          .forEach(slabs -> add(lying, slabs, false, capital, title));
    }
  }

  /** Puts the picture on the one page of its steps, as large as both have room; if they have. */
  private boolean together(CaseMap map, List<Place> places) {
    Paper.Format format = paper.upright();
    MapPages maps = new MapPages(lettering, map, capital, format.innerWidth());
    List<Slab> best = List.of();
    double scale = 1;
    for (double larger = 1; larger <= MOST; larger += STEP) {
      List<Slab> picture = maps.whole(places, larger);
      List<Slab> slabs = new ArrayList<>(slabs(format, larger));
      slabs.addAll(picture);
      if (picture.isEmpty() || Slab.pages(slabs, room(format, larger)).size() > 1) {
        break;
      }
      best = slabs;
      scale = larger;
    }
    if (!best.isEmpty()) {
      add(format, best, true, scale * capital, title);
      pieces.clear();
    }
    return !best.isEmpty();
  }

  private void flush() {
    if (pieces.isEmpty()) {
      return;
    }
    Paper.Format format = paper.upright();
    List<List<Slab>> dealt = deal(format, 1);
    double scale = 1;
    double most = part == Part.ORDER ? MOST_FOR_ORDER : MOST;
    for (double larger = 1 + STEP; larger <= most; larger += STEP) {
      List<List<Slab>> grown = deal(format, larger);
      if (grown.size() > dealt.size()) {
        break;
      }
      dealt = grown;
      scale = larger;
    }
    for (int i = 0; i < dealt.size(); i++) {
      String head = i == 0 ? title : title + " (" + (i + 1) + ")";
      add(format, dealt.get(i), i == 0, scale * capital, head);
    }
    pieces.clear();
  }

  private List<List<Slab>> deal(Paper.Format format, double scale) {
    return Slab.pages(slabs(format, scale), room(format, scale));
  }

  private List<Slab> slabs(Paper.Format format, double scale) {
    Setter setter = new Setter(lettering, scale * capital, format.innerWidth());
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
