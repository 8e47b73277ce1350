package entracte.cli;

import entracte.print.Legibility;
import entracte.print.Paper;
import entracte.print.Part;
import entracte.print.Sheets;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** What is printed, on what, and to be read from where. */
final class PaperOptions {
  private static final Pattern DISTANCE =
      Pattern.compile("(\\d{1,6}(?:\\.\\d{1,6})?)\\s*(mm|cm|m)");

  @Option(
      names = "--pages",
      paramLabel = "PAGES",
      split = ",",
      converter = PartWord.class,
      completionCandidates = PartWord.class,
      description =
          "Which papers, with commas between: order, set-up, changeovers, patches, packing,"
              + " count-in, engineer; all unless you say.")
  private List<Part> parts = new ArrayList<>(Part.all());

  @Option(
      names = "--paper",
      paramLabel = "PAPER",
      defaultValue = "a4",
      converter = PaperWord.class,
      completionCandidates = PaperWord.class,
      description = "a4, letter, a5, or stand: one narrow column for a music stand.")
  private Paper paper;

  @Option(
      names = "--distance",
      paramLabel = "D",
      converter = Distance.class,
      description = {
        "How far the eye is from the paper (0.7m unless you say). Letters are as tall as that"
            + " needs; --from 1.6m means the same."
      })
  private Double distanceMm;

  @Option(names = "--dim", description = "For dim light: letters half as tall again.")
  private boolean dim;

  @Option(
      names = "--song",
      paramLabel = "N",
      description = "Draw the way to song N only (.svg, .png).")
  private Integer song;

  /**
   * @param from the distance that was given as --from
   */
  Sheets.Options options(OptionalDouble from) {
    double usual = from.orElse(Legibility.USUAL_DISTANCE_MM);
    double distance = distanceMm == null ? usual : distanceMm;
    if (distance < Legibility.LEAST_DISTANCE_MM) {
      throw Stop.wrongUsage(
          "no eye sees sharply at less than 25cm, so no paper is made for it",
          "Give --distance from the eye to the paper where you will stand: 70cm, 1.6m.");
    }
    Legibility legibility = new Legibility(distance, dim);
    Set<Part> chosen = EnumSet.noneOf(Part.class);
    chosen.addAll(parts);
    return new Sheets.Options(chosen, paper, legibility);
  }

  OptionalInt song() {
    return song == null ? OptionalInt.empty() : OptionalInt.of(song);
  }

  /** Reads {@code 1.6m}, {@code 1.6 m}, {@code 70 cm}; empty for anything else. */
  static OptionalDouble millimetres(String typed) {
    Matcher written = DISTANCE.matcher(typed.strip().toLowerCase(Locale.ROOT));
    if (!written.matches()) {
      return OptionalDouble.empty();
    }
    double unit =
        switch (written.group(2)) {
          case "m" -> 1000;
          case "cm" -> 10;
          default -> 1;
        };
    double mm = Double.parseDouble(written.group(1)) * unit;
    return mm > 0 ? OptionalDouble.of(mm) : OptionalDouble.empty();
  }

  /** A way that has a unit. */
  static final class Distance implements ITypeConverter<Double> {
    @Override
    public Double convert(String typed) {
      return millimetres(typed)
          .orElseThrow(
              () -> new TypeConversionException("a distance is like 1.6m or 70cm, not " + typed));
    }
  }

  /** One of the papers. */
  static final class PartWord extends OneOf<Part> {
    PartWord() {
      super(List.of(Part.values()), Part::word);
    }

    @Override
    String refusal(String typed, List<String> words) {
      return unknown("pages are", typed, words);
    }
  }

  /** A size of paper. */
  static final class PaperWord extends OneOf<Paper> {
    PaperWord() {
      super(List.of(Paper.values()), Paper::word);
    }

    @Override
    String refusal(String typed, List<String> words) {
      return unknown("paper is", typed, words);
    }
  }

  private static String unknown(String what, String typed, List<String> words) {
    String all = String.join(", ", words);
    return what + " one of " + all + ", not " + typed + OneOf.near(typed, words);
  }
}
