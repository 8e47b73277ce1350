package entracte.cli;

import entracte.cue.CueSheet;
import entracte.plan.Plan;
import entracte.rehearsal.Learned;
import entracte.rehearsal.RunLog;
import entracte.rig.Rig;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;

/** The player of a set, as its rehearsal log tells. */
final class Player {
  private Player() {}

  /** The plan in words and with the player's own seconds. */
  static CueSheet words(Plan plan, Path set) {
    return CueSheet.of(plan, learned(plan.setList().rig(), set));
  }

  /** What is known of the player; a log that cannot be read stops the command. */
  static Learned learned(Rig rig, Path set) {
    RunLog log = RunLog.beside(set);
    try {
      return Learned.from(rig, log);
    } catch (IOException e) {
      throw trouble(log, e);
    }
  }

  /** What the system says of the file is kept to ourselves: it is written for programmers. */
  static Stop trouble(RunLog log, IOException e) {
    Path file = log.file();
    if (Files.isDirectory(file)) {
      return Stop.trouble(
          "the rehearsal log cannot be used: " + file + " is a folder", "Move it aside.");
    }
    if (Files.isSymbolicLink(file)) {
      return Stop.trouble(
          "the rehearsal log cannot be used: " + file + " is a link",
          "Put the file itself beside the set.");
    }
    boolean denied = e instanceof AccessDeniedException;
    return Stop.trouble(
        "the rehearsal log cannot be used: "
            + file
            + (denied ? " may not be read or changed" : " cannot be read or written"),
        denied
            ? "Look at the permissions of the file and of its folder."
            : "Look whether the disk is full or was taken away; times from now on are not kept.");
  }
}
