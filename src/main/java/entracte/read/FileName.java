package entracte.read;

import entracte.finding.Place;
import java.io.IOException;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;

/**
 * A file that is to be read.
 *
 * @param path as it is opened
 * @param shown as the musician would type it
 */
record FileName(Path path, String shown) {
  static FileName of(Path path) {
    return new FileName(path, path.normalize().toString().replace('\\', '/'));
  }

  /**
   * The file that this one names, seen from this one's folder.
   *
   * @throws InvalidPathException if no file can be called so
   */
  FileName beside(String written) {
    return of(path.resolveSibling(written));
  }

  /** What tells two files apart, whatever way leads to them. */
  Path identity() {
    try {
      return path.toRealPath();
    } catch (IOException notThere) {
      return path.toAbsolutePath().normalize();
    }
  }

  /** The name without folder and ending, for what has no name of its own. */
  String bare() {
    String last = String.valueOf(path.toAbsolutePath().normalize().getFileName());
    int dot = last.lastIndexOf('.');
    return dot > 0 ? last.substring(0, dot) : last;
  }

  Place wholeFile() {
    return Place.wholeFile(shown);
  }
}
