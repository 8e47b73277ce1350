package entracte.read;

import java.io.StringReader;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.yaml.snakeyaml.DumperOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeId;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;
import org.yaml.snakeyaml.nodes.Tag;
import org.yaml.snakeyaml.resolver.Resolver;

/** Makes of a good file another one, of which nobody knows beforehand whether it is good. */
final class FileBender {
  /** What stands somewhere in a good file, and what stands nowhere. */
  private static final String[] SCALARS = {
    "5",
    "-3",
    "0",
    "2.5",
    "0.3",
    "1",
    "2",
    "99",
    "100",
    "10000",
    "12345",
    "3601",
    "yes",
    "no",
    "true",
    "40 s",
    "2:30",
    "1:02:03",
    "1 min 30 s",
    "40",
    "-5 s",
    "2 min",
    "90 sec",
    "30 cm",
    "0.9 m",
    "300 mm",
    "30.5 cm",
    "6 cm",
    "0..10",
    "-5..5",
    "0.5 .. 2",
    "0-10",
    "none",
    "cc 64",
    "note 128",
    "program 0",
    "program 128",
    "page down",
    "cc 7 on channel 16",
    "menu",
    "back",
    "high",
    "high and low",
    "song",
    "changeover",
    "at once",
    "tight",
    "snug",
    "0/2",
    "0 / 1",
    "1,2",
    "6.5 +-0.5",
    "free",
    "a",
    "A4",
    "F#3",
    "H2",
    "441.5",
    "100k",
    "1.5 M",
    "linear",
    "pitch x2",
    "pitch x1",
    "pitch x0",
    "pitch x99",
    "pitch x100",
    "oscillator",
    "",
    "~",
    "' '",
    "\"\""
  };

  private static final String[] NAMES = {
    "set",
    "rig",
    "patch",
    "gap",
    "songs",
    "song",
    "kinds",
    "rows",
    "gear",
    "port",
    "channel",
    "width",
    "taps",
    "leaves",
    "count",
    "closed",
    "settings",
    "like",
    "roles",
    "notes",
    "tune",
    "tune on",
    "warm up",
    "A4",
    "listen for",
    "signals",
    "audio",
    "ohms in",
    "volts per octave",
    "attenuates",
    "played by",
    "place",
    "first",
    "tempo",
    "volume",
    "cc 74",
    "rpn 0",
    "fine volume",
    "bank",
    "program",
    "high",
    "press",
    "light",
    "plugs",
    "30 cm",
    "45 cm",
    "0.5 m",
    "45",
    "device",
    "colour",
    "zz top"
  };

  private final Random random;

  FileBender(Random random) {
    this.random = random;
  }

  /** The file with one to three things changed. */
  String bend(String yaml) {
    Node root = new Yaml().compose(new StringReader(yaml));
    for (int times = 1 + random.nextInt(3); times > 0; times--) {
      List<Node> inner = new ArrayList<>();
      collect(root, inner);
      change(inner.get(random.nextInt(inner.size())));
    }
    return write(root);
  }

  private static String write(Node root) {
    DumperOptions options = new DumperOptions();
    options.setWidth(1000);
    StringWriter out = new StringWriter();
    new Yaml(options).serialize(root, out);
    return out.toString();
  }

  /** Everything that holds something. */
  private static void collect(Node node, List<Node> inner) {
    if (node instanceof SequenceNode list) {
      inner.add(list);
      list.getValue().forEach(each -> collect(each, inner));
    } else if (node instanceof MappingNode table) {
      inner.add(table);
      table.getValue().forEach(line -> collect(line.getValueNode(), inner));
    }
  }

  private void change(Node node) {
    if (node instanceof SequenceNode list) {
      changeList(list.getValue());
    } else {
      changeTable(((MappingNode) node).getValue());
    }
  }

  private void changeList(List<Node> items) {
    int at = items.isEmpty() ? 0 : random.nextInt(items.size());
    switch (items.isEmpty() ? 0 : random.nextInt(4)) {
      case 0 -> items.add(any());
      case 1 -> items.remove(at);
      default -> items.set(at, any());
    }
  }

  private void changeTable(List<NodeTuple> lines) {
    int at = lines.isEmpty() ? 0 : random.nextInt(lines.size());
    switch (lines.isEmpty() ? 0 : random.nextInt(8)) {
      case 0 -> add(lines, new NodeTuple(scalar(one(NAMES)), any()));
      case 1 -> lines.remove(at);
      case 2 -> {
        Node value = lines.remove(at).getValueNode();
        add(lines, new NodeTuple(scalar(one(NAMES)), value));
      }
      default -> lines.set(at, new NodeTuple(lines.get(at).getKeyNode(), any()));
    }
  }

  /** A name written twice is a mistake of YAML's own, which no schema gets to see. */
  private static void add(List<NodeTuple> lines, NodeTuple added) {
    String name = ((ScalarNode) added.getKeyNode()).getValue();
    lines.removeIf(line -> ((ScalarNode) line.getKeyNode()).getValue().equals(name));
    lines.add(added);
  }

  private Node any() {
    return switch (random.nextInt(8)) {
      case 0 -> list();
      case 1 -> table();
      default -> scalar(one(SCALARS));
    };
  }

  private Node list() {
    List<Node> items = new ArrayList<>();
    for (int count = random.nextInt(3); count > 0; count--) {
      items.add(scalar(one(SCALARS)));
    }
    return new SequenceNode(Tag.SEQ, items, DumperOptions.FlowStyle.FLOW);
  }

  private Node table() {
    List<NodeTuple> lines = new ArrayList<>();
    for (int count = random.nextInt(3); count > 0; count--) {
      add(lines, new NodeTuple(scalar(one(NAMES)), scalar(one(SCALARS))));
    }
    return new MappingNode(Tag.MAP, lines, DumperOptions.FlowStyle.FLOW);
  }

  private Node scalar(String written) {
    return written.startsWith("'") || written.startsWith("\"")
        ? new Yaml().compose(new StringReader(written))
        : plain(written);
  }

  private static Node plain(String text) {
    Tag tag = new Resolver().resolve(NodeId.scalar, text, true);
    return new ScalarNode(tag, text, null, null, DumperOptions.ScalarStyle.PLAIN);
  }

  private String one(String[] of) {
    return of[random.nextInt(of.length)];
  }
}
