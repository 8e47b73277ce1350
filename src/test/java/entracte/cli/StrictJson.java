package entracte.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Reads JSON as RFC 8259 has it and nothing more, so that tests see what other programs will. */
final class StrictJson {
  private final String text;
  private int at;

  private StrictJson(String text) {
    this.text = text;
  }

  static Object read(String text) {
    StrictJson json = new StrictJson(text);
    Object value = json.value();
    json.space();
    json.demand(json.at == text.length());
    return value;
  }

  private Object value() {
    space();
    char first = text.charAt(at);
    return switch (first) {
      case '{' -> object();
      case '[' -> array();
      case '"' -> string();
      case 't' -> word("true", true);
      case 'f' -> word("false", false);
      case 'n' -> word("null", null);
      default -> number();
    };
  }

  private Map<String, Object> object() {
    Map<String, Object> map = new LinkedHashMap<>();
    take('{');
    while (!next('}')) {
      if (!map.isEmpty()) {
        take(',');
        space();
      }
      String key = string();
      space();
      take(':');
      demand(!map.containsKey(key));
      map.put(key, value());
    }
    take('}');
    return map;
  }

  private List<Object> array() {
    List<Object> list = new ArrayList<>();
    take('[');
    while (!next(']')) {
      if (!list.isEmpty()) {
        take(',');
      }
      list.add(value());
    }
    take(']');
    return list;
  }

  private String string() {
    StringBuilder out = new StringBuilder();
    take('"');
    while (text.charAt(at) != '"') {
      char c = text.charAt(at++);
      demand(c >= ' ');
      out.append(c == '\\' ? escaped() : c);
    }
    take('"');
    return out.toString();
  }

  private char escaped() {
    char c = text.charAt(at++);
    if (c == 'u') {
      at += 4;
      return (char) Integer.parseInt(text.substring(at - 4, at), 16);
    }
    int plain = "\"\\/bfnrt".indexOf(c);
    demand(plain >= 0);
    return "\"\\/\b\f\n\r\t".charAt(plain);
  }

  private Object number() {
    int from = at;
    while (at < text.length() && "+-.0123456789eE".indexOf(text.charAt(at)) >= 0) {
      at++;
    }
    String number = text.substring(from, at);
    demand(number.matches("-?(0|[1-9]\\d*)(\\.\\d+)?([eE][+-]?\\d+)?"));
    return Double.valueOf(number);
  }

  private Object word(String word, Object value) {
    demand(text.startsWith(word, at));
    at += word.length();
    return value;
  }

  private boolean next(char c) {
    space();
    return text.charAt(at) == c;
  }

  private void take(char c) {
    demand(text.charAt(at) == c);
    at++;
  }

  private void space() {
    while (at < text.length() && " \n\r\t".indexOf(text.charAt(at)) >= 0) {
      at++;
    }
  }

  private void demand(boolean right) {
    if (!right) {
      throw new AssertionError("no JSON at " + at + ": " + text);
    }
  }
}
