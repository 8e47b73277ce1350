package entracte.read;

import java.util.Optional;
import java.util.regex.Pattern;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeId;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;

/**
 * Recognizes a figure with a comma: in <code>{decay: 4,5}</code> YAML sees a name 5 without a
 * value, and to say so helps nobody to find the comma.
 */
final class DecimalComma {
  private static final Pattern WHOLE = Pattern.compile("[+-]?\\d{1,9}");

  /** What stands behind the comma, with the tolerance if there is one. */
  private static final Pattern REST =
      Pattern.compile("\\d{1,9}(?:\\s*(?:\\+-|\\+/-|±)\\s*\\d[\\d.]*)?");

  private DecimalComma() {}

  /**
   * The figure as written, if a name without a value stands right behind the comma after a figure.
   *
   * @param before the value before the name; null if the name is the first
   */
  static Optional<String> between(Node before, NodeTuple after) {
    Node key = after.getKeyNode();
    if (before == null || before.getEndMark().getIndex() + 1 != key.getStartMark().getIndex()) {
      return Optional.empty();
    }
    Optional<String> whole = plain(before).filter(text -> WHOLE.matcher(text).matches());
    Optional<String> rest = plain(key).filter(text -> REST.matcher(text).matches());
    boolean alone = plain(after.getValueNode()).filter(String::isEmpty).isPresent();
    return alone ? whole.flatMap(w -> rest.map(r -> w + "," + r)) : Optional.empty();
  }

  private static Optional<String> plain(Node node) {
    return node.getNodeId() == NodeId.scalar && ((ScalarNode) node).isPlain()
        ? Optional.of(((ScalarNode) node).getValue())
        : Optional.empty();
  }
}
