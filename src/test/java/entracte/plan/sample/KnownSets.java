package entracte.plan.sample;

import static entracte.check.PatchBuilder.patch;

import entracte.check.PatchBuilder;
import entracte.check.PlayableSet;
import entracte.check.RigBuilder;
import entracte.check.SetBuilder;
import entracte.plan.Start;
import entracte.rig.Control;
import entracte.rig.Position;
import entracte.rig.Rig;
import entracte.rig.RigState;
import entracte.setlist.Song;
import java.util.List;
import java.util.Map;

/** Small sets of which a person can work out the fewest moves. */
public final class KnownSets {
  private KnownSets() {}

  /**
   * A set and its fewest moves.
   *
   * @param why how to see it
   */
  public record Known(String name, Sample sample, int moves, int setUpMoves, String why) {
    @Override
    public String toString() {
      return name;
    }
  }

  public static List<Known> all() {
    return List.of(
        oneVoice(),
        precedence(),
        otherOscillator(),
        shutChannel(),
        turnLater(),
        chain(),
        otherWayRound(),
        tightStock());
  }

  private static Known known(
      String name, PlayableSet set, Start start, int moves, int setUpMoves, String why) {
    return new Known(name, new Sample(name, set, start), moves, setUpMoves, why);
  }

  private static Known oneVoice() {
    Rig rig = RigBuilder.commonKinds().row("osc: oscillator", "out: output").build();
    Song song = patch("p").cord("osc.saw", "out.left").set("osc", "octave", "8").song();
    return known(
        "one voice, twice",
        SetBuilder.playable(rig, song, PatchBuilder.song("again", song.patch())),
        Start.bare(),
        0,
        3,
        "one cord is two plugs, one switch one flip, and the second time nothing moves");
  }

  /**
   * The example of the planning page: pairing removals and additions by their windows alone says 8,
   * as it forgets that a cord cannot leave a jack after another has come.
   */
  private static Known precedence() {
    Rig rig =
        RigBuilder.rig()
            .kind("source", k -> k.out("o"))
            .kind("sink", k -> k.in("x", "y"))
            .row("P1: source", "P2: source", "Q: source", "Z: source")
            .row("J: sink", "K: sink", "L: sink")
            .build();
    return known(
        "removals after additions",
        SetBuilder.playable(
            rig,
            patch("1").cord("P1.o", "J.x").cord("P2.o", "L.x").cord("Q.o", "K.y").song(),
            patch("2").cord("Z.o", "L.y").cord("Q.o", "K.y").song(),
            patch("3").cord("P1.o", "K.x").cord("P2.o", "J.x").cord("Z.o", "L.y").song()),
        Start.bare(),
        10,
        6,
        "worked out on the planning page");
  }

  private static Known otherOscillator() {
    Rig rig =
        RigBuilder.commonKinds()
            .row("osc 1: oscillator", "osc 2: oscillator", "filter: filter", "out: output")
            .build();
    return known(
        "a role that either oscillator can play",
        SetBuilder.playable(
            rig,
            patch("1")
                .role("a", "oscillator")
                .cord("a.saw", "filter.audio")
                .cord("filter.out", "out.left")
                .set("a", "octave", "8")
                .song(),
            patch("2")
                .role("b", "oscillator")
                .cord("b.saw", "out.right")
                .set("b", "octave", "4")
                .song()),
        Start.bare(),
        4,
        6,
        "the output plays in both, so the cord into it is pulled and another plugged; with the"
            + " other oscillator, whose switch is thrown before the show, that is all");
  }

