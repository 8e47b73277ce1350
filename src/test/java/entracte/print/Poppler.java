package entracte.print;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Assumptions;

/**
 * Somebody else's reader of PDF (Debian's poppler-utils); where it is absent, tests are skipped.
 */
final class Poppler {
  private static final Pattern PAGE =
      Pattern.compile(
          "<page width=\"([0-9.]+)\" height=\"([0-9.]+)\">(.*?)</page>", Pattern.DOTALL);
  private static final Pattern WORD =
      Pattern.compile(
          "<word xMin=\"([0-9.-]+)\" yMin=\"([0-9.-]+)\" xMax=\"([0-9.-]+)\""
              + " yMax=\"([0-9.-]+)\">(.*?)</word>");

  private final Path folder;
  private final Path file;

  Poppler(Path folder, byte[] pdf) throws IOException {
    this.folder = folder;
    this.file = Files.write(folder.resolve("read.pdf"), pdf);
    for (String tool : List.of("pdftotext", "pdftoppm", "pdfinfo")) {
      Assumptions.assumeTrue(isInstalled(tool), "skipped: poppler-utils is not installed");
    }
  }

  private static boolean isInstalled(String tool) {
    for (String place : System.getenv().getOrDefault("PATH", "").split(File.pathSeparator)) {
      if (Files.isExecutable(Path.of(place, tool))) {
        return true;
      }
    }
    return false;
  }

  /** A word and its box in points, from the top left corner. */
  record Word(String text, double left, double top, double right, double bottom) {
    boolean overlaps(Word other) {
      return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
    }
  }

  record Leaf(double width, double height, List<Word> words) {}

  /** The text in the order in which it was drawn, with single spaces. */
  String text() {
    return run("pdftotext", "-raw", "-enc", "UTF-8", file.toString(), "-").replaceAll("\\s+", " ");
  }

  String about() {
    return run("pdfinfo", "-enc", "UTF-8", file.toString());
  }

  List<Leaf> leaves() {
    List<Leaf> leaves = new ArrayList<>();
    Matcher pages = PAGE.matcher(run("pdftotext", "-bbox", "-enc", "UTF-8", file.toString(), "-"));
    while (pages.find()) {
      List<Word> words = new ArrayList<>();
      Matcher each = WORD.matcher(pages.group(3));
      while (each.find()) {
        words.add(new Word(each.group(5), at(each, 1), at(each, 2), at(each, 3), at(each, 4)));
      }
      leaves.add(new Leaf(at(pages, 1), at(pages, 2), words));
    }
    return leaves;
  }

  private static double at(Matcher found, int group) {
    return Double.parseDouble(found.group(group));
  }

  /** A page as a grey picture; the first page is 1. */
  Picture picture(int page, int dotsPerInch) throws IOException {
    return picture(page, dotsPerInch, "yes");
  }

  /** The same with edges that are not softened. */
  Picture hardPicture(int page, int dotsPerInch) throws IOException {
    return picture(page, dotsPerInch, "no");
  }

  private Picture picture(int page, int dotsPerInch, String soft) throws IOException {
    String root = folder.resolve("page").toString();
    String dots = Integer.toString(dotsPerInch);
    String number = Integer.toString(page);
    run(
        ("pdftoppm -gray -singlefile -r %s -f %s -aa %s -aaVector %s %s %s"
                .formatted(dots, number, soft, soft, file, root))
            .split(" "));
    return Picture.read(Files.readAllBytes(folder.resolve("page.pgm")));
  }

  /** A picture of grey dots, rows from the top. */
  record Picture(int width, int height, byte[] dots, int start) {
    /** Binary PGM: P5, width, height, 255, each ended by one white space, and the dots. */
    static Picture read(byte[] pgm) {
      String head = new String(pgm, 0, Math.min(64, pgm.length), StandardCharsets.ISO_8859_1);
      Matcher parts = Pattern.compile("P5\\s(\\d+)\\s(\\d+)\\s255\\s").matcher(head);
      if (!parts.lookingAt()) {
        throw new IllegalArgumentException("no grey picture: " + head);
      }
      int width = Integer.parseInt(parts.group(1));
      int height = Integer.parseInt(parts.group(2));
      return new Picture(width, height, pgm, parts.end());
    }

    /** Each shade that some dot has. */
    Set<Integer> greys() {
      Set<Integer> greys = new TreeSet<>();
      for (int i = start; i < start + width * height; i++) {
        greys.add(dots[i] & 0xFF);
      }
      return greys;
    }

    boolean isDark(int x, int y) {
      return (dots[start + y * width + x] & 0xFF) < 128;
    }

    /** How many rows lie between the topmost and the lowest dark dot of a part, both included. */
    int inkRows(int left, int top, int right, int bottom) {
      int first = -1;
      int last = -2;
      for (int y = Math.max(0, top); y < Math.min(height, bottom); y++) {
        for (int x = Math.max(0, left); x < Math.min(width, right); x++) {
          if (isDark(x, y)) {
            first = first < 0 ? y : first;
            last = y;
          }
        }
      }
      return last - first + 1;
    }
  }

  private String run(String... command) {
    try {
      Path out = folder.resolve("out.txt");
      Process process =
          new ProcessBuilder(command)
              .redirectOutput(out.toFile())
              .redirectError(folder.resolve("err.txt").toFile())
              .start();
      assertEquals(0, process.waitFor(), String.join(" ", command));
      return Files.readString(out);
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(e);
    }
  }
}
