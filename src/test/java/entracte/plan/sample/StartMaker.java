package entracte.plan.sample;

import entracte.plan.Start;
import entracte.rig.Control;
import entracte.rig.Cord;
import entracte.rig.Module;
import entracte.rig.Position;
import entracte.rig.Rig;
import entracte.rig.RigState;
import entracte.rig.Scale;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Makes a state to start from: what is left of some song, and knobs anywhere. */
final class StartMaker {
  private final Dice dice;
  private final Set<Feature> features;
  private final Rig rig;

  StartMaker(Dice dice, Set<Feature> features, Rig rig) {
    this.dice = dice;
    this.features = features;
    this.rig = rig;
  }

  Start make(List<List<Cord>> songs) {
    RigState state =
        features.contains(Feature.GIVEN_START) ? leftBy(dice.one(songs)) : RigState.bare();
    return new Start(state, features.contains(Feature.MID_SET));
  }

  private RigState leftBy(List<Cord> song) {
    List<Cord> cords = new ArrayList<>();
    List<Integer> lengths = new ArrayList<>();
    for (Cord cord : song) {
      if (dice.chance(0.7)) {
        cords.add(cord);
        lengths.add(rig.cordLengthCm(cord.source().module(), cord.sink().module()).orElseThrow());
      }
    }
    Map<Control, Position> positions = new HashMap<>();
    for (Module module : rig.modules()) {
      for (Control control : module.controls()) {
        if (dice.chance(0.4)) {
          positions.put(control, somewhere(control));
        }
      }
    }
    return new RigState(cords, lengths, positions);
  }

  private Position somewhere(Control control) {
    if (!control.isKnob()) {
      return new Position.Thrown(dice.one(control.positions()));
    }
    Scale scale = control.scale().orElseThrow();
    return new Position.At(dice.between((int) scale.low(), (int) scale.high()));
  }
}
