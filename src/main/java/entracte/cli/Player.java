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
    return Stop.trouble("the rehearsal log cannot be used: " + log.why(e), advice(log.file(), e));
  }

  /** What would help. */
  static String advice(Path file, IOException e) {
    if (Files.isDirectory(file)) {
      return "Move it aside.";
    }
    if (Files.isSymbolicLink(file)) {
      return "Put the file itself beside the set.";
    }
    return e instanceof AccessDeniedException
        ? "Look at the permissions of the file and of its folder."
        : "Look whether the disk is full or was taken away; times from now on are not kept.";
  }
}
