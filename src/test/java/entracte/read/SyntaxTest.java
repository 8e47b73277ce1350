package entracte.read;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Each mistake in the YAML itself is said in plain words, and points at what to mend. */
final class SyntaxTest {
  @TempDir Path folder;

  private void says(String yaml, String... expected) {
    Folder files = Folder.nightFerry(folder).with("set.yaml", yaml);
    assertEquals(List.of(expected), files.findings());
  }

  /** A set in which nothing but the given line is wrong. */
  private void lineSays(String line, String... expected) {
    says("set: A\nrig: harbour-case.yaml\nsongs: []\n" + line, expected);
  }

  @Test
  void aColonWithinAValue() {
    says(
        "set: A: B",
        "set.yaml:1:7: a colon cannot stand here | Put text that holds \": \" in quotation marks."
            + " Begin lines that belong together in the same column.");
  }

  @Test
  void aTab() {
    says("set: A\nsongs:\n\t- song: B", "set.yaml:3:1: a tab cannot stand here | Use blanks.");
    says(
        "set: A\nsongs:\n\t- song: B\n# C\n \t  patch: p\n",
        "set.yaml:3:1: a tab cannot stand here | Use blanks, here and in line 5.");
    says(
        "set: A\nsongs:\n" + "\t- song: B\n".repeat(12),
        "set.yaml:3:1: a tab cannot stand here"
            + " | Use blanks, here and in lines 4, 5, 6, 7, 8, 9, 10, 11 and 3 more.");
  }

  @Test
  void aSignThatYamlKeepsForItself() {
    says("set: @A", "set.yaml:1:6: a value cannot begin with @ | Put the text in quotation marks.");
    says("set: `A", "set.yaml:1:6: a value cannot begin with ` | Put the text in quotation marks.");
    says("set: *A", "set.yaml:1:6: \"*A\" stands for nothing | Put the text in quotation marks.");
    says(
        "set: & A",
        "set.yaml:1:7: an & or * needs a name behind it | Put the text in quotation marks.");
    lineSays(
        "park: !A no", "set.yaml:4:7: a ! means nothing here | Put the text in quotation marks.");
    says("set: !!A b", "set.yaml:1:6: a ! means nothing here | Put the text in quotation marks.");
    says("set: !<A", "set.yaml:1:9: a ! means nothing here | Put the text in quotation marks.");
    says("set: !x!A", "set.yaml:1:6: a ! means nothing here | Put the text in quotation marks.");
    says(
        "%YAML 3.0\n---\nset: A",
        "set.yaml:1:1: a line that begins with % means nothing | Delete it.");
  }

  @Test
  void aBracketThatIsNotClosed() {
    says("set: A\nsongs: [a, b\nrig: c", "set.yaml:2:8: this [ has no ] | Close it.");
    says("set: A\nrig: {a: b\n", "set.yaml:2:6: this { has no } | Close it.");
    says("set: A\nsongs: [a}", "set.yaml:2:8: this [ has no ] | Close it.");
    says("[", "set.yaml:1:2: the file ends too soon");
  }

  @Test
  void aBracketTooMany() {
    says("set: A\nsongs: [a]]", "set.yaml:2:11: this ] closes nothing | Delete it.");
    says("set: ]", "set.yaml:1:6: there is no value before this ]");
  }

  @Test
  void aCommaMissingOrTooMany() {
    says("songs: [\"a\" \"b\"]", "set.yaml:1:13: a comma or ] is missing before this");
    says("{\"a\": \"b\" \"c\": d}", "set.yaml:1:11: a comma or } is missing before this");
    says("songs: [,]", "set.yaml:1:9: there is no value before this ,");
  }

  @Test
  void aQuotationMarkWithoutPartner() {
    says(
        "set: \"A\nrig: b\n",
        "set.yaml:1:6: this quotation mark has no partner | Close it, or delete it.");
    says(
        "set: 'A\nrig: b\n",
        "set.yaml:1:6: this quotation mark has no partner | Close it, or delete it.");
    says(
        "set: \"A\" b\n",
        "set.yaml:1:10: this text cannot stand here"
            + " | Put the whole value in quotation marks, or none of it.");
  }

  @Test
  void aBackslashInQuotationMarks() {
    says(
        "set: \"A\\q\"",
        "set.yaml:1:9: this backslash means nothing"
            + " | Write two of them, or use single quotation marks.");
    says(
        "set: \"A\\xZZ\"",
        "set.yaml:1:10: this backslash means nothing"
            + " | Write two of them, or use single quotation marks.");
  }

  @Test
  void linesThatDoNotLineUp() {
    String advice = " | Begin lines that belong together in the same column.";
    says(
        "set:\n  a: b\n c: d",
        "set.yaml:3:2: this line does not line up with those above" + advice);
    says("set: a\n- b", "set.yaml:2:1: this line does not line up with those above" + advice);
    says("- a\nset: b", "set.yaml:2:1: this line does not line up with those above" + advice);
  }

  @Test
  void aLineWithoutColon() {
    String says =
        ": this line has neither a colon nor a dash"
            + " | Write name: value or - value, with a blank behind the colon or the dash.";
    says("set: A\nrig\nsongs: []", "set.yaml:2:1" + says);
    says("set: A\nrig:b\nsongs: []", "set.yaml:2:1" + says);
    says("set: A\nsongs:\n- a\n-b", "set.yaml:4:1" + says);
  }

  @Test
  void aListOnTheLineOfItsName() {
    says(
        "songs: - a",
        "set.yaml:1:8: a list cannot begin here"
            + " | Begin it on the next line, or write [one, another].");
  }

