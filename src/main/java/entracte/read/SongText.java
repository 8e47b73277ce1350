package entracte.read;

import entracte.finding.Place;
import entracte.read.Tree.Items;
import entracte.read.Tree.Table;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The text of a set with its songs in another order. Lines are moved as they stand, nothing is
 * written anew, so that spelling, layout and comments stay the musician's. A song takes along the
 * comments directly above it, up to a blank line or to what belongs to the song before; the blank
 * lines between songs stay where they are.
 */
public final class SongText {
  private final List<String> lines;
  private final List<Integer> dashes;

  /** A dash and its comments up to the last line that is not blank; lines from 0, end exclusive. */
  private record Block(int from, int to) {}

  private SongText(List<String> lines, List<Integer> dashes) {
    this.lines = lines;
    this.dashes = dashes;
  }

  /**
   * The set's text with its songs in another order; empty if they do not stand below one another,
   * each on lines of its own.
   *
   * @param fileOrFolder as {@link SetReader#read} takes it
   * @param order the songs, from 0
   */
  public static Optional<String> inOrder(Path fileOrFolder, List<Integer> order) {
    FileName file = SetReader.fileOf(fileOrFolder);
    Notebook notes = new Notebook(file.wholeFile());
    Optional<TextFile> text = new FileLoader(notes).load(file, file.wholeFile());
    Optional<Items> songs =
        text.flatMap(t -> TreeMaker.read(t, "", notes))
            .flatMap(Tree::table)
            .flatMap(SongText::songs);
    if (songs.isEmpty() || songs.get().list().size() != order.size()) {
      return Optional.empty();
    }
    List<String> lines = new ArrayList<>(Arrays.asList(text.get().text().split("(?<=\n)", -1)));
    List<Integer> dashes = new ArrayList<>();
    for (Tree song : songs.get().list()) {
      dashes.add(song.place().line() - 1);
    }
    SongText shuffled = new SongText(lines, dashes);
    return shuffled.standsInLines(songs.get().list())
        ? Optional.of(shuffled.written(order))
        : Optional.empty();
  }

  private static Optional<Items> songs(Table table) {
    return table.entries().stream()
        .filter(entry -> entry.name().equals("songs"))
        .findFirst()
        .flatMap(entry -> entry.value().items());
  }

  /** Whether every song begins a line of its own, behind a dash. */
  private boolean standsInLines(List<Tree> songs) {
    for (int k = 0; k < dashes.size(); k++) {
      Place place = songs.get(k).place();
      boolean rises = k == 0 || dashes.get(k) > dashes.get(k - 1);
      String before = place.lineText().substring(0, column(place));
      if (!rises || !before.strip().equals("-") || indent(k) != indent(0)) {
        return false;
      }
    }
    return true;
  }

  private static int column(Place place) {
    return place.lineText().offsetByCodePoints(0, place.column() - 1);
  }

  private int indent(int song) {
    return lines.get(dashes.get(song)).indexOf('-');
  }

  private String written(List<Integer> order) {
    List<Block> blocks = new ArrayList<>();
    for (int song = 0; song < dashes.size(); song++) {
      blocks.add(new Block(begin(song), end(song)));
    }
    String lineBreak = lines.get(0).endsWith("\r\n") ? "\r\n" : "\n";
    StringBuilder text = new StringBuilder(join(0, blocks.get(0).from()));
    for (int k = 0; k < order.size(); k++) {
      Block moved = blocks.get(order.get(k));
      String block = join(moved.from(), moved.to());
      text.append(block).append(block.endsWith("\n") ? "" : lineBreak);
      int next = k + 1 < blocks.size() ? blocks.get(k + 1).from() : lines.size();
      text.append(join(blocks.get(k).to(), next));
    }
    return text.toString();
  }

  private String join(int from, int to) {
    return String.join("", lines.subList(from, to));
  }

  /** The first of the comments directly above a song's dash, or the dash itself. */
  private int begin(int song) {
    int line = dashes.get(song);
    while (line > 0 && isComment(line - 1)) {
      line--;
    }
    return line;
  }

  /** Just behind the last line of a song: what follows is blank, or of another. */
  private int end(int song) {
    int line = song + 1 < dashes.size() ? begin(song + 1) : endOfLast();
    while (lines.get(line - 1).isBlank()) {
      line--;
    }
    return line;
  }

  /** The last song ends where a line stands as far out as its dash, and is more than blank. */
  private int endOfLast() {
    int indent = indent(0);
    int line = dashes.get(dashes.size() - 1) + 1;
    while (line < lines.size() && (lines.get(line).isBlank() || indentOf(line) > indent)) {
      line++;
    }
    return line;
  }

  /** Whether a line is a comment, and no deeper than the dashes: those belong to the song above. */
  private boolean isComment(int line) {
    return lines.get(line).stripLeading().startsWith("#") && indentOf(line) <= indent(0);
  }

  private int indentOf(int line) {
    String text = lines.get(line);
    return text.length() - text.stripLeading().length();
  }
}
