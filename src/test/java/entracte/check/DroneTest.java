package entracte.check;

import static entracte.check.PatchBuilder.patch;
import static entracte.check.RigBuilder.commonKinds;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import entracte.rig.Module;
import entracte.rig.Rig;
import entracte.setlist.SetList;
import entracte.setlist.Song;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The patch for whoever is lost is checked like a song, but is none of the evening's. */
final class DroneTest {
  private static final Rig RIG =
      commonKinds()
          .row("osc 1: oscillator", "out: output")
          .row("filter 1: filter", "filter 2: filter")
          .build();

  private static Song song(String name, String slope) {
    return patch(name)
        .role("tone", "filter")
        .cord("osc 1.saw", "tone.audio")
        .cord("tone.out", "out.left")
        .set("tone", "other slope", slope)
        .song();
  }

  private static SetList set(Song drone) {
    return SetBuilder.set(RIG, song("Dusk", "2-pole"), song("Dawn", "2-pole")).withDrone(drone);
  }

  private static List<String> candidates(PlayableSet set, int song) {
    return set.parts().get(song).roles().stream()
        .filter(role -> role.name().equals("tone"))
        .flatMap(role -> role.candidates().stream())
        .map(Module::name)
        .toList();
  }

  @Test
  void aMistakeInItIsTold() {
    Checked checked = SetBuilder.check(set(patch("Drone").cord("osc 1.sow", "out.left").song()));
    assertEquals(1, checked.findings().size());
    assertTrue(
        checked.findings().get(0).message().contains("has no jack \"sow\""), checked.toString());
    assertTrue(checked.set().isEmpty());
  }

  @Test
  void itIsNoSongUntilTheStageAsksForIt() {
    PlayableSet set = SetBuilder.playable(set(song("Drone", "2-pole")));
    assertEquals(2, set.parts().size());
    assertEquals(3, set.withDrone().parts().size());
    assertEquals("Drone", set.withDrone().setList().songs().get(2).name());
    assertEquals(2, set.withDrone().inOrder(2, 0).parts().size());
  }

  @Test
  void aSetWithoutOneIsAsItWas() {
    PlayableSet set = SetBuilder.playable(RIG, song("Dusk", "2-pole"));
    assertEquals(set.parts(), set.withDrone().parts());
  }

  /** Nobody opens the case between two songs. */
  @Test
  void aRoleThatNeedsAJumperIsCastOnlyWhereItIsKnownToStandSo() {
    PlayableSet set = SetBuilder.playable(set(song("Drone", "3-pole"))).withDrone();
    assertEquals(List.of("filter 1", "filter 2"), candidates(set, 0));
    Map<String, String> jumpers =
        Map.of("filter 1.other slope", "2-pole", "filter 2.other slope", "3-pole");
    PlayableSet standing = set.withJumpers(jumpers);
    assertEquals(List.of("filter 1"), candidates(standing, 0));
    assertEquals(List.of("filter 2"), candidates(standing, 2));
    assertTrue(standing.canDoWithout(Set.of(), 0));
    PlayableSet unknown = set.withJumpers(Map.of("filter 2.other slope", "3-pole"));
    assertFalse(unknown.canDoWithout(Set.of(), 0));
  }
}
