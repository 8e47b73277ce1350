package entracte;

import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Holds the house table: imports run one way, and outside libraries stay in their rooms. */
class HouseTest {
  /** Well below what there is, well above what a scan of the wrong folder finds. */
  private static final int FEWEST_CLASSES = 300;

  private static final JavaClasses CLASSES =
      new ClassFileImporter()
          .withImportOption(new ImportOption.DoNotIncludeTests())
          .importPackages(House.ROOT);

  @Test
  void theScanSeesTheProgram() {
    assertTrue(CLASSES.size() >= FEWEST_CLASSES, "only " + CLASSES.size() + " classes seen");
  }

  @Test
  void everyPackageIsInTheTableAndTheTableHasNoOther() {
    Set<String> inCode =
        CLASSES.stream()
            .map(c -> House.packageOf(c.getPackageName()))
            .collect(Collectors.toCollection(TreeSet::new));
    assertEquals(new TreeSet<>(House.rows().keySet()), inCode);
  }

  @Test
  void everyPackageUsesOnlyWhatItsRowNames() {
    List<String> offences = new ArrayList<>();
    for (JavaClass each : CLASSES) {
      String from = House.packageOf(each.getPackageName());
      for (Dependency dependency : each.getDirectDependenciesFromSelf()) {
        String target = dependency.getTargetClass().getBaseComponentType().getPackageName();
        if (!from.equals(House.packageOf(target)) && !mayUse(from, target)) {
          offences.add(dependency.getDescription());
        }
      }
    }
    assertEquals(List.of(), offences);
  }

  private static boolean mayUse(String from, String target) {
    House.Row row = House.rows().get(from);
    if (row == null) {
      return false;
    }
    return target.isEmpty()
        || row.ours().contains(House.packageOf(target))
        || row.outside().stream().anyMatch(target::startsWith)
        || isPlainJava(target);
  }

  private static boolean isPlainJava(String target) {
    return target.startsWith("java.") && !target.startsWith("java.awt");
  }

  @Test
  void noPackagesUseEachOtherInACircle() {
    slices().matching(House.ROOT + ".(*)..").should().beFreeOfCycles().check(CLASSES);
  }

  @Test
  void theRulesForbidWhatTheyShould() {
    assertTrue(mayUse("plan", "entracte.check"));
    assertTrue(!mayUse("plan", "entracte.cue"));
    assertTrue(!mayUse("finding", "entracte.cli"));
    assertTrue(!mayUse("plan", "org.yaml.snakeyaml.nodes"));
    assertTrue(!mayUse("stage", "com.googlecode.lanterna.screen"));
    assertTrue(!mayUse("util", "java.util"));
  }
}
