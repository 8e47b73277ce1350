package entracte.cue;

import static org.junit.jupiter.api.Assertions.assertEquals;

import entracte.plan.SongPlan;
import entracte.setlist.GearCue;
import entracte.setlist.Patch;
import entracte.setlist.Song;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class SongCardTest {
  @Test
  void controllersAreCalledAsThePlayerWroteThem() {
    GearCue cue =
        new GearCue(
            "piano",
            Optional.of(5),
            Optional.empty(),
            List.of(new GearCue.ControlChange(7, 90, "volume"), new GearCue.ControlChange(74, 20)),
            List.of(new GearCue.Fine(GearCue.FineKind.REGISTERED, 0, 256)));
    assertEquals(List.of("piano to program 5, volume 90, cc 74 at 20, rpn 0 at 256"), gear(cue));
  }

  @Test
  void gearThatKeepsItsProgramIsOnlyTurned() {
    GearCue cue =
        new GearCue(
            "drum box",
            Optional.empty(),
            Optional.empty(),
            List.of(new GearCue.ControlChange(7, 0, "volume")));
    assertEquals(List.of("drum box to volume 0"), gear(cue));
  }

  private static List<String> gear(GearCue cue) {
    Patch patch = new Patch("any", List.of(), List.of(), List.of());
    Song song =
        new Song("One", patch, List.of(), OptionalDouble.empty(), List.of(cue), Song.Card.blank());
    return SongCard.of(new SongPlan(song, List.of(), List.of(), List.of(), Map.of())).gear();
  }
}
