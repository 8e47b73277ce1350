package entracte.port;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import entracte.midi.Dispatch;
import entracte.midi.Message;
import entracte.midi.Outlet;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Supplier;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Ports that come and go, found by {@code MidiSystem} like real ones. */
final class WiringTest {
  private static final Outlet PIANO = new Outlet.Port("Stage Piano");

  private final LinkedBlockingQueue<String> told = new LinkedBlockingQueue<>();
  private final Wiring.Listener listener =
      new Wiring.Listener() {
        @Override
        public void alive(String port, boolean alive) {
          told.add(port + (alive ? " alive" : " lost"));
        }

        @Override
        public void sent(Sent sent) {
          told.add(sent.dispatch().gear() + (sent.left() ? " sent" : ": " + sent.trouble()));
        }

        @Override
        public void heard(Message message) {
          told.add("heard " + message);
        }
      };

  @AfterEach
  void pullEverything() {
    Loopback.pullAll();
  }

  private String next() throws InterruptedException {
    return String.valueOf(told.poll(10, TimeUnit.SECONDS));
  }

  private static List<Dispatch> program(Outlet outlet, int program) {
    return List.of(
        Dispatch.atOnce("piano", outlet, List.of(new Message.ProgramChange(1, program))));
  }

  @Test
  void bytesArriveAtThePortOfThatName() throws Exception {
    Loopback piano = Loopback.gear("Stage Piano [hw:3,0,0]", "");
    try (Wiring wiring = new Wiring(List.of(PIANO), "", listener)) {
      wiring.look();
      assertEquals("Stage Piano alive", next());
      wiring.send(program(PIANO, 4));
      assertEquals("piano sent", next());
      assertEquals(List.of("C0 04"), piano.taken());
    }
  }

  /** The old object goes on saying nothing is wrong; only the list of ports tells. */
  @Test
  void aPlugThatFallsOutIsToldAndOneThatComesBackIsOpenedAfresh() throws Exception {
    Loopback before = Loopback.gear("Stage Piano [hw:3,0,0]", "");
    try (Wiring wiring = new Wiring(List.of(PIANO), "", listener)) {
      wiring.look();
      assertEquals("Stage Piano alive", next());
      before.pull();
      wiring.look();
      assertEquals("Stage Piano lost", next());
      wiring.send(program(PIANO, 4));
      assertEquals("piano: there is no port Stage Piano", next());
      Loopback after = Loopback.gear("Stage Piano [hw:1,0,0]", "");
      wiring.look();
      assertEquals("Stage Piano alive", next());
      wiring.send(program(PIANO, 5));
      assertEquals("piano sent", next());
      assertEquals(List.of("C0 05"), after.taken());
      assertEquals(List.of(), before.taken());
    }
  }

  /** Pulled and plugged in again between two looks: the list of ports is the same. */
  @Test
  void aQuickSwapIsToldAsLostAndBackAndIsOpenedAfresh() throws Exception {
    Loopback before = Loopback.gear("Stage Piano [hw:3,0,0]", "");
    AtomicInteger plugged = new AtomicInteger();
    Supplier<SoundCards> cards =
        () -> new SoundCards(Map.of(), Map.of("midiC3D0", "made " + plugged.get()));
    try (Wiring wiring = new Wiring(List.of(PIANO), "", listener, cards)) {
      wiring.look();
      assertEquals("Stage Piano alive", next());
      before.pull();
      Loopback after = Loopback.gear("Stage Piano [hw:3,0,0]", "");
      plugged.incrementAndGet();
      wiring.look();
      assertEquals("Stage Piano lost", next());
      assertEquals("Stage Piano alive", next());
      wiring.send(program(PIANO, 5));
      assertEquals("piano sent", next());
      assertEquals(List.of("C0 05"), after.taken());
    }
  }

  @Test
  void thePedalIsHeardAgainAfterItWasPlugged() throws Exception {
    Loopback before = Loopback.pedal("Pedal");
    try (Wiring wiring = new Wiring(List.of(), "Pedal", listener)) {
      wiring.look();
      assertEquals("Pedal alive", next());
      before.give(0xB0, 64, 127);
      assertEquals("heard " + new Message.ControlChange(1, 64, 127), next());
      before.pull();
      wiring.look();
      assertEquals("Pedal lost", next());
      Loopback after = Loopback.pedal("Pedal");
      wiring.look();
      assertEquals("Pedal alive", next());
      after.give(0xB0, 64, 0);
      assertEquals("heard " + new Message.ControlChange(1, 64, 0), next());
    }
  }

  @Test
  void aDeviceFileGetsTheBareBytes(@TempDir Path folder) throws Exception {
    Path file = Files.createFile(folder.resolve("device"));
    Outlet device = new Outlet.Device(file.toString());
    try (Wiring wiring = new Wiring(List.of(device), "", listener)) {
      wiring.look();
      assertEquals(file + " alive", next());
      wiring.send(program(device, 4));
      assertEquals("piano sent", next());
      assertArrayEquals(new byte[] {(byte) 0xC0, 4}, Files.readAllBytes(file));
    }
  }

  @Test
  void aDeviceFileThatIsNotThereIsNotMade(@TempDir Path folder) throws Exception {
    Path file = folder.resolve("device");
    Outlet device = new Outlet.Device(file.toString());
    try (Wiring wiring = new Wiring(List.of(device), "", listener)) {
      wiring.look();
      assertEquals(file + " lost", next());
      wiring.send(program(device, 4));
      assertEquals("piano: there is no " + file, next());
      assertTrue(Files.notExists(file));
    }
  }

  /** Opening a FIFO waits for its reader; the other gear must not. */
  @Test
  void aFifoWithoutAReaderHoldsUpNobodyElse(@TempDir Path folder) throws Exception {
    Path fifo = folder.resolve("fifo");
    org.junit.jupiter.api.Assumptions.assumeTrue(
        new ProcessBuilder("mkfifo", fifo.toString()).start().waitFor() == 0, "no mkfifo here");
    Loopback piano = Loopback.gear("Stage Piano", "");
    Outlet device = new Outlet.Device(fifo.toString());
    try (Wiring wiring = new Wiring(List.of(device, PIANO), "", listener)) {
      wiring.send(program(device, 1));
      wiring.send(program(PIANO, 2));
      assertEquals("piano sent", next());
      assertEquals(List.of("C0 02"), piano.taken());
      byte[] read;
      try (var reader = Files.newInputStream(fifo)) {
        read = reader.readNBytes(2);
      }
      assertArrayEquals(new byte[] {(byte) 0xC0, 1}, read);
    }
  }

  @Test
  void theSettlingTimeIsWaitedFor() throws Exception {
    Loopback.gear("Stage Piano", "");
    Dispatch slow =
        new Dispatch(
            "piano",
            PIANO,
            List.of(
                Dispatch.Timed.now(new Message.ProgramChange(1, 0)),
                new Dispatch.Timed(120, new Message.ControlChange(1, 7, 90))));
    LinkedBlockingQueue<Sent> reports = new LinkedBlockingQueue<>();
    Lane lane = new Lane(PIANO, reports::add);
    lane.send(slow);
    Sent sent = reports.poll(10, TimeUnit.SECONDS);
    assertTrue(sent.left() && sent.millis() >= 119, "took " + sent.millis() + " ms");
  }
}
