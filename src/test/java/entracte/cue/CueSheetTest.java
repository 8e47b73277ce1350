package entracte.cue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import entracte.rig.Warmth;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Word for word what {@link KitchenDances} tells the hands. */
class CueSheetTest {
  private final CueSheet sheet = CueSheet.of(KitchenDances.plan(), Pace.estimated());

  @Test
  void inTheSetUpTheHandsTravelOnceAndDoOnTheWayWhatIsForLater() {
    assertEquals(
        List.of(
            "LOWER the main level before any plug or switch moves",
            "PLUG keys pitch 1, then osc 1 pitch 1",
            "PLUG osc 1 saw, then mix 1 channel 1 in",
            "PLUG lfo 1 out, then osc 2 fm",
            "PLUG mix 1 out, then filter 1 audio",
            "SWITCH osc 1 octave to 8",
            "SWITCH osc 2 octave to 4",
            "TURN mix 1 channel 1 level to 7",
            "TURN filter 1 cutoff to 4",
            "TURN filter 1 resonance to 3",
            "TUNE osc 1 (plays for the first time)",
            "RAISE the main level slowly"),
        texts(0));
  }

  @Test
  void stepsOfOneModuleStandTogetherWithinEachPhase() {
    for (Cue cue : sheet.cues()) {
      Map<Verb, List<String>> visits = new EnumMap<>(Verb.class);
      for (Step step : cue.steps()) {
        if (!step.reach().isEmpty()) {
          List<String> seen = visits.computeIfAbsent(step.verb(), verb -> new ArrayList<>());
          String module = step.reach().get(0).module();
          boolean stays = !seen.isEmpty() && seen.get(seen.size() - 1).equals(module);
          assertTrue(stays || !seen.contains(module), step.text());
          seen.add(module);
        }
      }
    }
  }

  @Test
  void aCordOfWhichOnePlugMovesKeepsTheOther() {
    assertEquals(
        List.of(
            "LOWER the main level before any plug or switch moves",
            "MOVE from keys pitch 1, to keys pitch 2; keep the plug in osc 1 pitch 1",
            "MOVE from mix 1 channel 1 in, to mix 1 channel 2 in; keep the plug in osc 1 saw",
            "TURN mix 1 channel 2 level to 5",
            "TURN filter 1 cutoff from 4 to 6.5",
            "TUNE osc 1 (another pitch cord)",
            "RAISE the main level slowly"),
        texts(1));
  }

  @Test
  void whatIsSplitIsTunedToo() {
    assertEquals(
        List.of(
            "LOWER the main level before any plug or switch moves",
            "MOVE from osc 1 pitch 1, to mult 1 tap 1; keep the plug in keys pitch 2",
            "PLUG osc 2 pulse, then mix 1 channel 1 in",
            "PLUG mult 1 tap 2, then osc 1 pitch 1",
            "PLUG mult 1 tap 3, then osc 2 pitch 1",
            "SWITCH osc 1 octave from 8 to 16",
            "TURN mix 1 channel 1 level from 7 to 2",
            "TUNE osc 1 (another pitch cord, octave changed)",
            "TUNE osc 2 (plays for the first time)",
            "RAISE the main level slowly"),
        texts(2));
  }

  @Test
  void everyMoveSaysWhy() {
    assertEquals(
        List.of(
            "",
            "Two Kettles: keys pitch 2 feeds lead pitch 1; osc 1 plays lead, already set",
            "Two Kettles: lead saw feeds blend low in; mix 1 plays blend, the only one that can",
            "for blend.low in Two Kettles; mix 1 plays blend, the only one that can",
            "for bright in Two Kettles; filter 1 plays bright, the only one that can",
            "another pitch cord",
            ""),
        sheet.cues().get(1).steps().stream().map(Step::why).toList());
  }

  @Test
  void whatIsDoneEarlySaysForWhichSongAndWhyItMayWait() {
    List<Step> early = sheet.cues().get(0).steps().stream().filter(Step::early).toList();
    String why = "early, for song 3 (Late Bus): osc 2 is idle until then";
    assertEquals(List.of(why, why), early.stream().map(Step::why).toList());
    assertEquals(List.of(2, 2), early.stream().map(Step::forSong).toList());
  }

