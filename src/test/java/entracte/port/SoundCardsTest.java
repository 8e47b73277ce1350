package entracte.port;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Swaps that Java's list of ports does not tell of. The layout of the list of cards is that of the
 * Linux kernel (Documentation/sound/designs/procfile.rst: "shows the list of currently configured
 * ALSA drivers, index, the id string, short and long descriptions"); the cards are invented.
 */
final class SoundCardsTest {
  @TempDir Path folder;

  private SoundCards cards(String id) throws Exception {
    Path list =
        Files.writeString(
            folder.resolve("cards"),
            " 0 [PCH            ]: HDA-Built-in - Built-in\n"
                + "                      Built-in at 0xf7f10000 irq 31\n"
                + " 2 [%-15s]: USB-Audio - Blue Box\n".formatted(id)
                + "                      Blue Box at usb-1.2, full speed\n");
    return SoundCards.read(list, folder);
  }

  @Test
  void thePlaceOfEachCardIsRead() throws Exception {
    assertEquals(Map.of(0, "PCH", 2, "MIDI"), cards("MIDI").ids());
  }

  @Test
  void aPortWhoseCardIsAnotherOneByNowIsNotThere() throws Exception {
    assertTrue(cards("MIDI").mayHave("MIDI [hw:2,0,0]"));
    assertFalse(cards("Synth").mayHave("MIDI [hw:2,0,0]"));
    assertFalse(cards("MIDI").mayHave("MIDI [hw:3,0,0]"));
  }

  @Test
  void whatIsOnNoCardAndWhatNoListTellsOfIsBelieved() throws Exception {
    assertTrue(cards("MIDI").mayHave("Synthesizer"));
    assertTrue(
        SoundCards.read(folder.resolve("none"), folder.resolve("none")).mayHave("MIDI [hw:7,0,0]"));
  }

  @Test
  void aDeviceFileThatWasMadeAnewIsSeen() throws Exception {
    Path node = Files.createFile(folder.resolve("midiC2D0"));
    SoundCards before = cards("MIDI");
    assertFalse(cards("MIDI").replaced(before));
    Files.createFile(folder.resolve("midiC3D0"));
    assertFalse(cards("MIDI").replaced(before), "one more is no swap");
    Files.move(node, folder.resolve("was"));
    assertFalse(cards("MIDI").replaced(before), "a pull is told by the list");
    Files.createFile(node);
    assertTrue(cards("MIDI").replaced(before));
  }
}
