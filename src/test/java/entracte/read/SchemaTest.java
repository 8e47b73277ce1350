package entracte.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SchemaId;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The schemas are what they say, know the readers' names, and take every file that ships. */
class SchemaTest {
  private static final ObjectMapper JSON = new ObjectMapper();

  @ParameterizedTest
  @EnumSource
  void aSchemaIsOneOfDraft202012(Schema schema) throws IOException {
    var meta =
        JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
            .getSchema(SchemaLocation.of(SchemaId.V202012));
    JsonNode tree = JSON.readTree(schema.text());
    assertEquals(SchemaId.V202012, tree.get("$schema").asText());
    assertEquals(Set.of(), meta.validate(tree));
  }

  @Test
  void theSchemasKnowTheNamesThatTheReadersKnow() throws IOException {
    assertNames(SetReader.KEYS, Schema.SET, "");
    assertNames(SongReader.KEYS, Schema.SET, "/$defs/song");
    assertNames(RigReader.KEYS, Schema.RIG, "");
    assertNames(KindReader.KEYS, Schema.RIG, "/$defs/kind");
    assertNames(KindReader.CHANNEL_KEYS, Schema.RIG, "/$defs/kind/properties/channels");
    assertNames(GearReader.GEAR, Schema.RIG, "/properties/gear/additionalProperties");
    assertNames(GearReader.SWITCH, Schema.RIG, "/properties/foot switch");
    assertNames(HandsReader.KEYS, Schema.RIG, "/properties/hands");
    assertNames(PatchReader.KEYS, Schema.PATCH, "");
  }

  private static void assertNames(List<String> known, Schema schema, String at) throws IOException {
    Set<String> names = new TreeSet<>();
    JSON.readTree(schema.text()).at(at + "/properties").fieldNames().forEachRemaining(names::add);
    assertEquals(new TreeSet<>(known), names, schema + at);
  }

  @Test
  void theSchemaOfASetKnowsTheControllersThatTheReaderKnows() {
    SchemaJudge judge = new SchemaJudge(Schema.SET);
    for (String name : Controllers.names()) {
      String cue = "{set: a, rig: b, songs: [{song: c, patch: d, gear: {piano: {%s: 1}}}]}";
      assertEquals(List.of(), judge.faults(cue.formatted(name)), name);
      assertEquals(List.of(), judge.faults(cue.formatted("fine " + name)), name);
    }
  }

  @Test
  void everyFileOfTheSetsThatShipKeepsToItsSchema() throws IOException {
    List<Path> files = new ArrayList<>();
    for (String folder : List.of("sets", "src/main/resources/entracte/cli/first")) {
      try (Stream<Path> all = Files.walk(Path.of(folder))) {
        all.filter(file -> file.toString().endsWith(".yaml")).forEach(files::add);
      }
    }
    assertTrue(files.size() >= 18, files.toString());
    for (Path file : files) {
      String text = Files.readString(file);
      assertEquals(List.of(), new SchemaJudge(sort(text)).faults(text), file.toString());
    }
  }

  private static Schema sort(String text) {
    String first = text.lines().filter(line -> line.matches("\\w+: .*")).findFirst().orElseThrow();
    return Schema.valueOf(first.replaceFirst(":.*", "").toUpperCase(java.util.Locale.ROOT));
  }
}
