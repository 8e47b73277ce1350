package entracte.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assumptions.assumeFalse;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files that are missing, are none, or hold no text. */
final class FilesTest {
  @TempDir Path folder;

  private Folder files;

  private void says(Folder files, String... expected) {
    assertEquals(List.of(expected), files.findings());
  }

  private Folder withRig(String rig) {
    return Folder.nightFerry(folder).with("set.yaml", "set: A\nrig: " + rig + "\n");
  }

  private Folder withSetBytes(int... bytes) {
    ByteArrayOutputStream set = new ByteArrayOutputStream();
    set.writeBytes("set: A\npark: n".getBytes(StandardCharsets.UTF_8));
    for (int each : bytes) {
      set.write(each);
    }
    return new Folder(folder).with("set.yaml", set.toByteArray());
  }

  @Test
  void aSetIsNamedByItsFolderOrItsFile() {
    files = Folder.nightFerry(folder);
    assertEquals("Night Ferry", SetReader.read(folder).setList().orElseThrow().name());
    assertEquals(
        "Night Ferry", SetReader.read(files.path("set.yaml")).setList().orElseThrow().name());
  }

  @Test
  void aSetThatIsNotThere() {
    says(new Folder(folder), "set.yaml:1:1: there is no file \"set.yaml\"");
    files = Folder.nightFerry(folder);
    assertEquals(
        List.of("sett.yaml:1:1: there is no file \"sett.yaml\" | Did you mean \"set.yaml\"?"),
        files.lines(SetReader.read(files.path("sett.yaml")).findings()));
    assertEquals(
        List.of("no/such.yaml:1:1: there is no file \"no/such.yaml\""),
        files.lines(SetReader.read(files.path("no/such.yaml")).findings()));
  }

  @Test
  void aRigThatIsNotThereIsNotedWhereItIsNamed() {
    says(
        withRig("harbor-case.yaml"),
        "set.yaml:2:6: there is no file \"harbor-case.yaml\""
            + " | Did you mean \"harbour-case.yaml\"?");
  }

  @Test
  void everySongThatNamesAMissingPatchIsAtFault() {
    String songs = "- {song: B, patch: b.yaml}\n- {song: C, patch: b.yaml}\n";
    says(
        withRig("harbour-case.yaml\nsongs:\n" + songs),
        "set.yaml:4:20: there is no file \"b.yaml\"",
        "set.yaml:5:20: there is no file \"b.yaml\"");
  }

  @Test
  void aBrokenPatchIsNotedOnceHoweverManySongsUseIt() {
    String songs = "- {song: B, patch: b.yaml}\n- {song: C, patch: ./b.yaml}\n";
    says(
        withRig("harbour-case.yaml\nsongs:\n" + songs).with("b.yaml", "patch: [\n"),
        "b.yaml:2:1: the file ends too soon");
  }

  @Test
  void aFolderInPlaceOfAFile() {
    says(
        withRig("patches"),
        "set.yaml:2:6: \"patches\" is a folder, not a file | Name a file in it.");
  }

  @Test
  void aDeviceInPlaceOfAFile() {
    assumeTrue(Files.exists(Path.of("/dev/zero")));
    says(
        withRig("/dev/zero"),
        "set.yaml:2:6: \"/dev/zero\" is a device, not a file | Name a text file.");
  }

  @Test
  void linksThatLeadNowhereOrToThemselves() throws IOException {
    files = withRig("link.yaml");
    String mend = " | Mend the link, or name the file itself.";
    Files.createSymbolicLink(files.path("link.yaml"), Path.of("gone.yaml"));
    says(files, "set.yaml:2:6: \"link.yaml\" is a link to a file that is not there" + mend);
    Files.createSymbolicLink(files.path("gone.yaml"), Path.of("link.yaml"));
    says(files, "set.yaml:2:6: \"link.yaml\" is a link that leads to itself" + mend);
  }

  @Test
  void aLinkToARigWillDo() throws IOException {
    files = withRig("link.yaml");
    Files.createSymbolicLink(files.path("link.yaml"), Path.of("harbour-case.yaml"));
    says(files);
  }

  @Test
  void namesThatNoFileCanHave() {
    String another = " | Give the file another name.";
    says(
        withRig("x".repeat(300)),
        "set.yaml:2:6: \"..." + "x".repeat(120) + "\" cannot be the name of a file" + another);
    says(
        withRig("set.yaml/b.yaml"),
        "set.yaml:2:6: \"set.yaml/b.yaml\" cannot be the name of a file" + another);
    says(withRig("\" \""), "set.yaml:2:6: \"\" cannot be the name of a file | Name another.");
  }

  @Test
  void aFileThatMayNotBeRead() throws IOException {
    files = withRig("harbour-case.yaml");
    Path rig = files.path("harbour-case.yaml");
    assumeTrue(rig.toFile().setReadable(false));
    assumeFalse(Files.isReadable(rig), "root may read everything");
    says(
        files,
        "set.yaml:2:6: \"harbour-case.yaml\" may not be read"
            + " | Look at the permissions of the file.");
  }

  @Test
  void aFileThatIsAnotherSort() {
    says(
        withRig("patches/two-hands.yaml"),
        "set.yaml:2:6: \"patches/two-hands.yaml\" is a patch, not a rig"
            + " | Name a file that begins with a line rig: NAME.");
  }

  @Test
  void aFileThatIsTooLarge() {
    byte[] huge = new byte[(FileLoader.LIMIT_MEGABYTES << 20) + 1];
    Arrays.fill(huge, (byte) '#');
    says(
        new Folder(folder).with("set.yaml", huge),
        "set.yaml:1:1: \"set.yaml\" is larger than 2 MB"
            + " | Is it the right file? If it is, part it into several.");
  }

  @Test
  void bytesThatAreNoUtf8() {
    says(
        withSetBytes('o', '\n', '#', ' ', 0xFC),
        "set.yaml:3:3: this file is not written in UTF-8: the next byte is FC"
            + " | Save it as UTF-8 text.");
    says(
        withSetBytes(0xE2, 0x82),
        "set.yaml:2:8: this file is not written in UTF-8: the next byte is E2"
            + " | Save it as UTF-8 text.");
  }

  @Test
  void charactersThatNoTextHas() {
    says(
        withSetBytes('o', 0),
        "set.yaml:2:9: this file holds the character U+0000, which no text has"
            + " | Is it a text file? If it is, delete the character.");
    says(
        withSetBytes('o', 0x1B, '[', '2', 'J'),
        "set.yaml:2:9: this file holds the character U+001B, which no text has"
            + " | Is it a text file? If it is, delete the character.");
  }

  @Test
  void linesMayEndAsOnOtherSystemsAndAFileMayBeginWithAMark() {
    files = Folder.nightFerry(folder);
    for (String ending : List.of("\r\n", "\r")) {
      files.with("set.yaml", "\uFEFF" + Folder.SET.replace("\n", ending));
      files.with("harbour-case.yaml", "\uFEFF" + Folder.RIG.replace("\n", ending));
      says(files);
      files.with("set.yaml", "\uFEFF" + Folder.SET.replace("40 s", "40").replace("\n", ending));
      says(files, "set.yaml:3:6: \"40\" is a time without its unit | Write 40 s.");
      assertEquals(
          "gap: 40", files.read().findings().get(0).place().lineText().replaceAll(" +#.*", ""));
    }
  }
}
