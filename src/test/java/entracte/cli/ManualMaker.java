package entracte.cli;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import picocli.CommandLine;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;

/**
 * Makes the pages of {@code src/docs} that say what the program says itself: a page for each
 * command out of its help, and the tables of keys out of the schemas. Run its {@code main} in the
 * folder of the project when {@link ManualTest} says that they differ.
 */
final class ManualMaker {
  private static final Path DOCS = Path.of("src", "docs");
  private static final String PROGRAM = "java -jar target/entracte.jar ";

  private ManualMaker() {}

  /** Writes every page. */
  public static void main(String[] args) throws IOException {
    for (Map.Entry<Path, String> page : pages().entrySet()) {
      Files.createDirectories(page.getKey().getParent());
      Files.writeString(page.getKey(), page.getValue());
    }
  }

  /** Every page, by its file. */
  static Map<Path, String> pages() throws IOException {
    Map<Path, String> pages = new LinkedHashMap<>();
    CommandLine program = program();
    program
        .getSubcommands()
        .forEach(
            (name, command) -> pages.put(DOCS.resolve("commands/" + name + ".md"), page(command)));
    pages.put(DOCS.resolve("commands/README.md"), list(program));
    Path files = DOCS.resolve("files.md");
    pages.put(files, KeyTables.into(Files.readString(files)));
    return pages;
  }

  /** Every command, for reading. */
  static CommandLine program() {
    Streams nowhere = new Streams(new ByteArrayOutputStream(), System.err, false, false);
    return new Program(nowhere, null, null).commandLine();
  }

  private static String list(CommandLine program) {
    StringBuilder page = new StringBuilder("# The commands\n\n");
    page.append("Each page says what `--help` says; the pages are made from it.\n\n");
    program
        .getSubcommands()
        .forEach(
            (name, command) ->
                page.append("- [`%s`](%s.md): %s\n".formatted(name, name, first(command))));
    return page.append(
            """

            ## How a command ends

            | exit code | means |
            |---|---|
            | 0 | done |
            | 1 | the set has mistakes, or there is no plan |
            | 2 | wrong usage |
            | 3 | a file or a device cannot be used |
            | 70 | a mistake in the program; it says where its report is |
            """)
        .toString();
  }

  private static String first(CommandLine command) {
    return text(command.getCommandSpec().usageMessage().description()[0]);
  }

  private static String page(CommandLine command) {
    StringBuilder page = new StringBuilder("# " + command.getCommandName() + "\n\n");
    for (String paragraph : command.getCommandSpec().usageMessage().description()) {
      String code = paragraph.startsWith("  ") ? "  " : "";
      page.append(paragraph.isEmpty() ? "" : code + text(paragraph) + "\n\n");
    }
    page.append("    ").append(PROGRAM).append(synopsis(command)).append("\n\n");
    page.append("| to type | means |\n|---|---|\n");
    for (ArgSpec each : command.getCommandSpec().args()) {
      page.append("| ").append(typed(each)).append(" | ").append(meaning(each)).append(" |\n");
    }
    return page.append(footer(command)).toString();
  }

  /** Without the program's name, on one line. */
  private static String synopsis(CommandLine command) {
    CommandLine.Help help = command.getHelp();
    return help.synopsis(0).replaceAll("\\s+", " ").replaceFirst("^entracte ", "").strip();
  }

  private static String typed(ArgSpec each) {
    if (each instanceof OptionSpec option) {
      List<String> names =
          Arrays.stream(option.names())
              .map(name -> "`" + (name + " " + label(option)).strip() + "`")
              .toList();
      return String.join(", ", names);
    }
    return "`" + each.paramLabel() + "`";
  }

  private static String label(OptionSpec option) {
    return option.arity().max() == 0 ? "" : option.paramLabel();
  }

  private static String meaning(ArgSpec each) {
    List<String> said = new ArrayList<>();
    for (String line : each.description()) {
      said.add(text(line));
    }
    return String.join(" ", said).replace("|", "\\|");
  }

  private static String footer(CommandLine command) {
    StringBuilder text = new StringBuilder();
    boolean code = false;
    for (String line : command.getCommandSpec().usageMessage().footer()) {
      boolean example = line.startsWith("  ");
      text.append(example != code && !line.isEmpty() ? "\n" : "");
      text.append(example ? "  " : "").append(text(line)).append("\n");
      code = example;
    }
    return text.toString().replaceAll("\n{3,}", "\n\n");
  }

  /** What picocli makes of a percent sign. */
  private static String text(String line) {
    return line.replace("%n", " ").replace("%%", "%");
  }
}
