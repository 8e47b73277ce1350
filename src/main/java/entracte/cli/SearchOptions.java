package entracte.cli;

import entracte.plan.Aim;
import entracte.plan.Options;
import entracte.plan.Start;
import entracte.plan.Tempo;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** How a plan is looked for; the same options in every command that plans. */
final class SearchOptions {
  private static final double MOST_SECONDS = 86_400;

  @Option(
      names = "--aim",
      paramLabel = "AIM",
      defaultValue = "fewest",
      converter = AimWord.class,
      completionCandidates = AimWord.class,
      description =
          "What to have least of. fewest: moves between songs, then in the set-up; fastest: your"
              + " own seconds for them, as far as they are known; even: seconds beyond the gaps"
              + " that the songs allow, then moves.")
  private Aim aim;

  @Option(
      names = "--seconds",
      paramLabel = "S",
      converter = SearchSeconds.class,
      description =
          "Look for a better plan for S seconds; unless you say, as long as suits the set.")
  private Double seconds;

  @Option(
      names = "--seed",
      paramLabel = "N",
      defaultValue = "1",
      converter = Seed.class,
      description = "Look in another order (1 unless you say).")
  private long seed;

  @Option(
      names = "--from",
      paramLabel = "FILE",
      description = "Start from the rig as this file says it stands, not from a bare one.")
  private Path from;

  @Option(
      names = "--mid-set",
      description = "The audience is waiting: the way to the first song counts, too.")
  private boolean midSet;

  /** The aim, for what is printed about it. */
  Aim aim() {
    return aim;
  }

  double seconds() {
    return seconds == null ? Options.DEFAULT_SECONDS : seconds;
  }

  boolean saysSeconds() {
    return seconds != null;
  }

  long seed() {
    return seed;
  }

  Optional<Path> from() {
    return Optional.ofNullable(from);
  }

  /**
   * Takes out of {@code --from} what reads as a distance and is no file; for a command that has
   * both.
   */
  OptionalDouble takeDistance() {
    OptionalDouble distance =
        from == null || Files.exists(from)
            ? OptionalDouble.empty()
            : PaperOptions.millimetres(from.toString());
    if (distance.isPresent()) {
      from = null;
    }
    return distance;
  }

  boolean midSet() {
    return midSet;
  }

  /** What the planner is given. */
  Options options(Start start, Tempo tempo) {
    Options options =
        Options.defaults().withAim(aim).withTempo(tempo).withStart(start).withSeed(seed);
    return seconds == null ? options : options.withSeconds(seconds);
  }

  /** Reads an aim. */
  static final class AimWord extends OneOf<Aim> {
    AimWord() {
      super(List.of(Aim.values()), aim -> aim.name().toLowerCase(Locale.ROOT));
    }

    @Override
    String refusal(String typed, List<String> words) {
      return "an aim is fewest, fastest or even, not " + typed;
    }
  }

  /** Any whole number. */
  static final class Seed implements ITypeConverter<Long> {
    @Override
    public Long convert(String typed) {
      try {
        return Long.parseLong(typed);
      } catch (NumberFormatException e) {
        throw new TypeConversionException("a seed is a whole number, not " + typed);
      }
    }
  }

  /** A stretch of time that ends. */
  static final class SearchSeconds implements ITypeConverter<Double> {
    @Override
    public Double convert(String typed) {
      double seconds;
      try {
        seconds = Double.parseDouble(typed);
      } catch (NumberFormatException e) {
        throw new TypeConversionException("seconds are a number, not " + typed);
      }
      if (!(seconds > 0 && seconds <= MOST_SECONDS)) {
        throw new TypeConversionException("a search takes more than 0 and up to 86400 seconds");
      }
      return seconds;
    }
  }
}
