package entracte.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import entracte.port.Loopback;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** What the ports are called, and what a pedal says. */
final class PortsCommandTest {
  private final Typist typist = new Typist();

  @AfterEach
  void pullEverything() {
    Loopback.pullAll();
  }

  @Test
  void portsAreListedByTheNamesThatARigUses() {
    Loopback.gear("Stage Piano [hw:3,0,0]", "Long Name, USB MIDI");
    Loopback.pedal("Pedal [hw:4,0,0]");
    assertEquals(ExitCode.DONE, typist.type("ports"));
    assertTrue(typist.out().contains("\n  Stage Piano  (Long Name, USB MIDI)\n"), typist.out());
    assertTrue(typist.out().contains("Listening to:\n  Pedal  (a pedal)\n"), typist.out());
  }

  @Test
  void aPressGivesTheLineToPaste() throws Exception {
    Loopback pedal = Loopback.pedal("Pedal");
    CountDownLatch done = new CountDownLatch(1);
    Thread foot =
        new Thread(
            () -> {
              try {
                while (!done.await(20, TimeUnit.MILLISECONDS)) {
                  pedal.give(0xB0, 64, 127);
                }
              } catch (InterruptedException ended) {
                Thread.currentThread().interrupt();
              }
            });
    foot.start();
    assertEquals(ExitCode.DONE, typist.type("ports", "--listen", "0.4"));
    done.countDown();
    foot.join();
    assertTrue(
        typist.out().contains("Pedal: control change, channel 1, controller 64, value 127\n"),
        typist.out());
    assertTrue(typist.out().contains("  foot switch: {port: Pedal, press: cc 64}\n"), typist.out());
  }

  @Test
  void secondsMayHaveTheirUnit() {
    Loopback.pedal("Pedal");
    assertEquals(ExitCode.DONE, typist.type("ports", "--listen", "0.1s"));
    assertEquals(ExitCode.WRONG_USAGE, typist.type("ports", "--listen", "a while"));
    assertTrue(typist.err().contains("seconds are like 20 or 20s, not a while"), typist.err());
  }

  @Test
  void whereThereIsNoPortNobodyIsAskedToPress() {
    assertEquals(ExitCode.TROUBLE, typist.type("ports", "--listen", "2"));
    assertFalse(typist.out().contains("Press the pedal"), typist.out());
    assertTrue(typist.err().contains("there is no MIDI port to listen to"), typist.err());
  }

  @Test
  void listeningEnds() {
    assertEquals(ExitCode.WRONG_USAGE, typist.type("ports", "--listen", "0"));
  }
}
