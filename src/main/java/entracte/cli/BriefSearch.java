package entracte.cli;

import entracte.check.PlayableSet;
import entracte.plan.Options;
import entracte.plan.Planner;
import entracte.plan.Result;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.atomic.AtomicBoolean;
import javax.management.JMException;
import javax.management.ObjectName;

/**
 * Plans where a search is over soon, or none of several takes long. The virtual machine's
 * optimising compiler takes some ten seconds over the planner and what it calls, on cores that the
 * search needs; what it makes is faster, but a brief search is over by then. So it is told to leave
 * all to the quick compiler, by the compiler control of JEP 165. Where a virtual machine knows of
 * none, the search is slower, and finds the same.
 */
final class BriefSearch {
  /** Up to how long a search is brief, in seconds: so far the quick compiler was seen ahead. */
  private static final double BRIEF = 10;

  /** Smaller sets are planned before any compiler is done. */
  private static final int SMALL = 5;

  private static final String DIRECTIVE = "[{match: [\"*.*\"], c2: {Exclude: true}}]\n";

  /** Once is enough for all searches of a process. */
  private final AtomicBoolean told = new AtomicBoolean();

  Result plan(PlayableSet set, Options options) {
    boolean isBrief = options.rounds() != Options.NO_LIMIT || options.seconds() <= BRIEF;
    if (isBrief && set.parts().size() > SMALL && told.compareAndSet(false, true)) {
      leaveToTheQuickCompiler();
    }
    return Planner.plan(set, options);
  }

  private static void leaveToTheQuickCompiler() {
    Path file = null;
    try {
      file = Files.createTempFile("entracte", ".json");
      Files.writeString(file, DIRECTIVE);
      ManagementFactory.getPlatformMBeanServer()
          .invoke(
              new ObjectName("com.sun.management:type=DiagnosticCommand"),
              "compilerDirectivesAdd",
              new Object[] {new String[] {file.toString()}},
              new String[] {String[].class.getName()});
    } catch (IOException | JMException | SecurityException e) {
      // The search only takes longer.
    } finally {
      delete(file);
    }
  }

  private static void delete(Path file) {
    try {
      if (file != null) {
        Files.delete(file);
      }
    } catch (IOException e) {
      file.toFile().deleteOnExit();
    }
  }
}
