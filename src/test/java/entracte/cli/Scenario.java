package entracte.cli;

import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.input.KeyStroke;
import com.googlecode.lanterna.input.KeyType;
import entracte.check.PlayableSet;
import entracte.plan.Options;
import entracte.plan.Planner;
import entracte.plan.Result;
import entracte.port.Loopback;
import entracte.terminal.MemoryTerminal;
import entracte.terminal.StageScreen;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * Plays a night from a script, a step a line, through a terminal in memory and MIDI ports that
 * {@code MidiSystem} finds; writes down every step with the screens and bytes that were asked for.
 *
 * <pre>
 * start                 the stage begins, or takes the night up again
 * key page down         a key of the terminal
 * hold 500 page down    a key is down for 1.5 s; it repeats after 500 ms and then every 44 ms
 * type swap             letters
 * foot                  the pedal goes down and, 200 ms later, up; then a second passes
 * midi Pedal B0 40 7F   three bytes from a device that gives
 * wait 800              milliseconds pass
 * plug Stage Piano      a device is plugged in (Pedal gives, all others take), pull: pulled out
 * jam Drum Box          a device that is plugged takes nothing more, free: takes what waited
 * mend FILE: OLD => NEW   words of a file of the set are changed
 * size 40x12            the window changes
 * screen                what can be read is written down
 * sent                  every message since the last time, by device
 * crash                 the program is gone without a word
 * </pre>
 */
final class Scenario implements AutoCloseable {
  private static final long PATIENCE_NANOS = 60_000_000_000L;
  private static final int ROUNDS = 3;
  private static final int HELD_MILLIS = 1500;

  /** As the machine of the user who leaned on a key repeats. */
  private static final int REPEAT_MILLIS = 44;

  private static final Map<String, KeyType> KEYS =
      Map.of(
          "page down", KeyType.PageDown,
          "page up", KeyType.PageUp,
          "down", KeyType.ArrowDown,
          "enter", KeyType.Enter,
          "F1", KeyType.F1,
          "F2", KeyType.F2,
          "F3", KeyType.F3,
          "F4", KeyType.F4,
          "F5", KeyType.F5,
          "escape", KeyType.Escape);

  private final Path set;
  private final HandClock clock = new HandClock();
  private final Map<String, Loopback> devices = new LinkedHashMap<>();
  private final Set<String> jammed = new HashSet<>();
  private final Map<String, Integer> read = new LinkedHashMap<>();
  private final List<String> record = new ArrayList<>();
  private final AtomicInteger keys = new AtomicInteger();
  private MemoryTerminal window = new MemoryTerminal(80, 24);
  private StageNight night;
  private StageScreen screen;

  /**
   * @param set a set of which the night keeps its journal
   */
  Scenario(Path set) {
    this.set = set;
  }

  /** What was written down. */
  List<String> play(List<String> script) throws Exception {
    for (String line : script) {
      if (!line.isBlank() && !line.startsWith("#")) {
        record.add("> " + line);
        step(line.strip());
      }
    }
    return record;
  }

  private void step(String line) throws Exception {
    String[] words = line.split(" ", 2);
    String rest = words.length > 1 ? words[1] : "";
    switch (words[0]) {
      case "start" -> start();
      case "key" -> key(new KeyStroke(KEYS.get(rest)));
      case "hold" -> hold(rest.split(" ", 2));
      case "type" -> type(rest);
      case "foot" -> foot();
      case "midi" -> midi(rest);
      case "wait" -> clock.pass(Long.parseLong(rest));
      case "plug" -> plug(rest);
      case "pull" -> pull(rest);
      case "jam" -> jam(rest);
      case "free" -> free(rest);
      case "mend" -> mend(rest.split(": ", 2));
      case "size" -> size(rest);
      case "screen" -> screen();
      case "sent" -> sent();
      case "crash" -> crash();
      default -> throw new IllegalArgumentException("no such step: " + line);
    }
    if (night != null) {
      settle();
    }
  }

  private void start() throws IOException, InterruptedException {
    Instant reading = Instant.now();
    Loader.Loaded loaded = Loader.load(set);
    var playable = Loader.playable(loaded, new Streams(System.out, System.err, false, false));
    SetFiles files = SetFiles.asRead(set, loaded.files(), reading);
    night = StageNight.open(files, playable, Scenario::plan, false, clock);
    screen =
        window.stage(
            key -> {
              night.run().key(key);
              keys.incrementAndGet();
            });
    night.begin();
    night.plan();
    await(() -> night.run().portsKnown() == night.ports());
  }

