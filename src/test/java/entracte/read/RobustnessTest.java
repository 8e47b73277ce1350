package entracte.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import entracte.finding.Finding;
import entracte.finding.FindingPrinter;
import entracte.setlist.SetList;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Whatever the files hold, reading ends soon and says something that can be shown. */
final class RobustnessTest {
  private static final long SEED = 20260101;
  private static final int ROUNDS = 1000;

  /** What gives a YAML reader the most to think about. */
  private static final List<String> SHARDS =
      List.of(
          ":",
          ": ",
          "- ",
          "? ",
          "[",
          "]",
          "{",
          "}",
          ",",
          "#",
          " #",
          "&a ",
          "*a",
          "!",
          "!!",
          "%",
          "@",
          "`",
          "'",
          "\"",
          "\\",
          "|\n",
          ">",
          "\n",
          "\r",
          "\t",
          "  ",
          "---\n",
          "...\n",
          "<<: ",
          "~",
          "\u0085",
          "\u2028",
          "\uFEFF",
          "\uD834\uDD1E",
          "x2",
          "none",
          "9".repeat(30),
          "-1",
          "\0");

  @TempDir Path folder;

  /** Reads, and checks what holds for whatever was read. */
  private void readSafely() {
    ReadSet read = new Folder(folder).read();
    assertTrue(read.setList().isPresent() || read.hasErrors());
    for (Finding finding : read.findings()) {
      assertFalse(finding.message().isBlank());
      assertFalse(finding.message().contains("null"), finding.message());
      String line = finding.place().lineText();
      int length = line.codePointCount(0, line.length());
      assertTrue(finding.place().column() <= length + 1, finding::toString);
    }
    FindingPrinter.print(read.findings());
  }

  private void damage(String name, String text, Random random) {
    Folder files = Folder.nightFerry(folder);
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    for (int round = 0; round < ROUNDS; round++) {
      files.with(name, damaged(bytes, random));
      readSafely();
    }
  }

  private static byte[] damaged(byte[] bytes, Random random) {
    int at = random.nextInt(bytes.length);
    int to = Math.min(bytes.length, at + random.nextInt(12));
    return switch (random.nextInt(5)) {
      case 0 -> Arrays.copyOf(bytes, at);
      case 1 -> joined(bytes, at, new byte[] {(byte) random.nextInt(256)}, at + 1);
      case 2 -> joined(bytes, at, new byte[0], to);
      case 3 -> joined(bytes, at, shard(random), at);
      default -> joined(joined(bytes, at, shard(random), to), at / 2, shard(random), at / 2);
    };
  }

  private static byte[] shard(Random random) {
    return SHARDS.get(random.nextInt(SHARDS.size())).getBytes(StandardCharsets.UTF_8);
  }

  /** The bytes before {@code at}, the middle, and the bytes from {@code to}. */
  private static byte[] joined(byte[] bytes, int at, byte[] middle, int to) {
    int rest = bytes.length - to;
    byte[] joined = Arrays.copyOf(bytes, at + middle.length + rest);
    System.arraycopy(middle, 0, joined, at, middle.length);
    System.arraycopy(bytes, to, joined, at + middle.length, rest);
    return joined;
  }

  @Test
  void aDamagedSet() {
    damage("set.yaml", Folder.SET, new Random(SEED));
  }

  @Test
  void aDamagedRig() {
    damage("harbour-case.yaml", Folder.RIG, new Random(SEED + 1));
  }

  @Test
  void aDamagedPatch() {
    damage("patches/two-hands.yaml", Folder.PATCH, new Random(SEED + 2));
  }

  @Test
  void noise() {
    Random random = new Random(SEED + 3);
    for (int round = 0; round < ROUNDS; round++) {
      byte[] bytes = new byte[random.nextInt(200)];
      random.nextBytes(bytes);
      new Folder(folder).with("set.yaml", bytes);
      readSafely();
    }
  }

  @Test
  void shardsOfYaml() {
    Random random = new Random(SEED + 4);
    for (int round = 0; round < ROUNDS; round++) {
      StringBuilder text = new StringBuilder("set: a\n");
      for (int n = random.nextInt(30); n > 0; n--) {
        text.append(random.nextBoolean() ? SHARDS.get(random.nextInt(SHARDS.size())) : "a");
      }
      new Folder(folder).with("set.yaml", text.toString());
      readSafely();
    }
  }

  @Test
  @Timeout(60)
  void aSetOfAMegabyte() {
    int songs = 1000;
    StringBuilder set = new StringBuilder("set: Long Night\nrig: harbour-case.yaml\nsongs:\n");
    for (int n = 1; n <= songs; n++) {
      set.append("  - song: Song ").append(n).append("\n    patch: patches/two-hands.yaml\n");
      set.append("    settings: {bright: {cutoff: 4}, lead: {octave: 8}}\n    gap: 25 s\n");
      set.append("    gear: {piano: {program: 5, volume: 90}}\n");
      set.append("    notes: ").append("keep it small; ".repeat(60)).append("\n");
    }
    assertTrue(set.length() > 1 << 20);
    ReadSet read = Folder.nightFerry(folder).with("set.yaml", set.toString()).read();
    assertEquals(List.of(), read.findings());
    SetList list = read.setList().orElseThrow();
    assertEquals(songs, list.songs().size());
    assertEquals(3 + 6 * (songs - 1) + 1, read.places().of(list.songs().get(songs - 1)).line());
  }

  @Test
  @Timeout(60)
  void aMegabyteOfMistakesIsCutShort() {
    for (String repeated :
        List.of("[", "{", "- ", "? ", "a: ", "'", "\"\\", "&a ", "a:\n", "é", "!")) {
      String text = repeated.repeat((1 << 20) / repeated.length());
      new Folder(folder).with("set.yaml", "set: A\nrig: " + text);
      readSafely();
      new Folder(folder).with("set.yaml", text);
      readSafely();
      assertTrue(new Folder(folder).read().findings().size() <= Notebook.MOST);
    }
  }
}
