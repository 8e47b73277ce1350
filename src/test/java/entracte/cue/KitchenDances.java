package entracte.cue;

import entracte.check.HandMadeSet;
import entracte.plan.Action;
import entracte.plan.Changeover;
import entracte.plan.Plan;
import entracte.plan.PluggedCord;
import entracte.plan.SongPlan;
import entracte.plan.SongPlan.CastAs;
import entracte.plan.SongPlan.StripAs;
import entracte.plan.Start;
import entracte.rig.Control;
import entracte.rig.CordStock;
import entracte.rig.Position;
import entracte.setlist.GearCue;
import entracte.setlist.Patch;
import entracte.setlist.SetList;
import entracte.setlist.Setting;
import entracte.setlist.Song;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * A plan made by hand, of three songs on {@link SmallRig}:
 *
 * <pre>
 *   1 Plain Morning   keys.pitch 1 to osc 1, saw through mix 1 channel 1 to filter 1
 *                     (a cord for song 3 waits in osc 2)
 *   2 Two Kettles     the same on keys.pitch 2 and mixer channel 2, filter opened
 *   3 Late Bus        pitch 2 split by mult 1 to both oscillators, lfo 1 into osc 2
 * </pre>
 */
public final class KitchenDances {
  private static final SmallRig RIG = new SmallRig(CordStock.ofAnyLength(12));
  private static final PluggedCord EARLY = cord("lfo 1.out", "osc 2.fm");
  private static final PluggedCord PITCH_1 = cord("keys.pitch 1", "osc 1.pitch.1");
  private static final PluggedCord PITCH_2 = cord("keys.pitch 2", "osc 1.pitch.1");
  private static final PluggedCord SAW_1 = cord("osc 1.saw", "mix 1.1.in");
  private static final PluggedCord SAW_2 = cord("osc 1.saw", "mix 1.2.in");
  private static final PluggedCord OUT = cord("mix 1.out", "filter 1.audio");
  private static final PluggedCord TO_TAP = cord("keys.pitch 2", "mult 1.tap.1");
  private static final PluggedCord TAP_OSC_1 = cord("mult 1.tap.2", "osc 1.pitch.1");
  private static final PluggedCord TAP_OSC_2 = cord("mult 1.tap.3", "osc 2.pitch.1");
  private static final PluggedCord PULSE = cord("osc 2.pulse", "mix 1.1.in");

  private static final Map<String, Object> MORNING =
      Map.of(
          "osc 1.octave", "8",
          "osc 2.octave", "4",
          "mix 1.1.level", 7.0,
          "filter 1.cutoff", 4.0,
          "filter 1.resonance", 3.0);

  private KitchenDances() {}

  /** The set, its rig holding twelve cords whose length does not matter. */
  static SetList set() {
    return new SetList(
        "Kitchen Dances",
        RIG.rig(),
        List.of(morning().song(), kettles().song(), bus().song()),
        true);
  }

  public static Plan plan() {
    return new Plan(
        HandMadeSet.of(set()),
        Start.bare(),
        List.of(morning(), kettles(), bus()),
        Map.of(
            new Plan.JumperIn(
                RIG.module("filter 1"),
                RIG.module("filter 1").kind().jumper("other slope").orElseThrow()),
            "3-pole"),
        List.of(setUp(), toKettles(), toBus()));
  }

  private static Changeover setUp() {
    return new Changeover(
        0,
        true,
        List.of(
            new Action.Add(EARLY),
            new Action.Add(OUT),
            new Action.Add(SAW_1),
            new Action.Add(PITCH_1),
            turn("filter 1.resonance", null, 3),
            turn("filter 1.cutoff", null, 4),
            turn("mix 1.1.level", null, 7),
            flip("osc 2.octave", null, "4"),
            flip("osc 1.octave", null, "8")));
  }

  private static Changeover toKettles() {
    return new Changeover(
        1,
        false,
        List.of(
            new Action.Shift(SAW_1, SAW_2, RIG.socket("osc 1.saw")),
            new Action.Shift(PITCH_1, PITCH_2, RIG.socket("osc 1.pitch.1")),
            turn("mix 1.2.level", null, 5),
            turn("filter 1.cutoff", 4.0, 6.5)));
  }

  private static Changeover toBus() {
    return new Changeover(
        2,
        false,
        List.of(
            new Action.Shift(PITCH_2, TO_TAP, RIG.socket("keys.pitch 2")),
            new Action.Add(TAP_OSC_1),
            new Action.Add(TAP_OSC_2),
            new Action.Add(PULSE),
            turn("mix 1.1.level", 7.0, 2),
            flip("osc 1.octave", "8", "16")));
  }

