package entracte.cue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import entracte.check.Checked;
import entracte.check.Checker;
import entracte.finding.Finding;
import entracte.plan.Options;
import entracte.plan.Plan;
import entracte.plan.Planner;
import entracte.plan.Result;
import entracte.read.ReadSet;
import entracte.read.SetReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** A set in a folder, written as a musician would, for tests of what the numbers of a patch say. */
final class CraftFiles {
  private final Path folder;
  private final StringBuilder set = new StringBuilder("set: Test\nrig: rig.yaml\n");
  private int songs;

  CraftFiles(Path folder, String rig) {
    this.folder = folder;
    write("rig.yaml", rig);
  }

  /** A line of the set itself, before its songs. */
  CraftFiles line(String line) {
    set.append(line).append('\n');
    return this;
  }

  /** One more song, called One, Two, Three ... */
  CraftFiles song(String patch) {
    set.append(songs == 0 ? "songs:\n" : "");
    String name = List.of("One", "Two", "Three", "Four").get(songs++);
    write(name + ".yaml", "patch: " + name + "\n" + patch);
    set.append("  - {song: ").append(name).append(", patch: ").append(name).append(".yaml}\n");
    return this;
  }

  /** What the check finds, each as {@code warning: message / advice}. */
  List<String> said() {
    ReadSet read = read();
    return checked(read).findings().stream().map(CraftFiles::said).toList();
  }

  private static String said(Finding finding) {
    return finding.severity().word() + ": " + finding.message() + " / " + finding.advice();
  }

  Plan plan() {
    Checked checked = checked(read());
    Result result = Planner.plan(checked.set().orElseThrow(), Options.defaults());
    return assertInstanceOf(Result.Planned.class, result).plan();
  }

  Paperwork papers() {
    return Paperwork.of(plan(), Pace.estimated());
  }

  private ReadSet read() {
    write("set.yaml", set.toString());
    ReadSet read = SetReader.read(folder);
    assertEquals(List.of(), read.findings());
    return read;
  }

  private static Checked checked(ReadSet read) {
    return Checker.check(read.setList().orElseThrow(), read.places(), read.findings());
  }

  private void write(String name, String text) {
    try {
      Files.writeString(folder.resolve(name), text);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
