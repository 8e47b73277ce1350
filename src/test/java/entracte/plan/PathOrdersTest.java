package entracte.plan;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

/**
 * Cheapest orders of small published instances. As tours they are in TSPLIB 95 (G. Reinelt,
 * Universitaet Heidelberg), burma14 with optimum 3323; the lengths of open paths were computed with
 * another program.
 */
class PathOrdersTest {
  private static final String BR17 =
      """
      9999 3 5 48 48 8 8 5 5 3 3 0 3 5 8 8 5
      3 9999 3 48 48 8 8 5 5 0 0 3 0 3 8 8 5
      5 3 9999 72 72 48 48 24 24 3 3 5 3 0 48 48 24
      48 48 74 9999 0 6 6 12 12 48 48 48 48 74 6 6 12
      48 48 74 0 9999 6 6 12 12 48 48 48 48 74 6 6 12
      8 8 50 6 6 9999 0 8 8 8 8 8 8 50 0 0 8
      8 8 50 6 6 0 9999 8 8 8 8 8 8 50 0 0 8
      5 5 26 12 12 8 8 9999 0 5 5 5 5 26 8 8 0
      5 5 26 12 12 8 8 0 9999 5 5 5 5 26 8 8 0
      3 0 3 48 48 8 8 5 5 9999 0 3 0 3 8 8 5
      3 0 3 48 48 8 8 5 5 0 9999 3 0 3 8 8 5
      0 3 5 48 48 8 8 5 5 3 3 9999 3 5 8 8 5
      3 0 3 48 48 8 8 5 5 0 0 3 9999 3 8 8 5
      5 3 0 72 72 48 48 24 24 3 3 5 3 9999 48 48 24
      8 8 50 6 6 0 0 8 8 8 8 8 8 50 9999 0 8
      8 8 50 6 6 0 0 8 8 8 8 8 8 50 0 9999 8
      5 5 26 12 12 8 8 0 0 5 5 5 5 26 8 8 9999
      """;

  /** The lower triangle with its diagonal, row after row. */
  private static final String GR17 =
      """
      0 633 0 257 390 0 91 661 228 0 412 227 169 383 0 150 488 112 120 267 0 80 572 196 77 351 63 0
      134 530 154 105 309 34 29 0 259 555 372 175 338 264 232 249 0 505 289 262 476 196 360 444 402
      495 0 353 282 110 324 61 208 292 250 352 154 0 324 638 437 240 421 329 297 314 95 578 435 0 70
      567 191 27 346 83 47 68 189 439 287 254 0 211 466 74 182 243 105 150 108 326 336 184 391 145 0
      268 420 53 239 199 123 207 165 383 240 140 448 202 57 0 246 745 472 237 528 364 332 349 202
      685 542 157 289 426 483 0 121 518 142 84 297 35 29 36 236 390 238 301 55 96 153 336 0
      """;

  /** Latitude and longitude. */
  private static final double[][] BURMA14 = {
    {16.47, 96.10}, {16.47, 94.44}, {20.09, 92.54}, {22.39, 93.37}, {25.23, 97.24},
    {22.00, 96.05}, {20.47, 97.02}, {17.20, 96.29}, {16.30, 97.38}, {14.05, 98.12},
    {16.53, 97.38}, {21.52, 95.59}, {19.41, 97.13}, {20.09, 94.55}
  };

  private static int[] numbers(String text) {
    return Arrays.stream(text.strip().split("\\s+")).mapToInt(Integer::parseInt).toArray();
  }

  private static int[][] square(String text) {
    int[] all = numbers(text);
    int side = (int) Math.sqrt(all.length);
    int[][] cost = new int[side][];
    for (int row = 0; row < side; row++) {
      cost[row] = Arrays.copyOfRange(all, row * side, (row + 1) * side);
    }
    return cost;
  }

  private static int[][] triangle(String text, int side) {
    int[] all = numbers(text);
    int[][] cost = new int[side][side];
    int next = 0;
    for (int row = 0; row < side; row++) {
      for (int column = 0; column <= row; column++) {
        cost[row][column] = all[next];
        cost[column][row] = all[next++];
      }
    }
    return cost;
  }

