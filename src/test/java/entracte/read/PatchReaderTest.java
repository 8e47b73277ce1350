package entracte.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import entracte.setlist.Patch;
import entracte.setlist.Role;
import entracte.setlist.Setting;
import entracte.setlist.Song;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Patches, on their own and like one another. */
final class PatchReaderTest {
  private static final String BASE =
      """
      patch: base
      roles: {lead: oscillator, bass: oscillator}
      connections:
        keys.pitch 1: lead.pitch
        bass.saw: [blend.low.in, blend.high.in]
      settings:
        lead: {octave: 8, width: 5}
      """;

  @TempDir Path folder;

  private Folder base() {
    return Folder.nightFerry(folder)
        .with("base.yaml", BASE)
        .with(
            "set.yaml", "set: A\nrig: harbour-case.yaml\nsongs: [{song: B, patch: sub/a.yaml}]\n");
  }

  private ReadSet read(String patch) {
    return base().with("sub/a.yaml", patch).read();
  }

  private Patch patch(String patch) {
    ReadSet read = read(patch);
    assertEquals(List.of(), new Folder(folder).lines(read.findings()));
    return read.setList().orElseThrow().songs().get(0).patch();
  }

  private void says(String patch, String... expected) {
    assertEquals(List.of(expected), new Folder(folder).lines(read(patch).findings()));
  }

  private static List<String> connections(Patch patch) {
    return patch.connections().stream().map(c -> c.source() + " " + c.sinks()).toList();
  }

  /** YAML sees a name 5 without a value. */
  @Test
  void aFigureHasAPointEvenWhereACommaPartsNames() {
    says(
        "patch: a\nsettings: {lead: {decay: 4,5, attack: 3}}\n",
        "sub/a.yaml:2:26: \"4,5\" is not a figure | Write 4.5, with a point.");
    says(
        "patch: a\nsettings: {lead: {decay: 4,5 +-0.5, attack: 3,25}}\n",
        "sub/a.yaml:2:26: \"4,5 +-0.5\" is not a figure | Write 4.5 +-0.5, with a point.",
        "sub/a.yaml:2:45: \"3,25\" is not a figure | Write 3.25, with a point.");
    says(
        "patch: a\nsettings: {lead: {decay: 4, 5}}\n",
        "sub/a.yaml:2:29: \"5\" has no value | Give it one, or delete it.");
  }

  @Test
  void whatLosesItsCordToAnotherConnectionIsNoted() {
    String like = "patch: a\nlike: ../base.yaml\n";
    String place = "sub/a.yaml:3:15: this takes the place of the inherited connection to ";
    String advice = " | If the source shall feed both, list both: [one, another].";
    says(
        like + "connections: {bass.saw: lead.fm}\n",
        place
            + "\"blend.low.in\" and \"blend.high.in\", and nothing feeds \"blend.low.in\" and"
            + " \"blend.high.in\" now"
            + advice);
    says(
        like + "connections: {bass.saw: lead.fm, lead.saw: blend.low.in}\n",
        place
            + "\"blend.low.in\" and \"blend.high.in\", and nothing feeds \"blend.high.in\" now"
            + advice);
    says(
        like + "connections: {bass.saw: lead.fm, lead.saw: [blend.low.in, blend.high.in]}\n",
        new String[0]);
    assertFalse(read(like + "connections: {bass.saw: lead.fm}\n").hasErrors());
  }

  @Test
  void aPatchLikeAnotherTakesAllOfIt() {
    Patch patch = patch("patch: a\nlike: ../base.yaml\n");
    assertEquals("a", patch.name());
    assertEquals(
        List.of(new Role("lead", List.of("oscillator")), new Role("bass", List.of("oscillator"))),
        patch.roles());
    assertEquals(
        List.of("keys.pitch 1 [lead.pitch]", "bass.saw [blend.low.in, blend.high.in]"),
        connections(patch));
    assertEquals(
        List.of(new Setting("lead", "octave", "8"), new Setting("lead", "width", "5")),
        patch.settings());
  }

