package entracte.cli;

import entracte.finding.NearestName;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/**
 * What an option takes that wants one of some words, in whatever capitals; the tab key is told of
 * all.
 *
 * @param <T> what the words stand for
 */
abstract class OneOf<T> implements ITypeConverter<T>, Iterable<String> {
  private final List<T> things;
  private final List<String> words;

  OneOf(List<T> things, Function<T, String> word) {
    this.things = things;
    words = things.stream().map(word).toList();
  }

  @Override
  public T convert(String typed) {
    int place = words.indexOf(typed.strip().toLowerCase(Locale.ROOT));
    if (place < 0) {
      throw new TypeConversionException(refusal(typed, words));
    }
    return things.get(place);
  }

  /** What to say of a word that is none of them. */
  abstract String refusal(String typed, List<String> words);

  /** {@code ; did you mean bash?} or nothing. */
  static String near(String typed, List<String> words) {
    return NearestName.of(typed, words).map(name -> "; did you mean " + name + "?").orElse("");
  }

  @Override
  public Iterator<String> iterator() {
    return words.iterator();
  }
}
