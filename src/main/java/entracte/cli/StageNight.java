package entracte.cli;

import entracte.check.PlayableSet;
import entracte.cue.Pace;
import entracte.midi.Outlet;
import entracte.port.Wiring;
import entracte.rig.FootSwitch;
import entracte.rig.Rig;
import entracte.stage.Basis;
import entracte.stage.Effect;
import entracte.stage.Event;
import entracte.stage.Show;
import entracte.stage.TrueRig;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;

/** One night on stage: the run of the show wired to its journal, the planner and the ports. */
final class StageNight implements AutoCloseable {
  private final Show show;
  private final StageJournal.Opened journal;
  private final StageRun run;
  private final StagePlanner planner;
  private final Wiring wiring;
  private final int ports;
  private final SetFiles files;

  private StageNight(
      SetFiles files, PlayableSet playable, Planning planning, boolean anew, Clock clock)
      throws IOException {
    this.files = files;
    Rig rig = playable.setList().rig();
    show = ShowMaker.show(playable.setList());
    journal = StageJournal.open(files.set(), show, files, anew);
    run = new StageRun(show, rig, journal.night(), journal.file(), clock);
    run.note(journal.note());
    planner =
        new StagePlanner(
            playable.withDrone(), planning, pace(files.set(), rig), clock, files, run::event);
    String pedal = rig.footSwitch().map(FootSwitch::port).orElse("");
    List<Outlet> outlets = ShowMaker.outlets(rig);
    wiring = new Wiring(outlets, pedal, run);
    ports = outlets.size() + (pedal.isEmpty() ? 0 : 1);
    run.world(
        effect -> {
          if (effect instanceof Effect.Send send) {
            wiring.send(send.dispatches());
          } else if (effect instanceof Effect.Plan plan) {
            planner.ask(plan);
          }
        });
  }

  /**
   * Takes up the night whose journal lies beside the set, or opens a new one.
   *
   * @param files those of the set, as they were when it was read
   * @param anew whether to open a new one in any case
   */
  static StageNight open(
      SetFiles files, PlayableSet playable, Planning planning, boolean anew, Clock clock)
      throws IOException {
    return new StageNight(files, playable, planning, anew, clock);
  }

  /** The player's own, if the rehearsal log can be read; a show goes on without it. */
  private static Pace pace(Path set, Rig rig) {
    try {
      return Player.learned(rig, set);
    } catch (Stop unreadable) {
      return Pace.estimated();
    }
  }

  /** Looks for the ports, and goes to where the night begins or was broken off. */
  void begin() {
    wiring.start();
    Basis basis = new Basis(files.sums(), Optional.of(show.outline()));
    run.event(
        journal.resumed()
            ? new Event.Resumed(run.now(), basis, journal.changed())
            : new Event.Begun(run.now(), show.fingerprint(), show.order(), TrueRig.bare(), basis));
  }

  /** Plans what was asked for so far, and from now on; the first frame should not wait for it. */
  void plan() {
    planner.start();
  }

  /** How many ports are watched. */
  int ports() {
    return ports;
  }

  StageRun run() {
    return run;
  }

  @Override
  public void close() throws IOException {
    wiring.close();
    journal.file().close();
  }
}
