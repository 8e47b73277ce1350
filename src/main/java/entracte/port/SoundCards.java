package entracte.port;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What Linux itself says of the sound cards. Java reads its list of MIDI ports afresh only when
 * their number changes: a device that was swapped for another, or pulled and plugged in again,
 * between two looks is still listed as before, while what is sent to it goes nowhere or elsewhere.
 * On other systems nothing is known here and Java's list is believed.
 *
 * @param ids the id of each card by its number, as in the list of cards; empty if unknown
 * @param nodes the device files of MIDI ports, each with what tells it from an earlier one of its
 *     name
 */
record SoundCards(Map<Integer, String> ids, Map<String, String> nodes) {
  private static final Path CARDS = Path.of("/proc/asound/cards");
  private static final Path NODES = Path.of("/dev/snd");

  /** A line {@code " 2 [Synth ]: USB-Audio - ..."}. */
  private static final Pattern CARD = Pattern.compile("^\\s*(\\d+) \\[([^\\]]*)\\]:");

  /** The card in a port's name, {@code "Synth [hw:2,0,0]"}. */
  private static final Pattern ON_CARD = Pattern.compile("^(.*?)\\s*\\[hw:(\\d+)[,\\]]");

  SoundCards {
    ids = Map.copyOf(ids);
    nodes = Map.copyOf(nodes);
  }

  static SoundCards now() {
    return read(CARDS, NODES);
  }

  static SoundCards read(Path cards, Path nodes) {
    return new SoundCards(ids(cards), nodes(nodes));
  }

  private static Map<Integer, String> ids(Path cards) {
    Map<Integer, String> ids = new TreeMap<>();
    try {
      for (String line : Files.readAllLines(cards)) {
        Matcher card = CARD.matcher(line);
        if (card.find()) {
          ids.put(Integer.parseInt(card.group(1)), card.group(2).strip());
        }
      }
    } catch (IOException notLinux) {
      return Map.of();
    }
    return ids;
  }

  private static Map<String, String> nodes(Path folder) {
    Map<String, String> nodes = new TreeMap<>();
    try (DirectoryStream<Path> all = Files.newDirectoryStream(folder, "midi*")) {
      for (Path node : all) {
        BasicFileAttributes known = Files.readAttributes(node, BasicFileAttributes.class);
        nodes.put(node.getFileName().toString(), known.fileKey() + " " + known.creationTime());
      }
    } catch (IOException notLinux) {
      return Map.of();
    }
    return nodes;
  }

  /** Whether a device file of {@code before} is another one by now. */
  boolean replaced(SoundCards before) {
    return nodes.entrySet().stream()
        .anyMatch(
            node ->
                !before.nodes.getOrDefault(node.getKey(), node.getValue()).equals(node.getValue()));
  }

  /** Whether a port that Java lists can be what stands there now. */
  boolean mayHave(String listed) {
    Matcher port = ON_CARD.matcher(listed);
    if (ids.isEmpty() || !port.find()) {
      return true;
    }
    Optional<String> id = Optional.ofNullable(ids.get(Integer.parseInt(port.group(2))));
    return id.isPresent() && id.get().equals(port.group(1));
  }
}