  @Test
  void aBlockOfTextWithSomethingBehindItsSign() {
    says(
        "set: |9x\n  A",
        "set.yaml:1:8: this cannot stand behind | or > | Begin the text on the next line.");
  }

  @Test
  void severalDocuments() {
    says(
        "set: A\n---\nset: B\n",
        "set.yaml:2:1: a second document begins here | Put it in a file of its own.");
    says(
        "--- a\n... b\n",
        "set.yaml:2:5: a second document begins here | Put it in a file of its own.");
  }

  @Test
  void noDocument() {
    String advice = " | Begin the file with a line set: NAME.";
    says("", "set.yaml:1:1: this file is empty" + advice);
    says(" \n\n", "set.yaml:1:1: this file is empty" + advice);
    says("# nothing yet\n", "set.yaml:1:1: this file holds nothing but comments" + advice);
    says("...", "set.yaml:1:1: the file ends too soon");
  }

  @Test
  void aFileThatIsNoTable() {
    says(
        "- a\n- b\n",
        "set.yaml:1:1: a set is names with values, not a list"
            + " | Begin the file with a line set: NAME.");
    says(
        "Night Ferry",
        "set.yaml:1:1: a set is names with values, not one value"
            + " | Begin the file with a line set: NAME.");
    says(
        "~",
        "set.yaml:1:1: a set is names with values, not nothing"
            + " | Begin the file with a line set: NAME.");
  }

  @Test
  void aNameWrittenTwice() {
    lineSays(
        "set: B",
        "set.yaml:4:1: \"set\" is written twice"
            + " | It stands in line 1 already. Keep one of them.");
  }

  @Test
  void aSourceWrittenTwiceIsAdvisedToBeAList() {
    Folder.nightFerry(folder)
        .with(
            "patches/two-hands.yaml",
            "patch: A\nconnections:\n  keys.gate: lead.gate\n  keys.gate: bass.gate\n");
    assertEquals(
        List.of(
            "patches/two-hands.yaml:4:3: \"keys.gate\" is written twice | It stands in line 3"
                + " already. One source feeds several sinks by a list: [one, another]."),
        new Folder(folder).findings());
  }

  @Test
  void aMergeKey() {
    lineSays(
        "<<: {gap: 4 s}",
        "set.yaml:4:1: \"<<\" is not known here"
            + " | To build on another patch write like: and its file.");
  }

  @Test
  void aNameThatIsNoText() {
    String advice = " | Text with [ or { in it is put in quotation marks.";
    lineSays("? [a, b]\n: c", "set.yaml:4:3: a name is text, not a list" + advice);
    lineSays("{a: b}: c", "set.yaml:4:1: a name is text, not names with values" + advice);
    lineSays(": c", "set.yaml:4:1: a : cannot stand here | Put the text in quotation marks.");
    lineSays("\"\": c", "set.yaml:4:1: there is no name before the colon");
  }

  @Test
  void aMissingValue() {
    lineSays("gap:", "set.yaml:4:1: \"gap\" has no value | Give it one, or delete it.");
    lineSays("gap: ~", "set.yaml:4:1: \"gap\" has no value | Give it one, or delete it.");
  }

  @Test
  void theWordNullIsAWord() {
    lineSays(
        "gap: null", "set.yaml:4:6: \"null\" is not a time | Write it like 40 s, 2:30 or 1 min.");
  }

  @Test
  void characterThatCannotBeShown() {
    lineSays(
        "park: \"no\\e\"",
        "set.yaml:4:7: this text holds a character that cannot be shown | Delete it.");
    lineSays(
        "park: \"no\\ud800\"",
        "set.yaml:4:7: this text holds a character that cannot be shown | Delete it.");
  }

  @Test
  void aliasesAreFollowed() {
    lineSays(
        "park: &a no\ngap: *a",
        "set.yaml:4:7: \"no\" is not a time | Write it like 40 s, 2:30 or 1 min.");
  }

  @Test
  void anAliasWithinItsOwnAnchor() {
    says(
        "set: A\nrig: harbour-case.yaml\nsongs: &a [*a]",
        "set.yaml:3:8: this is written as a part of itself | Write out what the alias stands for.",
        "set.yaml:3:8: song 1 is names with values, not a list"
            + " | Begin it with a line song: NAME.");
  }

  @Test
  void anAliasBomb() {
    StringBuilder yaml = new StringBuilder("a0: &a0 [lol]\n");
    for (int n = 1; n <= 9; n++) {
      yaml.append("a").append(n).append(": &a").append(n).append(" [");
      yaml.append(String.join(", ", Collections.nCopies(9, "*a" + (n - 1))));
      yaml.append("]\n");
    }
    says(
        yaml.toString(),
        "set.yaml:1:1: more than 50 aliases stand for lists or tables | Write some of them out.");
  }

  @Test
  void deepNesting() {
    says(
        "songs: " + "[".repeat(5000),
        // The names are the first level, so the bracket that is the fifty-first stands in column
        // 57.
        "set.yaml:1:57: more than 50 levels lie within each other"
            + " | Nothing here needs more than ten.");
    says(
        "songs: " + "[".repeat(49) + "]".repeat(49),
        "set.yaml:1:1: this set has no name | Begin the file with a line set: NAME.",
        "set.yaml:1:1: this set names no rig | Add a line rig: and the rig's file.",
        "set.yaml:1:9: song 1 is names with values, not a list"
            + " | Begin it with a line song: NAME.");
  }
}
