package entracte.plan;

import static entracte.check.PatchBuilder.patch;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import entracte.check.PatchBuilder;
import entracte.check.PlayableSet;
import entracte.check.RigBuilder;
import entracte.check.SetBuilder;
import entracte.setlist.Song;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * With a bag that runs empty, a set is the tool switching problem: a song is a job, a cord between
 * two modules of its own is a tool, the stock is the magazine. The magazine is filled before the
 * show; every switch after that is a cord pulled and one plugged, four moves. For a fixed order the
 * rule "keep the tool needed soonest" is best (Tang and Denardo, Operations Research 36, 1988), and
 * with one tool a job it is the best rule for paging (Belady 1966).
 */
final class ToolSwitchingTest {
  private static final int MOVES_PER_SWITCH = 4;

  /** Catanzaro, Gouveia and Labbe, EJOR 244 (2015), table 1, A1: a row a tool, a column a job. */
  private static final String CATANZARO =
      "0011010011 0100000001 0100010000 0000000011 0001101110"
          + " 1010011000 1000000100 0000111110 0011001000 0000100001";

  /** Crama and others, Int. J. Flexible Manufacturing Systems 6 (1994), table 1, s1n001. */
  private static final String CRAMA =
      "0100000000 1000111000 0100110000 0011001010 0000110000"
          + " 1000000100 0010100001 0001000101 0100011110 0000000010";

  /** Five jobs and six tools, from a public model of Tang and Denardo's uniform problem. */
  private static final String FIVE_JOBS = "11001 10010 01110 10101 00110 00001";

  private static final String AS_WRITTEN = "1 2 3 4 5 6 7 8 9 10";

  /**
   * The switches of the published best orders are those stated with the instances; those of the
   * orders as written were worked out by keeping the tool needed soonest.
   */
  @ParameterizedTest
  @CsvSource({
    CATANZARO + ", 4, " + AS_WRITTEN + ", 14",
    CATANZARO + ", 4, 1 8 7 4 3 6 2 10 5 9, 10",
    CRAMA + ", 4, " + AS_WRITTEN + ", 12",
    CRAMA + ", 4, 5 6 2 7 1 8 4 9 3 10, 7",
    FIVE_JOBS + ", 3, 1 2 3 4 5, 6"
  })
  void publishedInstancesTakeFourMovesASwitch(String rows, int slots, String order, int switches) {
    String[] tools = rows.split(" ");
    List<List<Integer>> jobs =
        numbers(order).stream()
            .map(
                job ->
                    IntStream.range(0, tools.length)
                        .filter(tool -> tools[tool].charAt(job - 1) == '1')
                        .boxed()
                        .toList())
            .toList();
    assertSwitches(tools.length, jobs, slots, switches);
  }

  /**
   * The reference string of Silberschatz, Galvin and Gagne, Operating System Concepts: with three
   * frames the best rule faults nine times. Faults for other frames were worked out by that rule;
   * the first fault of each frame is the filling of the magazine.
   */
  @ParameterizedTest
  @CsvSource({"1, 20", "2, 13", "3, 9", "4, 8", "5, 7", "6, 6"})
  void pagingIsTheSameWithOneToolAJob(int frames, int faults) {
    List<Integer> pages = List.of(7, 0, 1, 2, 0, 3, 0, 4, 2, 3, 0, 3, 2, 1, 2, 0, 1, 7, 0, 1);
    assertSwitches(8, pages.stream().map(List::of).toList(), frames, faults - frames);
  }

  private static List<Integer> numbers(String text) {
    return Arrays.stream(text.split(" ")).map(Integer::valueOf).toList();
  }

  private static void assertSwitches(int tools, List<List<Integer>> jobs, int slots, int switches) {
    PlayableSet set = setOf(tools, jobs, slots);
    Result.Planned planned =
        assertInstanceOf(Result.Planned.class, Planner.plan(set, Options.defaults()));
    assertEquals(List.of(), Verifier.verify(planned.plan()));
    assertEquals(MOVES_PER_SWITCH * switches, planned.plan().moves());
    assertEquals(2 * slots, planned.plan().setUpMoves(), "the magazine is full from the start");
    assertTrue(planned.lowerBound() <= planned.plan().moves(), "no bound above what can be done");
    Problem problem = new Problem(set, Start.bare());
    Casting only = ((FirstCasting.Found.Cast) new FirstCasting(problem).find()).casting();
    assertEquals(
        MOVES_PER_SWITCH * switches,
        Weights.changeoverMoves(new Ledger(problem, only, Stock.TIGHT).moves()),
        "what a search goes by is right where no cord can move on from jack to jack");
  }

  private static PlayableSet setOf(int tools, List<List<Integer>> jobs, int slots) {
    List<String> modules = new ArrayList<>();
    for (int tool = 0; tool < tools; tool++) {
      modules.add("from " + tool + ": source");
      modules.add("to " + tool + ": sink");
    }
    RigBuilder rig =
        RigBuilder.rig()
            .kind("source", k -> k.out("o"))
            .kind("sink", k -> k.in("i"))
            .row(modules.toArray(new String[0]))
            .cords(slots);
    List<Song> songs = new ArrayList<>();
    for (List<Integer> job : jobs) {
      PatchBuilder patch = patch("job " + songs.size());
      job.forEach(tool -> patch.cord("from " + tool + ".o", "to " + tool + ".i"));
      songs.add(patch.song());
    }
    return SetBuilder.playable(rig.build(), songs.toArray(new Song[0]));
  }
}
