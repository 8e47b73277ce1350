package entracte.stage;

import entracte.cue.Change;
import entracte.cue.GearSends;
import entracte.cue.Spot;
import entracte.cue.Verb;
import entracte.midi.Dispatch;
import entracte.midi.Message;
import entracte.midi.Outlet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Four songs, the last an encore, on three modules, and somebody who plays them. The way to song s
 * is LOWER, then PLUG of a cord of its own, then TURN of a knob to s.
 */
public final class SmallShow {
  public static final long DEAF_MILLIS = 800;
  public static final Outlet PIANO = new Outlet.Port("Stage Piano");

  public final Show show;
  public Night night = Night.fresh();
  public final List<Effect> effects = new ArrayList<>();
  public final List<Event> events = new ArrayList<>();
  public long now = 1_000_000;

  public SmallShow() {
    this(Show.Hold.MENU);
  }

  public SmallShow(Show.Hold hold) {
    List<ShowSong> songs = new ArrayList<>();
    List.of("Kettle", "Clock", "Enamel", "Late", "Drone")
        .forEach(t -> songs.add(song(t, songs.size())));
    show =
        new Show(
            "Kitchen",
            songs,
            List.of(spot("osc 1", 0, 3), spot("filter 1", 0, 9), spot("amp 1", 1, 3)),
            List.of("osc 1.saw", "osc 1.sine", "filter 1.audio", "filter 1.out", "amp 1.audio"),
            List.of(Dispatch.atOnce("piano", PIANO, List.of(new Message.ControlChange(1, 123, 0)))),
            OptionalDouble.of(1800),
            Optional.of(0),
            Optional.of(4),
            hold,
            DEAF_MILLIS);
  }

  private static Spot spot(String module, int row, double centreCm) {
    return new Spot(module, row, centreCm, 0);
  }

  private static ShowSong song(String title, int program) {
    List<GearSends.Section> sections =
        title.equals("Clock")
            ? List.of(new GearSends.Section("chorus", sends(100 + program)))
            : List.of();
    return new ShowSong(
        title,
        List.of("Key: A minor", "Starts: bass"),
        OptionalDouble.of(190),
        OptionalDouble.of(45),
        title.equals("Late"),
        new GearSends(sends(program), sends(50 + program), sections));
  }

  private static List<Dispatch> sends(int program) {
    return List.of(Dispatch.atOnce("piano", PIANO, List.of(new Message.ProgramChange(1, program))));
  }

  /** What is sent on the way to a song. */
  static Effect sent(int program) {
    return new Effect.Send(sends(program));
  }

  public static Way way(int song, boolean setUp) {
    Change cord = new Change.Plugged("osc 1.saw", "filter 1.audio " + song, 30);
    Change knob = new Change.Set("filter 1.cutoff", "" + song);
    return new Way(
        song,
        setUp,
        List.of(
            new Move(Verb.LOWER, "LOWER the main level", 0, List.of(), List.of(), false),
            new Move(
                Verb.PLUG,
                "PLUG osc 1 saw, then filter 1 audio " + song,
                2,
                List.of(spot("osc 1", 0, 3), spot("filter 1", 0, 9)),
                List.of(cord),
                true),
            new Move(
                Verb.TURN,
                "TURN filter 1 cutoff to " + song,
                1,
                List.of(spot("filter 1", 0, 9)),
                List.of(knob),
                false,
                List.of("a little darker than it seems right", "by ear"))),
        12,
        3,
        List.of("amp 1 gain at 0"));
  }

  /** Takes an event; whatever it asks to be planned stays unanswered. */
  public SmallShow take(Event event) {
    Turn turn = Stage.after(show, night, event);
    night = turn.night();
    effects.clear();
    effects.addAll(turn.effects());
    events.add(event);
    return this;
  }

  public SmallShow begin() {
    take(new Event.Begun(now, show.fingerprint(), List.of(0, 1, 2, 3), TrueRig.bare()));
    return answer();
  }

  /** The plan that was asked for last arrives. */
  public SmallShow answer() {
    for (Effect effect : List.copyOf(effects)) {
      if (effect instanceof Effect.Plan plan) {
        List<Way> ways =
            plan.order().stream().map(song -> way(song, !plan.midShow() && song == 0)).toList();
        take(new Event.Planned(now, plan.request(), plan.order(), ways, ""));
      }
    }
    return this;
  }

  /** Inputs, each a second after the one before. */
  public SmallShow press(Input... inputs) {
    for (Input input : inputs) {
      now += 1000;
      take(new Event.Pressed(now, input));
    }
    return this;
  }

  public SmallShow next(int times) {
    for (int i = 0; i < times; i++) {
      press(Input.NEXT);
    }
    return this;
  }

  /** Opens the menu, types until one line is left, and takes it. */
  public SmallShow choose(String letters) {
    press(Input.MENU);
    return narrow(letters);
  }

  public SmallShow narrow(String letters) {
    letters.chars().forEach(letter -> take(new Event.Typed(now, letter)));
    return press(Input.ENTER);
  }

  public List<String> rows(int width, int height) {
    Around around = new Around(now, "20:41", java.util.Map.of("Pedal", Around.Port.OK), "");
    return Screen.draw(show, night, around, width, height).rows();
  }

  public String place() {
    State state = night.now();
    String song =
        state.at() < state.order().size() ? show.title(state.order().get(state.at())) : "nothing";
    return state.phase() + " " + song;
  }

  /** What was sent by the last event, in hexadecimal. */
  public List<String> sent() {
    List<String> sent = new ArrayList<>();
    for (Effect effect : effects) {
      if (effect instanceof Effect.Send send) {
        send.dispatches().forEach(dispatch -> sent.add(dispatch.hex()));
      }
    }
    return sent;
  }

  public String notice() {
    return night.now().notice();
  }
}
