package entracte.check;

import entracte.finding.NearestName;
import entracte.rig.Gear;
import entracte.rig.Rig;
import entracte.setlist.GearCue;
import entracte.setlist.GearCue.Bank;
import entracte.setlist.GearCue.ControlChange;
import entracte.setlist.GearCue.Fine;
import entracte.setlist.Song;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;

/** What the MIDI gear is sent can be sent: MIDI 1.0 has 128 programs, controllers and values. */
final class GearCues {
  private static final int HIGHEST = 127;
  private static final int HIGHEST_FINE = 16383;

  /** From here on controllers are messages to the whole channel, such as "all notes off". */
  private static final int CHANNEL_MODE = 120;

  private static final int BANK_HIGH = 0;
  private static final int BANK_LOW = 32;

  private final Map<String, Gear> gear = new LinkedHashMap<>();
  private final Findings findings;

  GearCues(Rig rig, Findings findings) {
    rig.gear().forEach(each -> gear.putIfAbsent(each.name(), each));
    this.findings = findings;
  }

  void check(Song song) {
    song.gear().forEach(this::check);
    song.sections().forEach(section -> section.gear().forEach(this::check));
  }

  private void check(GearCue cue) {
    Gear known = gear.get(cue.gear());
    if (known == null) {
      findings.error(
          cue,
          "\"" + cue.gear() + "\" is no gear of the rig",
          gear.isEmpty()
              ? "Describe it in the rig, under \"gear\"."
              : NearestName.advice(cue.gear(), gear.keySet()));
    } else {
      cue.program().ifPresent(program -> checkProgram(cue, known, program));
    }
    cue.bank().ifPresent(bank -> checkBank(cue, bank));
    checkControls(cue);
    cue.fine().forEach(fine -> checkFine(cue, fine));
  }

  private void checkFine(GearCue cue, Fine fine) {
    boolean controller = fine.kind() == GearCue.FineKind.CONTROLLER;
    String name = fine.kind().word() + " " + fine.number();
    if (controller && !(0 <= fine.number() && fine.number() < BANK_LOW)) {
      findings.error(
          fine,
          cue,
          "controller " + fine.number() + " has no fine value",
          "Controllers from 0 to 31 have one.");
    } else if (fine.number() < 0 || fine.number() > HIGHEST_FINE) {
      findings.error(fine, cue, "there is no " + name, "Parameters are numbered from 0 to 16383.");
    } else if (fine.value() < 0 || fine.value() > HIGHEST_FINE) {
      findings.errorInPart(
          fine,
          "value",
          "%s cannot be set to %d".formatted(name, fine.value()),
          "Fine values run from 0 to 16383.");
    }
  }

  private void checkProgram(GearCue cue, Gear known, int program) {
    int first = known.programsFrom();
    if (GearOnRig.countsProgramsWell(known) && (program < first || program > first + HIGHEST)) {
      findings.errorInPart(
          cue,
          "program",
          "\"%s\" has no program %d: its display counts from %d to %d"
              .formatted(known.name(), program, first, first + HIGHEST),
          programAdvice(first, program));
    }
  }

  private static String programAdvice(int first, int program) {
    int other = 1 - first;
    if (program == other || program == other + HIGHEST) {
      return "If it counts from %1$d, write \"programs from: %1$d\" in the rig.".formatted(other);
    }
    return program < first
        ? "Count as the display of the instrument does."
        : "Programs beyond these are reached by a bank.";
  }

  private void checkBank(GearCue cue, Bank bank) {
    if (!isByte(bank.high()) || !isByte(bank.low())) {
      findings.error(
          bank,
          cue,
          "there is no bank %d/%d".formatted(bank.high(), bank.low()),
          "Both figures of a bank run from 0 to 127.");
    }
  }

  private void checkControls(GearCue cue) {
    Set<Integer> sent = new HashSet<>();
    for (ControlChange change : cue.controls()) {
      int controller = change.controller();
      if (!isByte(controller)) {
        findings.error(
            change,
            cue,
            "there is no controller " + controller,
            "Controllers are numbered from 0 to 119.");
      } else if (controller >= CHANNEL_MODE) {
        findings.error(
            change,
            cue,
            "controller " + controller + " is no sound setting but an order to the whole channel",
            "Use a controller from 0 to 119.");
      } else if (!isByte(change.value())) {
        findings.errorInPart(
            change,
            "value",
            "%s cannot be set to %d".formatted(name(change), change.value()),
            "Its values run from 0 to 127.");
      } else if (controller == BANK_HIGH || controller == BANK_LOW) {
        findings.warning(
            change,
            cue,
            "controller " + controller + " is half of a bank",
            "Write \"bank: 1/2\" with both its figures; it then leaves before the program.");
      }
      if (!sent.add(controller)) {
        findings.warning(change, cue, name(change) + " is set twice", "Only one can be heard.");
      }
    }
  }

  /** As the player calls it, and by its number, which two names may share. */
  private static String name(ControlChange change) {
    String number = "controller " + change.controller();
    return change.written().startsWith("cc ") ? number : change.written() + " (" + number + ")";
  }

  private static boolean isByte(int value) {
    return 0 <= value && value <= HIGHEST;
  }
}
