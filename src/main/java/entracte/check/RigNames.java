package entracte.check;

import entracte.rig.Group;
import entracte.rig.Jack;
import entracte.rig.Kind;
import entracte.rig.Module;
import entracte.rig.Rig;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;

/** Whatever a patch may name has a name of its own. */
final class RigNames {
  private final RigIndex rig;
  private final Findings findings;

  RigNames(RigIndex rig, Findings findings) {
    this.rig = rig;
    this.findings = findings;
  }

  void check() {
    checkKinds(rig.rig());
    checkModules(rig.rig());
  }

  private void checkKinds(Rig all) {
    Names kinds = new Names("the kind");
    for (Kind kind : all.kinds()) {
      kinds.add(kind.name(), kind, kind);
      checkJacks(kind);
      checkControls(kind);
    }
  }

  private void checkModules(Rig all) {
    Set<String> seen = new HashSet<>();
    for (Module module : all.modules()) {
      if (!seen.add(module.name())) {
        findings.error(
            module, "the module \"" + module.name() + "\" stands twice", numbered(module.name()));
      }
      checkDot(module);
    }
  }

  private static String numbered(String name) {
    return name.isEmpty() || !Character.isDigit(name.charAt(name.length() - 1))
        ? "Number them, such as \"%1$s 1\" and \"%1$s 2\".".formatted(name)
        : "Give one of them another number.";
  }

  /** {@code mix.2} may be a module, or the second channel of the module {@code mix}. */
  private void checkDot(Module module) {
    int dot = module.name().lastIndexOf('.');
    String before = dot < 0 ? "" : module.name().substring(0, dot).strip();
    if (rig.module(before).filter(m -> m.kind().channels().isPresent()).isPresent()) {
      findings.warning(
          module,
          "\"%s\" looks like a channel of \"%s\"".formatted(module.name(), before),
          "It is taken for the module; a name without the dot would be clearer.");
    }
  }

  private void checkJacks(Kind kind) {
    Names outside = new Names("the jack");
    Names inChannels = new Names("the channels' jack");
    Map<String, Group> equal = new LinkedHashMap<>();
    for (Group group : kind.groups()) {
      Names names = group.form() == Group.Form.CHANNELS ? inChannels : outside;
      for (Jack jack : group.jacks()) {
        names.add(jack.name(), jack, kind);
        if (jack.name().contains(".")) {
          findings.warning(
              jack,
              kind,
              "no patch can name the jack \"" + jack.name() + "\"",
              "The last dot parts a jack from its module: call it otherwise.");
        }
      }
      if (group.form() == Group.Form.EQUAL_JACKS) {
        equal.putIfAbsent(group.name(), group);
      }
    }
    equal.values().forEach(group -> checkNumbers(kind, group));
  }

  /** {@code pitch 2} may be a jack of that name, or the second of several called {@code pitch}. */
  private void checkNumbers(Kind kind, Group equal) {
    for (Jack jack : kind.own().jacks()) {
      int space = jack.name().lastIndexOf(' ');
      int number = Digits.number(jack.name().substring(space + 1));
      boolean same = space > 0 && jack.name().substring(0, space).strip().equals(equal.name());
      if (same && number >= 1 && number <= equal.count()) {
        findings.warning(
            jack,
            kind,
            "\"%s\" looks like one of the equal jacks \"%s\"".formatted(jack.name(), equal.name()),
            "It is taken for the jack of that name; another name would be clearer.");
      }
    }
  }

  /** Knobs, switches and jumpers of one owner are set side by side, so they share their names. */
  private void checkControls(Kind kind) {
    for (Group group : kind.groups()) {
      Names names = new Names("the control");
      group.knobs().forEach(knob -> names.add(knob.name(), knob, kind));
      group.switches().forEach(flipped -> names.add(flipped.name(), flipped, kind));
      if (group.form() == Group.Form.OWN) {
        kind.jumpers().forEach(jumper -> names.add(jumper.name(), jumper, kind));
      }
    }
  }

  /** Reports a name that comes again. */
  private final class Names {
    private final Set<String> seen = new HashSet<>();
    private final String what;

    Names(String what) {
      this.what = what;
    }

    void add(String name, Object piece, Object whole) {
      if (!seen.add(name)) {
        String in = piece == whole ? "" : " in the kind \"" + ((Kind) whole).name() + "\"";
        findings.error(
            piece,
            whole,
            "%s \"%s\" stands twice%s".formatted(what, name, in),
            "Call one of them otherwise.");
      }
    }
  }
}
