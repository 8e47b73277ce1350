package entracte.cli;

import entracte.check.PlayableSet;
import entracte.rig.Rig;
import entracte.stage.Show;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;

/**
 * Everything that can be tried at home for the stage. Nothing is sent to the gear, and nothing that
 * lies beside the set is changed.
 */
final class StageTrials {
  private final Streams streams;
  private final Venue venue;
  private final InstantSource clock;

  StageTrials(Streams streams, Venue venue, InstantSource clock) {
    this.streams = streams;
    this.venue = venue;
    this.clock = clock;
  }

  /** Tries all of it, the pedal last: there it waits for a foot. */
  List<Trial> of(PlayableSet playable, Path set) throws InterruptedException {
    Rig rig = playable.setList().rig();
    Show show = ShowMaker.show(playable.setList());
    List<Trial> trials = new ArrayList<>();
    trials.addAll(FolderTrials.of(set));
    trials.addAll(TerminalTrials.of(venue, show));
    trials.add(PowerTrial.of(venue.powers()));
    trials.add(ClockTrial.of(clock, venue.zone(), set));
    trials.addAll(PortTrials.of(rig));
    trials.add(new PedalTrial(streams, venue).of(rig.footSwitch()));
    return trials;
  }
}
