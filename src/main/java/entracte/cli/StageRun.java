package entracte.cli;

import entracte.journal.JournalFile;
import entracte.midi.Dispatch;
import entracte.midi.Message;
import entracte.midi.Outlet;
import entracte.midi.Trigger;
import entracte.port.FootLogic;
import entracte.port.Sent;
import entracte.port.Wiring;
import entracte.rig.FootSwitch;
import entracte.rig.Rig;
import entracte.stage.Around;
import entracte.stage.Effect;
import entracte.stage.Event;
import entracte.stage.Frame;
import entracte.stage.Input;
import entracte.stage.KeyTaps;
import entracte.stage.Night;
import entracte.stage.Screen;
import entracte.stage.Show;
import entracte.stage.Stage;
import entracte.stage.Turn;
import entracte.terminal.Key;
import java.io.IOException;
import java.time.Clock;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;

/**
 * The show as it runs: one loop that takes what happens, in the order in which it happened, and is
 * the only one to touch the night, the journal and the screen. Bytes leave before the journal is
 * flushed and the screen is painted: the ear is quicker than the eye.
 */
final class StageRun implements Wiring.Listener {
  private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("H:mm");

  /** So often is looked whether a foot has stayed down, and the clock on the screen moves on. */
  private static final long BEAT_MILLIS = 100;

  /** What troubles are told under; others by the name of a port or a piece of gear. */
  private static final String JOURNAL = "journal";

  private static final String PROGRAM = "program";

  private static final double MILLIS = 1000;

  private final Show show;
  private final Clock clock;
  private final JournalFile journal;
  private final Foot press;
  private final Optional<Foot> back;
  private final KeyTaps taps;
  private final BlockingQueue<Runnable> happened = new LinkedBlockingQueue<>();
  private final Map<String, Boolean> ports = new LinkedHashMap<>();

  /** By port, the gear that what was sent last did not reach. */
  private final Map<String, Set<String>> failing = new LinkedHashMap<>();

  private Consumer<Effect> world = effect -> {};
  private Night night;
  private final Troubles troubles = new Troubles();
  private final Outbox outbox = new Outbox();
  private final List<String> outlets;
  private boolean leaves;

  private record Foot(Optional<FootLogic> logic) {
    static Foot of(FootSwitch pedal, String written) {
      return new Foot(
          Trigger.parse(written)
              .map(trigger -> new FootLogic(trigger, pedal.latching(), lockOutMillis(pedal))));
    }

    static long lockOutMillis(FootSwitch pedal) {
      return Math.round(pedal.lockOutSeconds() * MILLIS);
    }
  }

  StageRun(Show show, Rig rig, Night night, JournalFile journal, Clock clock) {
    this.show = show;
    this.night = night;
    this.journal = journal;
    this.clock = clock;
    outlets = ShowMaker.outlets(rig).stream().map(Outlet::name).toList();
    press = rig.footSwitch().map(p -> Foot.of(p, p.press())).orElse(new Foot(Optional.empty()));
    taps = KeyTaps.onStage(rig.footSwitch().map(Foot::lockOutMillis).orElse(0L));
    back = rig.footSwitch().filter(p -> !p.back().isEmpty()).map(p -> Foot.of(p, p.back()));
  }

  /** Who does what the stage asks for. */
  void world(Consumer<Effect> does) {
    world = does;
  }

  /** Something that the player should know from the start; a press acknowledges it. */
  void note(String text) {
    troubles.found(text);
  }

  Night night() {
    return night;
  }

  long now() {
    return clock.millis();
  }

  /** Something happened, on any thread. */
  void event(Event event) {
    happened.add(() -> take(event));
  }

  void key(Key key) {
    long at = now();
    happened.add(() -> key(key, at));
  }

  @Override
  public void alive(String port, boolean alive) {
    happened.add(() -> port(port, alive));
  }

  @Override
  public void sent(Sent sent) {
    long at = now();
    happened.add(() -> report(sent, at));
  }

  @Override
  public void heard(Message message) {
    long at = now();
    happened.add(() -> foot(message, at));
  }

  /** Whether the show goes on; waits for something to happen, a beat long at most. */
  boolean goesOn() throws InterruptedException {
    return goesOn(BEAT_MILLIS);
  }

  boolean goesOn(long beatMillis) throws InterruptedException {
    Runnable next = happened.poll(beatMillis, TimeUnit.MILLISECONDS);
    while (next != null) {
      attempt(next);
      next = happened.poll();
    }
    outbox.stuck(now()).ifPresent(this::stuck);
    press.logic().flatMap(logic -> logic.stays(now())).ifPresent(held -> say(Input.HOLD, now()));
    taps.settled(now()).ifPresent(meant -> meant(meant, now()));
    return !leaves;
  }

  /** A mistake of the program must not end a show; what it was about has not happened then. */
  private void attempt(Runnable next) {
    try {
      next.run();
    } catch (RuntimeException mistake) {
      troubles.tell(PROGRAM, "The program failed at this; the place is kept. (" + mistake + ")");
    }
  }

  private void stuck(Dispatch dispatch) {
    String gear = dispatch.gear();
    String port = dispatch.outlet().name();
    fails(gear, port, gear + " is not reached: " + port + " takes nothing.");
  }

