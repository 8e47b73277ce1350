package entracte.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import entracte.cue.GearSends;
import entracte.journal.JournalFile;
import entracte.midi.Dispatch;
import entracte.midi.Message;
import entracte.port.Loopback;
import entracte.port.Wiring;
import entracte.read.SetReader;
import entracte.rig.Rig;
import entracte.stage.Effect;
import entracte.stage.Event;
import entracte.stage.Input;
import entracte.stage.Night;
import entracte.stage.Phase;
import entracte.stage.Show;
import entracte.stage.ShowSong;
import entracte.stage.SmallShow;
import entracte.stage.TrueRig;
import entracte.stage.Way;
import entracte.terminal.MemoryTerminal;
import entracte.terminal.StageScreen;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Figures of the stage that need no other process; {@code src/docs/stage.md} tells of them. */
@Tag("benchmark")
final class StageFiguresTest {
  private static final int PRESSES = 10_000;
  private static final int WARM_UP = 500;

  @TempDir Path folder;
  private final HandClock clock = new HandClock();

  @AfterEach
  void pullEverything() {
    Loopback.pullAll();
  }

  private static Rig rig() {
    return SetReader.read(Path.of("src/test/resources/scenarios/tow-path"))
        .setList()
        .orElseThrow()
        .rig();
  }

  /** One song with so many sections that every press sends something. */
  private static Show endless() {
    List<GearSends.Section> sections = new ArrayList<>();
    for (int section = 0; section <= PRESSES + WARM_UP; section++) {
      Message program = new Message.ProgramChange(1, section % 128);
      sections.add(
          new GearSends.Section(
              "part " + section,
              List.of(Dispatch.atOnce("piano", SmallShow.PIANO, List.of(program)))));
    }
    GearSends sends = new GearSends(List.of(), List.of(), sections);
    ShowSong song =
        new ShowSong(
            "Endless", List.of(), OptionalDouble.empty(), OptionalDouble.empty(), false, sends);
    return new Show(
        "Endless",
        List.of(song),
        List.of(),
        List.of(),
        List.of(),
        OptionalDouble.empty(),
        Optional.empty(),
        Optional.empty(),
        Show.Hold.MENU,
        0);
  }

  /**
   * From the pedal's message to the first byte at the gear: journal and painting on, as in a show.
   */
  @Test
  void fromThePressToTheFirstByte() throws Exception {
    Show show = endless();
    StageRun run =
        new StageRun(
            show, rig(), Night.fresh(), JournalFile.open(folder.resolve("stage.journal")), clock);
    Loopback piano = Loopback.gear("Stage Piano", "");
    Loopback pedal = Loopback.pedal("Pedal");
    BlockingQueue<Long> arrived = new LinkedBlockingQueue<>();
    piano.onMessage(() -> arrived.add(System.nanoTime()));
    long[] took = new long[PRESSES];
    MemoryTerminal window = new MemoryTerminal(80, 24);
    try (Wiring wiring = new Wiring(List.of(SmallShow.PIANO), "Pedal", run);
        StageScreen screen = window.stage(key -> {})) {
      run.world(
          effect -> {
            if (effect instanceof Effect.Send send) {
              wiring.send(send.dispatches());
            }
          });
      wiring.start();
      run.event(new Event.Begun(run.now(), "", List.of(0), TrueRig.bare()));
      run.event(
          new Event.Planned(
              run.now(), 1, List.of(0), List.of(new Way(0, true, List.of(), 0, 0, List.of())), ""));
      while (!run.isAlive("Pedal") || !run.isAlive("Stage Piano")) {
        run.goesOn();
      }
      Thread foot = new Thread(() -> tread(pedal, arrived, took), "foot");
      foot.start();
      while (foot.isAlive()) {
        run.goesOn();
        screen.show(run.frame(80, 24));
      }
    }
    tell("pedal press to first byte, " + PRESSES + " presses", took);
  }

