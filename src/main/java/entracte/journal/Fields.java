package entracte.journal;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;

/** Fields of a line, parted by tabs; what would break a line is escaped. */
final class Fields {
  private Fields() {}

  /** Puts fields together. */
  static final class Out {
    private final StringBuilder line = new StringBuilder();

    Out add(String field) {
      line.append(line.length() == 0 ? "" : "\t").append(escape(field));
      return this;
    }

    Out add(long field) {
      return add(Long.toString(field));
    }

    Out add(double field) {
      return add(Double.toString(field));
    }

    Out add(boolean field) {
      return add(field ? "yes" : "no");
    }

    /** How many, then each. */
    <T> Out each(Iterable<T> all, Consumer<T> write) {
      List<T> list = new ArrayList<>();
      all.forEach(list::add);
      add(list.size());
      list.forEach(write);
      return this;
    }

    String line() {
      return line.toString();
    }
  }

  /** Takes fields one after the other; throws if one is missing or of another kind. */
  static final class In {
    private final Iterator<String> fields;

    In(String line) {
      fields = List.of(line.split("\t", -1)).iterator();
    }

    /** Whether there are more fields; lines of earlier versions have fewer. */
    boolean goesOn() {
      return fields.hasNext();
    }

    String text() {
      return unescape(fields.next());
    }

    int whole() {
      return Integer.parseInt(text());
    }

    long wide() {
      return Long.parseLong(text());
    }

    double figure() {
      return Double.parseDouble(text());
    }

    boolean yes() {
      return text().equals("yes");
    }

    <T> List<T> each(Function<In, T> read) {
      int count = whole();
      List<T> all = new ArrayList<>();
      for (int i = 0; i < count; i++) {
        all.add(read.apply(this));
      }
      return all;
    }
  }

  private static String escape(String text) {
    return text.replace("\\", "\\\\")
        .replace("\t", "\\t")
        .replace("\n", "\\n")
        .replace("\r", "\\r");
  }

  private static String unescape(String text) {
    if (text.indexOf('\\') < 0) {
      return text;
    }
    StringBuilder plain = new StringBuilder();
    for (int i = 0; i < text.length(); i++) {
      char each = text.charAt(i);
      if (each != '\\' || i + 1 == text.length()) {
        plain.append(each);
        continue;
      }
      i++;
      char code = text.charAt(i);
      plain.append(code == 't' ? '\t' : code == 'n' ? '\n' : code == 'r' ? '\r' : code);
    }
    return plain.toString();
  }
}
