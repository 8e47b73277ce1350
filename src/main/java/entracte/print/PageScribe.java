package entracte.print;

import entracte.cue.CaseMap;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** Takes sheets down piece by piece, and has each laid out on pages when it is whole. */
final class PageScribe implements Scribe {
  private final Lettering lettering;
  private final Paper paper;
  private final double capital;
  private final String set;
  private final List<Page> pages = new ArrayList<>();
  private final List<Function<Setter, Slab>> pieces = new ArrayList<>();
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

  /** Never alone on a page. */
  @Override
  public void closing(String text, String lacking) {
    if (!pieces.isEmpty()) {
      Function<Setter, Slab> last = pieces.remove(pieces.size() - 1);
      pieces.add(setter -> last.apply(setter).keeping());
    }
    pieces.add(setter -> setter.closing(text, lacking));
  }

  @Override
  public void line(String label) {
    pieces.add(setter -> setter.acrossWith(label));
  }

  @Override
  public void picture(CaseMap map, List<Place> places) {
    pages.addAll(layout().pictured(map, places));
    clear();
  }

  private void flush() {
    if (!pieces.isEmpty()) {
      pages.addAll(layout().plain());
      clear();
    }
  }

  private Layout layout() {
    return new Layout(lettering, paper, capital, new Layout.Sheet(part, title, pieces, steps));
  }

  private void clear() {
    pieces.clear();
    steps = 0;
  }

  /** The foot is no larger than what it stands below. */
  private Page footed(Page page, String number) {
    Paper.Format format = page.format();
    double size = Math.min(capital, page.smallest());
    double baseline =
        format.height() - format.margin() - lettering.lineHeight(size) + lettering.baseline(size);
    double right = lettering.width(number, Face.PLAIN, size);
    double left = format.innerWidth() - right - lettering.em(Face.PLAIN, size);
    List<Mark> marks = new ArrayList<>(page.marks());
    List<String> name = lettering.name(set, Face.PLAIN, size, left, 1);
    marks.add(lettering.words(name.get(0), Face.PLAIN, format.margin(), baseline, size));
    double x = format.width() - format.margin() - right;
    marks.add(lettering.words(number, Face.PLAIN, x, baseline, size));
    return new Page(format, page.part(), page.title(), page.first(), marks);
  }
}
