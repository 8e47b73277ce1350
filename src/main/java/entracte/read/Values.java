package entracte.read;

import entracte.read.Tree.Leaf;
import entracte.rig.Scale;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** Gives a raw value its type, and notes if it has another. */
final class Values {
  /** Stands in for a scale that cannot be read, so that no value is said to lie off it. */
  private static final Scale ANY = new Scale(-1e9, 1e9);

  private final Notebook notes;

  Values(Notebook notes) {
    this.notes = notes;
  }

  OptionalInt whole(Leaf leaf) {
    OptionalInt value = Amounts.whole(leaf.text());
    if (value.isEmpty()) {
      wrong(leaf, "not a whole number", "Write figures only, like 5.");
    }
    return value;
  }

  /** A whole number within limits. */
  OptionalInt whole(Leaf leaf, String what, int low, int high) {
    OptionalInt value = whole(leaf);
    if (value.isPresent() && (value.getAsInt() < low || value.getAsInt() > high)) {
      notes.error(
          leaf.place(),
          Names.quote(leaf.text()) + " is not a number of " + what,
          "It lies from " + low + " to " + high + ".");
      return OptionalInt.empty();
    }
    return value;
  }

  OptionalDouble figure(Leaf leaf) {
    OptionalDouble value = Amounts.decimal(leaf.text());
    if (value.isEmpty()) {
      wrong(leaf, "not a figure", "Write it like 4 or 6.5.");
    }
    return value;
  }

  OptionalDouble seconds(Leaf leaf) {
    OptionalDouble value = Amounts.seconds(leaf.text());
    if (value.isPresent()) {
      return value;
    }
    String text = leaf.text().strip();
    String meant = Amounts.respeltTime(text);
    boolean known = Amounts.seconds(meant).isPresent();
    String advice = known ? "Write " + meant + "." : "Write it like 40 s, 2:30 or 1 min.";
    if (Amounts.decimal(text).isPresent()) {
      wrong(leaf, "a time without its unit", "Write " + text + " s.");
    } else if (Amounts.centimetres(text).isPresent()) {
      wrong(leaf, "a length, not a time", advice);
    } else {
      wrong(leaf, "not a time", advice);
    }
    return value;
  }

  /** Whole centimetres from 1. */
  OptionalInt lengthCm(Leaf leaf) {
    Optional<BigDecimal> cm = Amounts.centimetres(leaf.text());
    if (cm.isEmpty()) {
      String text = leaf.text().strip();
      String advice = "Write it like 30 cm or 0.9 m.";
      if (Amounts.decimal(text).isPresent()) {
        wrong(leaf, "a length without its unit", "Write " + text + " cm.");
      } else if (Amounts.seconds(text).isPresent()) {
        wrong(leaf, "a time, not a length", advice);
      } else {
        wrong(leaf, "not a length", advice);
      }
      return OptionalInt.empty();
    }
    try {
      int whole = cm.get().intValueExact();
      if (whole >= 1) {
        return OptionalInt.of(whole);
      }
    } catch (ArithmeticException broken) {
      // A cord of 30.5 cm, or one around the world: said below.
    }
    wrong(leaf, "not the length of a cord", "Cords are measured in whole centimetres, from 1 up.");
    return OptionalInt.empty();
  }

  /** A breadth or height in cm, with or without the unit. */
  OptionalDouble sizeCm(Leaf leaf) {
    OptionalDouble bare = Amounts.decimal(leaf.text());
    OptionalDouble cm =
        bare.isPresent()
            ? bare
            : Amounts.centimetres(leaf.text())
                .map(c -> OptionalDouble.of(c.doubleValue()))
                .orElse(OptionalDouble.empty());
    if (cm.isPresent() && cm.getAsDouble() > 0) {
      return cm;
    }
    wrong(leaf, "not a size", "Write it in centimetres, like 6 cm.");
    return OptionalDouble.empty();
  }

  Scale scale(Leaf leaf) {
    Optional<Amounts.Ends> ends = Amounts.ends(leaf.text());
    if (ends.isEmpty()) {
      wrong(leaf, "not a scale", "Write its lowest and highest figure like 0..10.");
      return ANY;
    }
    Optional<Scale> scale = ends.get().scale();
    if (scale.isEmpty()) {
      wrong(leaf, "a scale that does not rise", "Write the lower figure first.");
    }
    return scale.orElse(ANY);
  }

  private void wrong(Leaf leaf, String what, String advice) {
    notes.error(leaf.place(), Names.quote(leaf.text()) + " is " + what, advice);
  }
}
