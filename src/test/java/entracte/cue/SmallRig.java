package entracte.cue;

import entracte.rig.Control;
import entracte.rig.Cord;
import entracte.rig.CordStock;
import entracte.rig.Direction;
import entracte.rig.Group;
import entracte.rig.Jack;
import entracte.rig.Jumper;
import entracte.rig.Kind;
import entracte.rig.Knob;
import entracte.rig.Module;
import entracte.rig.Position;
import entracte.rig.Rig;
import entracte.rig.Scale;
import entracte.rig.Socket;
import entracte.rig.Switch;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A rig for tests of words, drawn as it stands:
 *
 * <pre>
 *   keys    osc 1   osc 2   mult 1
 *   lfo 1   mix 1   filter 1
 * </pre>
 */
public final class SmallRig {
  private static final Scale TEN = new Scale(0, 10);

  private static final Kind KEYS = kind("keyboard", own(outs("pitch 1", "pitch 2", "gate")));
  private static final Kind OSCILLATOR =
      kind(
          "oscillator",
          own(
              Stream.of(ins("fm"), outs("saw", "pulse")).flatMap(List::stream).toList(),
              List.of(new Knob("tune", new Scale(-5, 5)), new Knob("width", TEN)),
              List.of(new Switch("octave", List.of("16", "8", "4")))),
          equalJacks("pitch", 2, Direction.IN));
  private static final Kind LFO = kind("slow oscillator", own(outs("out")));
  private static final Kind MIXER =
      kind(
          "mixer",
          own(outs("out"), List.of(), List.of(new Switch("gain", List.of("x1", "x10")))),
          new Group(
              Group.Form.CHANNELS,
              "",
              3,
              ins("in"),
              List.of(new Knob("level", TEN)),
              List.of(),
              Map.of("level", new Position.At(0))));
  private static final Kind FILTER =
      new Kind(
          "filter",
          List.of(
              own(
                  Stream.of(ins("audio", "cutoff cv"), outs("out")).flatMap(List::stream).toList(),
                  List.of(
                      new Knob("cutoff", TEN), new Knob("drive", TEN), new Knob("resonance", TEN)),
                  List.of(new Switch("slope", List.of("steep", "other"))))),
          List.of(new Jumper("other slope", List.of("2-pole", "3-pole"))),
          6,
          Set.of("out"));
  private static final Kind MULTIPLE =
      kind("multiple", own(List.of()), equalJacks("tap", 4, Direction.TAP));

  private final Rig rig;

  SmallRig(CordStock cords) {
    List<Module> top =
        row(0, List.of("keys", "osc 1", "osc 2", "mult 1"), KEYS, OSCILLATOR, OSCILLATOR, MULTIPLE);
    List<Module> low = row(1, List.of("lfo 1", "mix 1", "filter 1"), LFO, MIXER, FILTER);
    List<Kind> kinds = List.of(KEYS, OSCILLATOR, LFO, MIXER, FILTER, MULTIPLE);
    rig = new Rig("Test case", kinds, List.of(top, low), cords, 25, List.of(), Optional.empty());
  }

  Rig rig() {
    return rig;
  }

  Module module(String name) {
    return rig.module(name).orElseThrow();
  }

  /** The jack of that name: {@code mix 1.2.in}. */
  Socket socket(String name) {
    return rig.modules().stream()
        .flatMap(m -> m.sockets().stream())
        .filter(s -> s.toString().equals(name))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no jack " + name));
  }

  /** The knob or switch of that name: {@code mix 1.2.level}. */
  Control control(String name) {
    return rig.modules().stream()
        .flatMap(m -> m.controls().stream())
        .filter(c -> c.toString().equals(name))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no control " + name));
  }

  Cord cord(String source, String sink) {
    return new Cord(socket(source), socket(sink));
  }

  private static List<Module> row(int row, List<String> names, Kind... kinds) {
    return java.util.stream.IntStream.range(0, kinds.length)
        .mapToObj(i -> new Module(names.get(i), kinds[i], row, 3 + 6.0 * i))
        .toList();
  }

  private static Kind kind(String name, Group... groups) {
    return new Kind(name, List.of(groups), List.of(), 6, Set.of());
  }

  private static Group own(List<Jack> jacks) {
    return own(jacks, List.of(), List.of());
  }

  private static Group own(List<Jack> jacks, List<Knob> knobs, List<Switch> switches) {
    return new Group(Group.Form.OWN, "", 1, jacks, knobs, switches, Map.of());
  }

  private static Group equalJacks(String name, int count, Direction direction) {
    List<Jack> jacks = List.of(new Jack(name, direction));
    return new Group(Group.Form.EQUAL_JACKS, name, count, jacks, List.of(), List.of(), Map.of());
  }

  private static List<Jack> ins(String... names) {
    return Stream.of(names).map(name -> new Jack(name, Direction.IN)).toList();
  }

  private static List<Jack> outs(String... names) {
    return Stream.of(names).map(name -> new Jack(name, Direction.OUT)).toList();
  }
}
