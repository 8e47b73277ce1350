package entracte.cue;

import static org.junit.jupiter.api.Assertions.assertEquals;

import entracte.plan.PluggedCord;
import entracte.rig.CordStock;
import org.junit.jupiter.api.Test;

class WordingTest {
  private final SmallRig rig = new SmallRig(CordStock.unlimited());

  @Test
  void theDestinationIsPulledFirstAndPluggedLast() {
    PluggedCord cord = new PluggedCord(rig.cord("osc 1.saw", "mix 1.2.in"), CordStock.ANY_LENGTH);
    assertEquals("PULL mix 1 channel 2 in, then osc 1 saw", Wording.pull(cord));
    assertEquals("PLUG osc 1 saw, then mix 1 channel 2 in", Wording.plug(cord));
  }

  @Test
  void aLengthIsNamedWhereLengthsMatter() {
    PluggedCord cord = new PluggedCord(rig.cord("osc 1.saw", "mix 1.2.in"), 60);
    assertEquals("PLUG osc 1 saw, then mix 1 channel 2 in (60 cm)", Wording.plug(cord));
    assertEquals("osc 1 saw to mix 1 channel 2 in (60 cm)", Wording.both(cord));
  }

  @Test
  void theModuleComesFirst() {
    assertEquals("osc 2 pitch 2", Wording.name(rig.socket("osc 2.pitch.2")));
    assertEquals("mult 1 tap 3", Wording.name(rig.socket("mult 1.tap.3")));
    assertEquals("mix 1 channel 2 level", Wording.name(rig.control("mix 1.2.level")));
    assertEquals("filter 1 cutoff", Wording.name(rig.control("filter 1.cutoff")));
  }
}
