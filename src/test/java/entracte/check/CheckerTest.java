package entracte.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeout;
import static org.junit.jupiter.api.Assertions.assertTrue;

import entracte.finding.Place;
import entracte.finding.Places;
import entracte.setlist.Patch;
import entracte.setlist.SetList;
import entracte.setlist.Setting;
import entracte.setlist.Song;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The whole check: what stops planning, what is told once, and how long it may take. */
final class CheckerTest extends MistakesTest {
  @Test
  void aSetWithoutErrorsIsPlayable() {
    Checked checked = SetBuilder.check(RIG, voice().song());
    assertEquals(List.of(), checked.findings());
    assertEquals(1, checked.set().orElseThrow().parts().size());
  }

  @Test
  void warningsAndNotesDoNotStopPlanning() {
    Checked checked =
        SetBuilder.check(RIG, voice().role("idle", "lfo").cord("lead.sine", "lead.fm").song());
    assertEquals(2, checked.findings().size());
    assertTrue(checked.set().isPresent());
  }

  @Test
  void oneErrorStopsPlanning() {
    Checked checked = SetBuilder.check(RIG, voice().song(), voice().cord("x.y", "lead.fm").song());
    assertTrue(checked.set().isEmpty());
  }

  @Test
  void aMistakeInAPatchIsToldOnceHoweverManySongsPlayIt() {
    Patch patch = voice().set("bright", "cuttof", "4").build();
    assertSaid(
        List.of(
            "error: kind \"filter\" has no knob, switch or jumper \"cuttof\""
                + " / Did you mean \"cutoff\"?"),
        RIG,
        PatchBuilder.song("a", patch),
        PatchBuilder.song("b", patch),
        PatchBuilder.song("c", patch, new Setting("bright", "cutoff", "4")));
  }

  @Test
  void mistakesThatHaveNothingToDoWithEachOtherAreToldTogether() {
    assertSaid(
        List.of(
            "error: kind \"oscillator\" has no jack \"swa\" / Did you mean \"saw\"?",
            "error: \"a\", \"b\" and \"c\" need 3 modules of kind \"filter\", and the rig has 2:"
                + " filter 1 and filter 2"
                + " / Spare a role, or let one of them be played by another kind."),
        PatchBuilder.patch("p")
            .role("lead", "oscillator")
            .role("a", "filter")
            .role("b", "filter")
            .role("c", "filter")
            .cord("lead.swa", "a.audio"));
  }

  @Test
  void aFindingStandsWhereItsPieceIsWritten() {
    Patch patch = voice().set("bright", "cutoff", new String("12")).build();
    Place fallback = Place.wholeFile("set.yaml");
    Place line = new Place("p.yaml", 7, 12, "  bright: {cutoff: 12}");
    Place value = new Place("p.yaml", 7, 20, "  bright: {cutoff: 12}");
    SetList set = SetBuilder.set(RIG, PatchBuilder.song("a", patch));

    Places places = new Places(fallback);
    assertEquals(fallback, Checker.check(set, places).findings().get(0).place());
    places.note(patch.settings().get(0), line);
    assertEquals(line, Checker.check(set, places).findings().get(0).place());
    places.note(patch.settings().get(0).value(), value);
    assertEquals(value, Checker.check(set, places).findings().get(0).place());
  }

  /** Every second song has a patch of its own. The limit is loose: the machine may be busy. */
  @Test
  void tenThousandSongsAreNoBurden() {
    Patch shared = voice().build();
    List<Song> songs = new ArrayList<>();
    for (int i = 0; i < 10_000; i++) {
      Setting own = new Setting("bright", "cutoff", "" + i % 10);
      songs.add(PatchBuilder.song("song " + i, i % 2 == 0 ? shared : voice().build(), own));
    }
    SetList set = SetBuilder.set(RIG, songs.toArray(Song[]::new));
    Checked checked = assertTimeout(Duration.ofMinutes(1), () -> SetBuilder.check(set));
    assertEquals(List.of(), checked.findings());
    assertEquals(10_000, checked.set().orElseThrow().parts().size());
  }

  /** Nobody writes this by hand; a file gone wrong may look like it. */
  @Test
  void aPatchOfTwentyThousandRolesIsNoBurden() {
    PatchBuilder patch = PatchBuilder.patch("long");
    for (int i = 0; i < 20_000; i++) {
      patch
          .role("voice " + i, "oscillator")
          .cord("voice " + i + ".saw", "voice " + (i + 1) + ".fm");
      patch.set("stranger " + i, "tune", "0");
    }
    Checked checked =
        assertTimeout(Duration.ofMinutes(1), () -> SetBuilder.check(RIG, patch.song()));
    assertEquals(
        "\"voice 0\", \"voice 1\", \"voice 2\", \"voice 3\", \"voice 4\", \"voice 5\","
            + " \"voice 6\", \"voice 7\", \"voice 8\", \"voice 9\", \"voice 10\" and 19989 more"
            + " need 20000 modules of kind \"oscillator\", and the rig has 3: osc 1, osc 2 and"
            + " osc 3",
        checked.findings().get(checked.findings().size() - 1).message());
  }

  @Test
  void aLongChainThatFitsIsNoBurdenEither() {
    RigBuilder rig = RigBuilder.commonKinds().row("out: output");
    PatchBuilder patch = PatchBuilder.patch("long");
    String[] row = new String[3_000];
    for (int i = 0; i < row.length; i++) {
      row[i] = "osc " + i + ": oscillator";
      patch.cord("osc " + i + ".saw", "osc " + (i + 1) % row.length + ".fm");
    }
    Checked checked =
        assertTimeout(
            Duration.ofMinutes(1), () -> SetBuilder.check(rig.row(row).build(), patch.song()));
    assertEquals(2, checked.findings().size());
  }
}
