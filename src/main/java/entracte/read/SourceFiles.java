package entracte.read;

import entracte.finding.Place;
import entracte.read.Tree.Leaf;
import entracte.read.Tree.Table;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Finds the files that a file names, and reads each as the table that it ought to be. */
final class SourceFiles {
  /** What a file may be; the first that is among its names says which it is. */
  private static final List<String> SORTS = List.of("set", "rig", "patch", "state");

  private final FileLoader loader;
  private final Notebook notes;
  private final Set<Path> asked = new LinkedHashSet<>();

  SourceFiles(Notebook notes) {
    this.loader = new FileLoader(notes);
    this.notes = notes;
  }

  /** The file that {@code from} names. */
  Optional<FileName> named(Leaf written, FileName from) {
    String text = written.text().strip();
    try {
      if (!text.isEmpty()) {
        return Optional.of(from.beside(text));
      }
    } catch (InvalidPathException impossible) {
      // A name with a character that no file system takes: said below.
    }
    notes.error(
        written.place(), Names.quoteFile(text) + " cannot be the name of a file", "Name another.");
    return Optional.empty();
  }

  /** Whether there is such a file; if not, that is noted at {@code place}. */
  boolean isThere(FileName file, Place place) {
    asked.add(file.path());
    return loader.isThere(file, place);
  }

  /** Every file that was asked for so far, in that order. */
  List<Path> asked() {
    return List.copyOf(asked);
  }

  /** The names and values of a file of the given sort. */
  Optional<Table> table(FileName file, Place place, String sort) {
    asked.add(file.path());
    Optional<Tree> tree =
        loader.load(file, place).flatMap(text -> TreeMaker.read(text, beginning(sort), notes));
    if (tree.isEmpty()) {
      return Optional.empty();
    }
    Optional<Table> table = tree.get().table();
    if (table.isEmpty()) {
      notes.error(
          tree.get().place(),
          "a " + sort + " is names with values, not " + tree.get().what(),
          beginning(sort));
      return Optional.empty();
    }
    Optional<String> other = otherSort(table.get(), sort);
    other.ifPresent(
        found ->
            notes.error(
                place,
                Names.quoteFile(file.shown()) + " is a " + found + ", not a " + sort,
                "Name a file that begins with a line " + sort + ": NAME."));
    return other.isPresent() ? Optional.empty() : table;
  }

  private static String beginning(String sort) {
    return "Begin the file with a line " + sort + ": NAME.";
  }

  /** The file's first name says what it is. */
  private static Optional<String> otherSort(Table table, String sort) {
    return table.entries().stream()
        .limit(1)
        .map(Tree.Entry::name)
        .filter(name -> SORTS.contains(name) && !name.equals(sort))
        .findFirst();
  }
}
