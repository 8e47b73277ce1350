package entracte.cue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import entracte.cue.Touch.Act;
import entracte.plan.Action;
import entracte.plan.Changeover;
import entracte.plan.Plan;
import entracte.plan.SongPlan;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The plan is drawn at {@link KitchenDances}, its rig at {@link SmallRig}. */
class PaperworkTest {
  private final Paperwork papers = Paperwork.of(KitchenDances.plan(), Pace.estimated());

  @Test
  void theBagHoldsWhatIsPluggedAtOnceAndSpares() {
    assertEquals(
        List.of("8 patch cords: 7 at the most at once, 1 spare"), papers.packing().cords());
    assertEquals(List.of(4, 4, 7), papers.plugged());
  }

  @Test
  void modulesAreCountedByKind() {
    assertEquals(
        List.of(
            "1 x keyboard: keys",
            "2 x oscillator: osc 1, osc 2",
            "1 x multiple: mult 1",
            "1 x slow oscillator: lfo 1",
            "1 x mixer: mix 1",
            "1 x filter: filter 1"),
        papers.packing().modules());
  }

  @Test
  void aPatchCardHoldsAllThatIsNeededAndNothingElse() {
    SongSheet song = papers.songs().get(1);
    assertEquals(
        List.of(
            "keys pitch 2 to osc 1 pitch 1",
            "osc 1 saw to mix 1 channel 2 in",
            "mix 1 out to filter 1 audio"),
        song.cords());
    assertEquals(
        List.of(
            "osc 1: octave at 8",
            "mix 1: channel 2 level at 5",
            "filter 1: cutoff at 6.5, resonance at 3"),
        song.settings());
    assertEquals(List.of("filter 1 other slope at 3-pole"), song.jumpers());
    assertEquals(List.of("lfo 1 out to osc 2 fm"), song.beside().cords());
    assertFalse(song.encore());
  }

  /** Whoever rebuilds the rig from a patch card can go on with the next changeover. */
  @Test
  void everyKnobThatALaterSongFindsSetIsOnThePatchCards() {
    Plan plan = KitchenDances.plan();
    int found = 0;
    for (Changeover changeover : plan.changeovers()) {
      Set<String> moved = new HashSet<>();
      changeover.actions().forEach(action -> moved.add(setBy(action)));
      SongPlan song = plan.songs().get(changeover.to());
      for (NamedSettings.Named named : NamedSettings.of(song).all()) {
        String control = Wording.local(named.control());
        if (changeover.to() > 0 && !moved.contains(named.control().toString())) {
          SongSheet before = papers.songs().get(changeover.to() - 1);
          String at = control + " at " + song.positions().get(named.control());
          assertTrue(
              Stream.of(before.settings(), before.beside().settings())
                  .flatMap(List::stream)
                  .filter(line -> line.startsWith(named.control().module().name() + ": "))
                  .anyMatch(line -> line.contains(at)),
              at + " is not on the card before song " + (changeover.to() + 1));
          found++;
        }
      }
    }
    assertTrue(found >= 3, "only " + found);
  }

  private static String setBy(Action action) {
    if (action instanceof Action.Turn turn) {
      return turn.knob().toString();
    }
    return action instanceof Action.Flip flip ? flip.toggle().toString() : "";
  }

  @Test
  void whatABareRigStartsWithIsNothing() {
    assertEquals(new Standing(List.of(), List.of()), papers.start());
  }

  @Test
  void leadsAndToolsAreCountedToo() {
    List<String> lines = papers.packing().lines();
    assertTrue(lines.contains("mains lead or supply of the case"), lines::toString);
    assertTrue(lines.contains("screwdriver for the panels, to set jumpers"), lines::toString);
    assertTrue(lines.stream().noneMatch(line -> line.contains("MIDI")), "nothing is sent");
    assertEquals(1, lines.stream().filter(line -> line.startsWith("audio lead to the")).count());
  }

  @Test
  void eachVoiceIsFollowedToWhereNoCordLeadsOn() {
    assertEquals(
        List.of(
            "osc 1 plays bass, from keys pitch 2, through mix 1, filter 1",
            "osc 2 plays lead, from keys pitch 2, through mix 1, filter 1"),
        papers.songs().get(2).voices());
  }

  @Test
  void aMoveTouchesTheJackItLeavesAndThenTheOneItEnters() {
    Step move = step(1, Verb.MOVE);
    assertEquals(List.of(Act.PULL, Act.PLUG), move.touches().stream().map(Touch::act).toList());
    assertEquals(
        List.of("keys pitch 1", "keys pitch 2"), move.touches().stream().map(Touch::name).toList());
    assertEquals(move.reach(), move.touches().stream().map(Touch::spot).toList());
  }

  @Test
  void everyMoveTouchesOnePlace() {
    for (Cue cue : papers.sheet().cues()) {
      for (Step step : cue.steps()) {
        long moves = step.touches().stream().filter(t -> t.act() != Act.TUNE).count();
        assertEquals(step.moves(), moves, step.text());
      }
    }
  }

  @Test
  void aKnobTravelsInPartsOfItsScale() {
    Step turn =
        papers.sheet().cues().get(1).steps().stream()
            .filter(step -> step.text().equals("TURN filter 1 cutoff from 4 to 6.5"))
            .findFirst()
            .orElseThrow();
    assertEquals(
        Optional.of(new Touch.Travel(0, OptionalDouble.of(0.4), 0.65)),
        turn.touches().get(0).travel());
  }

  @Test
  void aSwitchTravelsFromStopToStop() {
    assertEquals(
        Optional.of(new Touch.Travel(3, OptionalDouble.of(0.5), 0)),
        step(2, Verb.SWITCH).touches().get(0).travel());
  }

  @Test
  void theCaseIsAsWideAsItsModules() {
    CaseMap.Panel osc = papers.map().rows().get(0).get(1);
    assertEquals(new CaseMap.Panel("osc 1", 6, 6), osc);
    assertTrue(papers.map().rows().get(1).size() == 3);
  }

  @Test
  void oscillatorsAreTunedToTheHeldAAndToEachOther() {
    assertEquals(
        List.of(
            "with A4, the A above middle C, held (440 Hz)",
            "osc 1: 220 Hz",
            "osc 2: 880 Hz, 24 semitones above osc 1 (ratio 4; no beat against a pure 4 to 1)"),
        papers.songs().get(2).tuning());
  }

  private Step step(int cue, Verb verb) {
    return papers.sheet().cues().get(cue).steps().stream()
        .filter(step -> step.verb() == verb)
        .findFirst()
        .orElseThrow();
  }
}
