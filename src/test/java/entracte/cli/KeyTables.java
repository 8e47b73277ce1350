package entracte.cli;

import entracte.read.Schema;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.yaml.snakeyaml.Yaml;

/** The keys of the files as tables, out of the schemas. */
final class KeyTables {
  /** Where a table goes: everything between these two lines is made. */
  private static final Pattern HOLE =
      Pattern.compile("(?s)(<!-- keys: (\\w+) at (\\S+) -->\n).*?(<!-- end of keys -->)");

  private KeyTables() {}

  /** The page with its tables made anew. */
  static String into(String page) {
    Matcher hole = HOLE.matcher(page);
    return hole.replaceAll(
        found ->
            Matcher.quoteReplacement(
                found.group(1) + table(found.group(2), found.group(3)) + found.group(4)));
  }

  /** Which tables a page has, as {@code rig at /properties/hands}. */
  static List<String> named(String page) {
    List<String> named = new ArrayList<>();
    Matcher hole = HOLE.matcher(page);
    while (hole.find()) {
      named.add(hole.group(2) + " at " + hole.group(3));
    }
    return named;
  }

  /** Every place in a schema that has keys of its own, named likewise. */
  static List<String> all() {
    List<String> all = new ArrayList<>();
    for (Schema schema : Schema.values()) {
      collect(schema.name().toLowerCase(Locale.ROOT), "", load(schema), all);
    }
    return all;
  }

  private static void collect(
      String schema, String path, Map<String, Object> at, List<String> all) {
    if (at.containsKey("properties")) {
      all.add(schema + " at " + (path.isEmpty() ? "/" : path.replace(' ', '_')));
    }
    at.forEach(
        (key, value) -> {
          if (value instanceof Map<?, ?>) {
            collect(schema, path + "/" + key, map(value), all);
          }
        });
  }

  private static String table(String schema, String path) {
    Map<String, Object> root = load(Schema.valueOf(schema.toUpperCase(Locale.ROOT)));
    Map<String, Object> at = root;
    for (String step : path.replace('_', ' ').split("/")) {
      at = step.isEmpty() ? at : map(at.get(step));
    }
    List<?> needed = (List<?>) at.getOrDefault("required", List.of());
    StringBuilder table = new StringBuilder("| key | what it says | value |\n|---|---|---|\n");
    map(at.get("properties"))
        .forEach(
            (key, value) ->
                table.append(
                    "| `%s`%s | %s | %s |\n"
                        .formatted(
                            key,
                            needed.contains(key) ? " (needed)" : "",
                            description(map(value), root),
                            value(map(value)))));
    return table.toString();
  }

  private static String description(Map<String, Object> key, Map<String, Object> root) {
    Object own = key.get("description");
    if (own == null && key.get("$ref") instanceof String ref) {
      Map<String, Object> defs = map(root.get("$defs"));
      own = map(defs.get(ref.replaceFirst(".*/", ""))).get("description");
    }
    return own == null ? "" : own.toString().replace("|", "\\|");
  }

  private static String value(Map<String, Object> key) {
    if (key.get("$ref") instanceof String ref) {
      return byName(ref.replaceFirst(".*/", ""));
    }
    if (key.get("enum") instanceof List<?> words) {
      return String.join(", ", words.stream().map(word -> "`" + word + "`").toList());
    }
    Object type = key.get("type");
    List<?> types = type instanceof List<?> several ? several : List.of(type);
    boolean oneOrMore = types.contains("array") && types.contains("string");
    return oneOrMore ? "a name, or a list of them" : sort(types) + range(key);
  }

  private static String sort(List<?> types) {
    return types.equals(List.of("string"))
        ? "a note, such as `D4`"
        : types.contains("integer")
            ? "a whole number"
            : types.contains("number")
                ? "a figure"
                : types.contains("array") ? "a list" : "a table";
  }

  private static String range(Map<String, Object> key) {
    return key.containsKey("minimum") && key.containsKey("maximum")
        ? " from " + key.get("minimum") + " to " + key.get("maximum")
        : "";
  }

  private static String byName(String ref) {
    return switch (ref) {
      case "text", "title" -> "words";
      case "file" -> "a file's name";
      case "names", "oneOrMore" -> "a name, or a list of them";
      case "yesOrNo" -> "`yes` or `no`";
      case "time" -> "a time";
      case "stretch" -> "a time, `0 s` as well";
      case "size" -> "a length";
      case "trigger" -> "what a pedal sends";
      case "groups" -> "lists of songs";
      case "settings", "gearCues" -> "a table";
      case "bank" -> "`0/2`, or a table";
      default -> throw new IllegalStateException("nobody says yet what a " + ref + " is");
    };
  }

  /** JSON is YAML, too. */
  private static Map<String, Object> load(Schema schema) {
    return map(new Yaml().load(schema.text()));
  }

  private static Map<String, Object> map(Object value) {
    Map<String, Object> map = new LinkedHashMap<>();
    ((Map<?, ?>) value).forEach((key, each) -> map.put(key.toString(), each));
    return map;
  }

  /** The names of the tables that one has and the other lacks. */
  static List<String> difference(List<String> one, List<String> other) {
    TreeSet<String> left = new TreeSet<>(one);
    left.removeAll(other);
    return List.copyOf(left);
  }
}
