package entracte.rehearsal;

import entracte.cue.Spot;
import entracte.plan.Tempo;
import entracte.rig.Control;
import entracte.rig.Module;
import entracte.rig.Rig;
import entracte.rig.Socket;
import java.util.HashMap;
import java.util.Map;

/**
 * A player's seconds for single moves. Where the hand comes from is not known, so its way is the
 * average one to that place from all places; a knob turns by the average of all turns, which is a
 * third of its scale. Nor is it known whether a plug is one of two of a cord that comes from the
 * bag; so each bears its share of the way there.
 */
final class AverageTempo implements Tempo {
  /** The mean distance of two points thrown on a line of length 1. */
  private static final double PART_OF_SCALE = 1.0 / 3;

  /** How many of the cords that move come from the bag or go there. An estimate. */
  private static final double CORDS_OF_THE_BAG = 0.5;

  private final TimeModel model;
  private final Player player;
  private final Map<Module, Double> wayCm = new HashMap<>();

  AverageTempo(Rig rig, TimeModel model, Player player) {
    this.model = model;
    this.player = player;
    for (Module to : rig.modules()) {
      double sum =
          rig.modules().stream().mapToDouble(from -> model.distanceCm(at(from), at(to))).sum();
      wayCm.put(to, sum / rig.modules().size());
    }
  }

  private static Spot at(Module module) {
    return new Spot(module.name(), module.row(), module.centreCm(), 0);
  }

  @Override
  public double pull(Socket at) {
    double toBag = CORDS_OF_THE_BAG * model.toBag() / 2;
    return seconds(Work.PULL, model.out(way(at.module())) + toBag);
  }

  @Override
  public double plug(Socket at) {
    double fromBag = CORDS_OF_THE_BAG * model.fromBag() / 2;
    return seconds(Work.PLUG, model.in(way(at.module())) + fromBag);
  }

  @Override
  public double turn(Control knob) {
    return seconds(Work.TURN, model.turn(way(knob.module()), PART_OF_SCALE));
  }

  @Override
  public double flip(Control toggle) {
    return seconds(Work.SWITCH, model.flip(way(toggle.module()), 1));
  }

  private double way(Module to) {
    return wayCm.get(to);
  }

  /** With the reading of its line: a step of two moves is read once, so half of it for plugs. */
  private double seconds(Work work, double tmu) {
    double lines = work == Work.PULL || work == Work.PLUG ? 0.5 : 1;
    return player.factor(work) * Mtm.seconds(tmu) * model.hands().light()
        + player.factor(Work.READ) * lines * model.readSeconds();
  }
}
