package entracte.cli;

import entracte.cue.Paperwork;
import entracte.plan.Plan;
import entracte.print.Sheets;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Plans a set and writes its papers. */
@Command(
    name = "sheet",
    sortOptions = false,
    description = {
      "Writes the papers of a set: the running order, the set-up, a card for each changeover with"
          + " a picture of where the hands go, a patch card for each song, lists for packing and"
          + " counting in, and a page for the engineer. The end of the file's name says how: .pdf"
          + " to print, .txt as plain text, .svg or .png for the pictures alone.",
      "A sheet that was written before and not touched since is written anew. Any other file that"
          + " stands there is left alone."
    },
    footer = {
      "",
      "Examples:",
      "  java -jar target/entracte.jar sheet sets/kitchen-table -o kitchen.pdf",
      "  java -jar target/entracte.jar sheet sets/orchard-barn -o floor.pdf \\",
      "    --pages order --distance 1.2m --dim"
    })
final class SheetCommand implements Callable<Integer> {
  private static final List<String> ENDS = List.of(".pdf", ".txt", ".svg", ".png");

  private final Streams streams;
  private final Planning planning;

  @Mixin private SetArgument set;
  @Mixin private SearchOptions search;
  @Mixin private PaperOptions paper;

  @Option(
      names = {"-o", "--output"},
      paramLabel = "FILE",
      required = true,
      description = "The file to write: a name that ends in .pdf, .txt, .svg or .png.")
  private Path file;

  SheetCommand(Streams streams, Planning planning) {
    this.streams = streams;
    this.planning = planning;
  }

  @Override
  public Integer call() {
    String end = end(file);
    OptionalDouble from = search.takeDistance();
    Sheets.Options options = paper.options(from);
    Sheets.refusal(options)
        .ifPresent(
            why -> {
              throw Stop.wrongUsage(why, "Come nearer with --distance, or take larger paper.");
            });
    SheetFile.demandFree(file);
    Plan plan = new Search(streams, planning).plan(set, search).plan();
    Paperwork papers = Paperwork.of(plan, Player.learned(plan.setList().rig(), set.path()));
    String wrote = write(end, papers, options);
    if (!set.quiet()) {
      streams.line(wrote);
    }
    return ExitCode.DONE;
  }

  private String write(String end, Paperwork papers, Sheets.Options options) {
    return switch (end) {
      case ".pdf" -> pdf(papers, options);
      case ".svg" -> svg(papers, options);
      case ".png" -> png(papers, options);
      default -> {
        SheetFile.write(file, Sheets.text(papers, options.parts()));
        yield "Wrote " + file + ".";
      }
    };
  }

  private String pdf(Paperwork papers, Sheets.Options options) {
    Sheets.Printed printed = Sheets.pdf(papers, options);
    SheetFile.write(file, printed.bytes(), SheetFile.Seal.PDF);
    if (!printed.missing().isEmpty()) {
      streams.complain(
          "entracte: there is no letter on paper for "
              + String.join(", ", printed.missing())
              + "; a question mark stands there");
    }
    return String.format(
        Locale.ROOT,
        "Wrote %s: %s, capital letters of %.1f mm or more, to be read from %.1f m.",
        file,
        printed.pages() == 1 ? "1 page" : printed.pages() + " pages",
        printed.leastMm(),
        options.legibility().distanceMm() / 1000);
  }

  private String svg(Paperwork papers, Sheets.Options options) {
    String lines = String.join("\n", Sheets.svg(papers, options, song(papers))) + "\n";
    SheetFile.write(file, lines.getBytes(StandardCharsets.UTF_8), SheetFile.Seal.SVG);
    return "Wrote " + file + ".";
  }

  private String png(Paperwork papers, Sheets.Options options) {
    byte[] picture =
        Sheets.png(papers, options, song(papers))
            .orElseThrow(
                () ->
                    Stop.wrongUsage(
                        "the pictures of all songs are too tall for one .png",
                        "Choose one with --song, or write a .svg."));
    SheetFile.writePng(file, picture);
    return "Wrote " + file + ".";
  }

  /** The only song whose picture is wanted. */
  private OptionalInt song(Paperwork papers) {
    int songs = papers.songs().size();
    OptionalInt song = paper.song();
    if (song.isPresent() && (song.getAsInt() < 1 || song.getAsInt() > songs)) {
      throw Stop.wrongUsage(
          "there is no song " + song.getAsInt(), "The set has songs 1 to " + songs + ".");
    }
    return song;
  }

  private static String end(Path file) {
    String name = file.toString().toLowerCase(Locale.ROOT);
    return ENDS.stream()
        .filter(name::endsWith)
        .findFirst()
        .orElseThrow(
            () ->
                Stop.wrongUsage(
                    "a sheet is a .pdf, .txt, .svg or .png file, not " + file,
                    "Give the file a name that ends in one of them."));
  }
}
