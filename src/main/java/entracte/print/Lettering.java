package entracte.print;

import entracte.print.Mark.Words;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

/**
 * Sets text in the embedded font, and remembers which characters it has no letters for. One object
 * for each document.
 */
final class Lettering {
  /** From baseline to baseline, in em: no letter of one line reaches into the next. */
  private static final double LINE_EM = 1.25;

  /** From the top of a line to its baseline, in em. */
  private static final double BASELINE_EM = 0.96;

  private static final char MISSING = '?';
  private static final String CUT = "..";

  private final Map<Face, FontFile> fonts = new EnumMap<>(Face.class);
  private final Map<String, String> cleaned = new HashMap<>();
  private final TreeSet<Integer> missing = new TreeSet<>();

  Lettering() {
    for (Face face : Face.values()) {
      fonts.put(face, new FontFile(face));
    }
  }

  FontFile font(Face face) {
    return fonts.get(face);
  }

  /** The characters that were asked for and that the font lacks, each once. */
  List<String> missing() {
    return missing.stream()
        .map(c -> String.format("%s (U+%04X)", Character.toString(c), c))
        .toList();
  }

  /** The same text with nothing in it that cannot be printed. */
  String clean(String text) {
    return cleaned.computeIfAbsent(text, this::cleaned);
  }

  private String cleaned(String text) {
    StringBuilder clean = new StringBuilder();
    Normalizer.normalize(text, Normalizer.Form.NFC).codePoints().forEach(c -> put(clean, c));
    return clean.toString();
  }

  private void put(StringBuilder clean, int codePoint) {
    if (Character.isWhitespace(codePoint) || Character.isISOControl(codePoint)) {
      clean.append(' ');
    } else if (isInvisible(codePoint)) {
      return;
    } else if (has(codePoint)) {
      clean.appendCodePoint(codePoint);
    } else {
      missing.add(codePoint);
      clean.append(MISSING);
    }
  }

  private boolean has(int codePoint) {
    return !Visual.isJoined(codePoint)
        && font(Face.PLAIN).has(codePoint)
        && font(Face.BOLD).has(codePoint);
  }

  /** Joiners, direction marks and choosers of a picture: they have no ink of their own. */
  private static boolean isInvisible(int codePoint) {
    return Character.getType(codePoint) == Character.FORMAT
        || codePoint >= 0xFE00 && codePoint <= 0xFE0F;
  }

  double em(Face face, double capital) {
    return capital / font(face).capital();
  }

  double lineHeight(double capital) {
    return LINE_EM * em(Face.PLAIN, capital);
  }

  /** How far below the top of a line its letters stand. */
  double baseline(double capital) {
    return BASELINE_EM * em(Face.PLAIN, capital);
  }

  /** The width of a clean text in mm. */
  double width(String text, Face face, double capital) {
    return em(face, capital) * text.codePoints().mapToDouble(font(face)::width).sum();
  }

  /** A line of text at a place; the text is cleaned. */
  Words words(String text, Face face, double x, double baseline, double capital) {
    String clean = clean(text);
    double width = width(clean, face, capital);
    return new Words(clean, face, x, baseline, capital, width, false);
  }

  /**
   * The lines of a text, none wider than {@code width} mm.
   *
   * @param indent what the first line has less, in mm
   */
  List<String> wrap(String text, Face face, double capital, double width, double indent) {
    double em = em(face, capital);
    return Fill.lines(clean(text), width / em, indent / em, font(face)::width);
  }

  /** Lines of a name, at the most so many; a longer name ends in two dots. */
  List<String> name(String text, Face face, double capital, double width, int most) {
    return name(text, "", face, capital, width, most);
  }

  /** The same with a tail behind the name that is never cut off, if the lines can hold it. */
  List<String> name(String text, String tail, Face face, double capital, double width, int most) {
    List<String> lines = wrap(text + tail, face, capital, width, 0);
    List<String> own = tail.isEmpty() ? lines : wrap(text, face, capital, width, 0);
    String kept = String.join(" ", own.subList(0, Math.min(most, own.size())));
    while (lines.size() > most && !kept.isEmpty()) {
      kept = kept.substring(0, kept.offsetByCodePoints(kept.length(), -1)).strip();
      lines = wrap(kept + CUT + tail, face, capital, width, 0);
    }
    return lines.size() > most ? lines.subList(0, most) : lines;
  }

  /** The width of the widest word. */
  double widestWord(String text, Face face, double capital) {
    double widest = 0;
    for (String word : List.of(clean(text).strip().split(" +"))) {
      widest = Math.max(widest, width(word, face, capital));
    }
    return widest;
  }

  /** Lines of text below each other from {@code top}, the first one indented. */
  List<Mark> block(
      List<String> lines, Face face, double x, double top, double capital, double indent) {
    List<Mark> marks = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      double baseline = top + i * lineHeight(capital) + baseline(capital);
      marks.add(words(lines.get(i), face, x + (i == 0 ? indent : 0), baseline, capital));
    }
    return marks;
  }
}
