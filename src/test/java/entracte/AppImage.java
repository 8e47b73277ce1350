package entracte;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.spi.ToolProvider;
import java.util.stream.Stream;

/**
 * Makes a program that needs no Java of the jar: {@code mvn -Papp package} runs this. The JDK's own
 * packager puts a small Java beside the jar, with the modules that the program uses.
 */
public final class AppImage {
  /**
   * As the JDK's {@code jdeps} tells them (MIDI lives in the desktop module), and two that it
   * cannot see, since they are asked for by name: {@code jdk.management} answers when the compiler
   * is told what to leave alone, and by {@code jdk.unsupported} the terminal's library hears of a
   * window that changes its size.
   */
  static final List<String> MODULES =
      List.of(
          "java.base",
          "java.desktop",
          "java.logging",
          "java.management",
          "jdk.management",
          "jdk.unsupported");

  private static final double MEGABYTE = 1e6;

  private AppImage() {}

  /**
   * Takes {@code entracte.jar} from a folder and leaves the folder {@code app} there.
   *
   * @param args the folder, and the version
   */
  public static void main(String[] args) throws IOException {
    Path target = Path.of(args[0]);
    Path input = emptied(target.resolve("app-input"));
    Path app = emptied(target.resolve("app"));
    Files.copy(target.resolve("entracte.jar"), input.resolve("entracte.jar"));
    ToolProvider jpackage =
        ToolProvider.findFirst("jpackage")
            .orElseThrow(() -> new IllegalStateException("this JDK has no jpackage"));
    int code =
        jpackage.run(System.out, System.err, words(input, app, args[1]).toArray(String[]::new));
    if (code != 0) {
      throw new IllegalStateException("jpackage ended with " + code);
    }
    archiveClasses(app);
    System.out.printf(Locale.ROOT, "%s: %.0f MB%n", app, bytes(app) / MEGABYTE);
  }

  /** Lets the small Java take up its own classes at once, as a whole JDK does as it comes. */
  private static void archiveClasses(Path app) throws IOException {
    List<String> dump = List.of(java(app).toString(), "-Xshare:dump", "-Xlog:disable");
    Process dumping = new ProcessBuilder(dump).inheritIO().start();
    try {
      if (dumping.waitFor() != 0) {
        throw new IllegalStateException(dump + " ended with " + dumping.exitValue());
      }
    } catch (InterruptedException interrupted) {
      dumping.destroy();
      Thread.currentThread().interrupt();
    }
  }

  /** The packager has a place of its own for it on each system. */
  private static Path java(Path app) throws IOException {
    try (Stream<Path> all = Files.walk(app)) {
      return all.filter(file -> file.endsWith("bin/java") || file.endsWith("bin/java.exe"))
          .findFirst()
          .orElseThrow(() -> new IllegalStateException("no Java in " + app));
    }
  }

  private static List<String> words(Path input, Path app, String version) {
    List<String> words = new ArrayList<>();
    words.addAll(List.of("--type", "app-image", "--name", "entracte", "--app-version", version));
    words.addAll(List.of("--input", input.toString(), "--dest", app.toString()));
    words.addAll(List.of("--main-jar", "entracte.jar", "--main-class", "entracte.cli.Main"));
    words.addAll(List.of("--add-modules", String.join(",", MODULES), "--jlink-options"));
    words.add("--strip-debug --no-header-files --no-man-pages --compress=2");
    if (System.getProperty("os.name").startsWith("Windows")) {
      words.add("--win-console");
    }
    return words;
  }

  private static Path emptied(Path folder) throws IOException {
    if (Files.exists(folder)) {
      try (Stream<Path> all = Files.walk(folder)) {
        for (Path each : (Iterable<Path>) all.sorted(Comparator.reverseOrder())::iterator) {
          Files.delete(each);
        }
      }
    }
    return Files.createDirectories(folder);
  }

  private static double bytes(Path folder) throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      return all.filter(Files::isRegularFile).mapToLong(file -> file.toFile().length()).sum();
    }
  }
}