  /** By rounds and not by time, so that the plan is the same on every machine. */
  private static Result plan(PlayableSet playable, Options options) {
    boolean timed = options.rounds() == Options.NO_LIMIT;
    return Planner.plan(playable, (timed ? options.withRounds(ROUNDS) : options).withTime(600));
  }

  private void key(KeyStroke stroke) throws InterruptedException {
    stroke(stroke);
    clock.pass(600);
  }

  private void stroke(KeyStroke stroke) throws InterruptedException {
    int before = keys.get();
    window.addInput(stroke);
    await(() -> keys.get() > before);
  }

  private void hold(String[] delayAndKey) throws InterruptedException {
    KeyStroke stroke = new KeyStroke(KEYS.get(delayAndKey[1]));
    int delay = Integer.parseInt(delayAndKey[0]);
    stroke(stroke);
    clock.pass(delay);
    for (int at = delay; at < HELD_MILLIS; at += REPEAT_MILLIS) {
      stroke(stroke);
      clock.pass(REPEAT_MILLIS);
    }
  }

  private void type(String letters) throws InterruptedException {
    for (char letter : letters.toCharArray()) {
      key(new KeyStroke(letter, false, false));
    }
  }

  private void foot() throws InterruptedException {
    midi("Pedal B0 40 7F");
    settle();
    clock.pass(200);
    midi("Pedal B0 40 00");
    clock.pass(1000);
  }

  private void midi(String text) {
    String[] parts = text.split(" ", 2);
    byte[] bytes = HexFormat.ofDelimiter(" ").parseHex(parts[1]);
    devices.get(parts[0]).give(bytes[0] & 0xFF, bytes[1], bytes.length > 2 ? bytes[2] : 0);
  }

  private void plug(String name) throws InterruptedException {
    devices.put(name, name.equals("Pedal") ? Loopback.pedal(name) : Loopback.gear(name, ""));
    read.put(name, 0);
    if (night != null) {
      await(() -> night.run().isAlive(name));
    }
  }

  private void pull(String name) throws InterruptedException {
    devices.remove(name).pull();
    jammed.remove(name);
    await(() -> !night.run().isAlive(name));
  }

  private void jam(String name) {
    devices.get(name).jam();
    jammed.add(name);
  }

  private void free(String name) {
    jammed.remove(name);
    devices.get(name).free();
  }

  private void mend(String[] fileAndWords) throws IOException {
    Path file = set.resolve(fileAndWords[0]);
    String[] words = fileAndWords[1].split(" => ");
    String text = Files.readString(file);
    if (!text.contains(words[0])) {
      throw new IllegalArgumentException("not there: " + words[0]);
    }
    Files.writeString(file, text.replace(words[0], words[1]));
  }

  private void size(String text) throws InterruptedException {
    String[] sides = text.split("x");
    int before = keys.get();
    window.setTerminalSize(
        new TerminalSize(Integer.parseInt(sides[0]), Integer.parseInt(sides[1])));
    if (night != null) {
      await(() -> keys.get() > before);
    }
  }

  private void screen() throws Exception {
    settle();
    screen.measure();
    screen.show(night.run().frame(screen.width(), screen.height()));
    window.rows().forEach(row -> record.add(("| " + row).stripTrailing()));
  }

  private void sent() throws InterruptedException {
    settle();
    devices.forEach(
        (name, device) -> {
          List<String> taken = device.taken();
          taken.subList(read.get(name), taken.size()).forEach(m -> record.add(name + ": " + m));
          read.put(name, taken.size());
        });
  }

  private void crash() throws IOException {
    night.close();
    night = null;
    window = new MemoryTerminal(80, 24);
  }

  private interface Awaited {
    boolean isSo();
  }

  /** Waits until what was set off has happened: plans have come, bytes have left. */
  private void settle() throws InterruptedException {
    night.run().goesOn(0);
    await(() -> jammed.containsAll(night.run().unsentTo()) && !night.run().night().waiting());
  }

  private void await(Awaited awaited) throws InterruptedException {
    long end = System.nanoTime() + PATIENCE_NANOS;
    while (!awaited.isSo()) {
      if (System.nanoTime() > end) {
        throw new AssertionError("nothing came of: " + record.get(record.size() - 1));
      }
      night.run().goesOn(20);
    }
  }

  @Override
  public void close() throws IOException {
    if (night != null) {
      night.close();
    }
    Loopback.pullAll();
  }
}
