package entracte.read;

import entracte.read.Tree.Leaf;
import entracte.rig.Scale;
import entracte.setlist.Note;
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
      lost(leaf, "not a whole number", "Write figures only, nine at most, like 5.");
    }
    return value;
  }

  /** A whole number within limits. */
  OptionalInt whole(Leaf leaf, String what, int low, int high) {
    OptionalInt value = whole(leaf);
    if (value.isPresent() && (value.getAsInt() < low || value.getAsInt() > high)) {
      lost(leaf, "not a number of " + what, "It lies from " + low + " to " + high + ".");
      return OptionalInt.empty();
    }
    return value;
  }

  OptionalDouble figure(Leaf leaf) {
    OptionalDouble value = Amounts.decimal(leaf.text());
    if (value.isEmpty()) {
      String bare = leaf.text().strip().replaceFirst("\\s*[A-Za-z%]+$", "");
      boolean unit = Amounts.decimal(bare).isPresent();
      lost(leaf, "not a figure", unit ? "Write " + bare + "." : "Write it like 4 or 6.5.");
    }
    return value;
  }

  /** A figure within limits. */
  OptionalDouble figure(Leaf leaf, String what, int low, int high) {
    OptionalDouble value = figure(leaf);
    if (value.isPresent() && (value.getAsDouble() < low || value.getAsDouble() > high)) {
      slip(leaf, "no " + what, "It lies from " + low + " to " + high + ".");
      return OptionalDouble.empty();
    }
    return value;
  }

  /** A note by its name. */
  Optional<Note> note(Leaf leaf) {
    Optional<Note> note = Note.parse(leaf.text());
    if (note.isEmpty()) {
      slip(leaf, "not a note", "Write its letter and its octave, like A4, F#3 or Bb2.");
    }
    return note;
  }

  /** Seconds; a bare figure and other spellings are noted and understood. */
  OptionalDouble seconds(Leaf leaf) {
    String text = leaf.text().strip();
    OptionalDouble value = Amounts.seconds(text);
    if (value.isPresent()) {
      return value;
    }
    if (Amounts.decimal(text).isPresent()) {
      slip(leaf, "a time without its unit", "Write " + withUnit(text) + ".");
      return Amounts.decimal(text);
    }
    String meant = Amounts.respeltTime(text);
    if (Amounts.seconds(meant).isPresent()) {
      slip(leaf, "not a time", "Write " + meant + ".");
      return Amounts.seconds(meant);
    }
    boolean length = Amounts.centimetres(text).isPresent();
    lost(
        leaf, length ? "a length, not a time" : "not a time", "Write it like 40 s, 2:30 or 1 min.");
    return value;
  }

  /** A point may stand where a clock has its colon. */
  private static String withUnit(String text) {
    String clock = text.replace('.', ':');
    boolean both = !clock.equals(text) && Amounts.seconds(clock).isPresent();
    return (both ? clock + ", or " : "") + text + " s";
  }

  /** A time of 0 or more. */
  OptionalDouble stretch(Leaf leaf) {
    OptionalDouble value = seconds(leaf);
    if (value.isPresent() && value.getAsDouble() < 0) {
      slip(leaf, "less than no time", "Write it without the minus.");
      return OptionalDouble.empty();
    }
    return value;
  }

  boolean yes(Leaf leaf) {
    boolean yes = leaf.name().equals("yes");
    if (!yes && !leaf.name().equals("no")) {
      slip(leaf, "neither yes nor no", "Write yes or no.");
    }
    return yes;
  }

  /** The length of a cord in whole centimetres from 1; a bare figure is noted and understood. */
  OptionalInt lengthCm(Leaf leaf) {
    String text = leaf.text().strip();
    Optional<BigDecimal> cm = Amounts.centimetres(text);
    if (cm.isEmpty() && Amounts.decimal(text).isPresent()) {
      slip(leaf, "a length without its unit", "Write " + text + " cm.");
      cm = Amounts.centimetres(text + " cm");
    } else if (cm.isEmpty()) {
      boolean time = Amounts.seconds(text).isPresent();
      lost(leaf, time ? "a time, not a length" : "not a length", "Write it like 30 cm or 0.9 m.");
      return OptionalInt.empty();
    }
    return wholeCm(leaf, cm.orElseThrow());
  }

  private OptionalInt wholeCm(Leaf leaf, BigDecimal cm) {
    try {
      int whole = cm.intValueExact();
      if (whole >= 1) {
        return OptionalInt.of(whole);
      }
    } catch (ArithmeticException broken) {
      // A cord of 30.5 cm, or one around the world: said below.
    }
    lost(leaf, "not the length of a cord", "Cords are measured in whole centimetres, from 1 up.");
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
    slip(leaf, "not a size", "Write it in centimetres, like 6 cm.");
    return OptionalDouble.empty();
  }

  Scale scale(Leaf leaf) {
    Optional<Amounts.Ends> ends = Amounts.ends(leaf.text());
    if (ends.isEmpty()) {
      slip(leaf, "not a scale", "Write its lowest and highest figure like 0..10.");
      return ANY;
    }
    Optional<Scale> scale = ends.get().scale();
    if (scale.isEmpty()) {
      slip(leaf, "a scale that does not rise", "Write the lower figure first.");
    }
    return scale.orElse(ANY);
  }

  private void lost(Leaf leaf, String what, String advice) {
    notes.error(leaf.place(), Names.quote(leaf.text()) + " is " + what, advice);
  }

  /** Notes a mistake after which the value is known, or its absence does no harm. */
  private void slip(Leaf leaf, String what, String advice) {
    notes.slip(leaf.place(), Names.quote(leaf.text()) + " is " + what, advice);
  }
}
