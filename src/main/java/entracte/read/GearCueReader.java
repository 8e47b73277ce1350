package entracte.read;

import entracte.finding.NearestName;
import entracte.read.Tree.Entry;
import entracte.read.Tree.Leaf;
import entracte.read.Tree.Table;
import entracte.setlist.GearCue;
import entracte.setlist.GearCue.Bank;
import entracte.setlist.GearCue.ControlChange;
import entracte.setlist.GearCue.Fine;
import entracte.setlist.GearCue.FineKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads what a song's MIDI gear is sent. */
final class GearCueReader {
  private static final Pattern BANK = Pattern.compile("(\\d{1,9}) ?/ ?(\\d{1,9})");
  private static final Pattern BY_NUMBER = Pattern.compile("cc ?(\\d{1,9})");

  private static final Pattern PARAMETER = Pattern.compile("(n?rpn) ?(\\d{1,9})");
  private static final String FINE = "fine ";

  private final Notebook notes;
  private final Shapes shapes;
  private final Values values;

  GearCueReader(Notebook notes) {
    this.notes = notes;
    this.shapes = new Shapes(notes);
    this.values = new Values(notes);
  }

  List<GearCue> read(List<Entry> gear) {
    List<GearCue> cues = new ArrayList<>();
    for (Entry entry : gear) {
      shapes.table(entry).ifPresent(table -> cues.add(cue(entry.key(), table)));
    }
    return cues;
  }

  private GearCue cue(Leaf gear, Table table) {
    Optional<Integer> program = Optional.empty();
    Optional<Bank> bank = Optional.empty();
    List<ControlChange> controls = new ArrayList<>();
    List<Fine> fine = new ArrayList<>();
    for (Entry line : table.entries()) {
      switch (line.name()) {
        case "program" -> program = shapes.leaf(line).flatMap(this::whole);
        case "bank" -> bank = bank(line);
        default -> {
          if (fineKind(line.name()).isPresent()) {
            fine(line).ifPresent(fine::add);
          } else {
            control(line).ifPresent(controls::add);
          }
        }
      }
    }
    GearCue cue = new GearCue(gear.name(), program, bank, controls, fine);
    table.entries().stream()
        .filter(line -> line.name().equals("program"))
        .forEach(line -> notes.notePart(cue, "program", line.value().place()));
    return notes.note(cue, gear.place());
  }

  private Optional<Integer> whole(Leaf leaf) {
    OptionalInt value = values.whole(leaf);
    return value.isPresent() ? Optional.of(value.getAsInt()) : Optional.empty();
  }

  private Optional<Bank> bank(Entry line) {
    if (line.value().table().isPresent()) {
      Fields parts = new Fields(line.value().table().get(), List.of("high", "low"), notes);
      Optional<Integer> high = parts.needed("high", line.key()).flatMap(this::whole);
      Optional<Integer> low = parts.needed("low", line.key()).flatMap(this::whole);
      return high.flatMap(h -> low.map(l -> new Bank(h, l)))
          .map(b -> notes.note(b, line.key().place()));
    }
    Optional<Leaf> leaf = shapes.leaf(line);
    Matcher bytes = BANK.matcher(leaf.map(Leaf::name).orElse(""));
    if (bytes.matches()) {
      Bank bank = new Bank(Integer.parseInt(bytes.group(1)), Integer.parseInt(bytes.group(2)));
      return Optional.of(notes.note(bank, line.value().place()));
    }
    leaf.ifPresent(
        l ->
            notes.error(
                l.place(),
                Names.quote(l.text()) + " is not a bank",
                "Write its high and its low byte: 0/2."));
    return Optional.empty();
  }

  private Optional<ControlChange> control(Entry line) {
    OptionalInt controller = controller(line.name());
    if (controller.isEmpty()) {
      List<String> known = new ArrayList<>(List.of("program", "bank"));
      known.addAll(Controllers.names());
      notes.error(
          line.key().place(),
          "there is no controller " + Names.quote(line.name()),
          NearestName.of(line.name(), known)
              .map(near -> "Did you mean \"" + near + "\"?")
              .orElse("Any controller can be written by its number: cc 74."));
      return Optional.empty();
    }
    return shapes
        .leaf(line)
        .flatMap(this::whole)
        .map(value -> new ControlChange(controller.getAsInt(), value, line.name()))
        .map(change -> noted(change, line));
  }

  /** {@code rpn 0}, {@code nrpn 130}, {@code fine volume}, {@code fine cc 7}. */
  private static Optional<FineKind> fineKind(String name) {
    Matcher parameter = PARAMETER.matcher(name);
    if (parameter.matches()) {
      return Optional.of(parameter.group(1).equals("rpn") ? FineKind.REGISTERED : FineKind.OPEN);
    }
    return name.startsWith(FINE) && controller(name.substring(FINE.length())).isPresent()
        ? Optional.of(FineKind.CONTROLLER)
        : Optional.empty();
  }

  private Optional<Fine> fine(Entry line) {
    FineKind kind = fineKind(line.name()).orElseThrow();
    Matcher parameter = PARAMETER.matcher(line.name());
    int number =
        parameter.matches()
            ? Integer.parseInt(parameter.group(2))
            : controller(line.name().substring(FINE.length())).orElseThrow();
    return shapes
        .leaf(line)
        .flatMap(this::whole)
        .map(value -> noted(new Fine(kind, number, value, line.name()), line));
  }

  private <T> T noted(T piece, Entry line) {
    notes.notePart(piece, "value", line.value().place());
    return notes.note(piece, line.key().place());
  }

  private static OptionalInt controller(String name) {
    Matcher number = BY_NUMBER.matcher(name);
    return number.matches()
        ? OptionalInt.of(Integer.parseInt(number.group(1)))
        : Controllers.number(name);
  }
}
