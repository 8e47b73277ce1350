package entracte.read;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SchemaValidatorsConfig;
import com.networknt.schema.SpecVersion;
import com.networknt.schema.ValidationMessage;
import java.io.StringReader;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.List;
import java.util.regex.Pattern;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;

/**
 * What an editor makes of a file: YAML 1.2 with its core schema (yaml.org, section 10.3.2), held to
 * our JSON Schema by a validator that is not ours.
 */
final class SchemaJudge {
  private static final JsonSchemaFactory FACTORY =
      JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012);

  private static final Pattern NULL = Pattern.compile("null|Null|NULL|~|");
  private static final Pattern BOOLEAN = Pattern.compile("true|True|TRUE|false|False|FALSE");
  private static final Pattern INTEGER = Pattern.compile("[-+]?[0-9]+");
  private static final Pattern FLOAT =
      Pattern.compile("[-+]?(\\.[0-9]+|[0-9]+(\\.[0-9]*)?)([eE][-+]?[0-9]{1,3})?");

  private final JsonSchema schema;

  SchemaJudge(Schema schema) {
    SchemaValidatorsConfig config = SchemaValidatorsConfig.builder().failFast(false).build();
    this.schema = FACTORY.getSchema(schema.text(), config);
  }

  /** What is wrong with a file; it must be YAML. */
  List<String> faults(String yaml) {
    Node root = new Yaml().compose(new StringReader(yaml));
    return schema.validate(json(root)).stream().map(ValidationMessage::getMessage).toList();
  }

  /** The rules of the schema that a file breaks, each as the way to it. */
  List<String> broken(Node root) {
    return schema.validate(json(root)).stream()
        .map(message -> "#" + message.getSchemaLocation().getFragment())
        .toList();
  }

  private static JsonNode json(Node node) {
    return switch (node.getNodeId()) {
      case scalar -> scalar((ScalarNode) node);
      case sequence -> list((SequenceNode) node);
      case mapping -> table((MappingNode) node);
      case anchor -> throw new IllegalArgumentException("SnakeYAML resolves aliases itself");
    };
  }

  private static JsonNode scalar(ScalarNode node) {
    String text = node.getValue();
    JsonNodeFactory make = JsonNodeFactory.instance;
    if (!node.isPlain()) {
      return make.textNode(text);
    }
    if (NULL.matcher(text).matches()) {
      return make.nullNode();
    }
    if (BOOLEAN.matcher(text).matches()) {
      return make.booleanNode(text.equalsIgnoreCase("true"));
    }
    if (INTEGER.matcher(text).matches()) {
      return make.numberNode(new BigInteger(text));
    }
    return FLOAT.matcher(text).matches()
        ? make.numberNode(new BigDecimal(text))
        : make.textNode(text);
  }

  private static JsonNode list(SequenceNode node) {
    ArrayNode list = JsonNodeFactory.instance.arrayNode();
    node.getValue().forEach(each -> list.add(json(each)));
    return list;
  }

  private static JsonNode table(MappingNode node) {
    ObjectNode table = JsonNodeFactory.instance.objectNode();
    for (NodeTuple line : node.getValue()) {
      table.set(((ScalarNode) line.getKeyNode()).getValue(), json(line.getValueNode()));
    }
    return table;
  }
}
