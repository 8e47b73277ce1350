package entracte.cli;

import entracte.plan.Plan;
import entracte.plan.SongPlan;
import entracte.read.RigStateWriter;
import entracte.setlist.SetList;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Option;

/** Keeps the rig as a plan leaves it after a song, for a later {@code --from}. */
final class SavedState {
  private static final String NOTE =
      "# How the rig stands, by plan --save. Change what stands otherwise; plan --from reads it.\n";

  @Option(
      names = "--save",
      paramLabel = "FILE",
      description = "Write the rig as it stands after the last song into a new file, for --from.")
  private Path file;

  @Option(
      names = "--after",
      paramLabel = "SONG",
      description = "With --save: as it stands after that song, by name or number.")
  private String after;

  /** Stops a command that plans again and again: a file is written once. */
  void demandNone() {
    if (file != null) {
      throw Stop.wrongUsage(
          "--save writes one plan, and --watch plans again and again", "Leave one of them out.");
    }
  }

  /** Stops the command if what was asked for cannot be done. */
  void demandPossible(SetList set) {
    if (file == null && after != null) {
      throw Stop.wrongUsage(
          "--after says after which song --save writes, and there is no --save",
          "Add --save FILE.");
    }
    if (file != null) {
      number(set);
      NewFile.demandFree(file);
    }
  }

  /** Writes the file, if one was asked for, and says so; empty if none was. */
  Optional<String> write(Plan plan) {
    if (file == null) {
      return Optional.empty();
    }
    SongPlan song = plan.songs().get(number(plan.setList()));
    String name = "after " + song.song().name();
    NewFile.write(file, NOTE + RigStateWriter.write(name, song.state()));
    return Optional.of("Wrote " + file + ": the rig " + name + ".");
  }

  private int number(SetList set) {
    return after == null ? set.songs().size() - 1 : SongNamed.in(set, after);
  }
}
