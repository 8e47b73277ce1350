package entracte.cli;

import entracte.journal.JournalFile;
import entracte.journal.JournalRead;
import entracte.stage.Event;
import entracte.stage.Night;
import entracte.stage.Phase;
import entracte.stage.Show;
import entracte.stage.Stage;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The journal that lies beside a set. A night that is not over is taken up again; one that is over,
 * that belongs to another list of songs, or that is spoilt, is put aside under a name of its own,
 * and so is a file that is no journal. Where no journal can be kept the show is played without.
 */
final class StageJournal {
  private static final String NAME = "stage.journal";

  private final Path file;
  private final Show show;
  private final SetFiles files;
  private final boolean anew;

  private StageJournal(Path file, Show show, SetFiles files, boolean anew) {
    this.file = file;
    this.show = show;
    this.files = files;
    this.anew = anew;
  }

  /**
   * @param night as it was left, or a fresh one
   * @param resumed whether it was left
   * @param changed whether the files of the set were changed since
   * @param note what the player should know of it; empty for nothing
   */
  record Opened(JournalFile file, Night night, boolean resumed, boolean changed, String note) {
    static Opened fresh(JournalFile file, String note) {
      return new Opened(file, Night.fresh(), false, false, note);
    }
  }

  static Opened open(Path set, Show show, SetFiles files, boolean anew) throws IOException {
    return new StageJournal(beside(set), show, files, anew).open();
  }

  static Path beside(Path set) {
    Path folder = Files.isDirectory(set) ? set : set.toAbsolutePath().getParent();
    return folder.resolve(NAME);
  }

  private Opened open() throws IOException {
    try {
      if (Files.exists(file, LinkOption.NOFOLLOW_LINKS) && !Files.isRegularFile(file)) {
        return taken(JournalFile.without(NAME + " is no ordinary file", JournalRead.nothing()));
      }
      return taken(JournalFile.open(file));
    } catch (JournalFile.InUse elsewhere) {
      throw Stop.trouble(
          "another stage is playing this set",
          "Go to its window, or leave it there with Ctrl-C first.");
    } catch (FileSystemException unwritable) {
      return taken(JournalFile.without(reason(unwritable), readable()));
    }
  }

  private static String reason(FileSystemException problem) {
    return problem instanceof AccessDeniedException
        ? NAME + " may not be written in this folder"
        : String.valueOf(problem.getReason());
  }

  private JournalRead readable() throws IOException {
    return Files.isReadable(file) ? JournalFile.read(file) : JournalRead.nothing();
  }

  private Opened taken(JournalFile journal) throws IOException {
    JournalRead found = journal.found();
    if (found.damage() == JournalRead.Damage.ALIEN) {
      return aside(journal, NAME + " was no journal of a night.");
    }
    if (found.events().isEmpty() && found.damage() == JournalRead.Damage.SPOILT) {
      return aside(journal, "The journal is spoilt from its beginning.");
    }
    if (found.events().isEmpty()) {
      return Opened.fresh(journal, "");
    }
    Optional<List<String>> renamed = renamed(found.events());
    boolean same = renamed.isPresent();
    Night night = same ? Stage.replay(show, found.events()) : Night.fresh();
    if (anew || !same || night.phase() == Phase.END) {
      return aside(journal, same ? "" : "The songs are others than on the last night.");
    }
    List<String> changed = changed(found.events());
    String note = (damage(found) + resumed(renamed.get(), changed)).strip();
    return new Opened(journal, night, true, !changed.isEmpty(), note);
  }

  /** The files that are others than when the stage was started last. */
  private List<String> changed(List<Event> events) {
    Map<String, String> last = Map.of();
    for (Event event : events) {
      last = event.basis().files().isEmpty() ? last : event.basis().files();
    }
    return files.changedSince(last);
  }

  private Optional<List<String>> renamed(List<Event> events) {
    return events.get(0) instanceof Event.Begun begun
        ? show.renamedSince(begun.fingerprint())
        : Optional.empty();
  }

  private static String resumed(List<String> renamed, List<String> changed) {
    List<String> said = new ArrayList<>(renamed);
    if (!changed.isEmpty()) {
      said.add(SetFiles.say(changed) + ", so what comes is planned again");
    }
    return said.isEmpty() ? "" : " The same night goes on, but " + String.join("; ", said) + ".";
  }

  private String damage(JournalRead found) throws IOException {
    return switch (found.damage()) {
      case NONE, ALIEN -> "";
      case TORN ->
          "The journal's last line was torn and dropped ("
              + found.dropped()
              + " bytes). Look"
              + " whether the last press counts.";
      case SPOILT -> {
        Path copy = free();
        Files.copy(file, copy);
        yield "The journal is spoilt in the middle; the night stands where it was whole. The file"
            + " is kept as "
            + copy.getFileName()
            + ".";
      }
    };
  }

  /** Puts the old file aside and begins a new one; if it has to stay, nothing is kept. */
  private Opened aside(JournalFile old, String why) throws IOException {
    Path free = free();
    try {
      Files.move(file, free);
    } catch (FileSystemException stays) {
      old.close();
      JournalFile none = JournalFile.without(reason(stays), JournalRead.nothing());
      return Opened.fresh(none, why);
    }
    old.close();
    String note = why.isEmpty() ? "" : why + " It is kept as " + free.getFileName() + ".";
    return Opened.fresh(JournalFile.open(file), note);
  }

  /** The first free name: nothing is overwritten, not even a link that leads nowhere. */
  private Path free() {
    for (int number = 1; ; number++) {
      Path free = file.resolveSibling("stage-" + number + ".journal");
      if (Files.notExists(free, LinkOption.NOFOLLOW_LINKS)) {
        return free;
      }
    }
  }
}
