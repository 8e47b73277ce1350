package entracte.cli;

import java.util.Iterator;
import java.util.Map;

/**
 * Writes JSON (RFC 8259): maps, lists, strings, finite numbers, booleans and null. Objects keep the
 * order of their map; lists of plain values stand on one line.
 */
final class Json {
  private static final int FIRST_PLAIN = 0x20;

  private final StringBuilder out = new StringBuilder();

  private Json() {}

  static String write(Object value) {
    Json json = new Json();
    json.value(value, "");
    return json.out.append('\n').toString();
  }

  private void value(Object value, String indent) {
    if (value instanceof Map<?, ?> map) {
      object(map, indent);
    } else if (value instanceof Iterable<?> list) {
      array(list, indent);
    } else if (value instanceof String text) {
      string(text);
    } else if (value instanceof Double number) {
      out.append(number(number));
    } else if (value == null || value instanceof Boolean || value instanceof Integer) {
      out.append(value);
    } else {
      throw new IllegalArgumentException("no JSON for " + value.getClass());
    }
  }

  private void object(Map<?, ?> map, String indent) {
    String inner = indent + " ";
    String separator = "";
    out.append('{');
    for (Map.Entry<?, ?> entry : map.entrySet()) {
      out.append(separator).append('\n').append(inner);
      string((String) entry.getKey());
      out.append(": ");
      value(entry.getValue(), inner);
      separator = ",";
    }
    out.append(map.isEmpty() ? "}" : "\n" + indent + "}");
  }

  private void array(Iterable<?> list, String indent) {
    String inner = indent + " ";
    boolean plain = isPlain(list);
    out.append('[');
    for (Iterator<?> each = list.iterator(); each.hasNext(); ) {
      out.append(plain ? "" : "\n" + inner);
      value(each.next(), inner);
      out.append(!each.hasNext() ? "" : plain ? ", " : ",");
    }
    out.append(plain ? "]" : "\n" + indent + "]");
  }

  private static boolean isPlain(Iterable<?> list) {
    for (Object each : list) {
      if (each instanceof Map || each instanceof Iterable) {
        return false;
      }
    }
    return true;
  }

  /** Whole numbers without a fraction: 4, not 4.0. */
  private static String number(double number) {
    if (!Double.isFinite(number)) {
      throw new IllegalArgumentException("no JSON for " + number);
    }
    return new java.math.BigDecimal(Double.toString(number)).stripTrailingZeros().toPlainString();
  }

  private void string(String text) {
    out.append('"');
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '"' || c == '\\') {
        out.append('\\').append(c);
      } else if (c < FIRST_PLAIN || Character.isSurrogate(c) && !isPaired(text, i)) {
        out.append(String.format("\\u%04x", (int) c));
      } else {
        out.append(c);
      }
    }
    out.append('"');
  }

  private static boolean isPaired(String text, int i) {
    return Character.isHighSurrogate(text.charAt(i))
        ? i + 1 < text.length() && Character.isLowSurrogate(text.charAt(i + 1))
        : i > 0 && Character.isHighSurrogate(text.charAt(i - 1));
  }
}
