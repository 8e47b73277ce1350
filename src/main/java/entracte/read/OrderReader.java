package entracte.read;

import entracte.finding.Place;
import entracte.read.Tree.Entry;
import entracte.read.Tree.Items;
import entracte.read.Tree.Leaf;
import entracte.setlist.OrderRule;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Reads what a set demands of the order of its songs. A song may say {@code first: yes}, {@code
 * last: yes}, {@code place: 3}, {@code before: Other} and {@code after: [Other, Third]}; the set
 * {@code together: [[One, Other], [Third, Fourth]]} and {@code apart:} likewise.
 */
final class OrderReader {
  private static final int MOST_PLACES = 10_000;

  private final Notebook notes;
  private final Values values;
  private final Shapes shapes;
  private final List<OrderRule> rules = new ArrayList<>();

  OrderReader(Notebook notes) {
    this.notes = notes;
    this.values = new Values(notes);
    this.shapes = new Shapes(notes);
  }

  /** The rules read so far. */
  List<OrderRule> rules() {
    return List.copyOf(rules);
  }

  /** Reads the rules that stand in the set itself. */
  void read(Fields set) {
    set.entry("together").ifPresent(e -> groups(e, OrderRule.Together::new));
    set.entry("apart").ifPresent(e -> groups(e, OrderRule.Apart::new));
  }

  /** Reads the rules that stand with a song. */
  void read(Fields fields, String song) {
    fields.leaf("first").filter(values::yes).ifPresent(l -> add(new OrderRule.First(song), l));
    fields.leaf("last").filter(values::yes).ifPresent(l -> add(new OrderRule.Last(song), l));
    Optional<Leaf> place = fields.leaf("place");
    place.ifPresent(
        l ->
            values
                .whole(l, "places", 1, MOST_PLACES)
                .ifPresent(number -> add(new OrderRule.Place(song, number), l)));
    fields.names("before").forEach(l -> add(new OrderRule.Before(song, l.name()), l));
    fields.names("after").forEach(l -> add(new OrderRule.Before(l.name(), song), l));
  }

  private interface Group {
    OrderRule of(List<String> songs);
  }

  /** A list of groups; one group alone needs no list around it. */
  private void groups(Entry entry, Group rule) {
    List<Tree> items = shapes.items(entry).map(Items::list).orElse(List.of());
    if (items.stream().anyMatch(tree -> tree.items().isEmpty())) {
      add(shapes.leaves(entry), rule, entry);
      return;
    }
    for (Tree group : items) {
      add(shapes.leaves(new Entry(entry.key(), group)), rule, entry);
    }
  }

  private void add(List<Leaf> songs, Group rule, Entry entry) {
    if (songs.size() == 1) {
      notes.slip(
          songs.get(0).place(),
          Names.quote(entry.name()) + " names one song only",
          "Write two or more, like [one, another].");
    } else if (songs.size() > 1) {
      add(rule.of(songs.stream().map(Leaf::name).toList()), songs.get(0));
    }
  }

  private void add(OrderRule rule, Leaf at) {
    Place place = at.place();
    rules.add(notes.note(rule, place));
  }
}
