package entracte.cli;

import entracte.cue.Step;
import entracte.journal.JournalFile;
import entracte.journal.JournalRead;
import entracte.rehearsal.Nights;
import entracte.stage.Event;
import entracte.stage.Move;
import entracte.stage.MoveTimes;
import entracte.stage.Show;
import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/** The times of the nights whose journals lie beside a set. */
final class StageTimes {
  private final Show show;
  private final List<Nights.Played> played = new ArrayList<>();
  private final List<String> notes = new ArrayList<>();

  private StageTimes(Show show) {
    this.show = show;
  }

  /**
   * What the journals tell.
   *
   * @param notes of journals that tell nothing, a sentence each
   */
  record Told(List<Nights.Played> played, List<String> notes) {}

  static Told beside(Path set, Show show) throws IOException {
    StageTimes times = new StageTimes(show);
    for (Path file : journals(StageJournal.beside(set).toAbsolutePath().getParent())) {
      times.read(file);
    }
    return new Told(times.played, times.notes);
  }

  private static List<Path> journals(Path folder) throws IOException {
    List<Path> journals = new ArrayList<>();
    try (DirectoryStream<Path> files =
        Files.newDirectoryStream(folder, "{stage,stage-*}.journal")) {
      files.forEach(journals::add);
    }
    journals.sort(null);
    return journals;
  }

  private void read(Path file) throws IOException {
    JournalRead read = JournalFile.read(file);
    List<Event> events = read.events();
    if (events.isEmpty()) {
      return;
    }
    boolean same =
        events.get(0) instanceof Event.Begun begun
            && begun.fingerprint().equals(show.fingerprint());
    if (same) {
      MoveTimes.of(show, events).forEach(each -> played.add(played(each)));
    } else {
      notes.add(file.getFileName() + " is of another list of songs and was left out.");
    }
  }

  private static Nights.Played played(MoveTimes.Played each) {
    return new Nights.Played(
        Instant.ofEpochMilli(each.endedAtMillis()),
        each.song(),
        each.moves().stream().map(StageTimes::step).toList(),
        each.seconds());
  }

  private static Step step(Move move) {
    return Nights.step(move.verb(), move.text(), move.moves(), move.reach());
  }
}
