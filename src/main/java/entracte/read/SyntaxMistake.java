package entracte.read;

import entracte.finding.Place;
import java.io.StringReader;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.events.CollectionEndEvent;
import org.yaml.snakeyaml.events.CollectionStartEvent;
import org.yaml.snakeyaml.events.Event;

/**
 * Says in plain words what SnakeYAML could not read. Its own words name grammar ("expected {@code
 * <block end>}"), and it points where it gave up: for a bracket that is never closed that is the
 * end of the file, while the musician looks for the bracket.
 */
final class SyntaxMistake {
  /**
   * Where a message points: where reading gave up, where the unfinished thing began, or where the
   * first level opens that lies too deep.
   */
  private enum At {
    END,
    BEGINNING,
    DEEPEST
  }

  /**
   * One kind of mistake.
   *
   * @param pattern found in SnakeYAML's context and problem, joined by a slash
   * @param message with {@code $1} for the pattern's first group
   */
  private record Rule(Pattern pattern, At at, String message, String advice) {}

  private static final String QUOTE_IT = "Put the text in quotation marks.";
  private static final String LINE_UP = "Begin lines that belong together in the same column.";

  private static final Rule TAB = end("TAB", "a tab cannot stand here", "Use blanks.");

  /** More lines than this are not named. */
  private static final int LINES_NAMED = 8;

  private static final List<Rule> RULES =
      List.of(
          end(
              "mapping values are not allowed",
              "a colon cannot stand here",
              "Put text that holds \": \" in quotation marks. " + LINE_UP),
          TAB,
          end("character '(.)' that cannot start", "a value cannot begin with $1", QUOTE_IT),
          end("flow sequence.*got <scalar>", "a comma or ] is missing before this", ""),
          end("flow mapping.*got <scalar>", "a comma or } is missing before this", ""),
          beginning("parsing a flow sequence", "this [ has no ]", "Close it."),
          beginning("parsing a flow mapping", "this { has no }", "Close it."),
          beginning(
              "quoted scalar/found unexpected",
              "this quotation mark has no partner",
              "Close it, or delete it."),
          end("undefined alias (.*)", "\"*$1\" stands for nothing", QUOTE_IT),
          end(
              "single document|<document start>",
              "a second document begins here",
              "Put it in a file of its own."),
          end("tag is not allowed|scanning a tag|tag handle", "a ! means nothing here", QUOTE_IT),
          end(
              "block end>, but found '<scalar>",
              "this text cannot stand here",
              "Put the whole value in quotation marks, or none of it."),
          end("block end>, but found '([]}])'", "this $1 closes nothing", "Delete it."),
          end("block end>, but found '([:,])'", "a $1 cannot stand here", QUOTE_IT),
          end("block end>", "this line does not line up with those above", LINE_UP),
          beginning(
              "could not find expected ':'",
              "this line has neither a colon nor a dash",
              "Write name: value or - value, with a blank behind the colon or the dash."),
          end("content, but found '<(?:stream|document)", "the file ends too soon", ""),
          end("content, but found '(.)'", "there is no value before this $1", ""),
          end(
              "sequence entries are not allowed",
              "a list cannot begin here",
              "Begin it on the next line, or write [one, another]."),
          end("mapping keys are not allowed", "a question mark cannot stand here", QUOTE_IT),
          end(
              "double-quoted scalar/",
              "this backslash means nothing",
              "Write two of them, or use single quotation marks."),
          end(
              "scanning a block scalar",
              "this cannot stand behind | or >",
              "Begin the text on the next line."),
          end("scanning an (?:anchor|alias)", "an & or * needs a name behind it", QUOTE_IT),
          end("directive|YAML document", "a line that begins with % means nothing", "Delete it."),
          deepest(
              "Nesting Depth",
              "more than " + TreeMaker.DEPTH_LIMIT + " levels lie within each other",
              "Nothing here needs more than ten."),
          end(
              "Number of aliases",
              "more than " + TreeMaker.ALIAS_LIMIT + " aliases stand for lists or tables",
              "Write some of them out."));

  private SyntaxMistake() {}

  private static Rule end(String pattern, String message, String advice) {
    return new Rule(Pattern.compile(pattern), At.END, message, advice);
  }

  private static Rule beginning(String pattern, String message, String advice) {
    return new Rule(Pattern.compile(pattern), At.BEGINNING, message, advice);
  }

  private static Rule deepest(String pattern, String message, String advice) {
    return new Rule(Pattern.compile(pattern), At.DEEPEST, message, advice);
  }

  static void note(YAMLException mistake, TextFile file, Notebook notes) {
    if (mistake instanceof MarkedYAMLException marked) {
      String said = marked.getContext() + "/" + marked.getProblem();
      note(said, marked.getContextMark(), marked.getProblemMark(), file, notes);
    } else {
      note(String.valueOf(mistake.getMessage()), null, null, file, notes);
    }
  }

  private static void note(String said, Mark beginning, Mark end, TextFile file, Notebook notes) {
    for (Rule rule : RULES) {
      Matcher matcher = rule.pattern().matcher(said);
      if (matcher.find()) {
        String part = matcher.groupCount() > 0 ? matcher.group(1) : "";
        Place place =
            switch (rule.at()) {
              case END -> place(end, file);
              case BEGINNING -> place(beginning, file);
              case DEEPEST -> tooDeep(file);
            };
        String advice = rule == TAB ? tabs(place, file) : rule.advice();
        notes.error(place, rule.message().replace("$1", part), advice);
        return;
      }
    }
    notes.error(place(end, file), "this cannot be read as YAML", "SnakeYAML says: " + said);
  }

  /** An editor that writes one tab writes many: where the others stand, too. */
  private static String tabs(Place first, TextFile file) {
    List<String> others =
        file.linesIndentedByTabs().stream()
            .filter(line -> line != first.line())
            .map(line -> Integer.toString(line))
            .toList();
    if (others.isEmpty()) {
      return TAB.advice();
    }
    int more = others.size() - LINES_NAMED;
    String named = String.join(", ", others.subList(0, Math.min(others.size(), LINES_NAMED)));
    return "Use blanks, here and in "
        + (others.size() == 1 ? "line " : "lines ")
        + named
        + (more > 0 ? " and " + more + " more." : ".");
  }

  /** SnakeYAML does not say where it counted one level too many. */
  private static Place tooDeep(TextFile file) {
    int depth = 0;
    for (Event event : new Yaml().parse(new StringReader(file.text()))) {
      if (event instanceof CollectionStartEvent && ++depth > TreeMaker.DEPTH_LIMIT) {
        return place(event.getStartMark(), file);
      }
      depth -= event instanceof CollectionEndEvent ? 1 : 0;
    }
    return file.name().wholeFile();
  }

  private static Place place(Mark mark, TextFile file) {
    return mark == null ? file.name().wholeFile() : file.place(mark.getLine(), mark.getColumn());
  }
}
