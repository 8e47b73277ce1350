package entracte.cli;

import entracte.check.PlayableSet;
import entracte.cue.CueSheet;
import entracte.finding.FindingPrinter;
import entracte.rehearsal.Added;
import entracte.rehearsal.Nights;
import entracte.rehearsal.RunLog;
import entracte.rehearsal.TimedMoves;
import entracte.rehearsal.TimedMoves.Timed;
import entracte.rig.Rig;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** Brings times into the log that were not taken in a rehearsal. */
final class TimesFromElsewhere {
  private final Streams streams;
  private final PlayableSet set;
  private final RunLog log;
  private final Supplier<CueSheet> sheet;
  private final Hearing hearing;

  /**
   * @param sheet the plan in words; asked for only once there is something to add
   */
  TimesFromElsewhere(
      Streams streams, Hearing hearing, PlayableSet set, RunLog log, Supplier<CueSheet> sheet) {
    this.hearing = hearing;
    this.streams = streams;
    this.set = set;
    this.log = log;
    this.sheet = sheet;
  }

  /** The times of a file. */
  void of(Path file) throws IOException {
    List<Timed> times = read(file);
    Instant now = hearing.clock().now().instant();
    int width = hearing.width();
    TimedMoves.into(log, times, sheet.get(), rig(), this::isSure, now)
        .lines()
        .forEach(line -> LineTalk.fill(streams, line, width));
  }

  /** Only a clear yes counts; where nobody can answer there is none. */
  private boolean isSure(String doubt) {
    try (Talk talk = hearing.with(streams, Optional.empty())) {
      talk.say(doubt);
      return talk.ask("Was that played? y adds it, Enter leaves it out: ")
          .filter("y"::equals)
          .isPresent();
    }
  }

  private List<Timed> read(Path file) {
    byte[] bytes;
    try {
      bytes = Files.readAllBytes(file);
    } catch (IOException e) {
      String why = Files.exists(file) ? file + " may not be read" : "there is no " + file;
      throw Stop.trouble(why, "Name a file with lines of changeover, move, seconds.");
    }
    TimesFile.Read read = TimesFile.read(file, bytes, set.setList());
    if (!read.findings().isEmpty()) {
      streams.complain(FindingPrinter.print(read.findings()).stripTrailing());
      throw Stop.impossible("nothing was added; mend the file first");
    }
    return read.times();
  }

  /** The nights whose journals lie beside the set. */
  void ofNightsBeside(Path path) throws IOException {
    StageTimes.Told told = StageTimes.beside(path, ShowMaker.show(set.setList()));
    told.notes().forEach(streams::line);
    if (told.played().isEmpty() && told.notes().isEmpty()) {
      streams.line("No changeover was played in a stage journal beside the set.");
      return;
    }
    Added added =
        told.played().isEmpty()
            ? new Added(0, 0, 0)
            : Nights.into(log, told.played(), sheet.get(), rig(), this::isSure);
    streams.line(added.text());
  }

  private Rig rig() {
    return set.setList().rig();
  }
}
