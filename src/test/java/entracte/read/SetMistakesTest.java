package entracte.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import entracte.setlist.SetList;
import entracte.setlist.Song;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What may be wrong in a set's own file, and what may be left out. */
final class SetMistakesTest {
  private static final String HEAD = "set: A\nrig: harbour-case.yaml\n";
  private static final String SONG = "- song: B\n  patch: patches/two-hands.yaml\n";

  @TempDir Path folder;

  private ReadSet read(String set) {
    return Folder.nightFerry(folder).with("set.yaml", set).read();
  }

  private void says(String set, String... expected) {
    assertEquals(List.of(expected), new Folder(folder).lines(read(set).findings()));
  }

  private void songSays(String line, String... expected) {
    says(HEAD + "songs:\n" + SONG + "  " + line + "\n", expected);
  }

  private Song song(String line) {
    ReadSet read = read(HEAD + "songs:\n" + SONG + "  " + line + "\n");
    assertEquals(List.of(), read.findings());
    return read.setList().orElseThrow().songs().get(0);
  }

  @Test
  void aTempoThatIsAFigureIsAboveNothing() {
    String advice = " is not a tempo | Write beats per minute, like 92, or a word.";
    songSays("tempo: -3", "set.yaml:6:10: \"-3\"" + advice);
    songSays("tempo: 0", "set.yaml:6:10: \"0\"" + advice);
    assertEquals("free", song("tempo: free").card().tempo().orElseThrow());
  }

  @Test
  void aSetIsANightAndNoArchive() {
    assertEquals(1000, read(HEAD + "songs:\n" + SONG.repeat(1000)).setList().get().songs().size());
    ReadSet archive = read(HEAD + "songs:\n" + SONG.repeat(1001));
    assertEquals(
        List.of(
            "set.yaml:2004:3: the set has 1001 songs; 1000 can be planned"
                + " | Make a set of each night; sets may share their rig and their patches."),
        new Folder(folder).lines(archive.findings()));
    assertTrue(archive.setList().isEmpty());
  }

  @Test
  void whatASetCannotDoWithout() {
    says(
        "songs: []",
        "set.yaml:1:1: this set has no name | Begin the file with a line set: NAME.",
        "set.yaml:1:1: this set names no rig | Add a line rig: and the rig's file.");
  }

  @Test
  void aNameThatIsNotKnown() {
    says(HEAD + "gaps: 4 s", "set.yaml:3:1: \"gaps\" is not known here | Did you mean \"gap\"?");
    says(
        HEAD + "volume: 4",
        "set.yaml:3:1: \"volume\" is not known here"
            + " | Known here: set, rig, gap, park, slot, reserve, fallback, drone, together, apart,"
            + " songs, A4, tune on.");
    songSays("temper: 92", "set.yaml:6:3: \"temper\" is not known here | Did you mean \"tempo\"?");
  }

  @Test
  void aSongIsAnEncoreOrNot() {
    assertTrue(song("encore: yes").card().encore());
    assertFalse(song("encore: no").card().encore());
    assertFalse(song("key: A").card().encore());
    songSays("encore: maybe", "set.yaml:6:11: \"maybe\" is neither yes nor no | Write yes or no.");
  }

  @Test
  void parkIsYesOrNo() {
    assertTrue(read(HEAD).setList().orElseThrow().parking());
    assertTrue(read(HEAD + "park: yes").setList().orElseThrow().parking());
    assertFalse(read(HEAD + "park: no").setList().orElseThrow().parking());
    says(HEAD + "park: off", "set.yaml:3:7: \"off\" is neither yes nor no | Write yes or no.");
  }

  @Test
  void theGapOfTheSetHoldsForSongsThatDoNotSay() {
    SetList set =
        read(HEAD + "gap: 1:10\nsongs:\n" + SONG + SONG + "  gap: 0 s\n").setList().orElseThrow();
    assertEquals(OptionalDouble.of(70), set.songs().get(0).gapSeconds());
    assertEquals(OptionalDouble.of(0), set.songs().get(1).gapSeconds());
    assertEquals(OptionalDouble.empty(), song("tempo: 90").gapSeconds());
  }

  @Test
  void aTimeIsNotNegative() {
    String advice = "\"-75 s\" is less than no time | Write it without the minus.";
    songSays("gap: -75 s", "set.yaml:6:8: " + advice);
    songSays("length: -75 s", "set.yaml:6:11: " + advice);
    says(HEAD + "gap: -75 s", "set.yaml:3:6: " + advice);
  }

  @Test
  void aNameIsNotEmpty() {
    says(
        HEAD + "songs:\n- song: \"\"\n  patch: patches/two-hands.yaml\n",
        "set.yaml:4:9: this name is empty | Give the song a name.");
    says(
        HEAD.replace("set: A", "set: ''"),
        "set.yaml:1:6: this name is empty | Give the set a name.");
  }

