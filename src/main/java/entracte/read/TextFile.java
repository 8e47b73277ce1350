package entracte.read;

import entracte.finding.Place;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/** A file's text and its lines, cut where YAML cuts them. */
final class TextFile {
  private static final String LINE_BREAK = "\r\n|[\n\r\u0085\u2028\u2029]";

  private static final Pattern INDENTED_BY_TAB = Pattern.compile(" *\t\\s*[^\\s#]");

  private final FileName name;
  private final String text;
  private final List<String> lines;

  TextFile(FileName name, String text) {
    this.name = name;
    this.text = text;
    this.lines = List.of(text.split(LINE_BREAK, -1));
  }

  FileName name() {
    return name;
  }

  String text() {
    return text;
  }

  /**
   * A place in this file, at most just behind the last character of the line: the YAML reader
   * counts a carriage return that ends the file as a character.
   *
   * @param line from 0
   * @param column from 0, in code points
   */
  Place place(int line, int column) {
    String lineText = line < lines.size() ? lines.get(line) : "";
    int within = Math.min(column, lineText.codePointCount(0, lineText.length()));
    return new Place(name.shown(), line + 1, within + 1, lineText);
  }

  /** The numbers of the lines, from 1, that have a tab before their first other character. */
  List<Integer> linesIndentedByTabs() {
    return IntStream.rangeClosed(1, lines.size())
        .filter(line -> INDENTED_BY_TAB.matcher(lines.get(line - 1)).lookingAt())
        .boxed()
        .toList();
  }

  /** Just behind the last character. */
  Place end() {
    String last = lines.get(lines.size() - 1);
    return place(lines.size() - 1, last.codePointCount(0, last.length()));
  }
}
