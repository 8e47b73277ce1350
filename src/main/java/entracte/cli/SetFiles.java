package entracte.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.zip.CRC32;

/**
 * The files that a set is written in, as they are at one moment.
 *
 * @param sums by the name that the set knows a file by, a sum of what stands in it; empty if it
 *     cannot be read
 */
record SetFiles(Path set, List<Path> files, Map<String, String> sums) {
  /** More names than that nobody reads on stage. */
  private static final int MOST_NAMED = 3;

  /**
   * The files of a set that was just read.
   *
   * @param since when reading began; of what was saved after that nobody knows whether it was read
   */
  static SetFiles asRead(Path set, List<Path> files, Instant since) {
    return of(set, files, file -> savedAfter(file, since) ? "" : sum(file));
  }

  private static boolean savedAfter(Path file, Instant since) {
    try {
      return Files.getLastModifiedTime(file).toInstant().isAfter(since);
    } catch (IOException gone) {
      return true;
    }
  }

  private static SetFiles of(Path set, List<Path> files, Function<Path, String> sum) {
    Path folder = StageJournal.beside(set).toAbsolutePath().getParent();
    Map<String, String> sums = new TreeMap<>();
    for (Path file : files) {
      Path name = folder.relativize(file.toAbsolutePath()).normalize();
      sums.put(name.toString().replace('\\', '/'), sum.apply(file));
    }
    return new SetFiles(set, files, sums);
  }

  private static String sum(Path file) {
    try {
      CRC32 sum = new CRC32();
      sum.update(Files.readAllBytes(file));
      return String.format("%08x", sum.getValue());
    } catch (IOException gone) {
      return "";
    }
  }

  /** The same files as they are now. */
  SetFiles now() {
    return of(set, files, SetFiles::sum);
  }

  /** The names of those that are otherwise than they were; none if nothing is known of then. */
  List<String> changedSince(Map<String, String> before) {
    if (before.isEmpty()) {
      return List.of();
    }
    Set<String> names = new TreeSet<>(before.keySet());
    names.addAll(sums.keySet());
    List<String> changed = new ArrayList<>(names);
    changed.removeIf(name -> sums.getOrDefault(name, "").equals(before.getOrDefault(name, "")));
    return changed;
  }

  /** {@code rig.yaml and patches/low.yaml were changed}; empty if none was. */
  static String say(List<String> changed) {
    if (changed.isEmpty()) {
      return "";
    }
    String names =
        changed.size() > MOST_NAMED
            ? changed.size() + " files of the set"
            : String.join(" and ", changed);
    return names + (changed.size() == 1 ? " was changed" : " were changed");
  }
}