  @Test
  void aMultipleThatNoRoleAskedForSplits() {
    assertEquals(
        "Late Bus: keys pitch 2 feeds mult 1 to be split;"
            + " where it was, osc 1 pitch 1 is needed by mult 1 tap 2",
        sheet.cues().get(2).steps().get(1).why());
    assertEquals(
        "Late Bus: keys pitch 2, split by mult 1, feeds bass pitch 1;"
            + " osc 1 plays bass, and keeps a cord from the song before",
        sheet.cues().get(2).steps().get(3).why());
    assertEquals(
        "Late Bus: keys pitch 2, split by mult 1, feeds lead pitch 1;"
            + " osc 2 plays lead, and keeps a cord from the song before",
        sheet.cues().get(2).steps().get(4).why());
  }

  @Test
  void movesAreCountedAsThePlanCountsThem() {
    assertEquals(List.of(13, 6, 10), sheet.cues().stream().map(Cue::moves).toList());
    assertEquals(29, KitchenDances.plan().moves() + KitchenDances.plan().setUpMoves());
  }

  @Test
  void jumpersComeWithTheirCautionAndBeforeEverythingElse() {
    assertEquals(List.of("filter 1 other slope to 3-pole"), sheet.jumpers());
    assertEquals(
        List.of(
            "Jumpers first: power off and mains plug out before a panel is opened, and only by"
                + " someone able to. No jumper is touched once the show has begun.",
            "Switch on with the main level down: the rig first, amplifiers and loudspeakers last."
                + " Switch off the other way round: a thump harms ears and loudspeakers.",
            "Main level down before any plug moves: pops harm ears and loudspeakers.",
            "Raise levels slowly, headphones too. Loud sound harms hearing for good.",
            "Keep cords off the floor and drinks off the case.",
            "Mains work is for a licensed electrician under local code."),
        sheet.cautions());
  }

  @Test
  void aSetWithoutJumpersHasNoCautionAboutThem() {
    assertEquals(5, SetUpCautions.of(false, Warmth.unsaid()).size());
  }

  /** Whoever begins in mid-set has a rig that is on, and ears that listen. */
  @Test
  void inMidSetThePowerIsOnAndTheOtherCautionsStand() {
    assertEquals(
        List.of(
            "Main level down before any plug moves: pops harm ears and loudspeakers.",
            "Raise levels slowly, headphones too. Loud sound harms hearing for good.",
            "Keep cords off the floor and drinks off the case.",
            "Mains work is for a licensed electrician under local code.",
            "No jumper is touched once the show has begun."),
        SetUpCautions.inMidSet(true, Warmth.unsaid()));
  }

  @Test
  void whatWaitsUnheardIsNamed() {
    assertEquals(
        List.of(List.of("lfo 1 out to osc 2 fm"), List.of("lfo 1 out to osc 2 fm"), List.of()),
        sheet.cues().stream().map(Cue::parked).toList());
  }

  @Test
  void onlyAGapThatIsTooShortIsOverrun() {
    assertEquals(List.of(0.0, 0.0), List.of(overrun(0), overrun(1)));
    assertEquals(sheet.cues().get(2).seconds() - 40, overrun(2));
  }

  @Test
  void theCardSaysWhoPlaysWhatAndWhatTheGearIsSent() {
    SongCard card = sheet.cues().get(2).card();
    assertEquals(List.of("Key: D minor", "Tempo: 92", "Starts: viola, four bars"), card.lines());
    assertEquals(List.of("piano to bank 1/2, program 5, volume 90"), card.gear());
    assertEquals(
        List.of(
            "osc 2 plays lead",
            "osc 1 plays bass",
            "filter 1 plays bright",
            "mix 1 plays blend (low on 2, high on 1)",
            "mult 1 splits keys pitch 2"),
        card.casting());
  }

  private double overrun(int cue) {
    return sheet.cues().get(cue).overrunSeconds();
  }

  private List<String> texts(int cue) {
    return sheet.cues().get(cue).steps().stream().map(Step::text).toList();
  }
}
