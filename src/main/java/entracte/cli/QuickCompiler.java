package entracte.cli;

import entracte.check.PlayableSet;
import entracte.plan.Options;
import entracte.plan.Planner;
import entracte.plan.Result;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import javax.management.JMException;
import javax.management.ObjectName;

/**
 * Plans, and leaves the program to the virtual machine's quick compiler until a search takes long.
 * The optimising compiler works some ten seconds on the reader, the planner and what they call, on
 * cores that they need; what it makes is faster, but a brief search is over by then. So it is told
 * to keep out, by the compiler control of JEP 165, which takes its word from a file. Where a
 * virtual machine knows of none, all takes longer and comes to the same.
 */
final class QuickCompiler implements Planning {
  /** Up to how long a search is brief, in seconds: so far the quick compiler was seen ahead. */
  private static final double BRIEF = 10;

  private static final String DIRECTIVE = "[{match: [\"*.*\"], c2: {Exclude: true}}]\n";

  /** Whether the virtual machine was told, once it was; empty before. */
  private Optional<CompletableFuture<Boolean>> told = Optional.empty();

  @Override
  public synchronized void soon() {
    if (told.isEmpty()) {
      told = Optional.of(CompletableFuture.supplyAsync(QuickCompiler::keepOut));
    }
  }

  @Override
  public Result plan(PlayableSet set, Options options) {
    if (options.rounds() == Options.NO_LIMIT && options.seconds() > BRIEF) {
      letIn();
    }
    return Planner.plan(set, options);
  }

  private synchronized void letIn() {
    if (told.filter(CompletableFuture::join).isPresent()) {
      ask("compilerDirectivesClear");
      told = Optional.of(CompletableFuture.completedFuture(false));
    }
  }

  private static boolean keepOut() {
    Path file = null;
    try {
      file = Files.createTempFile("entracte", ".json");
      file.toFile().deleteOnExit();
      Files.writeString(file, DIRECTIVE);
      return ask("compilerDirectivesAdd", file.toString());
    } catch (IOException | SecurityException e) {
      return false;
    } finally {
      delete(file);
    }
  }

  private static boolean ask(String command, String... words) {
    try {
      ManagementFactory.getPlatformMBeanServer()
          .invoke(
              new ObjectName("com.sun.management:type=DiagnosticCommand"),
              command,
              words.length == 0 ? new Object[0] : new Object[] {words},
              words.length == 0 ? new String[0] : new String[] {String[].class.getName()});
      return true;
    } catch (JMException | SecurityException e) {
      return false;
    }
  }

  private static void delete(Path file) {
    try {
      if (file != null) {
        Files.delete(file);
      }
    } catch (IOException e) {
      // It goes when the program ends.
    }
  }
}
