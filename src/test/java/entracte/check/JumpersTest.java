package entracte.check;

import static entracte.check.PatchBuilder.patch;
import static entracte.check.RigBuilder.commonKinds;

import entracte.rig.Rig;
import entracte.setlist.Song;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** One position of each jumper for the whole set. */
final class JumpersTest extends MistakesTest {
  private static final String ADVICE =
      " / A jumper is set once, before the show, power off and unplugged: change a patch, or let"
          + " another module play.";

  private static Rig rig(int filters) {
    String[] row = new String[filters];
    for (int i = 0; i < filters; i++) {
      row[i] = "filter " + (i + 1) + ": filter";
    }
    return commonKinds().row("osc 1: oscillator", "out: output").row(row).build();
  }

  /** A song with a filter after another for each position named. */
  private static Song wants(String name, String... positions) {
    PatchBuilder patch = patch(name);
    String from = "osc 1.saw";
    for (int i = 0; i < positions.length; i++) {
      String role = "f" + (i + 1);
      patch.role(role, "filter").cord(from, role + ".audio");
      patch.set(role, "other slope", positions[i]);
      from = role + ".out";
    }
    return patch.cord(from, "out.left").song();
  }

  /** Dawn wants what Noon wants, so it is not named besides. */
  @Test
  void twoSongsThatWantOneFilterDifferentlyCannotShareASet() {
    assertSaid(
        List.of(
            "error: no setting of the jumpers serves the whole set:"
                + " \"Noon\" wants \"other slope\" at \"3-pole\" for \"filter 1\";"
                + " \"Dusk\" wants \"other slope\" at \"2-pole\" for \"filter 1\""
                + ADVICE),
        rig(1),
        wants("Noon", "3-pole"),
        wants("Dusk", "2-pole"),
        wants("Dawn", "3-pole"));
  }

  @Test
  void withTwoFiltersTheyCan() {
    assertSaid(List.of(), rig(2), wants("Dusk", "2-pole"), wants("Dawn", "3-pole"));
  }

  @Test
  void oneSongMayWantMoreThanThereIs() {
    assertSaid(
        List.of(
            "error: no setting of the jumpers serves the whole set:"
                + " \"Dusk\" wants \"other slope\" at \"2-pole\" for \"f1\" and \"f2\";"
                + " \"Dawn\" wants \"other slope\" at \"3-pole\" for \"f1\""
                + ADVICE),
        rig(2),
        wants("Dusk", "2-pole", "2-pole"),
        wants("Dawn", "3-pole"));
  }

  @Test
  void aSongThatDoesNotCareTakesWhatIsLeft() {
    Song any =
        patch("Any")
            .role("a", "filter")
            .role("b", "filter")
            .cord("osc 1.saw", "a.audio")
            .cord("a.out", "b.audio")
            .cord("b.out", "out.left")
            .song();
    assertSaid(List.of(), rig(2), wants("Dusk", "2-pole"), any, wants("Dawn", "3-pole"));
  }

  /** One filter pinned at each position, and a third song that wants them the other way round. */
  @Test
  void pinsAreKept() {
    Song crossed =
        patch("Crossed")
            .cord("osc 1.saw", "filter 1.audio")
            .cord("filter 1.out", "out.left")
            .set("filter 1", "other slope", "3-pole")
            .song();
    Song straight =
        patch("Straight")
            .cord("osc 1.saw", "filter 1.audio")
            .cord("filter 1.out", "out.left")
            .set("filter 1", "other slope", "2-pole")
            .song();
    assertSaid(
        List.of(
            "error: no setting of the jumpers serves the whole set:"
                + " \"Straight\" wants \"other slope\" at \"2-pole\" for \"filter 1\";"
                + " \"Crossed\" wants \"other slope\" at \"3-pole\" for \"filter 1\""
                + ADVICE),
        rig(3),
        straight,
        wants("Dusk", "2-pole", "2-pole"),
        crossed);
  }

  /** A song that names a filter outright, with others after it that any filter may be. */
  private static Song pinned(String name, String filter, String position, String... others) {
    PatchBuilder patch = patch(name).cord("osc 1.saw", filter + ".audio");
    patch.set(filter, "other slope", position);
    String from = filter + ".out";
    for (String other : others) {
      patch.role("body", "filter").cord(from, "body.audio").set("body", "other slope", other);
      from = "body.out";
    }
    return patch.cord(from, "out.left").song();
  }

  /**
   * Nine, who takes both filters, clashes with Grass too; but Nine and Press name the same one, and
   * everyone sees why that cannot be.
   */
  @Test
  void twoSongsThatNameTheSameModuleAreNamedFirst() {
    assertSaid(
        List.of(
            "error: no setting of the jumpers serves the whole set:"
                + " \"Nine\" wants \"other slope\" at \"3-pole\" for \"filter 1\";"
                + " \"Press\" wants \"other slope\" at \"2-pole\" for \"filter 1\""
                + ADVICE),
        rig(2),
        pinned("Nine", "filter 1", "3-pole", "3-pole"),
        pinned("Press", "filter 1", "2-pole"),
        wants("Grass", "2-pole"));
  }

  /** Left, Right and Other cannot be served together; but Both and Other are fewer. */
  @Test
  void theFewestSongsAreNamed() {
    assertSaid(
        List.of(
            "error: no setting of the jumpers serves the whole set:"
                + " \"Both\" wants \"other slope\" at \"2-pole\" for \"f1\" and \"f2\";"
                + " \"Other\" wants \"other slope\" at \"3-pole\" for \"f1\""
                + ADVICE),
        rig(2),
        wants("Both", "2-pole", "2-pole"),
        pinned("Left", "filter 1", "2-pole"),
        pinned("Right", "filter 2", "2-pole"),
        wants("Other", "3-pole"));
  }

  @Test
  void threeSongsAreNamedWhereTwoOfThemWouldGetAlong() {
    assertSaid(
        List.of(
            "error: no setting of the jumpers serves the whole set:"
                + " \"Left\" wants \"other slope\" at \"2-pole\" for \"filter 1\";"
                + " \"Right\" wants \"other slope\" at \"2-pole\" for \"filter 2\";"
                + " \"Other\" wants \"other slope\" at \"3-pole\" for \"f1\""
                + ADVICE),
        rig(2),
        pinned("Left", "filter 1", "2-pole"),
        pinned("Right", "filter 2", "2-pole"),
        wants("Other", "3-pole"));
  }

  /** 2 to the 30th combinations are too many to try: the planner is left to find out. */
  @Test
  void manyJumpersAreLeftToThePlanner() {
    List<Song> songs = new ArrayList<>();
    for (int i = 0; i < 40; i++) {
      songs.add(wants("song " + i, i % 2 == 0 ? "2-pole" : "3-pole"));
    }
    assertSaid(List.of(), rig(30), songs.toArray(Song[]::new));
  }
}
