package entracte.read;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Songs change places line by line. */
final class SongTextTest {
  @TempDir Path folder;

  private Optional<String> moved(String text, Integer... order) {
    new Folder(folder).with("set.yaml", text);
    return SongText.inOrder(folder, List.of(order));
  }

  private static final String LOUD =
      """
        # loud,
        # and fast
        - song: A
          # inside
          gap: 20 s      # behind
      """;

  private static final String QUIET =
      """
        # quiet
        - song: B
          notes: |
            # no comment
            two lines
      """;

  private static final String END =
      """
        - {song: C}
      # the end
      slot: 30 min
      """;

  @Test
  void songsTakeTheirCommentsAlong() {
    String head = "set: Night   # the long one\nsongs:\n";
    assertEquals(
        Optional.of(head + QUIET + "\n" + LOUD + END),
        moved(head + LOUD + "\n" + QUIET + END, 1, 0, 2));
  }

  @Test
  void theLastLineMayLackItsEnd() {
    assertEquals(
        "songs:\n- song: B\n- song: A\n", moved("songs:\n- song: A\n- song: B", 1, 0).get());
    assertEquals(
        "songs:\r\n- song: B\r\n- song: A\r\n",
        moved("songs:\r\n- song: A\r\n- song: B", 1, 0).get());
  }

  @Test
  void theSameOrderIsTheSameText() {
    assertEquals(Folder.SET, moved(Folder.SET, 0).orElseThrow());
  }

  @Test
  void songsThatShareALineAreNotMoved() {
    assertEquals(Optional.empty(), moved("songs: [{song: A}, {song: B}]\n", 1, 0));
    assertEquals(Optional.empty(), moved("songs:\n  [{song: A},\n   {song: B}]\n", 1, 0));
    assertEquals(Optional.empty(), moved("set: none\n", 1, 0));
    assertEquals(Optional.empty(), moved("songs:\n- song: A\n", 1, 0));
  }
}
