package entracte;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaMethodCall;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * What the program's own code cannot do, because it calls nothing that does it. Of the libraries
 * this says nothing.
 */
class SecurityTest {
  private static final JavaClasses CLASSES =
      new ClassFileImporter()
          .withImportOption(new ImportOption.DoNotIncludeTests())
          .importPackages(House.ROOT);

  /** Our classes that use an outside class for which this holds, and that class. */
  private static Set<String> users(Predicate<JavaClass> outside) {
    Set<String> users = new TreeSet<>();
    for (JavaClass each : CLASSES) {
      for (Dependency use : each.getDirectDependenciesFromSelf()) {
        JavaClass target = use.getTargetClass().getBaseComponentType();
        if (outside.test(target)) {
          users.add(each.getName() + " uses " + target.getName());
        }
      }
    }
    return users;
  }

  private static boolean isIn(JavaClass target, String... packages) {
    return List.of(packages).stream()
        .anyMatch(p -> target.getPackageName().equals(p) || target.getName().startsWith(p + "."));
  }

  @Test
  void nothingReachesForTheNetwork() {
    assertEquals(
        Set.of(),
        users(
            t ->
                isIn(t, "java.net", "javax.net", "java.rmi")
                    || isIn(t, "java.nio.channels") && t.getName().contains("Socket")));
  }

  @Test
  void nothingMakesObjectsOrCodeOutOfData() {
    assertEquals(
        Set.of(),
        users(
            t ->
                isIn(t, "java.lang.reflect", "javax.script", "java.beans", "javax.naming")
                    || t.getName().equals("java.io.ObjectInputStream")
                    || t.getName().equals("java.lang.ClassLoader")));
  }

  @Test
  void otherProgramsAreStartedOnlyToAskTheTerminalForItsSize() {
    assertEquals(
        Set.of("entracte.terminal.Window uses java.lang.ProcessBuilder"),
        users(t -> t.getName().equals("java.lang.ProcessBuilder")));
  }

  /** To compose or parse is to find the structure; to load would make Java objects of tags. */
  @Test
  void yamlIsTakenForStructureAndNeverForObjects() {
    Set<String> calls =
        CLASSES.stream()
            .flatMap(each -> each.getMethodCallsFromSelf().stream())
            .filter(call -> call.getTargetOwner().getName().equals("org.yaml.snakeyaml.Yaml"))
            .map(JavaMethodCall::getName)
            .collect(Collectors.toCollection(TreeSet::new));
    assertEquals(Set.of("compose", "parse"), calls);
  }

  @Test
  void theScanWouldSeeSuchAUse() {
    assertTrue(users(t -> isIn(t, "java.nio.file")).size() > 10);
  }
}
