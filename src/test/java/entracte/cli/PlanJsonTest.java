package entracte.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import entracte.cue.CueSheet;
import entracte.cue.KitchenDances;
import entracte.cue.Pace;
import entracte.plan.Aim;
import entracte.plan.Result;
import entracte.plan.SongPlan;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The plan of {@link KitchenDances} as another program reads it. */
class PlanJsonTest {
  private final Map<?, ?> json = read();

  private static Map<?, ?> read() {
    Result.Planned planned =
        new Result.Planned(
            Aim.FEWEST, KitchenDances.plan(), 14, 13, false, Result.Stopped.TIME, 0.40049);
    CueSheet sheet = CueSheet.of(planned.plan(), Pace.estimated());
    return (Map<?, ?>) StrictJson.read(Json.write(PlanJson.of(planned, sheet, Aim.FEWEST)));
  }

  @Test
  void itBeginsWithWhatThePlanComesTo() {
    assertEquals("Kitchen Dances", json.get("set"));
    assertEquals("fewest", json.get("aim"));
    assertEquals(16.0, json.get("moves"));
    assertEquals(14.0, json.get("lowerBound"));
    assertEquals(false, json.get("proven"));
    assertEquals(13.0, json.get("setUpMoves"));
    assertEquals(0.4, json.get("searchSeconds"));
    assertEquals(Map.of("filter 1.other slope", "3-pole"), json.get("jumpers"));
  }

  /** A4 is 440 Hz (ISO 16:1975), and an 8 foot register sounds as written. */
  @Test
  void aChangeoverSaysWhatItsOscillatorsAreTunedTo() {
    Map<?, ?> setUp = (Map<?, ?>) list(json, "changeovers").get(0);
    assertEquals(
        List.of("with A4, the A above middle C, held (440 Hz)", "osc 1: 440 Hz"),
        setUp.get("tuning"));
  }

  @Test
  void aSongHasItsCastingCordsAndPositionsByPhysicalNames() {
    Map<?, ?> song = (Map<?, ?>) list(json, "songs").get(0);
    assertEquals("Plain Morning", song.get("song"));
    assertEquals(
        Map.of(
            "lead",
            "osc 1",
            "bright",
            "filter 1",
            "blend",
            "mix 1",
            "blend.low",
            "mix 1.1",
            "keys",
            "keys"),
        song.get("casting"));
    assertEquals(
        List.of(
            List.of("keys.pitch 1", "osc 1.pitch.1"),
            List.of("osc 1.saw", "mix 1.1.in"),
            List.of("mix 1.out", "filter 1.audio")),
        song.get("cords"));
    assertEquals(List.of(List.of("lfo 1.out", "osc 2.fm")), song.get("parked"));
    assertEquals(
        Map.of(
            "osc 1.octave", "8",
            "osc 2.octave", "4",
            "mix 1.1.level", 7.0,
            "filter 1.cutoff", 4.0,
            "filter 1.resonance", 3.0),
        song.get("positions"));
    assertFalse(song.containsKey("cordLengthsCm"), "lengths do not matter on this rig");
  }

  @Test
  void aSongSaysWhatItsGearIsSetToByThePlayersNames() {
    Map<?, ?> song = (Map<?, ?>) list(json, "songs").get(0);
    assertEquals(
        List.of(
            Map.of(
                "gear",
                "piano",
                "bank",
                List.of(1.0, 2.0),
                "program",
                5.0,
                "controllers",
                Map.of("volume", 90.0))),
        song.get("gear"));
  }

  @Test
  void aChangeoverHasItsCountsAndItsStepsInTheOrderOfTheHands() {
    Map<?, ?> changeover = (Map<?, ?>) list(json, "changeovers").get(1);
    assertEquals("Two Kettles", changeover.get("to"));
    assertEquals(false, changeover.get("setUp"));
    assertEquals(6.0, changeover.get("moves"));
    assertEquals(2.0, changeover.get("pulls"));
    assertEquals(2.0, changeover.get("plugs"));
    assertEquals(2.0, changeover.get("turns"));
    assertEquals(0.0, changeover.get("flips"));
    assertEquals(27.0, changeover.get("seconds"));
    Map<?, ?> step = (Map<?, ?>) list(changeover, "steps").get(1);
    assertEquals("move", step.get("move"));
    assertEquals(
        "MOVE from keys pitch 1, to keys pitch 2; keep the plug in osc 1 pitch 1",
        step.get("text"));
  }

  @Test
  void theStepsCountAsManyMovesAsTheirChangeover() {
    for (Object each : list(json, "changeovers")) {
      Map<?, ?> changeover = (Map<?, ?>) each;
      double moves =
          list(changeover, "steps").stream()
              .mapToDouble(step -> (Double) ((Map<?, ?>) step).get("moves"))
              .sum();
      assertEquals(changeover.get("moves"), moves);
    }
  }

  /** The patch says "pitch" twice, for two different equal jacks. */
  @Test
  void equalJacksOfOneNameKeepAKeyEach() {
    SongPlan song = KitchenDances.plan().songs().get(0);
    SongPlan.CastAs lead = song.casting().get(0);
    List<SongPlan.StripAs> twice =
        List.of(new SongPlan.StripAs("pitch", 2), new SongPlan.StripAs("pitch", 1));
    SongPlan.CastAs cast = new SongPlan.CastAs(lead.role(), lead.module(), twice);
    assertEquals(
        Map.of("lead", "osc 1", "lead.pitch 1", "osc 1.pitch.2", "lead.pitch 2", "osc 1.pitch.1"),
        PlanJson.casting(new SongPlan(song.song(), List.of(cast), List.of(), List.of(), Map.of())));
  }

  private static List<?> list(Map<?, ?> from, String key) {
    return (List<?>) from.get(key);
  }
}
