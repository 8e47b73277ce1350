package entracte.read;

import entracte.finding.NearestName;
import entracte.finding.Place;
import entracte.read.Tree.Entry;
import entracte.read.Tree.Leaf;
import entracte.read.Tree.Table;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Hands out the values of a table whose names are fixed, and notes names that are not known. A name
 * that is mistyped is taken as the near one, lest what stands under it be called missing.
 */
final class Fields {
  private final Table table;
  private final Shapes shapes;
  private final Notebook notes;
  private final Map<String, Entry> byName = new HashMap<>();

  Fields(Table table, List<String> known, Notebook notes) {
    this.table = table;
    this.shapes = new Shapes(notes);
    this.notes = notes;
    table.entries().forEach(entry -> byName.put(entry.name(), entry));
    for (Entry entry : table.entries()) {
      if (!known.contains(entry.name())) {
        unknown(entry, known);
      }
    }
  }

  private void unknown(Entry entry, List<String> known) {
    Place place = entry.key().place();
    String message = Names.quote(entry.name()) + " is not known here";
    String advice = NearestName.advice(entry.name(), known);
    Optional<String> near = NearestName.of(entry.name(), known);
    if (near.isPresent() && byName.containsKey(near.get())) {
      notes.error(place, message, advice);
    } else {
      notes.slip(place, message, advice);
      near.ifPresent(name -> byName.put(name, entry));
    }
  }

  Place place() {
    return table.place();
  }

  Optional<Entry> entry(String name) {
    return Optional.ofNullable(byName.get(name));
  }

  boolean has(String name) {
    return byName.containsKey(name);
  }

  /** The one value of that name; empty if there is none or it is something else. */
  Optional<Leaf> leaf(String name) {
    return entry(name).flatMap(shapes::leaf);
  }

  /** The text of that name. */
  Optional<String> text(String name) {
    return leaf(name).map(l -> l.text().strip());
  }

  /** The same; a text without a word is told of and left out. */
  Optional<String> words(String name) {
    Optional<Leaf> leaf = leaf(name);
    leaf.filter(each -> each.text().isBlank())
        .ifPresent(
            each ->
                notes.doubt(
                    each.place(),
                    Names.quote(name) + " says nothing",
                    "Fill it in, or delete it."));
    return leaf.map(each -> each.text().strip()).filter(text -> !text.isEmpty());
  }

  /** The lines of the table of that name; none if it is missing or something else. */
  List<Entry> lines(String name) {
    return entry(name).flatMap(shapes::table).map(Table::entries).orElse(List.of());
  }

  /** What is listed under that name; one value alone is a list of one. */
  List<Leaf> names(String name) {
    return entry(name).map(shapes::leaves).orElse(List.of());
  }

  /** The one value of that name, which {@code owner} cannot do without. */
  Optional<Leaf> needed(String name, Leaf owner) {
    if (!has(name)) {
      notes.error(owner.place(), Names.quote(owner.text()) + " has no " + name, "");
    }
    return leaf(name);
  }

  /** The name of what the file describes, under the file's first key; else the file's own name. */
  String title(String key, FileName file) {
    if (!has(key)) {
      notes.slip(
          place(), "this " + key + " has no name", "Begin the file with a line " + key + ": NAME.");
    }
    Optional<Leaf> written = leaf(key);
    written
        .filter(leaf -> leaf.name().isEmpty())
        .ifPresent(
            leaf -> notes.slip(leaf.place(), "this name is empty", "Give the " + key + " a name."));
    return written.map(Leaf::name).filter(n -> !n.isEmpty()).orElseGet(file::bare);
  }
}
