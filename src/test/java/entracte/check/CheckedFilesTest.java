package entracte.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import entracte.finding.Finding;
import entracte.finding.Place;
import entracte.read.ReadSet;
import entracte.read.SetReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Findings stand where the musician wrote the mistake, down to the column. */
final class CheckedFilesTest {
  private static final String RIG =
      """
      rig: Shelf
      kinds:
        keyboard: {out: [pitch, gate]}
        oscillator:
          in: [pitch, fm]
          out: [saw]
          knobs: {tune: -5..5}
        mixer:
          channels: {count: 2, in: [in], knobs: {level: 0..10}, closed: {levle: 0}}
          out: [out]
        output: {in: [in]}
      rows:
        - - keys: keyboard
          - osc 1: oscillator
          - mix 1: mixer
          - main: output
      gear:
        piano: {port: A, channel: 17}
      """;

  private static final String PATCH =
      """
      patch: plain
      roles:
        lead: oscillator
        idle: [mixer, mixr]
      connections:
        keys.pitch: lead.pitch
        keys.gate: [lead.fm, main.out]
        lead.saw: mix 1.low.in
        mix 1.out: main.in
      settings:
        lead: {tune: 9, tone: 3}
        leed: {tune: 1}
      """;

  private static final String SET =
      """
      set: Small
      rig: rig.yaml
      songs:
        - song: One
          patch: plain.yaml
          gap: 0 s
          gear:
            piano: {program: 200, volume: 300}
      """;

  @TempDir private Path folder;

  @BeforeEach
  void write() throws IOException {
    Files.writeString(folder.resolve("rig.yaml"), RIG);
    Files.writeString(folder.resolve("plain.yaml"), PATCH);
    Files.writeString(folder.resolve("set.yaml"), SET);
  }

  private List<String> said() {
    ReadSet read = SetReader.read(folder);
    return lines(checked(read).findings());
  }

  /** What the reading finds, and then the check. */
  private List<String> all() {
    ReadSet read = SetReader.read(folder);
    List<Finding> findings = new ArrayList<>(read.findings());
    findings.addAll(checked(read).findings());
    return lines(findings);
  }

  private static Checked checked(ReadSet read) {
    return Checker.check(read.setList().orElseThrow(), read.places(), read.findings());
  }

  private static List<String> lines(List<Finding> findings) {
    return findings.stream()
        .sorted(Comparator.comparing((Finding f) -> f.place().file()).thenComparing(LINE))
        .map(f -> where(f.place()) + " " + f.message())
        .toList();
  }

  private static final Comparator<Finding> LINE =
      Comparator.<Finding>comparingInt(f -> f.place().line())
          .thenComparing(f -> f.place().column());

  private static String where(Place place) {
    String file = place.file();
    return file.substring(file.lastIndexOf('/') + 1) + ":" + place.line() + ":" + place.column();
  }

  @Test
  void everyMistakeStandsAtItsLineAndColumn() {
    assertEquals(
        List.of(
            "plain.yaml:4:17 \"mixr\" is no kind and no module of the rig",
            "plain.yaml:7:24 module \"main\" has no jack \"out\"",
            "plain.yaml:11:16 kind \"oscillator\" has \"tune\" from -5 to 5, and 9 is off that"
                + " scale",
            "plain.yaml:11:19 kind \"oscillator\" has no knob, switch or jumper \"tone\"",
            "plain.yaml:12:3 \"leed\" is no role of this patch and no module of the rig",
            "rig.yaml:9:5 closed: a channel of \"mixer\" has no knob or switch \"levle\"",
            "rig.yaml:18:29 \"piano\" is on channel 17",
            "set.yaml:6:10 the gap before \"One\" is 0 s",
            "set.yaml:8:24 \"piano\" has no program 200: its display counts from 1 to 128",
            "set.yaml:8:37 volume (controller 7) cannot be set to 300"),
        said());
  }

  @Test
  void theNumberOfTheFirstProgramIsPointedAt() throws IOException {
    Files.writeString(
        folder.resolve("rig.yaml"),
        RIG.replace("channel: 17}", "channel: 1, programs from: 2}").replace("levle", "level"));
    String from = "rig.yaml:18:47 the programs of \"piano\" are counted from 2";
    assertEquals(1, said().stream().filter(from::equals).count(), said()::toString);
  }

  /** The reader says that a mixer's kind is broken; that modules are missing needs no saying. */
  @Test
  void aRigThatCouldNotBeReadWholeIsNotCalledTooSmall() throws IOException {
    Files.writeString(
        folder.resolve("plain.yaml"),
        """
        patch: plain
        roles: {a: oscillator, b: oscillator}
        connections: {a.saw: b.fm, b.saw: main.in}
        """);
    Files.writeString(folder.resolve("rig.yaml"), RIG.replace("channel: 17", "channel: 1"));
    String few =
        "plain.yaml:2:24 \"a\" and \"b\" need 2 modules of kind \"oscillator\", and the rig"
            + " has 1: osc 1";
    assertEquals(1, said().stream().filter(few::equals).count());
    Files.writeString(
        folder.resolve("rig.yaml"), RIG.replace("osc 1: oscillator", "osc 1: oscilator"));
    assertEquals(0, said().stream().filter(text -> text.contains("need 2 modules")).count());
  }

  /** Whose cords cannot be counted still has kinds and modules for a patch to be held to. */
  @Test
  void cordsThatCannotBeCountedHideNoOtherMistake() throws IOException {
    Files.writeString(
        folder.resolve("rig.yaml"),
        RIG.replace("levle", "level").replace("channel: 17", "channel: 1") + "cords: twelve\n");
    Files.writeString(
        folder.resolve("plain.yaml"),
        """
        patch: plain
        roles: {bass: oscillator}
        connections: {keys.pitch: bass.pitch, bsas.saw: main.in, bass.saw: mix 1.low.in}
        """);
    Files.writeString(
        folder.resolve("set.yaml"),
        SET.replace("gap: 0 s", "gap: -75 s").replace("program: 200, volume: 300", "program: 20"));
    assertEquals(
        List.of(
            "plain.yaml:3:39 \"bsas\" is no role of this patch and no module of the rig",
            "rig.yaml:19:8 \"twelve\" is not a whole number",
            "set.yaml:6:10 \"-75 s\" is less than no time"),
        all());
  }
}
