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
import java.util.function.Supplier;

/** Brings times into the log that were not taken in a rehearsal. */
final class TimesFromElsewhere {
  private final Streams streams;
  private final PlayableSet set;
  private final RunLog log;
  private final Supplier<CueSheet> sheet;

  /**
   * @param sheet the plan in words; asked for only once there is something to add
   */
  TimesFromElsewhere(Streams streams, PlayableSet set, RunLog log, Supplier<CueSheet> sheet) {
    this.streams = streams;
    this.set = set;
    this.log = log;
    this.sheet = sheet;
  }

  /** The times of a file. */
  void of(Path file, Instant now) throws IOException {
    List<Timed> times = read(file);
    streams.line(TimedMoves.into(log, times, sheet.get(), rig(), now).text());
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
    Added added =
        told.played().isEmpty()
            ? new Added(0, 0, 0, 0)
            : Nights.into(log, told.played(), sheet.get(), rig());
    streams.line(added.text());
  }

  private Rig rig() {
    return set.setList().rig();
  }
}
