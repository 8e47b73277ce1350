package entracte.read;

import entracte.finding.Place;
import java.util.List;
import java.util.Optional;

/** What a YAML file says, with every value as the text that was written. */
sealed interface Tree {
  Place place();

  /** What it is, for a message: "a list". */
  String what();

  default Optional<Leaf> leaf() {
    return Optional.empty();
  }

  default Optional<Items> items() {
    return Optional.empty();
  }

  default Optional<Table> table() {
    return Optional.empty();
  }

  default boolean isNothing() {
    return false;
  }

  /**
   * One value.
   *
   * @param text as written; line breaks only where the file has a block of text
   */
  record Leaf(String text, Place place) implements Tree {
    @Override
    public String what() {
      return "one value";
    }

    @Override
    public Optional<Leaf> leaf() {
      return Optional.of(this);
    }

    /** The text as a name: no blanks around it, and single ones within. */
    String name() {
      return Names.tidy(text);
    }
  }

  /** A list. */
  record Items(List<Tree> list, Place place) implements Tree {
    public Items {
      list = List.copyOf(list);
    }

    @Override
    public String what() {
      return "a list";
    }

    @Override
    public Optional<Items> items() {
      return Optional.of(this);
    }
  }

  /** Names with values; no name stands twice. */
  record Table(List<Entry> entries, Place place) implements Tree {
    public Table {
      entries = List.copyOf(entries);
    }

    @Override
    public String what() {
      return "names with values";
    }

    @Override
    public Optional<Table> table() {
      return Optional.of(this);
    }
  }

  /** Where a value is missing: {@code gap:} with nothing behind it. */
  record Nothing(Place place) implements Tree {
    @Override
    public String what() {
      return "nothing";
    }

    @Override
    public boolean isNothing() {
      return true;
    }
  }

  /** One line of a table. */
  record Entry(Leaf key, Tree value) {
    String name() {
      return key.name();
    }
  }
}
