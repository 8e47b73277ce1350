package entracte.stage;

import static org.junit.jupiter.api.Assertions.assertEquals;

import entracte.cue.Change;
import entracte.cue.Spot;
import entracte.cue.Verb;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * Whole screens of the small show, cell by cell: what stands in {@code src/test/resources/screens}
 * was read before it was believed, and any change of it wants to be read again. With {@code
 * -Dscreens.write=true} they are written anew. Below a row that is not all plain text the style of
 * each cell stands behind a tilde, by its first letter.
 */
final class ScreensTest {
  private static final Path FOLDER = Path.of("src/test/resources/screens");
  private static final int[][] SIZES = {{80, 24}, {40, 12}, {132, 40}};

  private final Map<String, Around.Port> ports = new LinkedHashMap<>();
  private String trouble = "";

  private interface Course {
    SmallShow of(SmallShow small);
  }

  @TestFactory
  Stream<DynamicTest> everyScreenIsAsItWasRead() {
    ports.put("Pedal", Around.Port.OK);
    Map<String, Course> courses = new LinkedHashMap<>();
    courses.put("waiting", small -> small.take(begun(small)));
    courses.put("set-up", SmallShow::begin);
    courses.put("set-up done", small -> small.begin().next(3));
    courses.put("song", small -> later(small.begin().next(4), 64));
    courses.put("song beyond its length", small -> later(small.begin().next(4), 251));
    courses.put("song beyond the slot", small -> later(small.begin().next(4), 2000));
    courses.put("made ready", small -> small.begin().next(4).press(Input.READY));
    courses.put("changeover", small -> small.begin().next(6));
    courses.put("changeover beyond the gap", small -> later(small.begin().next(7), 61));
    courses.put("changeover done", small -> small.begin().next(8));
    courses.put("section", small -> small.begin().next(10));
    courses.put("many moves", ScreensTest::manyMoves);
    courses.put("many moves done", small -> manyMoves(small).next(9));
    courses.put("menu", small -> small.begin().next(4).press(Input.MENU));
    courses.put("menu far down", small -> down(small.begin().next(4).press(Input.MENU), 9));
    courses.put("menu narrowed", small -> narrowed(small.begin().next(4), "s"));
    courses.put("moves done or not", small -> small.begin().next(7).choose("moves done"));
    courses.put("a cord is not there", small -> small.begin().next(4).choose("is not there"));
    courses.put("one more cord", small -> small.begin().next(4).choose("one more cord"));
    courses.put("lost", small -> small.begin().next(7).choose("lost"));
    courses.put("menu of nothing", small -> narrowed(small.begin().next(4), "xyzzy"));
    courses.put("quiet", small -> small.begin().next(4).press(Input.QUIET));
    courses.put("undone", small -> small.begin().next(6).press(Input.UNDO));
    courses.put("skipped", small -> small.begin().next(4).choose("skip"));
    courses.put("encore?", small -> until(Phase.PAUSE, small.begin()));
    courses.put("end", small -> until(Phase.END, small.begin()));
    courses.put("troubles", small -> troubles(small.begin().next(4)));
    courses.put("more ports than fit", small -> morePorts(small.begin().next(4)));
    return courses.entrySet().stream()
        .map(each -> DynamicTest.dynamicTest(each.getKey(), () -> test(each.getKey(), each)));
  }

  private void test(String name, Map.Entry<String, Course> course) throws IOException {
    ports.clear();
    ports.put("Pedal", Around.Port.OK);
    trouble = "";
    SmallShow small = course.getValue().of(new SmallShow());
    StringBuilder drawn = new StringBuilder();
    for (int[] size : SIZES) {
      Around around = new Around(small.now, "20:41", ports, trouble);
      drawn.append(text(Screen.draw(small.show, small.night, around, size[0], size[1])));
    }
    Path file = FOLDER.resolve(name.replaceAll("\\W+", "-").replaceAll("-$", "") + ".txt");
    if (Boolean.getBoolean("screens.write")) {
      Files.createDirectories(FOLDER);
      Files.writeString(file, drawn);
    }
    assertEquals(Files.readString(file), drawn.toString());
  }

  private static String text(Frame frame) {
    StringBuilder text = new StringBuilder();
    text.append("== ").append(frame.width()).append("x").append(frame.height()).append("\n");
    List<String> rows = frame.rows();
    for (int y = 0; y < frame.height(); y++) {
      StringBuilder styles = new StringBuilder();
      for (int x = 0; x < frame.width(); x++) {
        Style style = frame.style(x, y);
        styles.append(style == Style.TEXT ? ' ' : style.name().charAt(0));
      }
      text.append(rows.get(y)).append("\n");
      if (!styles.toString().isBlank()) {
        text.append("~").append(styles.toString().stripTrailing()).append("\n");
      }
    }
    return text.toString();
  }

  private static Event begun(SmallShow small) {
    return new Event.Begun(
        small.now, small.show.fingerprint(), List.of(0, 1, 2, 3), TrueRig.bare());
  }

  private static SmallShow later(SmallShow small, int seconds) {
    small.now += 1000L * seconds;
    return small;
  }

  private static SmallShow until(Phase phase, SmallShow small) {
    while (small.night.phase() != phase) {
      small.next(1);
    }
    return small;
  }

  private static SmallShow down(SmallShow small, int lines) {
    for (int line = 0; line < lines; line++) {
      small.press(Input.DOWN);
    }
    return small;
  }

  private static SmallShow narrowed(SmallShow small, String letters) {
    small.press(Input.MENU);
    letters.chars().forEach(letter -> small.take(new Event.Typed(small.now, letter)));
    return small;
  }

  /** More than any screen shows at once, here and there on the rig. */
  private static SmallShow manyMoves(SmallShow small) {
    List<Move> moves = new ArrayList<>();
    List<Spot> spots = small.show.modules();
    for (int move = 0; move < 30; move++) {
      Spot spot = spots.get(move * spots.size() / 30);
      Change change = new Change.Set(spot.module() + ".knob " + move, "5");
      moves.add(
          new Move(
              Verb.TURN,
              "TURN " + spot.module() + " knob " + move + " from 0 to 5",
              1,
              List.of(spot),
              List.of(change),
              move % 4 == 0));
    }
    Way way = new Way(0, true, moves, 95, 0, List.of("osc 1 knob 1 at 5", "amp 1 knob 29 at 5"));
    List<Way> ways = new ArrayList<>(List.of(way));
    for (int song = 1; song < 4; song++) {
      ways.add(SmallShow.way(song, false));
    }
    small.take(begun(small));
    return small.take(new Event.Planned(small.now, 1, List.of(0, 1, 2, 3), ways, ""));
  }

  private SmallShow troubles(SmallShow small) {
    ports.put("Stage Piano", Around.Port.FAILS);
    ports.put("Drum Box", Around.Port.LOST);
    trouble =
        "piano was not reached: the port is in use by another program, which has not let go of it"
            + " since the night began. Drum Box is not there. Press to go on.";
    return small;
  }

  private SmallShow morePorts(SmallShow small) {
    for (int port = 1; port <= 14; port++) {
      ports.put("Interface number " + port, Around.Port.OK);
    }
    return small;
  }
}
