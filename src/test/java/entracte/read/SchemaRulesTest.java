package entracte.read;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.BooleanNode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Schema and reader go hand in hand at every place of every file: at each something of every shape
 * and on both sides of each rule is tried, and another's validator and our reader must agree. Each
 * rule of each schema is seen to refuse something, and each place to take something else than it
 * holds in the full files.
 */
class SchemaRulesTest {
  /** What can refuse. */
  private static final Set<String> RULES =
      Set.of(
          "type",
          "enum",
          "pattern",
          "minimum",
          "maximum",
          "exclusiveMinimum",
          "exclusiveMaximum",
          "required",
          "minItems",
          "maxItems",
          "uniqueItems",
          "minProperties",
          "oneOf",
          "propertyNames");

  @TempDir Path path;
  private final List<String> quarrels = new ArrayList<>();
  private final Set<String> broken = new TreeSet<>();
  private final Set<String> taken = new TreeSet<>();

  /** The reader is asked about the first file that breaks a rule, or that a place takes. */
  @ParameterizedTest
  @CsvSource({"SET, set.yaml", "RIG, harbour-case.yaml", "PATCH, patches/two-hands.yaml"})
  void everyRuleRefusesAndEveryPlaceTakesWhatTheReaderDoes(Schema schema, String file) {
    tryOut(schema, file, false);
  }

  /** The reader is asked about every file. */
  @ParameterizedTest
  @CsvSource({"SET, set.yaml", "RIG, harbour-case.yaml", "PATCH, patches/two-hands.yaml"})
  @Tag("heavy")
  void atEveryPlaceBothTakeTheSameAndRefuseTheSame(Schema schema, String file) {
    tryOut(schema, file, true);
  }

  private void tryOut(Schema schema, String file, boolean all) {
    EveryPlace places = new EveryPlace(FullFiles.text(file), schema);
    SchemaJudge judge = new SchemaJudge(schema);
    Folder folder = FullFiles.in(path);
    for (String place : places.names()) {
      places.forEachOther(
          place,
          root -> {
            List<String> rules = judge.broken(root);
            boolean first = rules.isEmpty() ? taken.add(place) : broken.addAll(rules);
            if (first || all) {
              compare(folder, file, EveryPlace.write(root), rules);
            }
          });
    }
    assertEquals(List.of(), quarrels);
    assertEquals(Set.of(), without(rules(EveryPlace.tree(schema), "#"), broken));
    taken.add(places.names().get(0)); // The whole file: nothing else is tried that could do.
    assertEquals(Set.of(), without(new TreeSet<>(places.names()), taken));
  }

  private void compare(Folder folder, String file, String text, List<String> rules) {
    ReadSet read = folder.with(file, text).read();
    boolean alone = rules.isEmpty() ? Unseen.leavesAny(read, text) : !read.hasErrors();
    if (alone) {
      quarrels.add(rules + "\n" + folder.lines(read.findings()) + "\n" + text);
    }
  }

  private static Set<String> without(Set<String> all, Set<String> seen) {
    all.removeAll(seen);
    return all;
  }

  /** Where in the schema something can be refused. */
  private static Set<String> rules(JsonNode at, String way) {
    Set<String> rules = new TreeSet<>();
    for (int item = 0; at.isArray() && item < at.size(); item++) {
      rules.addAll(rules(at.get(item), way + "/" + item));
    }
    for (String key : (Iterable<String>) at::fieldNames) {
      String further = way + "/" + key;
      boolean named = way.endsWith("/properties") || way.endsWith("/patternProperties");
      boolean refuses = RULES.contains(key) || at.get(key).equals(BooleanNode.FALSE);
      if (refuses && !named) {
        rules.add(further);
      } else if (!key.equals("if")) {
        rules.addAll(rules(at.get(key), further));
      }
    }
    return rules;
  }
}
