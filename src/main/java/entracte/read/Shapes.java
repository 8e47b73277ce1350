package entracte.read;

import entracte.read.Tree.Entry;
import entracte.read.Tree.Items;
import entracte.read.Tree.Leaf;
import entracte.read.Tree.Table;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Takes a value as one value, a list or a table, and notes if it is something else. */
final class Shapes {
  private final Notebook notes;

  Shapes(Notebook notes) {
    this.notes = notes;
  }

  Optional<Leaf> leaf(Entry entry) {
    return leaf(entry.value(), entry);
  }

  private Optional<Leaf> leaf(Tree value, Entry entry) {
    Optional<Leaf> leaf = value.leaf();
    if (leaf.isEmpty()) {
      wrong(
          entry,
          value,
          "one value",
          value == entry.value()
              ? "Write one value behind the colon."
              : "Write [one, another]: single values, one pair of brackets around all.");
    }
    return leaf;
  }

  Optional<Table> table(Entry entry) {
    Optional<Table> table = entry.value().table();
    if (table.isEmpty()) {
      wrong(
          entry,
          entry.value(),
          "names with values",
          "Write {name: value}, or indented lines of name: value.");
    }
    return table;
  }

  Optional<Items> items(Entry entry) {
    Optional<Items> items = entry.value().items();
    if (items.isEmpty()) {
      wrong(entry, entry.value(), "a list", "Begin each line of it with a dash.");
    }
    return items;
  }

  /** A list of values; one value alone is a list of one. */
  List<Leaf> leaves(Entry entry) {
    if (entry.value().leaf().isPresent()) {
      return List.of(entry.value().leaf().get());
    }
    if (entry.value().items().isEmpty()) {
      wrong(entry, entry.value(), "a list", "Write [one, another].");
      return List.of();
    }
    List<Leaf> leaves = new ArrayList<>();
    for (Tree each : entry.value().items().get().list()) {
      leaf(each, entry).ifPresent(leaves::add);
    }
    return leaves;
  }

  private void wrong(Entry entry, Tree value, String wanted, String advice) {
    boolean whole = value == entry.value();
    String what = (whole ? "" : "an item of ") + Names.quote(entry.name());
    if (value.isNothing()) {
      notes.error(
          whole ? entry.key().place() : value.place(),
          what + " has no value",
          "Give it one, or delete it.");
      return;
    }
    notes.error(value.place(), what + " is " + wanted + ", not " + value.what(), advice);
  }
}
