package entracte.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import entracte.plan.Aim;
import entracte.plan.Changeover;
import entracte.plan.Options;
import entracte.plan.Plan;
import entracte.plan.Planner;
import entracte.plan.Result;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whole commands on a set of two songs, as written by a musician. */
class CommandsTest {
  @TempDir Path folder;
  private final Typist typist = new Typist();

  @BeforeEach
  void writeTheSet() throws IOException {
    Files.writeString(
        folder.resolve("rig.yaml"),
        """
        rig: Shoe box
        kinds:
          tone: {in: [pitch], out: [wave], switches: {octave: [16, 8]}}
          keyboard: {out: [pitch]}
          box: {in: [audio], out: [out], knobs: {drive: 0..10}, leaves: [out]}
        rows:
          - - keys: keyboard
            - tone 1: tone
            - box 1: box
        cords: 4
        """);
    Files.writeString(
        folder.resolve("hum.yaml"),
        """
        patch: hum
        roles: {voice: tone, end: box}
        connections:
          keys.pitch: voice.pitch
          voice.wave: end.audio
        settings:
          voice: {octave: 8}
          end: {drive: 2}
        """);
    Files.writeString(
        folder.resolve("set.yaml"),
        """
        set: Shoe Songs
        rig: rig.yaml
        songs:
          - song: Heel
            patch: hum.yaml
          - song: Toe
            patch: hum.yaml
            gap: 20 s
            settings: {end: {drive: 7.5}}
        """);
  }

  /** Two aliases for one list that holds itself: one mistake at one place. */
  @Test
  void aMistakeThatIsToldOnceIsCountedOnce() throws IOException {
    Path set = folder.resolve("set.yaml");
    Files.writeString(set, Files.readString(set) + "together: &z [*z, *z]\n");
    assertEquals(1, typist.type("check", folder.toString()));
    assertTrue(typist.out().endsWith("\n1 error.\n"), typist.out());
  }

  @Test
  void aNightOfWhichNothingIsSentSaysSo() {
    assertEquals(0, typist.type("stage", folder.toString(), "--dry-run"));
    assertEquals("Heel\nToe\nNothing is sent: no song has a word for any gear.\n", typist.out());
  }

  @Test
  void aSetWithoutMistakesSaysSo() {
    assertEquals(0, typist.type("check", folder.toString()));
    assertEquals("No mistakes found; the set can be planned.\n", typist.out());
  }

  @Test
  void theSetMayBeNamedByItsFile() {
    assertEquals(0, typist.type("check", "-q", folder.resolve("set.yaml").toString()));
    assertEquals("", typist.out());
  }

  @Test
  void mistakesOfTheFilesAndOfTheTradeAreToldTogether() throws IOException {
    mend("hum.yaml", "octave: 8", "octave: 9");
    mend("set.yaml", "gap: 20 s", "gap: 20 sec");
    assertEquals(1, typist.type("check", folder.toString()));
    assertTrue(typist.out().contains("20 sec"), typist.out());
    assertTrue(typist.out().contains("octave: 9"), typist.out());
    assertTrue(typist.out().endsWith("2 errors.\n"), typist.out());
  }

  @Test
  void findingsMayBeReadByOtherPrograms() throws IOException {
    mend("hum.yaml", "octave: 8", "octave: 9");
    assertEquals(1, typist.type("check", "--json", folder.toString()));
    Map<?, ?> json = (Map<?, ?>) StrictJson.read(typist.out());
    assertEquals(false, json.get("playable"));
    assertEquals(1.0, json.get("errors"));
    Map<?, ?> finding = (Map<?, ?>) ((List<?>) json.get("findings")).get(0);
    assertEquals("error", finding.get("severity"));
    assertEquals(7.0, finding.get("line"));
  }

  @Test
  void whatIsTypedReachesThePlanner() {
    List<Options> seen = new ArrayList<>();
    Typist watched =
        new Typist(
            (set, options) -> {
              seen.add(options);
              return Planner.plan(set, options);
            });
    watched.type("plan", folder.toString());
    watched.type("plan", "--seconds", "0.5", "--seed", "7", "--aim", "FEWEST", folder.toString());
    assertEquals(Options.DEFAULT_SECONDS, seen.get(0).seconds());
    assertEquals(Options.DEFAULT_SEED, seen.get(0).seed());
    assertEquals(Aim.FEWEST, seen.get(0).aim());
    assertEquals(0.5, seen.get(1).seconds());
    assertEquals(7, seen.get(1).seed());
  }

  @Test
  void aSetWithErrorsIsNotPlanned() throws IOException {
    mend("hum.yaml", "octave: 8", "octave: 9");
    assertEquals(1, typist.type("plan", folder.toString()));
    assertEquals("", typist.out());
    assertTrue(
        typist.err().endsWith("entracte: a set with errors cannot be planned; mend them first\n"),
        typist.err());
  }

  @Test
  void thePlanNamesEveryMove() {
    assertEquals(0, typist.type("plan", folder.toString()));
    assertEquals("", typist.err());
    assertTrue(
        typist
            .out()
            .contains(
                """
                To 2 Toe: 1 move, about 4 s of a gap of 20 s
                  TURN box 1 drive from 2 to 7.5
                  Trust the tuning of: tone 1
                  Before you play, check: box 1 drive at 7.5; tone 1 octave at 8
                """),
        typist.out());
  }

