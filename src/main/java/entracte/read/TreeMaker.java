package entracte.read;

import entracte.finding.Place;
import entracte.read.Tree.Entry;
import entracte.read.Tree.Leaf;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.yaml.snakeyaml.DumperOptions;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;

/**
 * Makes a {@link Tree} of one file's text and notes what is wrong with the YAML itself.
 *
 * <p>Depth is limited by SnakeYAML, so that the recursion here is too. A node that is used again
 * through an alias becomes one tree, so that time and memory stay linear in the size of the text.
 */
final class TreeMaker {
  static final int DEPTH_LIMIT = 50;
  static final int ALIAS_LIMIT = 50;

  /** Control characters and halves of characters, which only an escape can make. */
  private static final Pattern UNPRINTABLE = Pattern.compile("[\\p{Cc}\\p{Cs}&&[^\n\t]]");

  private final TextFile file;
  private final Notebook notes;

  /** The trees of the nodes that have an anchor. */
  private final Map<Node, Tree> made = new IdentityHashMap<>();

  /** The nodes with an anchor whose parts are being made. */
  private final Set<Node> open = Collections.newSetFromMap(new IdentityHashMap<>());

  private TreeMaker(TextFile file, Notebook notes) {
    this.file = file;
    this.notes = notes;
  }

  /**
   * The tree of a file; empty if it has none, which has then been noted.
   *
   * @param beginning advice for a file with nothing but blanks and comments
   */
  static Optional<Tree> read(TextFile file, String beginning, Notebook notes) {
    TreeMaker maker = new TreeMaker(file, notes);
    return maker.compose(beginning).map(maker::tree);
  }

  private Optional<Node> compose(String beginning) {
    try {
      Node root = new Yaml(limits()).compose(new StringReader(file.text()));
      if (root == null) {
        boolean comments = !file.text().isBlank();
        notes.error(
            file.name().wholeFile(),
            comments ? "this file holds nothing but comments" : "this file is empty",
            beginning);
      }
      return Optional.ofNullable(root);
    } catch (YAMLException mistake) {
      SyntaxMistake.note(mistake, file, notes);
    } catch (RuntimeException slip) {
      // SnakeYAML lets some through, such as a tag whose escapes make no valid URI.
      notes.error(
          file.name().wholeFile(), "this file cannot be read as YAML", "Is it a text file?");
    }
    return Optional.empty();
  }

  private static LoaderOptions limits() {
    LoaderOptions options = new LoaderOptions();
    options.setNestingDepthLimit(DEPTH_LIMIT);
    options.setMaxAliasesForCollections(ALIAS_LIMIT);
    options.setCodePointLimit(FileLoader.LIMIT_MEGABYTES << 20);
    options.setProcessComments(false);
    return options;
  }

  private Place place(Node node) {
    return file.place(node.getStartMark().getLine(), node.getStartMark().getColumn());
  }

  private Tree tree(Node node) {
    return node.getAnchor() == null ? make(node) : anchored(node);
  }

  /** A node that an alias may lead to again. */
  private Tree anchored(Node node) {
    Tree known = made.get(node);
    if (known != null) {
      return known;
    }
    if (!open.add(node)) {
      notes.error(
          place(node),
          "this is written as a part of itself",
          "Write out what the alias stands for.");
      return new Tree.Items(List.of(), place(node));
    }
    Tree tree = make(node);
    open.remove(node);
    made.put(node, tree);
    return tree;
  }

  private Tree make(Node node) {
    noteTag(node);
    return switch (node.getNodeId()) {
      case scalar -> scalar((ScalarNode) node);
      case sequence -> items((SequenceNode) node);
      case mapping -> table((MappingNode) node);
      case anchor -> throw new IllegalStateException("SnakeYAML resolves aliases itself");
    };
  }

  private void noteTag(Node node) {
    if (!node.getTag().getValue().startsWith("tag:yaml.org,2002:")) {
      notes.error(place(node), "a ! means nothing here", "Put the text in quotation marks.");
    }
  }

  private Tree scalar(ScalarNode node) {
    String text = node.getValue();
    Place place = place(node);
    if (node.isPlain() && (text.isEmpty() || text.equals("~"))) {
      return new Tree.Nothing(place);
    }
    boolean escapes = node.getScalarStyle() == DumperOptions.ScalarStyle.DOUBLE_QUOTED;
    if (escapes && UNPRINTABLE.matcher(text).find()) {
      notes.error(place, "this text holds a character that cannot be shown", "Delete it.");
      text = UNPRINTABLE.matcher(text).replaceAll("");
    }
    return new Leaf(text, place);
  }

  private Tree items(SequenceNode node) {
    List<Tree> list = new ArrayList<>();
    for (Node child : node.getValue()) {
      list.add(tree(child));
    }
    return new Tree.Items(list, place(node));
  }

  private Tree table(MappingNode node) {
    Map<String, Entry> entries = new LinkedHashMap<>();
    Node before = null;
    for (NodeTuple tuple : node.getValue()) {
      Optional<String> figure = DecimalComma.between(before, tuple);
      if (figure.isPresent()) {
        noteComma(before, figure.get());
      } else {
        key(tuple.getKeyNode())
            .map(key -> new Entry(key, tree(tuple.getValueNode())))
            .ifPresent(entry -> add(entry, entries));
      }
      before = tuple.getValueNode();
    }
    return new Tree.Table(List.copyOf(entries.values()), place(node));
  }

  private void noteComma(Node figure, String text) {
    notes.slip(
        place(figure),
        Names.quote(text) + " is not a figure",
        "Write " + text.replace(',', '.') + ", with a point.");
  }

  private Optional<Leaf> key(Node node) {
    Tree key = tree(node);
    Optional<Leaf> leaf = key.leaf().filter(l -> !l.name().isEmpty());
    if (leaf.isEmpty() && (key.isNothing() || key.leaf().isPresent())) {
      notes.error(key.place(), "there is no name before the colon", "");
    } else if (leaf.isEmpty()) {
      notes.error(
          key.place(),
          "a name is text, not " + key.what(),
          "Text with [ or { in it is put in quotation marks.");
    }
    return leaf;
  }

  private void add(Entry entry, Map<String, Entry> entries) {
    if (entry.name().equals("<<")) {
      notes.error(
          entry.key().place(),
          "\"<<\" is not known here",
          "To build on another patch write like: and its file.");
      return;
    }
    Entry first = entries.putIfAbsent(entry.name(), entry);
    if (first != null) {
      notes.error(
          entry.key().place(),
          Names.quote(entry.name()) + " is written twice",
          "It stands in line " + first.key().place().line() + " already. " + mend(first, entry));
    }
  }

  /** A source written twice wants several sinks; anything else is a slip. */
  private static String mend(Entry first, Entry second) {
    boolean cords =
        first.name().contains(".")
            && first.value().table().isEmpty()
            && second.value().table().isEmpty();
    return cords
        ? "One source feeds several sinks by a list: [one, another]."
        : "Keep one of them.";
  }
}
