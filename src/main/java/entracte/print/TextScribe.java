package entracte.print;

import entracte.cue.CaseMap;
import java.util.ArrayList;
import java.util.List;

/** Writes the papers as plain text, for any printer and any screen. */
final class TextScribe implements Scribe {
  private static final String BOX = "[ ] ";

  private final int width;
  private final List<String> lines = new ArrayList<>();

  TextScribe(int width) {
    this.width = width;
  }

  List<String> lines() {
    return List.copyOf(lines);
  }

  @Override
  public void section(Part part, String title) {
    if (!lines.isEmpty()) {
      lines.add("");
    }
    lines.addAll(Fill.lines(title, width, "", "    "));
    lines.add("=".repeat(width));
  }

  @Override
  public void heading(String text) {
    lines.add("");
    fill("", text, "    ");
  }

  @Override
  public void text(String text) {
    fill("", text, "    ");
  }

  @Override
  public void caution(String text) {
    fill("! ", text, "  ");
  }

  @Override
  public void tick(String number, String text) {
    String first = number.isEmpty() ? BOX : BOX + String.format("%2s ", number);
    fill(first, text, " ".repeat(first.length()));
  }

  @Override
  public void labelled(String label, List<String> items) {
    if (!items.isEmpty()) {
      fill("", label + ": " + String.join("; ", items) + ".", "    ");
    }
  }

  @Override
  public void entry(Entry entry) {
    String first = String.format("%3s  ", entry.number());
    String right = entry.right().isEmpty() ? "" : " (" + entry.right() + ")";
    String all = entry.everything();
    String details = all.isEmpty() ? "" : ". " + all;
    fill(first, entry.title() + right + details, " ".repeat(first.length()));
  }

  @Override
  public void closing(String text, String lacking) {
    text(text);
  }

  @Override
  public void line(String label) {
    lines.add("-".repeat(width));
    fill("", label, "    ");
  }

  /** Plain text has no pictures; the numbered steps say the same. */
  @Override
  public void picture(CaseMap map, List<Place> places) {}

  private void fill(String first, String text, String rest) {
    lines.addAll(Fill.lines(text, width, first, rest));
  }
}
