package entracte.read;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.StringReader;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.yaml.snakeyaml.DumperOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;

/**
 * Every place of a good file that its schema has a rule of its own for, each once, and files in
 * which one place holds something else.
 */
final class EveryPlace {
  /** Something of every shape, and figures, times, lengths and words on both sides of each rule. */
  private static final List<String> VALUES =
      List.of(
          "~",
          "''",
          "' '",
          "word",
          "two words",
          "yes",
          "no",
          "true",
          "none",
          "'5'",
          "'-5'",
          "0",
          "1",
          "2",
          "5",
          "16",
          "99",
          "100",
          "128",
          "380",
          "480",
          "481",
          "3600",
          "3601",
          "10000",
          "10001",
          "-1",
          "-0.5",
          "0.5",
          "2.5",
          "9.5",
          "10",
          "11",
          "1e3",
          "999999",
          "1000000",
          "1000000000",
          "40 s",
          "300 ms",
          "2:30",
          "1:02:03",
          "2:75",
          "1 h 5 min",
          "-5 s",
          "0 s",
          "40 sec",
          "30 cm",
          "0.9 m",
          "300 mm",
          "0 cm",
          "6 inches",
          "0..10",
          "-5 .. 5",
          "0-10",
          "6 +-0.5",
          "100k",
          "1.5 M",
          "linear",
          "pitch x2",
          "pitch x0",
          "pitch x100",
          "cc 64",
          "cc 128",
          "note 60 on channel 16",
          "program 0",
          "page down",
          "at once",
          "high",
          "song",
          "menu",
          "tight",
          "A4",
          "H2",
          "0/2",
          "0/",
          "[]",
          "[a]",
          "[a, b]",
          "[a, a]",
          "[none, a]",
          "[~]",
          "[[]]",
          "[[a]]",
          "[[a, b]]",
          "[{}]",
          "{}",
          "{a: b}",
          "{a: 1}",
          "{a: ~}",
          "{a: []}",
          "{a: {}}",
          "{a: {a: b}}",
          "{30 cm: 4}",
          "{30 cm: -1}",
          "{high: 0}",
          "{high: 0, low: 2}",
          "{' ': a}",
          "{<<: a}");

  /** What a line may be called instead, besides its own name. */
  private static final List<String> NAMES =
      List.of("zz top", "' '", "<<", "5", "30 cm", "45", "30.5 cm", "0 mm", "cc 128", "rpn 0");

  private static final List<Node> OTHERS = VALUES.stream().map(EveryPlace::node).toList();

  private static final Pattern WAY = Pattern.compile("#/(.*)");
  private static final ObjectMapper JSON = new ObjectMapper();

  private final String text;
  private final JsonNode schema;

  /** The way to each place in the file, by that in the schema. */
  private final Map<String, List<Integer>> places = new LinkedHashMap<>();

  EveryPlace(String text, Schema schema) {
    this.text = text;
    this.schema = tree(schema);
    collect(root(), this.schema, "", List.of());
  }

  /** A schema, for reading. */
  static JsonNode tree(Schema schema) {
    try {
      return JSON.readTree(schema.text());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private Node root() {
    return node(text);
  }

  /** The ways to the places in the schema, such as {@code /properties/songs/items}. */
  List<String> names() {
    return List.copyOf(places.keySet());
  }

  private void collect(Node node, JsonNode rule, String name, List<Integer> way) {
    places.putIfAbsent(name + " " + node.getNodeId(), way);
    for (int at = 0; at < size(node); at++) {
      List<Integer> further = new ArrayList<>(way);
      further.add(at);
      String step = step(resolved(rule), key(node, at));
      collect(value(node, at), resolved(rule).at(step), name + step, further);
    }
  }

  private JsonNode resolved(JsonNode rule) {
    Matcher way = WAY.matcher(rule.path("$ref").asText());
    return way.matches() ? resolved(schema.at("/" + way.group(1))) : rule;
  }

  /** The way from a rule to that for a line of that name or, without a name, for an item. */
  private static String step(JsonNode rule, String key) {
    if (key.isEmpty()) {
      return "/items";
    }
    if (rule.path("properties").has(key)) {
      return "/properties/" + key;
    }
    for (String pattern : (Iterable<String>) rule.path("patternProperties")::fieldNames) {
      if (Pattern.compile(pattern).matcher(key).find()) {
        return "/patternProperties/" + pattern;
      }
    }
    return "/additionalProperties";
  }

  private static int size(Node node) {
    return switch (node.getNodeId()) {
      case sequence -> ((SequenceNode) node).getValue().size();
      case mapping -> ((MappingNode) node).getValue().size();
      case scalar, anchor -> 0;
    };
  }

  private static String key(Node node, int at) {
    return node instanceof MappingNode table
        ? ((ScalarNode) table.getValue().get(at).getKeyNode()).getValue()
        : "";
  }

  private static Node value(Node node, int at) {
    return node instanceof MappingNode table
        ? table.getValue().get(at).getValueNode()
        : ((SequenceNode) node).getValue().get(at);
  }

  /** Hands over the file with the place holding something else, called otherwise, or gone. */
  void forEachOther(String name, Consumer<Node> use) {
    List<Integer> way = places.get(name);
    if (way.isEmpty()) {
      OTHERS.forEach(use);
      return;
    }
    Node root = root();
    Node holder = root;
    for (int at : way.subList(0, way.size() - 1)) {
      holder = value(holder, at);
    }
    int at = way.get(way.size() - 1);
    if (holder instanceof SequenceNode list) {
      Node old = list.getValue().get(at);
      exchange(list.getValue(), at, OTHERS, () -> use.accept(root));
      list.getValue().addAll(List.of(old, node(write(old))));
      use.accept(root);
    } else {
      List<NodeTuple> lines = ((MappingNode) holder).getValue();
      NodeTuple old = lines.get(at);
      List<NodeTuple> others = new ArrayList<>();
      OTHERS.forEach(other -> others.add(new NodeTuple(old.getKeyNode(), other)));
      NAMES.forEach(called -> others.add(new NodeTuple(node(called), old.getValueNode())));
      exchange(lines, at, others, () -> use.accept(root));
    }
  }

  /** Puts each of the others in, then leaves the place out. */
  private static <T> void exchange(List<T> all, int at, List<T> others, Runnable use) {
    for (T other : others) {
      all.set(at, other);
      use.run();
    }
    all.remove(at);
    use.run();
  }

  private static Node node(String written) {
    return new Yaml().compose(new StringReader(written));
  }

  /** A file with what is in it. */
  static String write(Node root) {
    DumperOptions options = new DumperOptions();
    options.setWidth(1000);
    StringWriter out = new StringWriter();
    new Yaml(options).serialize(root, out);
    return out.toString();
  }
}