  /** Whether the port of that name is known to be there. */
  boolean isAlive(String port) {
    return ports.getOrDefault(port, false);
  }

  /** How many ports have been looked for. */
  int portsKnown() {
    return ports.size();
  }

  /** The names of the ports that have not taken yet what they were given. */
  Set<String> unsentTo() {
    return outbox.outlets();
  }

  Frame frame(int width, int height) {
    LocalTime time = LocalTime.ofInstant(clock.instant(), clock.getZone());
    Map<String, Around.Port> links = new LinkedHashMap<>();
    ports.forEach((port, alive) -> links.put(port, link(port, alive)));
    Around around = new Around(now(), CLOCK.format(time), links, troubles.say());
    return Screen.draw(show, night, around, width, height);
  }

  private Around.Port link(String port, boolean alive) {
    return !alive
        ? Around.Port.LOST
        : failing.containsKey(port) ? Around.Port.FAILS : Around.Port.OK;
  }

  private void foot(Message message, long at) {
    press.logic().flatMap(logic -> logic.hear(message, at)).ifPresent(p -> say(Input.NEXT, at));
    back.flatMap(Foot::logic)
        .flatMap(logic -> logic.hear(message, at))
        .ifPresent(p -> say(Input.BACK, at));
  }

  private void key(Key key, long at) {
    if (key instanceof Key.Leaves) {
      leaves = true;
    } else if (key instanceof Key.Letter letter && night.menuOpen()) {
      take(new Event.Typed(at, letter.point()));
    } else if (key instanceof Key.Says says) {
      says(says.input(), at);
    }
  }

  private void says(Input input, long at) {
    taps.settled(at).ifPresent(before -> meant(before, at));
    if (!steps(input)) {
      say(input, at);
      return;
    }
    boolean takesLines = input == Input.NEXT || input == Input.DOWN;
    taps.hear(input, at, night.menuOpen())
        .filter(meant -> meant != Input.HOLD || takesLines || !night.menuOpen())
        .ifPresent(meant -> meant(meant, at));
  }

  /** A key that has left a menu has done its work, lest it open the menu again as it is held. */
  private void meant(Input input, long at) {
    boolean inMenu = night.menuOpen();
    say(input, at);
    if (inMenu && !night.menuOpen()) {
      taps.lock();
    }
  }

  /** What a pedal that acts as a keyboard may send. */
  private static boolean steps(Input input) {
    return switch (input) {
      case NEXT, BACK, UP, DOWN, ENTER -> true;
      case HOLD, MENU, SEND_AGAIN, QUIET, UNDO, READY, CLOSE -> false;
    };
  }

  private void say(Input input, long at) {
    if (input == Input.CLOSE && !night.menuOpen()) {
      return; // what slips through from unknown sequences of a terminal is nobody's word
    }
    troubles.acknowledge();
    take(new Event.Pressed(at, input));
  }

  private void port(String port, boolean alive) {
    Boolean before = ports.put(port, alive);
    Set<String> unreached = Optional.ofNullable(failing.remove(port)).orElse(Set.of());
    if (!alive) {
      troubles.missing(port);
      unreached.forEach(gear -> troubles.unreached(port, gear)); // sent before this was known
    } else if (before != null && !before && outlets.contains(port)) {
      troubles.back(port);
    } else {
      troubles.clear(port);
    }
  }

  private void report(Sent sent, long at) {
    String gear = sent.dispatch().gear();
    String port = sent.dispatch().outlet().name();
    outbox.back(sent.dispatch());
    if (sent.left()) {
      troubles.clear(gear);
      troubles.clear(port);
      failing.remove(port);
    } else {
      fails(gear, port, gear + " was not reached: " + sent.trouble() + ".");
    }
    String text =
        gear
            + (sent.left() ? " was sent " : " was not sent ")
            + sent.dispatch().hex()
            + (sent.left() ? " in " + sent.millis() + " ms" : ": " + sent.trouble());
    keep(() -> journal.tell(at, "sent", text));
  }

  /** That a port is not there is said once; that gear on it got nothing belongs to it. */
  private void fails(String gear, String port, String sentence) {
    if (isMissing(port)) {
      troubles.unreached(port, gear);
    } else {
      failing.computeIfAbsent(port, any -> new TreeSet<>()).add(gear);
      troubles.tell(gear, sentence);
    }
  }

  private boolean isMissing(String port) {
    return !ports.getOrDefault(port, true);
  }

  private void take(Event event) {
    Turn turn = Stage.after(show, night, event);
    night = turn.night();
    for (Effect effect : turn.effects()) {
      if (effect instanceof Effect.Leave) {
        leaves = true;
      } else if (effect instanceof Effect.CaughtUp) {
        troubles.caughtUp();
      } else {
        if (effect instanceof Effect.Send send) {
          outbox.given(send.dispatches(), now());
        }
        world.accept(effect);
      }
    }
    keep(() -> journal.add(event));
  }

  private interface Writing {
    void run() throws IOException;
  }

  private void keep(Writing writing) {
    try {
      writing.run();
      troubles.clear(JOURNAL);
    } catch (IOException full) {
      troubles.tell(JOURNAL, "This night is not kept on the disk: " + full.getMessage());
    }
  }
}
