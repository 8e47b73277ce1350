package entracte.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import entracte.check.Checker;
import entracte.check.PlayableSet;
import entracte.cue.Pace;
import entracte.cue.Paperwork;
import entracte.plan.Options;
import entracte.plan.Plan;
import entracte.plan.Planner;
import entracte.plan.Result;
import entracte.plan.Start;
import entracte.read.ReadSet;
import entracte.read.SetReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the papers of the small set say, and where. */
class AuthorTest {
  private static final Path SET = Path.of("sets", "kitchen-table");

  @TempDir Path folder;

  private static Plan plan(Path set, Start start) {
    ReadSet read = SetReader.read(set);
    PlayableSet playable =
        Checker.check(read.setList().orElseThrow(), read.places()).set().orElseThrow();
    Options options = Options.defaults().withRounds(1).withStart(start);
    return ((Result.Planned) Planner.plan(playable, options)).plan();
  }

  private static String text(Plan plan, Part part) {
    Paperwork papers = Paperwork.of(plan, Pace.estimated());
    return String.join(" ", Sheets.text(papers, Set.of(part))).replaceAll("\\s+", " ");
  }

  private static Start afterTheSecondSong(boolean midSet) {
    return new Start(plan(SET, Start.bare()).songs().get(1).state(), midSet);
  }

  @Test
  void aCardThatBeginsInMidSetBringsTheCautions() {
    String text = text(plan(SET, afterTheSecondSong(true)), Part.CHANGEOVERS);
    String first = text.substring(0, text.indexOf("To 2 "));
    assertTrue(first.contains("! Main level down before any plug moves"), first);
    assertTrue(first.contains("! Mains work is for a licensed electrician"), first);
    assertFalse(first.contains("Switch on with"), first);
    assertFalse(text.substring(first.length()).contains("! "), "one card is enough");
  }

  @Test
  void whatIsPluggedAlreadyStandsOnTheFirstSheet() {
    String setUp = text(plan(SET, afterTheSecondSong(false)), Part.SET_UP);
    assertTrue(setUp.contains("From the rig as it was saved: 8 cords in."), setUp);
    assertTrue(setUp.contains("In already: env 1 out 1 to amp 1 cv; "), setUp);
    assertTrue(setUp.contains("Set already: osc 1: "), setUp);
    String bare = text(plan(SET, Start.bare()), Part.SET_UP);
    assertTrue(bare.contains("From a bare rig: no cord in, every knob anywhere."), bare);
    assertFalse(bare.contains("In already"), bare);
  }

  @Test
  void theRigIsSwitchedOnAfterTheJumpersAndBeforeAnythingIsPlugged() {
    String setUp = text(plan(SET, Start.bare()), Part.SET_UP);
    int power = setUp.indexOf("[ ] Main level down, then switch on: the rig and its gear first");
    assertTrue(power > 0 && power < setUp.indexOf("PLUG "), setUp);
  }

  @Test
  void whoeverMixesIsToldOfTheTalk() throws IOException {
    String talk = "    talk: 60 s\n    starts: ";
    Path mine = Files.createDirectories(folder.resolve("set/patches"));
    try (var files = Files.walk(SET)) {
      for (Path file : (Iterable<Path>) files.filter(Files::isRegularFile)::iterator) {
        String text = Files.readString(file).replace("    starts: ", talk);
        Path copy = mine.getParent().resolve(SET.relativize(file));
        Files.createDirectories(copy.getParent());
        Files.writeString(copy, text);
      }
    }
    Plan plan = plan(mine.getParent(), Start.bare());
    assertTrue(
        text(plan, Part.ENGINEER)
            .contains("2 Bread Clock (0:32). talk before it, 1:00: leave the microphone open;"),
        text(plan, Part.ENGINEER));
    assertTrue(text(plan, Part.ORDER).contains("gap 0:45, talk 1:00"), text(plan, Part.ORDER));
    assertTrue(text(plan, Part.CHANGEOVERS).contains("gap 45 s, talk meanwhile 1 min."));
    assertEquals(-1, text(plan(SET, Start.bare()), Part.ENGINEER).indexOf("microphone"));
  }

  /** The cords that wait and the knobs that stand early are on the card that is rebuilt from. */
  @Test
  void aPatchCardSaysWhatTheSetKeepsBesideIt() {
    String first = text(plan(SET, Start.bare()), Part.PATCHES);
    String card = first.substring(0, first.indexOf("Patch 2 "));
    assertTrue(card.contains("In the set also in, unheard: keys pitch 2 to osc 2 pitch."), card);
    assertTrue(card.contains("Set already, for later songs: osc 1: fm amount at 4; osc 2: "), card);
  }
}
