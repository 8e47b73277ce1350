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
                + " \"Noon\" wants \"other slope\" at \"3-pole\";"
                + " \"Dusk\" wants \"other slope\" at \"2-pole\""
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
                + " \"Dusk\" wants \"other slope\" at \"2-pole\";"
                + " \"Dawn\" wants \"other slope\" at \"3-pole\""
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
                + " \"Straight\" wants \"other slope\" at \"2-pole\";"
                + " \"Crossed\" wants \"other slope\" at \"3-pole\""
                + ADVICE),
        rig(3),
        straight,
        wants("Dusk", "2-pole", "2-pole"),
        crossed);
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
