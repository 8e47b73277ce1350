package entracte.rig;

import java.util.OptionalDouble;

/**
 * What is assumed of the player's hands before anything was rehearsed. Timed runs replace it bit by
 * bit.
 *
 * @param light what dim light and nerves make of every time but tuning: 1 in a bright room, alone
 * @param readSeconds to read a line and know what it wants
 * @param tuning to tune one module
 * @param level how the main level is turned
 * @param plugs how they come out and go in
 * @param way where things lie that the rig does not tell
 * @param sweepDegrees the angle a knob turns from one end of its scale to the other
 */
public record Hands(
    double light,
    double readSeconds,
    Tuning tuning,
    Level level,
    Plugs plugs,
    Way way,
    double sweepDegrees) {
  /** How tight a plug sits. */
  public enum Fit {
    LOOSE,
    CLOSE,
    TIGHT
  }

  /**
   * Plugs in their jacks.
   *
   * @param fit how tight they sit
   * @param pullSeconds to get one out that the hand has hold of; empty for as long as the fit takes
   */
  public record Plugs(Fit fit, OptionalDouble pullSeconds) {
    public Plugs {
      pullSeconds.ifPresent(Hands::aboveNothing);
    }
  }

  /**
   * The knob of the main level.
   *
   * @param raiseSeconds to bring the sound back slowly, beside the turn of the hand
   * @param degrees how far it is turned, down as well as up
   */
  public record Level(double raiseSeconds, double degrees) {
    public Level {
      aboveNothing(raiseSeconds);
      aboveNothing(degrees);
    }
  }

  /**
   * Ways of the hand.
   *
   * @param firstCm to the first place of a changeover, and to any other from nobody knows where
   * @param moduleCm between two places of one module
   * @param bagCm from the case to the bag of cords
   * @param hangCm from a jack to the loose plug that hangs below it
   */
  public record Way(double firstCm, double moduleCm, double bagCm, double hangCm) {
    public Way {
      aboveNothing(firstCm);
      aboveNothing(moduleCm);
      aboveNothing(bagCm);
      aboveNothing(hangCm);
    }
  }

  /**
   * Seconds to tune one module, by the interval to what it is tuned to.
   *
   * @param unison in unison or octaves
   * @param fifth a fifth or a fourth, in whatever octave
   * @param other any other interval, which must be counted or read off a tuner
   */
  public record Tuning(double unison, double fifth, double other) {
    private static final int OCTAVE = 12;
    private static final double FIFTH_PART = 1.25;
    private static final double OTHER_PART = 1.5;

    public Tuning {
      aboveNothing(unison);
      aboveNothing(fifth);
      aboveNothing(other);
    }

    /** The usual ones of someone who takes so long in unison. Estimates. */
    public static Tuning of(double unison) {
      return new Tuning(unison, FIFTH_PART * unison, OTHER_PART * unison);
    }

    /** The seconds for an interval of so many semitones, up or down. */
    public double seconds(double semitones) {
      return switch ((int) Math.floorMod(Math.round(semitones), (long) OCTAVE)) {
        case 0 -> unison;
        case 5, 7 -> fifth;
        default -> other;
      };
    }
  }

  /** Estimates; no source was found that measured players. */
  private static final Hands USUAL =
      new Hands(
          1.25,
          1.2,
          Tuning.of(8),
          new Level(1, 180),
          new Plugs(Fit.CLOSE, OptionalDouble.empty()),
          new Way(30, 5, 60, 20),
          300);

  public Hands {
    aboveNothing(light);
    aboveNothing(readSeconds);
    aboveNothing(sweepDegrees);
  }

  /** Of whom nothing is known. */
  public static Hands usual() {
    return USUAL;
  }

  private static void aboveNothing(double each) {
    if (!(each > 0 && each < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException("hands need something above nothing: " + each);
    }
  }
}
