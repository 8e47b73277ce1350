package entracte;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.lang.reflect.Modifier;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.spi.ToolProvider;
import org.junit.jupiter.api.Test;

/** The small Java beside the packed program has all that the program asks of a Java. */
class AppImageTest {
  /** The JDK's own {@code jdeps} reads the classes and names the modules. */
  @Test
  void holdsEveryModuleThatOurClassesUse() {
    StringWriter said = new StringWriter();
    int code =
        ToolProvider.findFirst("jdeps")
            .orElseThrow()
            .run(
                new PrintWriter(said),
                new PrintWriter(said),
                "--ignore-missing-deps",
                "--print-module-deps",
                "target/classes");
    assertEquals(0, code, said.toString());
    Set<String> used = new TreeSet<>(List.of(said.toString().strip().split(",")));
    assertTrue(used.contains("java.management"), said.toString());
    used.removeAll(AppImage.MODULES);
    assertEquals(Set.of(), used);
  }

  @Test
  void itsMakerCanBeStartedByMaven() {
    assertTrue(Modifier.isPublic(AppImage.class.getModifiers()));
  }
}
