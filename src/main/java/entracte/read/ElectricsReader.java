package entracte.read;

import entracte.finding.NearestName;
import entracte.read.Tree.Entry;
import entracte.read.Tree.Leaf;
import entracte.rig.Electrics;
import entracte.rig.Signal;
import entracte.rig.Taper;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads what a kind says of the voltages that pass it; all of it may be left out. */
final class ElectricsReader {
  static final List<String> KEYS =
      List.of(
          "signals",
          "ohms in",
          "ohms out",
          "buffered",
          "attenuates",
          "volts per octave",
          "played by");
  static final List<String> SIGNALS = Arrays.stream(Signal.values()).map(Signal::word).toList();

  private static final List<String> TAPERS =
      Arrays.stream(Taper.values()).map(Taper::word).toList();
  private static final Pattern OHMS =
      Pattern.compile("(\\d{1,6}(?:\\.\\d{1,3})?) ?([kM]?)(?: ?ohms?)?");
  private static final Pattern VOLTS = Pattern.compile("\\d(?:\\.\\d{1,4})?");

  private final Notebook notes;
  private final Shapes shapes;
  private final Values values;

  ElectricsReader(Notebook notes) {
    this.notes = notes;
    this.shapes = new Shapes(notes);
    this.values = new Values(notes);
  }

  Electrics read(Fields fields) {
    return new Electrics(
        signals(fields),
        ohms(fields, "ohms in"),
        ohms(fields, "ohms out"),
        fields.leaf("buffered").map(values::yes).orElse(false),
        attenuates(fields),
        volts(fields),
        playedBy(fields));
  }

  private Map<String, Signal> signals(Fields fields) {
    Map<String, Signal> signals = new LinkedHashMap<>();
    fields
        .entry("signals")
        .flatMap(shapes::table)
        .map(table -> new Fields(table, SIGNALS, notes))
        .ifPresent(
            named -> {
              for (Signal signal : Signal.values()) {
                named.names(signal.word()).forEach(jack -> signals.put(jack.name(), signal));
              }
            });
    return signals;
  }

  private OptionalDouble ohms(Fields fields, String key) {
    Optional<Leaf> leaf = fields.leaf(key);
    if (leaf.isEmpty()) {
      return OptionalDouble.empty();
    }
    Matcher written = OHMS.matcher(leaf.get().text().strip());
    double ohms = written.matches() ? Double.parseDouble(written.group(1)) : 0;
    if (ohms <= 0) {
      slip(leaf.get(), "no resistance in ohms", "Write it like 1k or 100k.");
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(
        ohms * (written.group(2).equals("k") ? 1e3 : written.group(2).equals("M") ? 1e6 : 1));
  }

  private OptionalDouble volts(Fields fields) {
    Optional<Leaf> leaf = fields.leaf("volts per octave");
    if (leaf.isEmpty()) {
      return OptionalDouble.empty();
    }
    String text = leaf.get().text().strip();
    if (!VOLTS.matcher(text).matches() || Double.parseDouble(text) == 0) {
      slip(leaf.get(), "no voltage of an octave", "Write it like 1 or 1.2.");
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(Double.parseDouble(text));
  }

  private Map<String, Taper> attenuates(Fields fields) {
    Map<String, Taper> tapers = new LinkedHashMap<>();
    for (Entry line : fields.lines("attenuates")) {
      shapes.leaf(line).ifPresent(leaf -> tapers.put(line.name(), taper(leaf)));
    }
    return tapers;
  }

  private Taper taper(Leaf leaf) {
    int known = TAPERS.indexOf(leaf.name());
    if (known < 0) {
      slip(leaf, "no taper of a knob", NearestName.advice(leaf.name(), TAPERS));
      return Taper.UNKNOWN;
    }
    return Taper.values()[known];
  }

  private Map<String, List<String>> playedBy(Fields fields) {
    Map<String, List<String>> players = new LinkedHashMap<>();
    for (Entry line : fields.lines("played by")) {
      players.put(line.name(), shapes.leaves(line).stream().map(Leaf::name).toList());
    }
    return players;
  }

  private void slip(Leaf leaf, String what, String advice) {
    notes.slip(leaf.place(), Names.quote(leaf.text()) + " is " + what, advice);
  }
}