  private static Known shutChannel() {
    Rig rig =
        RigBuilder.commonKinds()
            .row("osc: oscillator", "slow: lfo", "mix: mixer", "out: output")
            .build();
    PatchBuilder both =
        patch("both")
            .cord("osc.saw", "mix.1.in")
            .cord("slow.sine", "mix.2.in")
            .cord("mix.out", "out.left")
            .set("mix.1", "level", "7")
            .set("mix.2", "level", "7");
    return known(
        "a cord that waits in a shut channel",
        SetBuilder.playable(
            rig,
            both.song(),
            patch("one")
                .cord("osc.saw", "mix.1.in")
                .cord("mix.out", "out.left")
                .set("mix.1", "level", "7")
                .song(),
            PatchBuilder.song("both again", both.build())),
        Start.bare(),
        2,
        8,
        "shut the channel and open it again, two turns, and leave the cord in; pulling it and"
            + " plugging it again were four moves");
  }

  /** The example of the planning page in which turning only when one must is not best. */
  private static Known turnLater() {
    Rig rig = RigBuilder.commonKinds().row("osc: oscillator", "out: output").build();
    Control width =
        rig.modules().get(0).controls().stream()
            .filter(control -> control.name().equals("width"))
            .findFirst()
            .orElseThrow();
    RigState state = new RigState(List.of(), List.of(), Map.of(width, new Position.At(0)));
    return known(
        "a knob that is better turned later",
        SetBuilder.playable(
            rig, wants("1", "0.5 +-0.5"), wants("2", "1.5 +-0.5"), wants("3", "2.5 +-0.5")),
        Start.beforeShow(state),
        1,
        2,
        "at 0 the first song is served; turned to 2 after it, so are the other two");
  }

  private static Song wants(String name, String width) {
    return patch(name).cord("osc.saw", "out.left").set("osc", "width", width).song();
  }

  private static Known chain() {
    Rig rig =
        RigBuilder.rig()
            .kind("keys", k -> k.out("pitch"))
            .kind("oscillator", k -> k.in("pitch"))
            .kind("multiple", k -> k.taps(3))
            .row("keys: keys", "m 1: multiple", "m 2: multiple")
            .row("osc 1: oscillator", "osc 2: oscillator", "osc 3: oscillator")
            .build();
    return known(
        "a chain of two multiples",
        SetBuilder.playable(
            rig,
            patch("1").cord("keys.pitch", "osc 1.pitch", "osc 2.pitch", "osc 3.pitch").song(),
            patch("2").cord("keys.pitch", "osc 2.pitch", "osc 3.pitch").song()),
        Start.bare(),
        4,
        10,
        "three sinks on multiples of three taps make a chain: five cords. In the second song the"
            + " second multiple has its two sinks already, and is fed from the keys by the plug"
            + " that fed the first; what fed it from the first is pulled out");
  }

  private static Known otherWayRound() {
    Rig rig =
        RigBuilder.rig()
            .kind("keys", k -> k.out("pitch"))
            .kind("oscillator", k -> k.in("pitch"))
            .kind("multiple", k -> k.taps(3))
            .row("keys: keys", "m 1: multiple", "m 2: multiple")
            .row("osc 1: oscillator", "osc 2: oscillator", "osc 3: oscillator")
            .build();
    return known(
        "the same chain, other sinks first",
        SetBuilder.playable(
            rig,
            patch("1").cord("keys.pitch", "osc 1.pitch", "osc 2.pitch", "osc 3.pitch").song(),
            patch("2").cord("keys.pitch", "osc 2.pitch", "osc 1.pitch", "osc 3.pitch").song()),
        Start.bare(),
        4,
        10,
        "the cords of two sinks move a plug each");
  }

  private static Known tightStock() {
    Rig rig =
        RigBuilder.rig()
            .kind("source", k -> k.out("o"))
            .kind("sink", k -> k.in("i"))
            .row("a: source", "b: source", "c: source")
            .row("x: sink", "y: sink", "z: sink")
            .cords(2)
            .build();
    return known(
        "two cords for three",
        SetBuilder.playable(
            rig,
            patch("1").cord("a.o", "x.i").song(),
            patch("2").cord("b.o", "y.i").song(),
            patch("3").cord("a.o", "x.i").song(),
            patch("4").cord("c.o", "z.i").song()),
        Start.bare(),
        4,
        4,
        "the first two are plugged before the show; the third takes the place of the second");
  }
}
