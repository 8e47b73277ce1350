package entracte.cli;

import entracte.finding.NearestName;
import entracte.setlist.SetList;
import entracte.setlist.Song;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/** The song of a set that somebody typed. */
final class SongNamed {
  private SongNamed() {}

  /**
   * Its place in the set, from 0. A name goes before a number: a song may be called 7.
   *
   * @param typed its name, in whatever capitals, or its number from 1
   */
  static int in(SetList set, String typed) {
    List<String> names = set.songs().stream().map(Song::name).toList();
    return first(names, song -> names.get(song).equals(typed))
        .or(() -> first(names, song -> names.get(song).equalsIgnoreCase(typed)))
        .or(() -> first(names, song -> Integer.toString(song + 1).equals(typed)))
        .orElseThrow(
            () ->
                Stop.wrongUsage(
                    "the set has no song " + typed,
                    NearestName.advice(typed, names)
                        + " Its number will do, 1 to "
                        + names.size()
                        + "."));
  }

  private static Optional<Integer> first(List<String> names, Predicate<Integer> fits) {
    return IntStream.range(0, names.size()).boxed().filter(fits).findFirst();
  }
}
