package entracte.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.List;

/**
 * How files look from outside: their size, when they were changed, and which they are, since many
 * editors save by putting another file in the place of the old one. A file that is not there looks
 * like nothing.
 */
record FileLooks(List<Object> each) {
  FileLooks {
    each = List.copyOf(each);
  }

  static FileLooks of(List<Path> files) {
    List<Object> each = new ArrayList<>();
    for (Path file : files) {
      each.add(of(file));
    }
    return new FileLooks(each);
  }

  private static Object of(Path file) {
    try {
      BasicFileAttributes found = Files.readAttributes(file, BasicFileAttributes.class);
      return List.of(found.size(), found.lastModifiedTime(), String.valueOf(found.fileKey()));
    } catch (IOException notThere) {
      return "";
    }
  }
}