  @Test
  void thePlanIsTheSameEveryTime() {
    typist.type("plan", folder.toString());
    String first = typist.out();
    typist.type("plan", folder.toString());
    assertEquals(first, typist.out());
  }

  @Test
  void asJsonThePlanIsOneObject() {
    assertEquals(0, typist.type("plan", "--json", folder.toString()));
    Map<?, ?> json = (Map<?, ?>) StrictJson.read(typist.out());
    assertEquals("Shoe Songs", json.get("set"));
    assertEquals(1.0, json.get("moves"));
    assertEquals(6.0, json.get("setUpMoves"));
  }

  @Test
  void asJsonThereAreReasonsWithoutAsking() {
    assertEquals(0, typist.type("plan", "--json", folder.toString()));
    assertTrue(typist.out().contains("\"why\": \""), typist.out());
    assertEquals("", typist.err());
    assertEquals(0, typist.type("plan", "--json", "--why", folder.toString()));
    assertTrue(typist.out().contains("\"why\": \""), typist.out());
    assertEquals(
        "entracte: --why has no effect with --json, which always gives the reasons\n",
        typist.err());
  }

  @Test
  void fromASavedStateOnlyTheRestIsSetUp() throws IOException {
    Path state = folder.resolve("state.yaml");
    Files.writeString(
        state,
        """
        state: after soundcheck
        cords: {keys.pitch: tone 1.pitch}
        positions: {tone 1.octave: 16}
        """);
    assertEquals(0, typist.type("plan", "--from", state.toString(), folder.toString()));
    assertTrue(typist.out().contains("Set-up for 1 Heel: 4 moves"), typist.out());
    assertTrue(typist.out().contains("SWITCH tone 1 octave from 16 to 8"), typist.out());
  }

  @Test
  void inMidSetTheFirstChangeoverCounts() {
    assertEquals(0, typist.type("plan", "-q", "--mid-set", folder.toString()));
    assertTrue(typist.out().contains("Between songs: 7 moves"), typist.out());
    assertFalse(typist.out().contains("Set-up"), typist.out());
  }

  @Test
  void aStateThatIsNotThereIsTrouble() {
    assertEquals(3, typist.type("plan", "--from", "no/state.yaml", folder.toString()));
    assertEquals("entracte: there is no no/state.yaml", firstError());
  }

  @Test
  void aFolderWithoutASetIsTrouble() throws IOException {
    Path empty = Files.createDirectory(folder.resolve("empty"));
    assertEquals(3, typist.type("check", empty.toString()));
    assertEquals("entracte: " + empty + " holds no set.yaml", firstError());
  }

  @Test
  void whatCannotBePlayedIsSaidWithItsReason() {
    Typist helpless = new Typist((set, options) -> new Result.Impossible("Too many boxes."));
    assertEquals(1, helpless.type("plan", folder.toString()));
    assertEquals("entracte: there is no plan. Too many boxes.\n", helpless.err());
    Typist searching = new Typist((set, options) -> new Result.NoneFound("Too few cords."));
    assertEquals(1, searching.type("plan", folder.toString()));
    assertEquals("entracte: no plan was found. Too few cords.\n", searching.err());
  }

  @Test
  void aWrongPlanIsNeverShown() {
    Typist deceived =
        new Typist((set, options) -> forgetful((Result.Planned) Planner.plan(set, options)));
    assertEquals(70, deceived.type("plan", folder.toString()));
    assertEquals("", deceived.out());
    String begin = "entracte: the plan that was found is wrong, so it is not shown: ";
    assertTrue(deceived.err().startsWith(begin), deceived.err());
  }

  private static Result forgetful(Result.Planned planned) {
    Plan plan = planned.plan();
    List<Changeover> changeovers =
        List.of(plan.changeovers().get(0), new Changeover(1, false, List.of()));
    Plan wrong = new Plan(plan.set(), plan.start(), plan.songs(), plan.jumpers(), changeovers);
    return new Result.Planned(Aim.FEWEST, wrong, 0, 0, false, Result.Stopped.PROVEN, 0);
  }

  @Test
  void aSheetIsWrittenAndWrittenAnewButNeverOverNotes() throws IOException {
    Path sheet = folder.resolve("shoe.txt");
    assertEquals(0, typist.type("sheet", folder.toString(), "-o", sheet.toString()));
    assertEquals("Wrote " + sheet + ".\n", typist.out());
    assertTrue(Files.readString(sheet).contains("[ ]  1 TURN box 1 drive from 2 to 7.5\n"));
    assertEquals(0, typist.type("sheet", "-q", folder.toString(), "-o", sheet.toString()));
    assertEquals("", typist.out());
    mend("shoe.txt", "TURN box", "TURN the box");
    assertEquals(3, typist.type("sheet", folder.toString(), "-o", sheet.toString()));
    assertTrue(Files.readString(sheet).contains("TURN the box"));
  }

  private void mend(String file, String was, String is) throws IOException {
    Path path = folder.resolve(file);
    String text = Files.readString(path);
    assertTrue(text.contains(was), text);
    Files.writeString(path, text.replace(was, is));
  }

  private String firstError() {
    return typist.err().lines().findFirst().orElse("");
  }
}
