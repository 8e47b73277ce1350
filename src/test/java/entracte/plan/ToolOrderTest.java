package entracte.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import entracte.check.PlayableSet;
import java.util.Arrays;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * Published tool-switching instances, planned as sets. Instances: D. Catanzaro, L. Gouveia, M.
 * Labbe, European Journal of Operational Research 244 (2015); Y. Crama, A. Kolen, A. Oerlemans, F.
 * Spieksma, International Journal of Flexible Manufacturing Systems 6 (1994). Values: the results
 * published with the repository bokner/jstsp, those of ten jobs proved again by another program.
 */
class ToolOrderTest {
  private static final ToolSet FIVE_JOBS = new ToolSet(3, "11001 10010 01110 10101 00110 00001");

  private static final ToolSet CATANZARO_A1 =
      new ToolSet(
          4,
          """
          0011010011 0100000001 0100010000 0000000011 0001101110
          1010011000 1000000100 0000111110 0011001000 0000100001
          """);

  private static final ToolSet CRAMA_S1N001 =
      new ToolSet(
          4,
          """
          0100000000 1000111000 0100110000 0011001010 0000110000
          1000000100 0010100001 0001000101 0100011110 0000000010
          """);

  /** Catanzaro and others, table 2, datB7: 15 jobs, 20 tools. */
  private static final ToolSet CATANZARO_B7 =
      new ToolSet(
          8,
          """
          100100000000000 001101000000000 011000010000000 000000000110000 000000000000000
          100011001010000 001000000110101 110000000000000 000000100000000 010100110110000
          100000000000101 000000000010001 001000001001000 000100000100000 000010010000000
          000101110001000 100000000000110 000000000000011 000000000000101 000000000000000
          """);

  /** Catanzaro and others, table 1, datB1: 15 jobs, 20 tools. */
  private static final ToolSet CATANZARO_B1 =
      new ToolSet(
          6,
          """
          000000100000000 010001011000000 000000101101110 000100000100100 001000001000000
          000000100100000 000000000000001 000001100000000 000001000010000 001010000010000
          000100000000000 100100010000000 000000000000001 000010000011000 000011100000000
          001000010101000 000010000000100 110000000010010 001000000110000 000001100101000
          """);

  private static int inFileOrder(ToolSet set) {
    ToolSwitches tools = set.switches();
    return tools.of(IntStream.range(0, tools.songs()).toArray());
  }

  private static int along(ToolSet set, String order) {
    return set.switches()
        .of(Arrays.stream(order.split(" ")).mapToInt(job -> Integer.parseInt(job) - 1).toArray());
  }

  private static Ordered.Found ordered(ToolSet set) {
    return (Ordered.Found) Orderer.order(set.set(), Options.defaults());
  }

  @Test
  void aFixedOrderCostsWhatKeepingTheToolNeededSoonestCosts() {
    assertEquals(6, inFileOrder(FIVE_JOBS));
    assertEquals(14, inFileOrder(CATANZARO_A1));
    assertEquals(12, inFileOrder(CRAMA_S1N001));
    assertEquals(10, along(CATANZARO_A1, "1 8 7 4 3 6 2 10 5 9"));
    assertEquals(7, along(CRAMA_S1N001, "5 6 2 7 1 8 4 9 3 10"));
    assertEquals(28, inFileOrder(CATANZARO_B1));
  }

  /** Pages 7 0 1 2 ...: 9 faults with 3 frames (a textbook example of operating systems). */
  @Test
  void withOneToolAJobItIsPaging() {
    long[] pages =
        IntStream.of(7, 0, 1, 2, 0, 3, 0, 4, 2, 3, 0, 3, 2, 1, 2, 0, 1, 7, 0, 1)
            .mapToLong(page -> 1L << page)
            .toArray();
    int[] order = IntStream.range(0, pages.length).toArray();
    assertEquals(9, new ToolSwitches(pages, 3).insertions(order, order.length));
    assertEquals(20, new ToolSwitches(pages, 1).insertions(order, order.length));
    assertEquals(6, new ToolSwitches(pages, 6).insertions(order, order.length));
  }

  @Test
  void tenJobsAreOrderedBestAndProvedSoAtFourMovesASwitch() {
    assertProven(4, ordered(FIVE_JOBS));
    assertProven(10, ordered(CATANZARO_A1));
    assertProven(7, ordered(CRAMA_S1N001));
  }

  private static void assertProven(int switches, Ordered.Found found) {
    assertEquals(4 * switches, found.proposed().plan().moves());
    assertEquals(switches, plugs(found));
    assertTrue(found.proven());
    assertEquals(java.util.List.of(), Verifier.verify(found.proposed().plan()));
  }

  /** The switches as the plan itself has them: cords plugged between songs. */
  private static int plugs(Ordered.Found found) {
    return found.proposed().plan().changeovers().stream()
            .filter(c -> !c.setUp())
            .mapToInt(Changeover::plugs)
            .sum()
        / 2;
  }

  @Test
  void fifteenJobsAreOrderedAsWellAsWasPublished() {
    Ordered.Found seven = ordered(CATANZARO_B7);
    assertEquals(10, plugs(seven));
    assertTrue(seven.proven());
    Ordered.Found one = ordered(CATANZARO_B1);
    assertTrue(plugs(one) <= 19, "switches " + plugs(one));
    assertEquals(4 * plugs(one), one.proposed().plan().moves());
    assertEquals(28 - plugs(one), one.saved() / 4);
  }

  @Test
  void theWrittenOrderIsPlannedAtFourMovesASwitch() {
    for (ToolSet set : java.util.List.of(FIVE_JOBS, CATANZARO_A1, CRAMA_S1N001)) {
      PlayableSet playable = set.set();
      Result.Planned planned =
          (Result.Planned) Planner.plan(playable, Options.defaults().withRounds(1));
      assertEquals(4 * inFileOrder(set), planned.plan().moves());
    }
  }

  @Test
  void onlyToolsAreTakenForTools() {
    Problem tools = new Problem(FIVE_JOBS.set(), Start.bare());
    Casting casting = ((FirstCasting.Found.Cast) new FirstCasting(tools).find()).casting();
    assertTrue(ToolSets.of(tools, casting).isPresent());
    Problem midSet = new Problem(FIVE_JOBS.set(), Start.midSet(entracte.rig.RigState.bare()));
    assertTrue(ToolSets.of(midSet, casting).isEmpty());
  }
}
