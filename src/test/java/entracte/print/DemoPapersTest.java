package entracte.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import entracte.check.Checker;
import entracte.check.PlayableSet;
import entracte.cue.CaseMap;
import entracte.cue.Pace;
import entracte.cue.Paperwork;
import entracte.plan.Changeover;
import entracte.plan.Options;
import entracte.plan.Plan;
import entracte.plan.Planner;
import entracte.plan.Result;
import entracte.read.ReadSet;
import entracte.read.SetReader;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The papers of the two sets that come with the program, as another program reads them. */
class DemoPapersTest {
  /** A box to tick is drawn, so a step reads: its number, its verb. */
  private static final Pattern STEP = Pattern.compile("(\\d+) (LOWER|RAISE|[A-Z]{4,6}) ");

  /** What the README says: a whole cord is two moves, and so is a plug from jack to jack. */
  private static final Map<String, Integer> MOVES =
      Map.of(
          "PULL", 2, "PLUG", 2, "MOVE", 2, "TURN", 1, "SWITCH", 1, "TUNE", 0, "LOWER", 0, "RAISE",
          0);

  private static final Map<String, Plan> PLANS = new HashMap<>();

  @TempDir Path folder;

  private static Plan plan(String set) {
    return PLANS.computeIfAbsent(set, DemoPapersTest::planned);
  }

  private static Plan planned(String set) {
    ReadSet read = SetReader.read(Path.of("sets", set));
    PlayableSet playable =
        Checker.check(read.setList().orElseThrow(), read.places()).set().orElseThrow();
    Options quick = Options.defaults().withRounds(1);
    return ((Result.Planned) Planner.plan(playable, quick)).plan();
  }

  private Poppler read(Paperwork papers, Set<Part> parts, Paper paper) throws IOException {
    Sheets.Options options = new Sheets.Options(parts, paper, Legibility.usual());
    return new Poppler(folder, Sheets.pdf(papers, options).bytes());
  }

  @ParameterizedTest
  @CsvSource({"kitchen-table, A4", "orchard-barn, LETTER", "orchard-barn, STAND"})
  void theMovesOnPaperAreCountedInOrderAndAddUpToThoseOfThePlan(String set, Paper paper)
      throws IOException {
    Plan plan = plan(set);
    Paperwork papers = Paperwork.of(plan, Pace.estimated());
    String text = read(papers, EnumSet.of(Part.SET_UP, Part.CHANGEOVERS), paper).text();
    List<Integer> moves = new ArrayList<>();
    int last = 0;
    for (MatchResult step : STEP.matcher(text).results().toList()) {
      int number = Integer.parseInt(step.group(1));
      if (number == 1) {
        moves.add(0);
        last = 0;
      }
      assertEquals(last + 1, number, "after step " + last + " comes " + step.group());
      last = number;
      int card = moves.size() - 1;
      moves.set(card, moves.get(card) + MOVES.get(step.group(2)));
    }
    assertEquals(plan.changeovers().stream().map(Changeover::moves).toList(), moves);
  }

  @ParameterizedTest
  @ValueSource(strings = {"kitchen-table", "orchard-barn"})
  void paperAndPlainTextSayTheSame(String set) throws IOException {
    Paperwork papers = Paperwork.of(plan(set), Pace.estimated());
    String paper = read(papers, Part.all(), Paper.A4).text();
    String twin = String.join("\n", Sheets.text(papers, Part.all())).replaceAll("\\[ ]|\\s+", " ");
    Dictation dictation = new Dictation();
    new Author(papers, dictation).dictate(Part.all());
    assertTrue(dictation.said.size() > 50);
    int onPaper = 0;
    int inTwin = 0;
    for (String each : dictation.said) {
      String words = each.replaceAll("\\s+", " ").strip();
      onPaper = after(paper, words, onPaper);
      inTwin = after(twin.replaceAll(" +", " "), words, inTwin);
    }
  }

  private static int after(String text, String words, int from) {
    int found = text.indexOf(words, from);
    assertTrue(found >= 0, words + " is missing in " + text.substring(from));
    return found + words.length();
  }

  /** Remembers what was dictated; of a song in a list, what stands on one line. */
  private static final class Dictation implements Scribe {
    private final List<String> said = new ArrayList<>();

    @Override
    public void section(Part part, String title) {
      said.add(title);
    }

    @Override
    public void heading(String text) {
      said.add(text);
    }

    @Override
    public void text(String text) {
      said.add(text);
    }

    @Override
    public void caution(String text) {
      said.add(text);
    }

    @Override
    public void tick(String number, String text) {
      said.add(number + " " + text);
    }

    @Override
    public void labelled(String label, List<String> items) {
      if (!items.isEmpty()) {
        said.add(label + ": " + String.join("; ", items) + ".");
      }
    }

    @Override
    public void entry(Entry entry) {
      said.add(entry.title());
      said.add(entry.everything());
    }

    @Override
    public void closing(String text, String lacking) {
      said.add(text);
    }

    @Override
    public void line(String label) {
      said.add(label);
    }

    @Override
    public void picture(CaseMap map, List<Place> places) {}
  }
}