  @Test
  void thenItAddsOrChanges() {
    Patch patch =
        patch(
            """
            patch: a
            like: ../base.yaml
            roles: {bass: [oscillator, filter], sub: filter}
            connections:
              sub.out: bass.fm
              bass.saw: blend.low.in
            settings:
              bass: {octave: 16}
              lead: {width: 7}
            """);
    assertEquals(
        List.of(
            new Role("lead", List.of("oscillator")),
            new Role("bass", List.of("oscillator", "filter")),
            new Role("sub", List.of("filter"))),
        patch.roles());
    assertEquals(
        List.of("keys.pitch 1 [lead.pitch]", "bass.saw [blend.low.in]", "sub.out [bass.fm]"),
        connections(patch));
    assertEquals(
        List.of(
            new Setting("lead", "octave", "8"),
            new Setting("lead", "width", "7"),
            new Setting("bass", "octave", "16")),
        patch.settings());
  }

  @Test
  void noneTakesAnInheritedConnectionAway() {
    Patch patch = patch("patch: a\nlike: ../base.yaml\nconnections: {bass.saw: none}\n");
    assertEquals(List.of("keys.pitch 1 [lead.pitch]"), connections(patch));
  }

  @Test
  void noneWithNothingToTakeAway() {
    says(
        "patch: a\nlike: ../base.yaml\nconnections: {bass.sow: none}\n",
        "sub/a.yaml:3:15: there is no inherited connection from \"bass.sow\" to take away"
            + " | Did you mean \"bass.saw\"?");
    says(
        "patch: a\nconnections: {bass.saw: none}\n",
        "sub/a.yaml:2:15: there is no inherited connection from \"bass.saw\" to take away");
    says(
        "patch: a\nlike: ../base.yaml\nconnections: {bass.saw: [lead.fm, none]}\n",
        "sub/a.yaml:3:15: \"none\" stands alone or not at all | List jacks, or write none.");
  }

  @Test
  void anInheritedPieceKeepsItsOwnPlace() {
    ReadSet read = read("patch: a\nlike: ../base.yaml\nconnections: {bass.saw: blend.low.in}\n");
    Patch patch = read.setList().orElseThrow().songs().get(0).patch();
    assertTrue(read.places().of(patch.connections().get(0)).toString().endsWith("/base.yaml:4:3"));
    assertTrue(
        read.places().of(patch.connections().get(1)).toString().endsWith("/sub/a.yaml:3:15"));
    assertTrue(read.places().of(patch.settings().get(1)).toString().endsWith("/base.yaml:7:21"));
  }

  @Test
  void aPatchThatSeveralSongsUseIsReadOnce() throws IOException {
    Folder files = base().with("sub/a.yaml", BASE);
    Files.createSymbolicLink(files.path("link.yaml"), Path.of("sub/a.yaml"));
    files.with(
        "set.yaml",
        """
        set: A
        rig: harbour-case.yaml
        songs:
        - {song: B, patch: sub/a.yaml}
        - {song: C, patch: sub/../sub/a.yaml}
        - {song: D, patch: link.yaml}
        """);
    List<Song> songs = files.read().setList().orElseThrow().songs();
    assertSame(songs.get(0).patch(), songs.get(1).patch());
    assertSame(songs.get(0).patch(), songs.get(2).patch());
  }

  @Test
  void aLoopIsNamedInFull() {
    base().with("sub/b.yaml", "patch: b\nlike: a.yaml\n");
    says(
        "patch: a\nlike: b.yaml\n",
        "sub/b.yaml:2:7: a patch is like itself: sub/a.yaml is like sub/b.yaml is like sub/a.yaml"
            + " | Let one of them stand on its own.");
    says(
        "patch: a\nlike: ./a.yaml\n",
        "sub/a.yaml:2:7: a patch is like itself: sub/a.yaml is like sub/a.yaml"
            + " | Let one of them stand on its own.");
  }

  @Test
  void aLoopFurtherDownTheChainNamesOnlyTheLoop() {
    base().with("sub/b.yaml", "patch: b\nlike: c.yaml\n");
    base().with("sub/c.yaml", "patch: c\nlike: b.yaml\n");
    says(
        "patch: a\nlike: b.yaml\n",
        "sub/c.yaml:2:7: a patch is like itself: sub/b.yaml is like sub/c.yaml is like sub/b.yaml"
            + " | Let one of them stand on its own.");
  }

  private ReadSet chain(int patches) {
    Folder files = base();
    for (int n = 1; n < patches; n++) {
      files.with("sub/p" + n + ".yaml", "patch: p\nlike: p" + (n + 1) + ".yaml\n");
    }
    files.with("sub/p" + patches + ".yaml", BASE);
    return read("patch: a\nlike: p1.yaml\n");
  }

