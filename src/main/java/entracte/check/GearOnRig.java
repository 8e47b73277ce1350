package entracte.check;

import entracte.rig.Gear;
import entracte.rig.Rig;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The MIDI gear around the case can be told apart and called. */
final class GearOnRig {
  private static final int CHANNELS = 16;

  private final Findings findings;

  GearOnRig(Findings findings) {
    this.findings = findings;
  }

  static boolean countsProgramsWell(Gear gear) {
    return gear.programsFrom() == 0 || gear.programsFrom() == 1;
  }

  void check(Rig rig) {
    Set<String> names = new HashSet<>();
    Map<List<Object>, Gear> byAddress = new HashMap<>();
    for (Gear gear : rig.gear()) {
      if (!names.add(gear.name())) {
        findings.error(
            gear, "the gear \"" + gear.name() + "\" stands twice", "Call one of them otherwise.");
      }
      if (gear.channel() < 1 || gear.channel() > CHANNELS) {
        findings.errorInPart(
            gear,
            "channel",
            "\"%s\" is on channel %d".formatted(gear.name(), gear.channel()),
            "MIDI channels are numbered from 1 to 16.");
      }
      if (!countsProgramsWell(gear)) {
        findings.errorInPart(
            gear,
            "programs from",
            "the programs of \"%s\" are counted from %d"
                .formatted(gear.name(), gear.programsFrom()),
            "Write 0 or 1: the number its display gives to the first program.");
      }
      Gear first = byAddress.putIfAbsent(List.of(gear.port(), gear.device(), gear.channel()), gear);
      if (first != null && !first.name().equals(gear.name())) {
        findings.warning(
            gear,
            "\"%s\" and \"%s\" share channel %d of one port"
                .formatted(first.name(), gear.name(), gear.channel()),
            "Each of them hears what is meant for the other: put one on another channel.");
      }
    }
  }
}