  private void tread(Loopback pedal, BlockingQueue<Long> arrived, long[] took) {
    pedal.give(0xB0, 64, 127); // the song begins; this sends nothing
    pause(200);
    for (int press = -WARM_UP; press < PRESSES; press++) {
      clock.pass(300);
      pedal.give(0xB0, 64, 0);
      clock.pass(300);
      pause(15); // no foot comes while the last press is still being written down
      long begun = System.nanoTime();
      pedal.give(0xB0, 64, 127);
      long end = next(arrived);
      if (press >= 0) {
        took[press] = end - begun;
      }
    }
  }

  private static long next(BlockingQueue<Long> arrived) {
    try {
      return Optional.ofNullable(arrived.poll(20, TimeUnit.SECONDS))
          .orElseThrow(() -> new AssertionError("a press sent nothing"));
    } catch (InterruptedException ended) {
      throw new AssertionError(ended);
    }
  }

  private static void pause(long millis) {
    try {
      Thread.sleep(millis);
    } catch (InterruptedException ended) {
      Thread.currentThread().interrupt();
    }
  }

  /** Prints the middle, the 99th of a hundred and the longest. */
  static void tell(String what, long[] nanos) {
    long[] sorted = nanos.clone();
    Arrays.sort(sorted);
    System.out.printf(
        "%s: p50 %.3f ms, p99 %.3f ms, most %.3f ms%n",
        what,
        sorted[sorted.length / 2] / 1e6,
        sorted[(int) (sorted.length * 0.99)] / 1e6,
        sorted[sorted.length - 1] / 1e6);
  }

  /** Ten frames a second for eight hours, a press every 20 seconds, songs again and again. */
  @Test
  void eightHoursTakeNoMoreMemoryThanOne() throws Exception {
    SmallShow small = new SmallShow();
    StageRun run =
        new StageRun(
            small.show,
            rig(),
            Night.fresh(),
            JournalFile.open(folder.resolve("stage.journal")),
            clock);
    run.world(
        effect -> {
          if (effect instanceof Effect.Plan plan) {
            run.event(answer(run, plan));
          }
        });
    run.event(
        new Event.Begun(run.now(), small.show.fingerprint(), List.of(0, 1, 2, 3), TrueRig.bare()));
    List<Long> heap = new ArrayList<>();
    for (int beat = 1; beat <= 8 * 3600 * 10; beat++) {
      clock.pass(100);
      if (beat % 200 == 0) {
        press(run, beat / 200);
      }
      run.goesOn(0);
      run.frame(80, 24);
      if (beat % 36_000 == 0) {
        heap.add(used());
      }
    }
    System.out.println("heap in use after each hour, kB: " + heap);
    assertEquals(8, heap.size());
    assertTrue(heap.get(7) < heap.get(0) * 1.25 + 2000, heap.toString());
  }

  private static Event answer(StageRun run, Effect.Plan plan) {
    List<Way> ways = plan.order().stream().map(song -> SmallShow.way(song, false)).toList();
    return new Event.Planned(run.now(), plan.request(), plan.order(), ways, "");
  }

  /** On and on; now and then a step is taken back; at the end a song is played again. */
  private static void press(StageRun run, int number) {
    if (run.night().phase() == Phase.END) {
      for (String key : List.of("MENU", "p", "l", "a", "y", "ENTER", "ENTER")) {
        run.event(
            key.length() == 1
                ? new Event.Typed(run.now(), key.charAt(0))
                : new Event.Pressed(run.now(), Input.valueOf(key)));
      }
      return;
    }
    Input input = number % 9 == 8 ? Input.UNDO : Input.NEXT;
    run.event(new Event.Pressed(run.now(), input));
  }

  private static long used() {
    System.gc();
    Runtime runtime = Runtime.getRuntime();
    return (runtime.totalMemory() - runtime.freeMemory()) / 1024;
  }
}
