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
import java.util.function.Supplier;

/**
 * A conversation in single keys and with a foot, and a clock that runs while the hands work. The
 * keys that say "next" on stage are Enter here, those that say "back" are {@code u}.
 */
final class KeyTalk implements Talk, Wiring.Listener {
  private static final int BACKSPACE = 8;
  private static final long BEAT_MILLIS = 200;

  /** Where the words of a timed step begin, behind its number. */
  private static final String HANGING = " ".repeat(8);

  /** As wide as what the clock says can be: {@code 12 min 34 s of 10 min 30 s}. */
  private static final int CLOCK = 27;

  /** A terminal that says less says nothing. */
  private static final int NARROWEST = 20;

  private static final int LOWEST = 8;

  /** What must stay on the screen with a page of a list: its head and the question. */
  private static final int AROUND_A_LIST = 3;

  private static final String NEXT = "";
  private static final String BACK = "u";

  private final Streams streams;
  private final InstantSource clock;
  private final KeyTaps taps = KeyTaps.atOnce();
  private final BlockingQueue<Optional<String>> heard = new LinkedBlockingQueue<>();
  private final List<AutoCloseable> open = new ArrayList<>();
  private Optional<FootLogic> press = Optional.empty();
  private Optional<FootLogic> back = Optional.empty();
  private String timed = "";
  private int width = PlanText.WIDTH;
  private int rows = Integer.MAX_VALUE;

  KeyTalk(Streams streams, InstantSource clock) {
    this.streams = streams;
    this.clock = clock;
  }

  /** Takes the keys of the terminal, and the pedal's port if there is one. */
  void listen(Optional<FootSwitch> pedal) throws IOException {
    Keyboard keyboard = Keyboard.open(this::key);
    open.add(keyboard);
    narrow(keyboard.columns());
    low(keyboard.rows());
    pedal.filter(p -> !p.port().isEmpty()).ifPresent(this::listen);
  }

  /** Lines as long as the terminal is wide, if it is narrow. */
  void narrow(int columns) {
    width = width(columns);
  }

  static int width(int columns) {
    return columns < NARROWEST ? PlanText.WIDTH : Math.min(PlanText.WIDTH, columns);
  }

  /** Lists no longer than the terminal is high. */
  void low(int lines) {
    rows = lines < LOWEST ? Integer.MAX_VALUE : lines;
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

  /** Page by page, lest its begin be gone from the screen before it was read. */
  @Override
  public void list(List<String> lines) {
    List<String> filled = lines.stream().flatMap(each -> LineTalk.filled(each, width)).toList();
    int page = rows - AROUND_A_LIST;
    for (int from = 0; from < filled.size(); from += page) {
      int to = Math.min(filled.size(), from + page);
      filled.subList(from, to).forEach(streams::line);
      if (to < filled.size() && isEnough(ask("Enter shows the rest, " + more(filled, to)))) {
        return;
      }
    }
    streams.out().flush();
  }

  private static String more(List<String> lines, int shown) {
    int left = lines.size() - shown;
    return left == 1 ? "1 more line: " : left + " more lines: ";
  }

  /** Whoever ends or stops here means the question that the list belongs to. */
  private boolean isEnough(Optional<String> answer) {
    boolean enough = answer.isEmpty() || "qx".contains(answer.get()) && !answer.get().isEmpty();
    if (enough) {
      heard.add(answer);
    }
    return enough;
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
  public Optional<String> ask(String line, Supplier<String> clock) {
    if (!line.equals(timed)) {
      Fill.lines(line.strip(), width, leading(line), HANGING).forEach(streams::line);
      timed = line;
    }
    paint(clock.get());
    Optional<String> answer = answer(() -> paint(clock.get()));
    streams.out().print("\r" + " ".repeat(HANGING.length() + CLOCK) + "\r");
    return answer;
  }

  private static String leading(String line) {
    return line.substring(0, line.length() - line.stripLeading().length());
  }

  /** Blanks behind it: 59 s is longer than 1 min. */
  private void paint(String clock) {
    streams.out().print("\r" + HANGING + clock + " ".repeat(Math.max(0, CLOCK - clock.length())));
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
      taps.hear(says.input(), clock.millis(), false).flatMap(KeyTalk::meant).ifPresent(this::hear);
    }
  }

  private static Optional<String> meant(Input input) {
    return switch (input) {
      case NEXT, ENTER, DOWN -> Optional.of(NEXT);
      case BACK, UP -> Optional.of(BACK);
      case HOLD, MENU, SEND_AGAIN, QUIET, UNDO, READY, CLOSE -> Optional.empty();
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
