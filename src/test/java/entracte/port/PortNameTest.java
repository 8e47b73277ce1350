package entracte.port;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Ports are known by name, wherever they were plugged. */
final class PortNameTest {
  private static final List<PortName> PORTS =
      List.of(
          PortName.of("MIDI [hw:2,0,0]", "Blue Box, USB MIDI, Blue Box", true, true),
          PortName.of("Piano 2 [hw:1,0,0]", "", true, true),
          PortName.of("Piano", "", true, true));

  @Test
  void theNumberOfTheCardIsNoPartOfTheName() {
    assertEquals("MIDI", PORTS.get(0).name());
  }

  @Test
  void theVeryNameGoesBeforeOneThatHoldsIt() {
    assertEquals(Optional.of(2), PortName.find(PORTS, "piano"));
    assertEquals(Optional.of(1), PortName.find(PORTS, "Piano 2"));
  }

  @Test
  void theProductsNameWillDo() {
    assertEquals(Optional.of(0), PortName.find(PORTS, "Blue Box"));
  }

  @Test
  void whatIsNotThereIsNotFound() {
    assertEquals(Optional.empty(), PortName.find(PORTS, "Drum Box"));
    assertEquals(Optional.empty(), PortName.find(PORTS, ""));
  }
}
