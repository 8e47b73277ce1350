package entracte.cli;

import entracte.read.ReadSet;
import entracte.read.SetReader;
import entracte.read.SongText;
import entracte.setlist.Song;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/**
 * Writes a set in another order into a new file. It stands beside the old one, because the names of
 * the rig and the patches are seen from there; it is read back, and kept only if it holds the same
 * songs in the order wanted.
 */
final class NewSetFile {
  private NewSetFile() {}

  /** Stops the command if {@code file} is there, or not beside the set. */
  static void demandFree(Path file, Path set) {
    NewFile.demandFree(file);
    Path folder = Files.isDirectory(set) ? set : set.toAbsolutePath().getParent();
    Path wanted = file.toAbsolutePath().getParent();
    if (!folder.toAbsolutePath().normalize().equals(wanted.normalize())) {
      throw Stop.wrongUsage(
          "the new file belongs beside the set, which names its rig and patches from there",
          "Write to " + folder.resolve(file.getFileName()) + ".");
    }
  }

  static void write(Path file, Path set, List<Integer> order) {
    String text =
        SongText.inOrder(set, order)
            .orElseThrow(
                () ->
                    Stop.trouble(
                        "the songs of this set do not stand one below the other, so their lines"
                            + " cannot be moved",
                        "Give each song a line of its own that begins with a dash."));
    NewFile.write(file, text);
    try {
      if (!holds(file, set, order)) {
        Files.delete(file);
        throw Stop.trouble(
            "the set's text cannot be put in another order without rewriting it",
            "Move the songs yourself.");
      }
    } catch (IOException e) {
      throw Stop.unwritable(file, e);
    }
  }

  private static boolean holds(Path file, Path set, List<Integer> order) {
    ReadSet written = SetReader.read(file);
    List<Song> old = SetReader.read(set).setList().orElseThrow().songs();
    return !written.hasErrors()
        && written.setList().orElseThrow().songs().equals(order.stream().map(old::get).toList());
  }
}