  private static int along(int[][] cost, int[] order) {
    int sum = 0;
    for (int k = 1; k < order.length; k++) {
      sum += cost[order[k - 1]][order[k]];
    }
    return sum;
  }

  @Test
  void seventeenPlacesWhoseWaysAreNotTheSameBack() {
    int[][] cost = square(BR17);
    PathOrders paths = new PathOrders(cost, OrderSteps.FREE);
    assertEquals(25, paths.least());
    assertEquals(25, along(cost, paths.order()));
  }

  @Test
  void seventeenTownsAsAPath() {
    int[][] cost = triangle(GR17, 17);
    PathOrders paths = new PathOrders(cost, OrderSteps.FREE);
    assertEquals(1564, paths.least());
    assertEquals(1564, along(cost, paths.order()));
  }

  /** A round trip is a path from a town to its double. */
  @Test
  void fourteenTownsAsARoundTripOfTheirPublishedLength() {
    int[][] cost = onTheGlobe(BURMA14);
    int[][] twice = new int[15][15];
    for (int a = 0; a < 15; a++) {
      for (int b = 0; b < 15; b++) {
        twice[a][b] = cost[a % 14][b % 14];
      }
    }
    OrderSteps steps =
        (placed, last, next) ->
            placed == 0 ? next == 0 : next != 14 || Integer.bitCount(placed) == 14;
    assertEquals(3323, new PathOrders(twice, steps).least());
    assertEquals(2615, new PathOrders(cost, OrderSteps.FREE).least());
  }

  /** Distances as TSPLIB 95 defines them for degrees and minutes. */
  private static int[][] onTheGlobe(double[][] towns) {
    int[][] cost = new int[towns.length][towns.length];
    for (int a = 0; a < towns.length; a++) {
      for (int b = 0; b < towns.length; b++) {
        double q1 = Math.cos(radians(towns[a][1]) - radians(towns[b][1]));
        double q2 = Math.cos(radians(towns[a][0]) - radians(towns[b][0]));
        double q3 = Math.cos(radians(towns[a][0]) + radians(towns[b][0]));
        double way = 6378.388 * Math.acos(0.5 * ((1 + q1) * q2 - (1 - q1) * q3)) + 1;
        cost[a][b] = a == b ? 0 : (int) way;
      }
    }
    return cost;
  }

  private static double radians(double degreesAndMinutes) {
    int degrees = (int) degreesAndMinutes;
    return 3.141592 * (degrees + 5 * (degreesAndMinutes - degrees) / 3) / 180;
  }

  @Test
  void fewTownsAreAsCheapAsTheBestOfAllOrders() {
    int[][] cost = triangle(GR17, 17);
    int[][] few = new int[7][];
    for (int a = 0; a < 7; a++) {
      few[a] = Arrays.copyOf(cost[a], 7);
    }
    PathOrders paths = new PathOrders(few, OrderSteps.FREE);
    assertEquals(cheapest(few, new int[0]), paths.least());
  }

  private static int cheapest(int[][] cost, int[] start) {
    if (start.length == cost.length) {
      return along(cost, start);
    }
    int best = PathOrders.NO_WAY;
    for (int next = 0; next < cost.length; next++) {
      int song = next;
      if (Arrays.stream(start).noneMatch(s -> s == song)) {
        int[] longer = Arrays.copyOf(start, start.length + 1);
        longer[start.length] = next;
        best = Math.min(best, cheapest(cost, longer));
      }
    }
    return best;
  }

  @Test
  void forbiddenStepsAreNotTaken() {
    int[][] cost = {{0, 1, 9}, {1, 0, 1}, {9, 1, 0}};
    OrderSteps notSecond = (placed, last, next) -> Integer.bitCount(placed) != 1 || next != 1;
    PathOrders paths = new PathOrders(cost, notSecond);
    assertEquals(10, paths.least());
    assertArrayEquals(new int[] {0, 2, 1}, paths.order());
    PathOrders none = new PathOrders(cost, (placed, last, next) -> placed == 0);
    assertEquals(PathOrders.NO_WAY, none.least());
    assertThrows(IllegalStateException.class, none::order);
  }
}
