package entracte.cli;

import entracte.journal.JournalFile;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;

/** Whether the journal of the night can be kept. */
final class FolderTrials {
  private static final String WHAT = "journal";
  private static final long MEGABYTE = 1 << 20;

  /** A long night writes less than one; the rest is for the system's own files. */
  private static final long FEWEST_MEGABYTES = 50;

  private FolderTrials() {}

  static List<Trial> of(Path set) {
    Path file = StageJournal.beside(set);
    List<Trial> trials = new ArrayList<>();
    try {
      if (Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
        trials.add(old(file));
      } else {
        fresh(file);
        trials.add(Trial.ready(WHAT, "It can be kept in " + file + "."));
      }
      trials.add(room(file));
    } catch (IOException trouble) {
      trials.add(unusable(file, trouble));
    }
    return trials;
  }

  /** Opens it as the stage will, and leaves it as it is. */
  private static Trial old(Path file) throws IOException {
    if (!Files.isRegularFile(file)) {
      return Trial.notReady(WHAT, file + " is no ordinary file.", "Move it aside.");
    }
    try (JournalFile journal = JournalFile.open(file)) {
      return switch (journal.found().damage()) {
        case NONE -> Trial.ready(WHAT, file + " can be written.");
        case TORN ->
            Trial.look(
                WHAT,
                "Its last line was torn.",
                "The stage goes on from the line before, or anew with --new.");
        case SPOILT, ALIEN ->
            Trial.look(
                WHAT,
                file + " is spoilt, or was none.",
                "The stage keeps it under another name and goes on from what is whole.");
      };
    }
  }

  /** Writes a file beside, to the disk, and takes it away. */
  private static void fresh(Path file) throws IOException {
    Path trial = Files.createTempFile(file.toAbsolutePath().getParent(), "stage-trial-", ".tmp");
    try (FileChannel channel = FileChannel.open(trial, StandardOpenOption.WRITE)) {
      channel.write(ByteBuffer.wrap(new byte[4096]));
      channel.force(true);
    } finally {
      Files.delete(trial);
    }
  }

  private static Trial room(Path file) throws IOException {
    long free = Files.getFileStore(file.toAbsolutePath().getParent()).getUsableSpace() / MEGABYTE;
    return free >= FEWEST_MEGABYTES
        ? Trial.ready("disk", "There is room on it.")
        : Trial.notReady("disk", "Only " + free + " MB are free on it.", "Make room.");
  }

  private static Trial unusable(Path file, IOException trouble) {
    if (trouble instanceof AccessDeniedException) {
      return Trial.notReady(
          WHAT, file + " may not be written.", "Look at the permissions of it and its folder.");
    }
    return Trial.notReady(
        WHAT,
        "It cannot be written: " + trouble.getMessage() + ".",
        "Close another stage if one is open; else copy the set to another disk.");
  }
}
