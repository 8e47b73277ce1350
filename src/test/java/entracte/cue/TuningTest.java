package entracte.cue;

import static org.junit.jupiter.api.Assertions.assertEquals;

import entracte.plan.PluggedCord;
import entracte.plan.SongPlan;
import entracte.plan.SongPlan.CastAs;
import entracte.rig.Control;
import entracte.rig.CordStock;
import entracte.rig.Position;
import entracte.setlist.Patch;
import entracte.setlist.Song;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Who is tuned before which song, in small made-up courses of songs. */
class TuningTest {
  private static final String PITCH_1 = "keys.pitch 1 to osc 1.pitch.1";

  private final SmallRig rig = new SmallRig(CordStock.unlimited());
  private Tuning tuning = new Tuning(true, Tunings.none(), rig.rig());
  private int songs;

  @Test
  void whatPlaysWithoutAPitchCordIsNotTuned() {
    assertEquals(List.of(), tuned("8", "osc 1.saw to osc 2.fm"));
  }

  @Test
  void aPitchCordThatIsOnlyPulledAsksForNoTuning() {
    assertEquals(List.of("TUNE osc 1 (plays for the first time)"), tuned("8", PITCH_1));
    assertEquals(List.of(), tuned("8"));
    assertEquals(List.of(), tuned("8", PITCH_1), "the same cord and octave as when it was tuned");
  }

  @Test
  void inMidSetNothingIsSaidToPlayForTheFirstTime() {
    tuning = new Tuning(false, Tunings.none(), rig.rig());
    assertEquals(
        List.of("TUNE osc 1 (it may be in tune still: hear it first)"), tuned("8", PITCH_1));
    assertEquals(List.of(), tuned("8", PITCH_1), "tuned by now");
    assertEquals(List.of("TUNE osc 1 (octave changed)"), tuned("16", PITCH_1));
  }

  @Test
  void anotherPitchCordAsksForTuning() {
    tuned("8", PITCH_1);
    assertEquals(
        List.of("TUNE osc 1 (another pitch cord)"), tuned("8", "keys.pitch 2 to osc 1.pitch.1"));
  }

  @Test
  void anotherOctaveAsksForTuning() {
    tuned("8", PITCH_1);
    assertEquals(List.of("TUNE osc 1 (octave changed)"), tuned("16", PITCH_1));
  }

  @Test
  void anotherLoadOnAPassiveMultipleAsksForTuning() {
    String[] two = {
      "keys.pitch 1 to mult 1.tap.1",
      "mult 1.tap.2 to osc 1.pitch.1",
      "mult 1.tap.3 to osc 2.pitch.1"
    };
    String[] one = {"keys.pitch 1 to mult 1.tap.1", "mult 1.tap.2 to osc 1.pitch.1"};
    tuned("8", two);
    assertEquals(List.of("TUNE osc 1 (keys pitch 1 feeds 1 input now, 2 before)"), tuned("8", one));
  }

  @Test
  void whatOnlyShookBeforeIsTunedWithItsFirstPitchCord() {
    tuned("8", "osc 1.saw to osc 2.fm");
    assertEquals(List.of("TUNE osc 1 (its first pitch cord)"), tuned("8", PITCH_1));
  }

  /** A plan that is made anew in the middle of a night knows what the ear did before. */
  @Test
  void whatStandsTunedAndUntouchedIsNotTunedAnew() {
    Tunings soFar = Tunings.none().tuned("osc 1", at8On("keys.pitch 1"));
    tuning = new Tuning(false, soFar, rig.rig());
    assertEquals(List.of(), tuned("8", PITCH_1));
    assertEquals(List.of("TUNE osc 1 (octave changed)"), tuned("16", PITCH_1));
  }

  @Test
  void whatHangsOtherwiseThanItWasTunedIsTunedAnew() {
    Tunings soFar = Tunings.none().tuned("osc 1", at8On("keys.pitch 1"));
    tuning = new Tuning(false, soFar, rig.rig());
    assertEquals(
        List.of("TUNE osc 1 (another pitch cord)"), tuned("8", "keys.pitch 2 to osc 1.pitch.1"));
  }

  /** Even if its knob stands at the mark again: a mark is not a pitch. */
  @Test
  void whatWasTouchedSinceItWasTunedIsTunedAnewOnce() {
    Tunings soFar = Tunings.none().tuned("osc 1", at8On("keys.pitch 1")).touched("osc 1");
    tuning = new Tuning(false, soFar, rig.rig());
    assertEquals(List.of("TUNE osc 1 (touched since it was tuned)"), tuned("8", PITCH_1));
    assertEquals(List.of(), tuned("8", PITCH_1));
  }

  @Test
  void whatTheEarHasNotSeenToOnThatNightIsToldFromTheRest() {
    Tunings soFar = Tunings.none().tuned("osc 2", at8On("keys.pitch 2"));
    tuning = new Tuning(false, soFar, rig.rig());
    assertEquals(List.of("TUNE osc 1 (not tuned yet)"), tuned("8", PITCH_1));
  }

  @Test
  void whatWasNeverTunedCannotBeSpoilt() {
    assertEquals(Tunings.none(), Tunings.none().touched("osc 1"));
  }

  private static Ear at8On(String source) {
    return new Ear(
        Set.of(source + " to osc 1.pitch.1"),
        Map.of(source.replace('.', ' '), 1L),
        Map.of("octave", "8"),
        "");
  }

  /** The tuning before a song in which osc 1 plays with these cords at this octave. */
  private List<String> tuned(String octave, String... cords) {
    String name = "Song " + ++songs;
    Patch patch = new Patch(name, List.of(), List.of(), List.of());
    Song song =
        new Song(name, patch, List.of(), OptionalDouble.empty(), List.of(), Song.Card.blank());
    List<PluggedCord> plugged = new ArrayList<>();
    for (String cord : cords) {
      String[] ends = cord.split(" to ");
      plugged.add(new PluggedCord(rig.cord(ends[0], ends[1]), CordStock.ANY_LENGTH));
    }
    Map<Control, Position> at = Map.of(rig.control("osc 1.octave"), new Position.Thrown(octave));
    List<CastAs> casting = List.of(new CastAs("lead", rig.module("osc 1"), List.of()));
    return tuning
        .before(new SongPlan(song, casting, plugged, List.of(), at), songs - 1)
        .steps()
        .stream()
        .map(Step::text)
        .toList();
  }
}
