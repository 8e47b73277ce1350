package entracte.cli;

import entracte.midi.Message;
import entracte.midi.Trigger;
import entracte.port.FootLogic;
import entracte.port.Sent;
import entracte.port.Wiring;
import entracte.print.Fill;
import entracte.rig.FootSwitch;
import entracte.stage.Input;
import entracte.stage.KeyTaps;
import entracte.terminal.Key;
import entracte.terminal.Keyboard;
import java.io.IOException;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.DoubleSupplier;

/**
 * A conversation in single keys and with a foot, and a clock that runs while the hands work. The
 * keys that say "next" on stage are Enter here, those that say "back" are {@code u}.
 */
final class KeyTalk implements Talk, Wiring.Listener {
  private static final int BACKSPACE = 8;
  private static final long BEAT_MILLIS = 200;

  /** Where the words of a timed step begin, behind its number. */
  private static final String HANGING = " ".repeat(8);

  /** A terminal that says less says nothing. */
  private static final int NARROWEST = 20;

  private static final String NEXT = "";
  private static final String BACK = "u";

  private final Streams streams;
  private final InstantSource clock;
  private final KeyTaps taps = new KeyTaps();
  private final BlockingQueue<Optional<String>> heard = new LinkedBlockingQueue<>();
  private final List<AutoCloseable> open = new ArrayList<>();
  private Optional<FootLogic> press = Optional.empty();
  private Optional<FootLogic> back = Optional.empty();
  private String timed = "";
  private int width = PlanText.WIDTH;

  KeyTalk(Streams streams, InstantSource clock) {
    this.streams = streams;
    this.clock = clock;
  }

  /** Takes the keys of the terminal, and the pedal's port if there is one. */
  void listen(Optional<FootSwitch> pedal) throws IOException {
    Keyboard keyboard = Keyboard.open(this::key);
    open.add(keyboard);
    narrow(keyboard.columns());
    pedal.filter(p -> !p.port().isEmpty()).ifPresent(this::listen);
  }

  /** Lines as long as the terminal is wide, if it is narrow. */
  void narrow(int columns) {
    width = columns < NARROWEST ? PlanText.WIDTH : Math.min(PlanText.WIDTH, columns);
  }

  private void listen(FootSwitch pedal) {
    foot(pedal);
    Wiring wiring = new Wiring(List.of(), pedal.port(), this);
    open.add(wiring);
    wiring.start();
  }

  /** The pedal to hear. */
  void foot(FootSwitch pedal) {
    press = logic(pedal, pedal.press());
    back = logic(pedal, pedal.back());
  }

  private static Optional<FootLogic> logic(FootSwitch pedal, String written) {
    long lockOut = Math.round(pedal.lockOutSeconds() * TimeUnit.SECONDS.toMillis(1));
    return Trigger.parse(written).map(trigger -> new FootLogic(trigger, pedal.latching(), lockOut));
  }

  @Override
  public void say(String line) {
    LineTalk.fill(streams, line, width);
    streams.out().flush();
  }

  @Override
  public Optional<String> ask(String line) {
    List<String> lines = Fill.lines(line.strip(), width, "", "  ");
    int last = lines.size() - 1;
    lines.subList(0, last).forEach(streams::line);
    streams.text(lines.get(last) + " ");
    streams.out().flush();
    Optional<String> answer = answer(() -> {});
    streams.line(answer.orElse(""));
    streams.out().flush();
    return answer;
  }

  /** The line is told once, however often it is asked; below it the clock runs, and is gone. */
  @Override
  public Optional<String> ask(String line, DoubleSupplier seconds) {
    if (!line.equals(timed)) {
      Fill.lines(line.strip(), width, leading(line), HANGING).forEach(streams::line);
      timed = line;
    }
    paint(seconds);
    Optional<String> answer = answer(() -> paint(seconds));
    streams.out().print("\r" + HANGING + HANGING + "\r");
    return answer;
  }

  private static String leading(String line) {
    return line.substring(0, line.length() - line.stripLeading().length());
  }

  private void paint(DoubleSupplier seconds) {
    String shown = String.format(Locale.ROOT, "%.0f s", Math.floor(seconds.getAsDouble()));
    streams.out().print("\r" + HANGING + shown);
    streams.out().flush();
  }

  private Optional<String> answer(Runnable meanwhile) {
    try {
      Optional<String> next = heard.poll(BEAT_MILLIS, TimeUnit.MILLISECONDS);
      while (next == null) {
        meanwhile.run();
        next = heard.poll(BEAT_MILLIS, TimeUnit.MILLISECONDS);
      }
      return next;
    } catch (InterruptedException ended) {
      Thread.currentThread().interrupt();
      return Optional.empty();
    }
  }

  /** A key, on any thread. */
  void key(Key key) {
    if (key instanceof Key.Leaves) {
      heard.add(Optional.empty());
    } else if (key instanceof Key.Letter letter) {
      heard.add(
          Optional.of(
              letter.point() == BACKSPACE
                  ? BACK
                  : Character.toString(letter.point()).toLowerCase(Locale.ROOT)));
    } else if (key instanceof Key.Says says) {
      taps.hear(says.input(), clock.millis()).flatMap(KeyTalk::meant).ifPresent(this::hear);
    }
  }

  private static Optional<String> meant(Input input) {
    return switch (input) {
      case NEXT, ENTER, DOWN -> Optional.of(NEXT);
      case BACK, UP -> Optional.of(BACK);
      case HOLD, MENU, SEND_AGAIN, QUIET, UNDO, READY -> Optional.empty();
    };
  }

  private void hear(String answer) {
    heard.add(Optional.of(answer));
  }

  @Override
  public void heard(Message message) {
    long at = clock.millis();
    press.flatMap(logic -> logic.hear(message, at)).ifPresent(foot -> hear(NEXT));
    back.flatMap(logic -> logic.hear(message, at)).ifPresent(foot -> hear(BACK));
  }

  @Override
  public void alive(String port, boolean alive) {
    // Keys do as well as a foot.
  }

  @Override
  public void sent(Sent sent) {
    // Nothing is sent.
  }

  @Override
  public void close() {
    for (AutoCloseable each : open) {
      try {
        each.close();
      } catch (Exception gone) { // AutoCloseable says Exception; a terminal throws IOException
        // It is given back as far as it can be.
      }
    }
  }
}