  @Test
  void fiftyPatchesMayEachBeLikeTheNextAndNoMore() {
    ReadSet fifty = chain(50);
    assertEquals(List.of(), fifty.findings());
    assertEquals(2, fifty.setList().orElseThrow().songs().get(0).patch().roles().size());
    assertEquals(
        List.of(
            "sub/p50.yaml:2:7: more than 50 patches are each like the next"
                + " | Let this one stand on its own."),
        new Folder(folder).lines(chain(51).findings()));
  }

  @Test
  void aPatchLikeOneThatIsNotThere() {
    says("patch: a\nlike: bas.yaml\n", "sub/a.yaml:2:7: there is no file \"sub/bas.yaml\"");
  }

  @Test
  void whatIsWrongInAPatch() {
    says(
        "role: {lead: oscillator}\n",
        "sub/a.yaml:1:1: \"role\" is not known here | Did you mean \"roles\"?",
        "sub/a.yaml:1:1: this patch has no name | Begin the file with a line patch: NAME.");
    says(
        "patch: a\nroles: {lead: []}\n",
        "sub/a.yaml:2:9: \"lead\" names no kind | List the kinds that will do.");
    says(
        "patch: a\nconnections: {lead.saw: []}\n",
        "sub/a.yaml:2:15: \"lead.saw\" feeds nothing | Name a jack, or delete the line.");
    says(
        "patch: a\nconnections:\n  lead.saw:\n",
        "sub/a.yaml:3:3: \"lead.saw\" has no value | Give it one, or delete it.");
    says(
        "patch: a\nconnections:\n  lead.saw: [b.in, ~]\n",
        "sub/a.yaml:3:20: an item of \"lead.saw\" has no value | Give it one, or delete it.");
    says(
        "patch: a\nconnections: [lead.saw, b.in]\n",
        "sub/a.yaml:2:14: \"connections\" is names with values, not a list"
            + " | Write {name: value}, or indented lines of name: value.");
  }

  @Test
  void blanksInNamesCountOnceAndNoneAtTheEnds() {
    Patch patch = patch("patch: '  a   b '\nroles: {'x  y ': ' oscillator'}\n");
    assertEquals("a b", patch.name());
    assertEquals(List.of(new Role("x y", List.of("oscillator"))), patch.roles());
  }

  @Test
  void valuesAreRead() {
    Patch patch =
        patch("patch: no\nsettings: {lead: {octave: 010, a: no, b: 2:30, c: 1e3, d: 0x1F}}\n");
    assertEquals("no", patch.name());
    assertEquals(
        List.of("010", "no", "2:30", "1e3", "0x1F"),
        patch.settings().stream().map(Setting::value).toList());
  }

  private int rolesOf(String patch) {
    return read(patch).setList().orElseThrow().songs().get(0).patch().roles().size();
  }

  /** What uses a lost role would be called a mistake, so nothing of the patch is handed on. */
  @Test
  void aPatchThatHasLostARoleOrAConnectionIsNotHandedOn() {
    assertEquals(0, rolesOf("patch: a\nroles: {x: oscillator, y: []}\n"));
    assertEquals(0, rolesOf("patch: a\nroles: {x: oscillator}\nconnections: {x.saw: []}\n"));
    assertEquals(0, rolesOf("patch: a\nlike: gone.yaml\nroles: {x: oscillator}\n"));
    assertEquals(0, rolesOf("patch: a\nroles: {x: oscillator, x: filter}\n"));
  }

  @Test
  void aPatchThatHasLostASettingIsHandedOnAndSoIsOneLikeIt() {
    assertEquals(1, rolesOf("patch: a\nroles: {x: oscillator}\nsettings: {x: {width: [5]}}\n"));
    base().with("base.yaml", BASE.replace("width: 5", "width: [5]"));
    Folder files = new Folder(folder).with("sub/a.yaml", "patch: a\nlike: ../base.yaml\n");
    ReadSet read = files.read();
    assertEquals(1, read.findings().size());
    assertEquals(2, read.setList().orElseThrow().songs().get(0).patch().roles().size());
  }

  @Test
  void aMistypedNameIsTakenAsTheNearOne() {
    assertEquals(1, rolesOf("patch: a\nrole: {x: oscillator}\n"));
    assertEquals(1, rolesOf("pach: a\nroles: {x: oscillator}\n"));
  }
}
