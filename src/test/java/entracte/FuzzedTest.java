package entracte;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.lang.reflect.Method;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What the fuzzer begins with and what it found, once more: each file of {@code
 * src/test/resources/fuzz} goes through the target that its folder is named after.
 */
class FuzzedTest {
  private static final Path KEPT = Path.of("src/test/resources/fuzz");

  static Stream<Path> targets() throws IOException {
    try (Stream<Path> folders = Files.list(KEPT)) {
      return folders.sorted().toList().stream();
    }
  }

  @ParameterizedTest
  @MethodSource("targets")
  @Timeout(60)
  void whatWasOnceFoundDoesNoHarm(Path target) throws Exception {
    Method fuzz =
        Class.forName(target.getFileName().toString())
            .getMethod("fuzzerTestOneInput", byte[].class);
    List<Path> inputs;
    try (Stream<Path> files = Files.list(target)) {
      inputs = files.sorted().toList();
    }
    assertFalse(inputs.isEmpty(), target + " is empty");
    for (Path input : inputs) {
      byte[] bytes = Files.readAllBytes(input);
      assertDoesNotThrow(() -> fuzz.invoke(null, (Object) bytes), input::toString);
    }
  }
}
