package entracte.check;

import entracte.finding.NearestName;
import entracte.rig.Direction;
import entracte.rig.Figures;
import entracte.rig.Group;
import entracte.rig.Jack;
import entracte.rig.Jumper;
import entracte.rig.Kind;
import entracte.rig.Knob;
import entracte.rig.Position;
import entracte.rig.Switch;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;

/** What a kind says of itself: what shuts its channels, which jacks leave for the desk. */
final class KindsMakeSense {
  private final Findings findings;

  KindsMakeSense(Findings findings) {
    this.findings = findings;
  }

  void check(Kind kind) {
    for (Group group : kind.groups()) {
      // Sorted, because the map of a group has no order of its own.
      new TreeMap<>(group.closed())
          .forEach((control, position) -> checkClosed(kind, group, control, position));
      group.switches().forEach(flipped -> checkPositions(kind, flipped));
    }
    kind.jumpers().forEach(jumper -> checkPositions(kind, jumper));
    new TreeSet<>(kind.leaves()).forEach(jack -> checkLeaves(kind, jack));
  }

  private void checkClosed(Kind kind, Group group, String control, Position position) {
    Optional<Knob> knob = group.knob(control);
    Optional<Switch> flipped = group.switchNamed(control);
    if (knob.isPresent()) {
      checkClosedKnob(kind, group, knob.get(), position.toString());
    } else if (flipped.isPresent()) {
      List<String> positions = flipped.get().positions();
      if (!positions.contains(position.toString())) {
        findings.error(
            group,
            kind,
            "closed: the switch \"%s\" has no position \"%s\"".formatted(control, position),
            NearestName.advice(position.toString(), positions));
      }
    } else {
      List<String> known = new ArrayList<>();
      group.knobs().forEach(each -> known.add(each.name()));
      group.switches().forEach(each -> known.add(each.name()));
      findings.error(
          group,
          kind,
          "closed: a channel of \"%s\" has no knob or switch \"%s\""
              .formatted(kind.name(), control),
          NearestName.advice(control, known));
    }
  }

  private void checkClosedKnob(Kind kind, Group group, Knob knob, String position) {
    String range = Figures.plain(knob.scale().low()) + " to " + Figures.plain(knob.scale().high());
    boolean onScale;
    try {
      onScale = knob.scale().contains(Double.parseDouble(position));
    } catch (NumberFormatException noFigure) {
      onScale = false;
    }
    if (!onScale) {
      findings.error(
          group,
          kind,
          "closed: %s is off the scale of \"%s\"".formatted(position, knob.name()),
          "It runs from " + range + ".");
    }
  }

  private void checkPositions(Kind kind, Switch flipped) {
    if (flipped.positions().isEmpty()) {
      findings.error(
          flipped, kind, "the switch \"" + flipped.name() + "\" has no positions", LIST_THEM);
    }
  }

  private void checkPositions(Kind kind, Jumper jumper) {
    if (jumper.positions().isEmpty()) {
      findings.error(
          jumper, kind, "the jumper \"" + jumper.name() + "\" has no positions", LIST_THEM);
    }
  }

  private static final String LIST_THEM = "List the names of its positions in square brackets.";

  private void checkLeaves(Kind kind, String name) {
    List<String> outputs = new ArrayList<>();
    for (Group group : kind.groups()) {
      for (Jack jack : group.jacks()) {
        if (jack.direction() == Direction.OUT) {
          outputs.add(jack.name());
        }
      }
    }
    if (!outputs.contains(name)) {
      findings.error(
          kind,
          "leaves: \"%s\" has no output \"%s\"".formatted(kind.name(), name),
          NearestName.advice(name, outputs));
    }
  }
}
