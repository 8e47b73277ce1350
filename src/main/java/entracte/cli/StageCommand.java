package entracte.cli;

import entracte.check.PlayableSet;
import entracte.cue.GearSends;
import entracte.midi.Dispatch;
import entracte.stage.ShowSong;
import entracte.terminal.Palette;
import entracte.terminal.StageScreen;
import java.io.IOException;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The show. */
@Command(
    name = "stage",
    sortOptions = false,
    description = {
      "The show. One foot says next: the song, then the moves to the next one in the order of the"
          + " hands, while the MIDI gear is sent its programs. A show that was broken off is taken"
          + " up at the same move.",
      "",
      "Keys: page down, right, down, space or enter: next. Page up, left, up: back. F1 or tab:"
          + " menu. F2: send again. F3: quiet. F4: undo. F5: what may be made ready. Ctrl-C: leave."
          + " In the menu, next: a line down; held down for a second, or enter: take the line;"
          + " back or escape: close."
    },
    footer = {
      "",
      "Main level down before any plug moves. Examples:",
      "  java -jar target/entracte.jar stage sets/kitchen-table",
      "  java -jar target/entracte.jar stage sets/orchard-barn --dry-run"
    })
final class StageCommand implements Callable<Integer> {
  private final Streams streams;
  private final Planning planning;

  @Mixin private SetArgument set;

  @Option(names = "--new", description = "Begin a new night, even if the last one was broken off.")
  private boolean anew;

  @Option(
      names = "--dry-run",
      description = "Only tell what each song would send, byte by byte; opens no port.")
  private boolean dryRun;

  StageCommand(Streams streams, Planning planning) {
    this.streams = streams;
    this.planning = planning;
  }

  @Override
  public Integer call() throws IOException, InterruptedException {
    if (!dryRun && System.console() == null) {
      throw Stop.wrongUsage(
          "the stage needs a terminal to show and to hear keys",
          "Start it in a terminal window, with neither input nor output redirected.");
    }
    Instant reading = Instant.now();
    Loader.Loaded loaded = Loader.load(set.path());
    PlayableSet playable = Loader.playable(loaded, streams);
    if (dryRun) {
      tell(ShowMaker.show(playable.setList()).songs());
      return ExitCode.DONE;
    }
    return play(SetFiles.asRead(set.path(), loaded.files(), reading), playable);
  }

  private void tell(List<ShowSong> songs) {
    songs.forEach(this::tell);
    if (songs.stream().allMatch(song -> song.sends().isEmpty())) {
      streams.line("Nothing is sent: no song has a word for any gear.");
    }
  }

  private void tell(ShowSong song) {
    streams.line(song.title());
    tell("  changeover", song.sends().changeover());
    tell("  song", song.sends().song());
    for (GearSends.Section section : song.sends().sections()) {
      tell("  " + section.name(), section.sends());
    }
  }

  private void tell(String when, List<Dispatch> sends) {
    for (Dispatch dispatch : sends) {
      streams.line(when + ", " + dispatch.gear() + " on " + dispatch.outlet().name());
      streams.line("    " + dispatch.hex());
    }
  }

  private int play(SetFiles files, PlayableSet playable) throws IOException, InterruptedException {
    try (StageNight night =
        StageNight.open(files, playable, planning, anew, Clock.systemDefaultZone())) {
      night.begin();
      loop(night);
    }
    return ExitCode.DONE;
  }

  private void loop(StageNight night) throws IOException, InterruptedException {
    StageRun run = night.run();
    Palette palette = Palette.of(System.getenv(), streams.colour());
    try (StageScreen screen = StageScreen.open(palette, run::key)) {
      screen.show(run.frame(screen.width(), screen.height()));
      night.plan();
      while (run.goesOn()) {
        screen.measure();
        screen.show(run.frame(screen.width(), screen.height()));
      }
    }
  }
}
