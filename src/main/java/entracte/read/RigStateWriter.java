package entracte.read;

import entracte.rig.CordStock;
import entracte.rig.Position;
import entracte.rig.RigState;
import java.math.BigDecimal;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;

/** Writes a state of a rig as {@link RigStateReader} reads it, sorted by name. */
public final class RigStateWriter {
  /** What needs no quotation marks, wherever in a YAML file it stands. */
  private static final Pattern PLAIN =
      Pattern.compile("[\\p{L}\\p{N}](?:[\\p{L}\\p{N} ._/+-]*[\\p{L}\\p{N}._/+-])?");

  private RigStateWriter() {}

  /** The text of the file. */
  public static String write(String name, RigState state) {
    Map<String, String> cords = new TreeMap<>();
    Map<String, String> lengths = new TreeMap<>();
    Map<String, String> positions = new TreeMap<>();
    for (int i = 0; i < state.cords().size(); i++) {
      String source = state.cords().get(i).source().toString();
      cords.put(source, state.cords().get(i).sink().toString());
      if (state.lengthCm().get(i) != CordStock.ANY_LENGTH) {
        lengths.put(source, state.lengthCm().get(i) + " cm");
      }
    }
    state.positions().forEach((control, at) -> positions.put(control.toString(), exact(at)));
    return "state: "
        + quote(Names.tidy(name))
        + "\n"
        + block("cords", cords)
        + block("lengths", lengths)
        + block("positions", positions);
  }

  /** With every digit: a knob must not leave an interval by being written down. */
  private static String exact(Position position) {
    if (position instanceof Position.At at) {
      BigDecimal value = BigDecimal.valueOf(at.value());
      return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
    }
    return position.toString();
  }

  private static String block(String key, Map<String, String> lines) {
    if (lines.isEmpty()) {
      return "";
    }
    StringBuilder block = new StringBuilder(key).append(":\n");
    lines.forEach(
        (name, value) ->
            block.append("  ").append(quote(name)).append(": ").append(quote(value)).append('\n'));
    return block.toString();
  }

  private static String quote(String text) {
    return PLAIN.matcher(text).matches() ? text : "'" + text.replace("'", "''") + "'";
  }
}
