package entracte.cli;

import entracte.check.PlayableSet;
import entracte.cue.Paperwork;
import entracte.plan.Plan;
import entracte.print.Part;
import entracte.print.Sheets;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
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
      "A sheet of this set that was written before and not touched since is written anew. Any"
          + " other file that stands there is left alone."
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
  private static final List<String> PICTURES = List.of(".svg", ".png");

  private static final String EMPTY =
      "A set of one song has no changeover, and with --mid-set there is no set-up; choose other"
          + " --pages.";

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
    Sheets.Options options = paper.options(search.takeDistance());
    demandPossible(end, options);
    planning.soon();
    PlayableSet playable = Loader.playable(set.path(), streams);
    SheetFile sheet = new SheetFile(file, playable.setList().name());
    sheet.demandFree();
    Plan plan = new Search(streams, planning).plan(playable, set, search).plan();
    Paperwork papers = Paperwork.of(plan, Player.learned(plan.setList().rig(), set.path()));
    String wrote = write(end, sheet, papers, options);
    if (!set.quiet()) {
      streams.line(wrote);
    }
    return ExitCode.DONE;
  }

  /** Stops the command if it is clear before any planning that it cannot be done as typed. */
  private void demandPossible(String end, Sheets.Options options) {
    boolean picture = PICTURES.contains(end);
    if (!picture && paper.song().isPresent()) {
      throw Stop.wrongUsage(
          "--song chooses a picture, and a " + end + " holds whole papers",
          "Write a .svg or .png, or leave --song out.");
    }
    if (picture && options.parts().stream().noneMatch(Part::hasPictures)) {
      throw Stop.wrongUsage(
          "a " + end + " holds pictures alone, and these papers have none",
          "Write a .pdf or .txt, or choose set-up or changeovers with --pages.");
    }
    Optional<String> refusal = end.equals(".txt") ? Optional.empty() : Sheets.refusal(options);
    refusal.ifPresent(
        why -> {
          throw Stop.wrongUsage(why, "Come nearer with --distance, or take larger paper.");
        });
  }

  private String write(String end, SheetFile sheet, Paperwork papers, Sheets.Options options) {
    if (Sheets.text(papers, options.parts()).isEmpty()) {
      throw Stop.wrongUsage("nothing would stand on these papers, so I write none", EMPTY);
    }
    return switch (end) {
      case ".pdf" -> pdf(sheet, papers, options);
      case ".svg" -> svg(sheet, papers, options);
      case ".png" -> png(sheet, papers, options);
      default -> {
        sheet.write(Sheets.text(papers, options.parts()));
        yield "Wrote " + file + ".";
      }
    };
  }

  private String pdf(SheetFile sheet, Paperwork papers, Sheets.Options options) {
    Sheets.Printed printed = Sheets.pdf(papers, options);
    sheet.write(printed.bytes(), SheetFile.Seal.PDF);
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

  private String svg(SheetFile sheet, Paperwork papers, Sheets.Options options) {
    String lines = String.join("\n", Sheets.svg(papers, options, song(papers, options))) + "\n";
    sheet.write(lines.getBytes(StandardCharsets.UTF_8), SheetFile.Seal.SVG);
    return "Wrote " + file + ".";
  }

  private String png(SheetFile sheet, Paperwork papers, Sheets.Options options) {
    byte[] picture =
        Sheets.png(papers, options, song(papers, options))
            .orElseThrow(
                () ->
                    Stop.wrongUsage(
                        "the pictures of all songs are too tall for one .png",
                        "Choose one with --song, or write a .svg."));
    sheet.writePng(picture);
    return "Wrote " + file + ".";
  }

  /** The only song whose picture is wanted. */
  private OptionalInt song(Paperwork papers, Sheets.Options options) {
    int songs = papers.songs().size();
    OptionalInt song = paper.song();
    if (song.isPresent() && (song.getAsInt() < 1 || song.getAsInt() > songs)) {
      throw Stop.wrongUsage(
          "there is no song " + song.getAsInt(), "The set has songs 1 to " + songs + ".");
    }
    if (!Sheets.hasPicture(papers, options.parts(), song)) {
      throw Stop.wrongUsage(
          "nothing moves on the ways that were chosen, so there is no picture",
          "Choose another --song, or other --pages.");
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
