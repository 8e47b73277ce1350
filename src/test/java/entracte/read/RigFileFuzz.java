package entracte.read;

import java.nio.charset.StandardCharsets;

/** Any bytes as the file of a rig. */
public final class RigFileFuzz {
  private RigFileFuzz() {}

  /** Loads every class, which takes longer than an input may. */
  public static void fuzzerInitialize() {
    FilesFuzz.read("harbour-case.yaml", Folder.RIG.getBytes(StandardCharsets.UTF_8));
  }

  /** Called with ever new bytes by the fuzzer, and by a test with those that once did harm. */
  public static void fuzzerTestOneInput(byte[] bytes) {
    FilesFuzz.read("harbour-case.yaml", bytes);
  }
}
