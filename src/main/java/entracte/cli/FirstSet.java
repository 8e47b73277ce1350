package entracte.cli;

import entracte.read.Schema;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * Writes the set that a musician starts from into a folder of its own. Nothing that is there is
 * ever written over, and what cannot be written whole is taken away again.
 */
final class FirstSet {
  private static final List<String> FILES =
      List.of("set.yaml", "rig.yaml", "patches/low-voice.yaml", "patches/two-voices.yaml");

  private final Path folder;

  /** What this run has made, the last first. */
  private final Deque<Path> made = new ArrayDeque<>();

  private FirstSet(Path folder) {
    this.folder = folder;
  }

  /** The files by their names in the folder, in the order to read them. */
  static Map<String, String> texts() {
    Map<String, String> texts = new LinkedHashMap<>();
    FILES.forEach(name -> texts.put(name, resource("first/" + name)));
    for (Schema schema : Schema.values()) {
      texts.put("schemas/" + schema.fileName(), schema.text());
    }
    return texts;
  }

  private static String resource(String name) {
    try (InputStream in = FirstSet.class.getResourceAsStream(name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Writes the set, or stops the command with nothing written. */
  static void write(Path folder) {
    FirstSet set = new FirstSet(folder);
    try {
      set.demandEmpty();
      for (Map.Entry<String, String> file : texts().entrySet()) {
        set.write(folder.resolve(file.getKey()), file.getValue());
      }
    } catch (IOException e) {
      set.takeAway();
      throw Stop.unwritable(folder, e);
    }
  }

  private void demandEmpty() throws IOException {
    if (!Files.exists(folder, LinkOption.NOFOLLOW_LINKS)) {
      return;
    }
    if (!Files.isDirectory(folder)) {
      throw Stop.trouble(folder + " is there already and is no folder", "Give another name.");
    }
    try (Stream<Path> inside = Files.list(folder)) {
      if (inside.findAny().isPresent()) {
        throw Stop.trouble(
            folder + " is there already and holds something, so I leave it alone",
            "Name a folder that is empty or not there yet.");
      }
    }
  }

  private void write(Path file, String text) throws IOException {
    makeFolder(file.toAbsolutePath().getParent());
    Files.createFile(file);
    made.push(file);
    Files.writeString(file, text, StandardOpenOption.TRUNCATE_EXISTING);
  }

  private void makeFolder(Path wanted) throws IOException {
    if (Files.isDirectory(wanted)) {
      return;
    }
    Path parent = wanted.getParent();
    if (parent != null) {
      makeFolder(parent);
    }
    try {
      Files.createDirectory(wanted);
      made.push(wanted);
    } catch (FileAlreadyExistsException inTheWay) {
      throw Stop.trouble(wanted + " is there already and is no folder", "Give another name.");
    }
  }

  private void takeAway() {
    for (Path each : made) {
      try {
        Files.deleteIfExists(each);
      } catch (IOException e) {
        // What cannot be taken away stays; the message to come says what failed.
        continue;
      }
    }
  }
}
