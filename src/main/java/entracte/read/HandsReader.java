package entracte.read;

import entracte.finding.NearestName;
import entracte.read.Tree.Entry;
import entracte.read.Tree.Leaf;
import entracte.rig.Figures;
import entracte.rig.Hands;
import entracte.rig.Hands.Fit;
import entracte.rig.Hands.Level;
import entracte.rig.Hands.Plugs;
import entracte.rig.Hands.Tuning;
import entracte.rig.Hands.Way;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads what a rig says of the hands; what it leaves out is as usual. */
final class HandsReader {
  static final List<String> KEYS =
      List.of(
          "light",
          "read",
          "tune",
          "tune fifth",
          "tune other",
          "raise",
          "level",
          "plugs",
          "pull",
          "first",
          "module",
          "bag",
          "hang",
          "sweep");
  private static final double MOST_LIGHT = 10;
  private static final double MOST_DEGREES = 3600;
  private static final double MOST_SECONDS = 600;

  private final Notebook notes;
  private final Values values;

  HandsReader(Notebook notes) {
    this.notes = notes;
    this.values = new Values(notes);
  }

  Hands read(Optional<Entry> entry) {
    return entry
        .flatMap(new Shapes(notes)::table)
        .map(table -> read(new Fields(table, KEYS, notes)))
        .orElse(Hands.usual());
  }

  private Hands read(Fields fields) {
    Hands usual = Hands.usual();
    return new Hands(
        figure(fields, "light", MOST_LIGHT).orElse(usual.light()),
        seconds(fields, "read").orElse(usual.readSeconds()),
        tuning(fields),
        new Level(
            seconds(fields, "raise").orElse(usual.level().raiseSeconds()),
            figure(fields, "level", MOST_DEGREES).orElse(usual.level().degrees())),
        new Plugs(
            fields.leaf("plugs").flatMap(this::fit).orElse(usual.plugs().fit()),
            seconds(fields, "pull")),
        new Way(
            size(fields, "first").orElse(usual.way().firstCm()),
            size(fields, "module").orElse(usual.way().moduleCm()),
            size(fields, "bag").orElse(usual.way().bagCm()),
            size(fields, "hang").orElse(usual.way().hangCm())),
        figure(fields, "sweep", MOST_DEGREES).orElse(usual.sweepDegrees()));
  }

  /** What is not said of other intervals follows from the time for a unison. */
  private Tuning tuning(Fields fields) {
    Tuning usual = Tuning.of(seconds(fields, "tune").orElse(Hands.usual().tuning().unison()));
    return new Tuning(
        usual.unison(),
        seconds(fields, "tune fifth").orElse(usual.fifth()),
        seconds(fields, "tune other").orElse(usual.other()));
  }

  private OptionalDouble size(Fields fields, String key) {
    return fields.leaf(key).map(values::sizeCm).orElse(OptionalDouble.empty());
  }

  private OptionalDouble seconds(Fields fields, String key) {
    Optional<Leaf> leaf = fields.leaf(key);
    OptionalDouble read = leaf.map(values::seconds).orElse(OptionalDouble.empty());
    return within(leaf, read, MOST_SECONDS, " s");
  }

  private OptionalDouble figure(Fields fields, String key, double most) {
    Optional<Leaf> leaf = fields.leaf(key);
    OptionalDouble read = leaf.map(values::figure).orElse(OptionalDouble.empty());
    return within(leaf, read, most, "");
  }

  private OptionalDouble within(
      Optional<Leaf> leaf, OptionalDouble read, double most, String unit) {
    if (read.isEmpty() || read.getAsDouble() > 0 && read.getAsDouble() <= most) {
      return read;
    }
    notes.slip(
        leaf.orElseThrow().place(),
        Names.quote(leaf.orElseThrow().text()) + " is out of reach of any hands",
        "It lies above 0 and up to " + Figures.plain(most) + unit + ".");
    return OptionalDouble.empty();
  }

  private Optional<Fit> fit(Leaf leaf) {
    List<String> words = Arrays.stream(Fit.values()).map(HandsReader::word).toList();
    int known = words.indexOf(leaf.name());
    if (known < 0) {
      notes.slip(
          leaf.place(),
          "plugs do not sit " + Names.quote(leaf.text()),
          NearestName.advice(leaf.name(), words));
      return Optional.empty();
    }
    return Optional.of(Fit.values()[known]);
  }

  private static String word(Fit fit) {
    return fit.name().toLowerCase(Locale.ROOT);
  }
}
