package entracte.cli;

import entracte.finding.Finding;
import entracte.finding.Place;
import entracte.finding.Severity;
import entracte.rehearsal.RunLog;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

/** What is wrong with the rehearsal log beside a set. None of it keeps anybody from planning. */
final class LogLook {
  private LogLook() {}

  static List<Finding> beside(Path set) {
    RunLog log = RunLog.beside(set);
    String file = log.file().toString();
    try {
      return log.unread().stream().map(line -> finding(file, line)).toList();
    } catch (IOException e) {
      return List.of(
          new Finding(
              Severity.WARNING,
              Place.wholeFile(file),
              "the rehearsal log cannot be used: " + log.why(e),
              Player.advice(log.file(), e)));
    }
  }

  private static Finding finding(String file, RunLog.Unread line) {
    return new Finding(
        Severity.WARNING,
        new Place(file, line.number(), 1, line.text()),
        (line.last() ? "the last" : "this") + " line of the rehearsal log " + line.trouble(),
        "All other times count. "
            + (line.last() ? "The line may stay or be deleted." : "Mend the line, or delete it."));
  }
}