  @Test
  void aTimeHasAUnit() {
    songSays("gap: 40", "set.yaml:6:8: \"40\" is a time without its unit | Write 40 s.");
    songSays(
        "length: 3.10",
        "set.yaml:6:11: \"3.10\" is a time without its unit | Write 3:10, or 3.10 s.");
    songSays("gap: 40 sec", "set.yaml:6:8: \"40 sec\" is not a time | Write 40 s.");
    songSays("gap: 2 Minutes", "set.yaml:6:8: \"2 Minutes\" is not a time | Write 2 min.");
    songSays(
        "gap: 40 cm",
        "set.yaml:6:8: \"40 cm\" is a length, not a time | Write it like 40 s, 2:30 or 1 min.");
    songSays(
        "gap: a while",
        "set.yaml:6:8: \"a while\" is not a time | Write it like 40 s, 2:30 or 1 min.");
    songSays(
        "length: 4:75",
        "set.yaml:6:11: \"4:75\" is not a time | Write it like 40 s, 2:30 or 1 min.");
  }

  @Test
  void theCardIsTextAsWritten() {
    assertEquals("010", song("tempo: 010").card().tempo().orElseThrow());
    assertEquals("no", song("starts: no").card().starts().orElseThrow());
    assertEquals("2:30", song("key: 2:30").card().key().orElseThrow());
    assertEquals("soft\nthen loud", song("notes: |\n    soft\n    then loud").card().notes().get());
    assertEquals(OptionalDouble.of(270), song("length: 4:30").card().lengthSeconds());
    assertEquals(OptionalDouble.of(270), song("length: 270 s").card().lengthSeconds());
  }

  @Test
  void aSongWithoutNameOrPatch() {
    says(
        HEAD + "songs:\n- tempo: 90\n- song: C\n",
        "set.yaml:4:3: song 1 has no name | Begin it with a line song: NAME.",
        "set.yaml:4:3: the song \"song 1\" has no patch | Add a line patch: and the patch's file.",
        "set.yaml:5:3: the song \"C\" has no patch | Add a line patch: and the patch's file.");
  }

  @Test
  void aValueOfTheWrongShape() {
    says(
        HEAD + "songs: none",
        "set.yaml:3:8: \"songs\" is a list, not one value | Begin each line of it with a dash.");
    says(
        HEAD + "songs:\n  song: B\n",
        "set.yaml:4:3: \"songs\" is a list, not names with values"
            + " | Begin each line of it with a dash.");
    says(
        HEAD + "songs:\n- Slack Water\n" + SONG,
        "set.yaml:4:3: song 1 is names with values, not one value"
            + " | Begin it with a line song: NAME.");
    songSays(
        "tempo: [90, 92]",
        "set.yaml:6:10: \"tempo\" is one value, not a list | Write one value behind the colon.");
    songSays(
        "settings: {bright: 4}",
        "set.yaml:6:22: \"bright\" is names with values, not one value"
            + " | Write {name: value}, or indented lines of name: value.");
    songSays(
        "settings: {bright: {cutoff: [4]}}",
        "set.yaml:6:31: \"cutoff\" is one value, not a list | Write one value behind the colon.");
  }

  @Test
  void aMistakeDoesNotHideTheNext() {
    ReadSet read = read(HEAD + "park: off\ngap: 4\nsongs:\n" + SONG + "  tempi: 4\n");
    assertEquals(3, read.findings().size());
    assertTrue(read.hasErrors());
    assertEquals("B", read.setList().orElseThrow().songs().get(0).name());
  }

  @Test
  void aSongWhosePatchCannotBeReadIsKeptWithoutItsSettings() {
    ReadSet read = read(HEAD + "songs:\n- song: B\n  patch: b.yaml\n  settings: {c: {d: 4}}\n");
    Song song = read.setList().orElseThrow().songs().get(0);
    assertEquals(List.of(), song.settings());
    assertEquals(List.of(), song.patch().roles());
    assertEquals(1, read.findings().size());
  }

  @Test
  void withoutARigOrWithSongsThatAreNoneThereIsNoSetList() {
    assertTrue(read("set: A\nrig: b.yaml\nsongs: []").setList().isEmpty());
    assertTrue(read(HEAD + "songs: none").setList().isEmpty());
    assertTrue(read(HEAD + "songs: [B]").setList().isEmpty());
    assertEquals(List.of(), read(HEAD + "songs: []").setList().orElseThrow().songs());
    assertEquals(List.of(), read(HEAD).setList().orElseThrow().songs());
  }
}
