package entracte.cli;

import entracte.finding.NearestName;
import entracte.read.SetReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The set that was probably meant by a path that leads to none. */
final class NearPath {
  private NearPath() {}

  /** What to do about a path that leads nowhere, or to a folder without a set. */
  static String advice(Path typed) {
    Optional<Path> near = set(Files.isDirectory(typed) ? typed.resolve(SetReader.SET_FILE) : typed);
    if (near.isPresent()) {
      return "Did you mean " + near.get() + "?";
    }
    List<String> within = list(typed).filter(NearPath::isSet).map(Path::toString).toList();
    return within.isEmpty()
        ? "Name a set's folder or its file."
        : "Name one of those within it: " + String.join(", ", within) + ".";
  }

  private static Optional<Path> set(Path typed) {
    return folder(typed.getParent())
        .flatMap(folder -> near(folder, typed, list(folder).filter(NearPath::isSet)));
  }

  /** A folder on the way may be mistyped as well; {@code null} is the one that we are in. */
  private static Optional<Path> folder(Path typed) {
    if (typed == null) {
      return Optional.of(Path.of(""));
    }
    return Files.isDirectory(typed)
        ? Optional.of(typed)
        : folder(typed.getParent())
            .flatMap(folder -> near(folder, typed, list(folder).filter(Files::isDirectory)));
  }

  private static Optional<Path> near(Path folder, Path typed, Stream<Path> there) {
    List<String> names = there.map(each -> each.getFileName().toString()).toList();
    return NearestName.of(typed.getFileName().toString(), names).map(folder::resolve);
  }

  private static boolean isSet(Path path) {
    String name = path.getFileName().toString();
    return Files.isDirectory(path)
        ? Files.exists(path.resolve(SetReader.SET_FILE))
        : name.endsWith(".yaml") || name.endsWith(".yml");
  }

  private static Stream<Path> list(Path folder) {
    try (Stream<Path> each = Files.list(folder)) {
      return each.sorted().toList().stream();
    } catch (IOException notOurs) {
      return Stream.of();
    }
  }
}
