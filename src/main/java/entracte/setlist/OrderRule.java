package entracte.setlist;

import java.util.List;

/**
 * What the musician demands of the order of songs. Songs are called by their names. Encores need no
 * rule: they always come after all others.
 */
public sealed interface OrderRule {
  /** The songs that the rule is about, as written. */
  List<String> songs();

  /** The rule as a clause of a sentence. */
  String says();

  /** Tells the taker what the rule is. */
  void tell(Taker taker);

  /** Takes rules, each by its own method. */
  interface Taker {
    void first(String song);

    void last(String song);

    void place(String song, int place);

    void before(String song, String later);

    void together(List<String> songs);

    void apart(List<String> songs);
  }

  /** First of the songs, or, if it is an encore, of the encores. */
  record First(String song) implements OrderRule {
    @Override
    public List<String> songs() {
      return List.of(song);
    }

    @Override
    public String says() {
      return quote(song) + " is first";
    }

    @Override
    public void tell(Taker taker) {
      taker.first(song);
    }
  }

  /** Last of the songs before the encores, or, if it is an encore, of all. */
  record Last(String song) implements OrderRule {
    @Override
    public List<String> songs() {
      return List.of(song);
    }

    @Override
    public String says() {
      return quote(song) + " is last";
    }

    @Override
    public void tell(Taker taker) {
      taker.last(song);
    }
  }

  /**
   * At one place.
   *
   * @param place from 1
   */
  record Place(String song, int place) implements OrderRule {
    @Override
    public List<String> songs() {
      return List.of(song);
    }

    @Override
    public String says() {
      return quote(song) + " has place " + place;
    }

    @Override
    public void tell(Taker taker) {
      taker.place(song, place);
    }
  }

  /** One song somewhere before another. */
  record Before(String song, String later) implements OrderRule {
    @Override
    public List<String> songs() {
      return List.of(song, later);
    }

    @Override
    public String says() {
      return quote(song) + " comes before " + quote(later);
    }

    @Override
    public void tell(Taker taker) {
      taker.before(song, later);
    }
  }

  /** Songs with no other between them, in whatever order. */
  record Together(List<String> songs) implements OrderRule {
    public Together {
      songs = List.copyOf(songs);
    }

    @Override
    public String says() {
      return list(songs) + " stay together";
    }

    @Override
    public void tell(Taker taker) {
      taker.together(songs);
    }
  }

  /** Songs of which no two follow one another. */
  record Apart(List<String> songs) implements OrderRule {
    public Apart {
      songs = List.copyOf(songs);
    }

    @Override
    public String says() {
      return list(songs) + " stay apart";
    }

    @Override
    public void tell(Taker taker) {
      taker.apart(songs);
    }
  }

  private static String quote(String name) {
    return '"' + name + '"';
  }

  private static String list(List<String> names) {
    int last = names.size() - 1;
    List<String> quoted = names.stream().map(OrderRule::quote).toList();
    return last < 1
        ? String.join("", quoted)
        : String.join(", ", quoted.subList(0, last)) + " and " + quoted.get(last);
  }
}