  private static SongPlan morning() {
    Song song =
        song(
            "Plain Morning",
            OptionalDouble.empty(),
            setting("lead", "octave", "8"),
            setting("blend.low", "level", "7"),
            setting("bright", "cutoff", "4"),
            setting("bright", "resonance", "3 +-0.5"));
    return new SongPlan(
        song,
        casting("osc 1", 1),
        List.of(PITCH_1, SAW_1, OUT),
        List.of(EARLY),
        positions(MORNING));
  }

  private static SongPlan kettles() {
    Map<String, Object> at = new TreeMap<>(MORNING);
    at.put("filter 1.cutoff", 6.5);
    at.put("mix 1.2.level", 5.0);
    Song song =
        song(
            "Two Kettles",
            OptionalDouble.of(30),
            setting("lead", "octave", "8"),
            setting("blend.low", "level", "5"),
            setting("bright", "cutoff", "6.5"),
            setting("bright", "resonance", "3"));
    return new SongPlan(
        song, casting("osc 1", 2), List.of(PITCH_2, SAW_2, OUT), List.of(EARLY), positions(at));
  }

  private static SongPlan bus() {
    Map<String, Object> at = new TreeMap<>(MORNING);
    at.putAll(Map.of("filter 1.cutoff", 6.5, "mix 1.2.level", 5.0, "mix 1.1.level", 2.0));
    at.put("osc 1.octave", "16");
    Song song =
        song(
            "Late Bus",
            OptionalDouble.of(40),
            setting("lead", "octave", "4"),
            setting("bass", "octave", "16"),
            setting("blend.high", "level", "2"));
    List<CastAs> casting =
        List.of(
            cast("lead", "osc 2"),
            cast("bass", "osc 1"),
            cast("bright", "filter 1"),
            cast("blend", "mix 1", new StripAs("low", 2), new StripAs("high", 1)),
            cast("keys", "keys"),
            cast("lfo 1", "lfo 1"),
            cast("keys.pitch 2 multiple 1", "mult 1"));
    return new SongPlan(
        song,
        casting,
        List.of(TO_TAP, TAP_OSC_1, TAP_OSC_2, SAW_2, PULSE, OUT, EARLY),
        List.of(),
        positions(at));
  }

  private static List<CastAs> casting(String lead, int channel) {
    return List.of(
        cast("lead", lead),
        cast("bright", "filter 1"),
        cast("blend", "mix 1", new StripAs("low", channel)),
        cast("keys", "keys"));
  }

  private static CastAs cast(String role, String module, StripAs... strips) {
    return new CastAs(role, RIG.module(module), List.of(strips));
  }

  private static Song song(String name, OptionalDouble gap, Setting... settings) {
    Song.Card card =
        new Song.Card(
            Optional.of("D minor"),
            Optional.of("92"),
            Optional.of("viola, four bars"),
            Optional.empty(),
            OptionalDouble.empty());
    GearCue piano =
        new GearCue(
            "piano",
            Optional.of(5),
            Optional.of(new GearCue.Bank(1, 2)),
            List.of(new GearCue.ControlChange(7, 90, "volume")));
    Patch patch = new Patch("patch of " + name, List.of(), List.of(), List.of(settings));
    return new Song(name, patch, List.of(), gap, List.of(piano), card);
  }

  private static Setting setting(String owner, String control, String value) {
    return new Setting(owner, control, value);
  }

  private static PluggedCord cord(String source, String sink) {
    return new PluggedCord(RIG.cord(source, sink), CordStock.ANY_LENGTH);
  }

  private static Action turn(String knob, Double from, double to) {
    return new Action.Turn(
        RIG.control(knob), Optional.ofNullable(from).map(Position.At::new), new Position.At(to));
  }

  private static Action flip(String toggle, String from, String to) {
    return new Action.Flip(
        RIG.control(toggle),
        Optional.ofNullable(from).map(Position.Thrown::new),
        new Position.Thrown(to));
  }

  private static Map<Control, Position> positions(Map<String, Object> byName) {
    Map<Control, Position> positions = new java.util.HashMap<>();
    byName.forEach(
        (name, at) ->
            positions.put(
                RIG.control(name),
                at instanceof Double figure
                    ? new Position.At(figure)
                    : new Position.Thrown(at.toString())));
    return positions;
  }
}
