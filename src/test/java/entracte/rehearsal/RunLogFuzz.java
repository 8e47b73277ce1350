package entracte.rehearsal;

import entracte.read.SetReader;
import entracte.rig.Rig;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Any bytes as a rehearsal log: its runs, and what is learned of the player from them. */
public final class RunLogFuzz {
  private static Rig rig;
  private static Path file;

  private RunLogFuzz() {}

  /** Loads every class, which takes longer than an input may. */
  public static void fuzzerInitialize() throws IOException {
    rig = SetReader.read(Path.of("sets/kitchen-table")).setList().orElseThrow().rig();
    file = Files.createTempFile("entracte-fuzz-", ".log");
    fuzzerTestOneInput(new byte[0]);
  }

  /** Called with ever new bytes by the fuzzer, and by a test with those that once did harm. */
  public static void fuzzerTestOneInput(byte[] bytes) throws IOException {
    if (file == null) {
      fuzzerInitialize();
    }
    Files.write(file, bytes);
    RunLog log = RunLog.in(file);
    for (Run run : log.read().runs()) {
      if (LogLine.read(LogLine.write(run)).isEmpty()) {
        throw new AssertionError("a run cannot be read back: " + run);
      }
    }
    log.everAdded();
    Learned.from(rig, log);
    Csv.lines(log);
  }
}
