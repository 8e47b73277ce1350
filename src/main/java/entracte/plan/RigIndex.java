package entracte.plan;

import entracte.rig.Control;
import entracte.rig.Direction;
import entracte.rig.Group;
import entracte.rig.Kind;
import entracte.rig.Module;
import entracte.rig.Position;
import entracte.rig.Rig;
import entracte.rig.Socket;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The rig as numbers, so that the search works on arrays: every module, strip (one channel, one of
 * several equal jacks, or what a module has once), jack and control has an index from 0.
 *
 * <p>A module's strips follow each other in the order of its groups, a strip's jacks in the order
 * of the panel, and its knobs come before its switches. A switch's position is its index in the
 * list of positions, so that knobs and switches are handled alike.
 */
final class RigIndex {
  final Rig rig;
  final List<Module> modules;
  final List<Kind> kinds = new ArrayList<>();
  final int[] kindOfModule;

  /** The first strip of each group, by module and group. */
  final int[][] firstStrip;

  final List<Socket> sockets = new ArrayList<>();
  final List<Control> controls = new ArrayList<>();
  final int[] moduleOfStrip;
  final int[] numberOfStrip;
  final int[] firstSocketOfStrip;
  final int[] firstControlOfStrip;
  final int[] stripOfSocket;
  final int[] moduleOfSocket;
  final boolean[] tapSocket;
  final boolean[] outSocket;

  /** The controls that shut a strip, and where; empty if a cord may never wait in it unheard. */
  final int[][] closedControls;

  final double[][] closedValues;
  private final Map<Socket, Integer> socketIndex = new HashMap<>();
  private final Map<Control, Integer> controlIndex = new HashMap<>();
  private final Map<Module, Integer> moduleIndex = new HashMap<>();

  RigIndex(Rig rig) {
    this.rig = rig;
    modules = rig.modules();
    kindOfModule = new int[modules.size()];
    firstStrip = new int[modules.size()][];
    int strips =
        modules.stream().flatMap(m -> m.kind().groups().stream()).mapToInt(Group::count).sum();
    moduleOfStrip = new int[strips];
    numberOfStrip = new int[strips];
    firstSocketOfStrip = new int[strips + 1];
    firstControlOfStrip = new int[strips + 1];
    closedControls = new int[strips][];
    closedValues = new double[strips][];
    numberEverything();
    stripOfSocket = new int[sockets.size()];
    moduleOfSocket = new int[sockets.size()];
    tapSocket = new boolean[sockets.size()];
    outSocket = new boolean[sockets.size()];
    describeSockets();
  }

  private void numberEverything() {
    int strip = 0;
    for (int m = 0; m < modules.size(); m++) {
      Module module = modules.get(m);
      moduleIndex.put(module, m);
      kindOfModule[m] = kindNumber(module.kind());
      List<Group> groups = module.kind().groups();
      firstStrip[m] = new int[groups.size()];
      for (int g = 0; g < groups.size(); g++) {
        firstStrip[m][g] = strip;
        for (int number = 1; number <= groups.get(g).count(); number++) {
          addStrip(strip++, m, groups.get(g), number);
        }
      }
    }
    numberNames();
  }

  private int kindNumber(Kind kind) {
    for (int k = 0; k < kinds.size(); k++) {
      if (kinds.get(k).name().equals(kind.name())) {
        return k;
      }
    }
    kinds.add(kind);
    return kinds.size() - 1;
  }

  private void addStrip(int strip, int m, Group group, int number) {
    Module module = modules.get(m);
    moduleOfStrip[strip] = m;
    numberOfStrip[strip] = number;
    firstSocketOfStrip[strip + 1] = firstSocketOfStrip[strip] + group.jacks().size();
    int controlsHere = group.knobs().size() + group.switches().size();
    firstControlOfStrip[strip + 1] = firstControlOfStrip[strip] + controlsHere;
    group.jacks().forEach(jack -> sockets.add(new Socket(module, group, number, jack)));
    closedControls[strip] = new int[group.closed().size()];
    closedValues[strip] = new double[group.closed().size()];
  }

  private void numberNames() {
    for (Module module : modules) {
      controls.addAll(module.controls());
    }
    for (int s = 0; s < sockets.size(); s++) {
      socketIndex.put(sockets.get(s), s);
    }
    for (int c = 0; c < controls.size(); c++) {
      controlIndex.put(controls.get(c), c);
    }
  }

  private void describeSockets() {
    for (int strip = 0; strip < moduleOfStrip.length; strip++) {
      for (int s = firstSocketOfStrip[strip]; s < firstSocketOfStrip[strip + 1]; s++) {
        stripOfSocket[s] = strip;
        moduleOfSocket[s] = moduleOfStrip[strip];
        Direction direction = sockets.get(s).jack().direction();
        tapSocket[s] = direction == Direction.TAP;
        outSocket[s] = direction == Direction.OUT;
      }
      describeClosed(strip);
    }
  }

  private void describeClosed(int strip) {
    int found = 0;
    for (int c = firstControlOfStrip[strip]; c < firstControlOfStrip[strip + 1]; c++) {
      Control control = controls.get(c);
      Position position = control.group().closed().get(control.name());
      if (position != null) {
        closedControls[strip][found] = c;
        closedValues[strip][found++] = value(c, position);
      }
    }
  }

  int strips() {
    return moduleOfStrip.length;
  }

  /** The strip after the last of a module. */
  int endOfModule(int module) {
    return module + 1 < firstStrip.length ? firstStrip[module + 1][0] : strips();
  }

  /** The strip after the last of a group. */
  int endOfGroup(int module, int group) {
    int[] first = firstStrip[module];
    return group + 1 < first.length ? first[group + 1] : endOfModule(module);
  }

  /** A position as a figure: a knob's own, or the index of a switch's position. */
  double value(int control, Position position) {
    if (position instanceof Position.At at) {
      return at.value();
    }
    return controls.get(control).positions().indexOf(position.toString());
  }

  /** The reverse of {@link #value}. */
  Position position(int control, double value) {
    Control it = controls.get(control);
    return it.isKnob()
        ? new Position.At(value)
        : new Position.Thrown(it.positions().get((int) value));
  }

  int indexOf(Socket socket) {
    return socketIndex.get(socket);
  }

  int indexOf(Control control) {
    return controlIndex.get(control);
  }

  int indexOf(Module module) {
    return moduleIndex.get(module);
  }
}
