package entracte.cli;

import entracte.midi.Outlet;
import entracte.port.MidiPorts;
import entracte.rig.Rig;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Whether every port that gear hangs on is there and free. Nothing is sent. */
final class PortTrials {
  private PortTrials() {}

  static List<Trial> of(Rig rig) {
    List<Trial> trials = new ArrayList<>();
    for (Outlet outlet : ShowMaker.outlets(rig)) {
      trials.add(of(outlet));
    }
    if (trials.isEmpty()) {
      trials.add(Trial.ready("ports", "The rig names no MIDI gear, so none is needed."));
    }
    return trials;
  }

  private static Trial of(Outlet outlet) {
    String what = "port";
    Optional<String> trouble = MidiPorts.tryOut(outlet);
    return trouble.isEmpty()
        ? Trial.ready(what, outlet.name() + " is there and free.")
        : Trial.notReady(
            what,
            "Not usable: " + trouble.get() + ".",
            "Plug it in, switch it on, close what else uses it. \"ports\" lists what is there.");
  }
}
