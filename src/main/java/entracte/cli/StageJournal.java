package entracte.cli;

import entracte.journal.JournalFile;
import entracte.stage.Event;
import entracte.stage.Night;
import entracte.stage.Phase;
import entracte.stage.Show;
import entracte.stage.Stage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/**
 * The journal that lies beside a set. A night that is not over is taken up again; one that is over,
 * or that belongs to another list of songs, is put aside under a name of its own.
 */
final class StageJournal {
  private static final String NAME = "stage.journal";

  private StageJournal() {}

  /**
   * @param night as it was left, or a fresh one
   * @param resumed whether it was left
   * @param note what the player should know of it; empty for nothing
   */
  record Opened(JournalFile file, Night night, boolean resumed, String note) {}

  static Opened open(Path set, Show show, boolean anew) throws IOException {
    Path file = beside(set);
    JournalFile.Read read = JournalFile.read(file);
    List<Event> events = read.events();
    if (events.isEmpty()) {
      return new Opened(JournalFile.open(file, read.goodLength()), Night.fresh(), false, "");
    }
    boolean same =
        events.get(0) instanceof Event.Begun begun
            && begun.fingerprint().equals(show.fingerprint());
    Night night = same ? replay(show, events) : Night.fresh();
    if (anew || !same || night.phase() == Phase.END) {
      Files.move(file, aside(file));
      String note = same ? "" : "The set has changed since the last night; a new one begins.";
      return new Opened(JournalFile.open(file, 0), Night.fresh(), false, note);
    }
    return new Opened(JournalFile.open(file, read.goodLength()), night, true, read.note());
  }

  static Path beside(Path set) {
    Path folder = Files.isDirectory(set) ? set : set.toAbsolutePath().getParent();
    return folder.resolve(NAME);
  }

  private static Night replay(Show show, List<Event> events) {
    Night night = Night.fresh();
    for (Event event : events) {
      night = Stage.after(show, night, event).night();
    }
    return night;
  }

  /** The first free name: nothing is overwritten. */
  private static Path aside(Path file) {
    for (int number = 1; ; number++) {
      Path free = file.resolveSibling("stage-" + number + ".journal");
      if (Files.notExists(free)) {
        return free;
      }
    }
  }
}
