package entracte.plan;

import static entracte.plan.ThreeSongs.right;
import static entracte.plan.ThreeSongs.song;
import static entracte.plan.ThreeSongs.spoilt;
import static org.junit.jupiter.api.Assertions.assertEquals;

import entracte.plan.PlanDraft.SongDraft;
import entracte.plan.SongPlan.CastAs;
import entracte.plan.SongPlan.StripAs;
import entracte.rig.Cord;
import entracte.rig.Socket;
import java.util.List;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** What the verifier sees in a song by itself. The plan is that of {@link ThreeSongs}. */
final class VerifiedSongsTest {
  @Test
  void aRightPlanPasses() {
    assertEquals(List.of(), right().complaints());
    assertEquals(9, right().plan().changeovers().get(1).moves());
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource({
    "wrongCastings",
    "wrongCords",
    "wrongParking",
    "wrongPositions",
    "wrongStrips",
    "wrongMultiples",
    "wrongStock"
  })
  void everyWayToSpoilItIsNoticed(String how, String complaint, Consumer<PlanDraft> spoil) {
    ThreeSongs.assertNoticed(how, complaint, spoil);
  }

  private static void recast(SongDraft song, int role, CastAs cast) {
    song.casting.set(role, cast);
  }

  private static CastAs on(PlanDraft plan, String role, String module, StripAs... strips) {
    return new CastAs(role, plan.module(module), List.of(strips));
  }

  static List<Arguments> wrongCastings() {
    return List.of(
        spoilt(
            "a module of another kind",
            "mix 1 cannot play lead",
            p -> recast(song(p, 2), 0, on(p, "lead", "mix 1", new StripAs("pitch", 2)))),
        spoilt(
            "one module for two roles",
            "osc 1 plays two roles",
            p -> recast(song(p, 1), 1, on(p, "low", "osc 1", new StripAs("pitch", 1)))),
        spoilt(
            "a role left out",
            "role lead is not cast in its place",
            p -> song(p, 2).casting.remove(0)),
        spoilt(
            "a role that nobody wrote",
            "extra is no role of the patch",
            p -> song(p, 2).cast("extra", "osc 2")));
  }

  static List<Arguments> wrongStrips() {
    return List.of(
        spoilt(
            "two channels in one",
            "blend.2 shares number 2",
            p -> recast(song(p, 1), 2, blend(p, 2, 2))),
        spoilt(
            "a numbered channel elsewhere",
            "blend.2 is cast on number 3",
            p -> recast(song(p, 1), 2, blend(p, 1, 3))),
        spoilt(
            "a channel beyond the last",
            "blend.a is no strip of mix 1",
            p -> recast(song(p, 1), 2, blend(p, 5, 2))),
        spoilt(
            "a strip left out",
            "blend needs 2 strips",
            p -> recast(song(p, 1), 2, on(p, "blend", "mix 1", new StripAs("a", 1)))));
  }

  static List<Arguments> wrongMultiples() {
    return List.of(
        spoilt(
            "a multiple that splits nothing",
            "spare multiple 1 splits no source",
            p -> song(p, 2).cast("spare multiple 1", "mult 2")),
        spoilt(
            "two multiples where one will do",
            "not through the smallest chain with enough taps",
            p -> song(p, 1).cast("keys.pitch 1 multiple 2", "mult 2")),
        spoilt(
            "no multiple where one is needed",
            "not through the smallest chain with enough taps",
            p -> song(p, 1).casting.remove(6)),
        spoilt(
            "a multiple's taps misnamed",
            "cast on taps [1, 2, 4], its cords are in [1, 2, 3]",
            p ->
                recast(
                    song(p, 1),
                    6,
                    on(
                        p,
                        "keys.pitch 1 multiple 1",
                        "mult 1",
                        new StripAs("tap", 1),
                        new StripAs("tap", 2),
                        new StripAs("tap", 4)))));
  }

  private static CastAs blend(PlanDraft plan, int a, int two) {
    return on(plan, "blend", "mix 1", new StripAs("a", a), new StripAs("2", two));
  }

  static List<Arguments> wrongCords() {
    return List.of(
        spoilt(
            "a required cord left out",
            "no cord from osc 1.saw to filter 1.audio",
            p -> song(p, 2).required.remove(1)),
        spoilt(
            "a cord too many",
            "no need for a cord from osc 2.sine to mix 1.3.in",
            p -> song(p, 1).needs("osc 2.sine", "mix 1.3.in")),
        spoilt(
            "a cord in the equal jack beside the one that is cast",
            "no cord from keys.pitch 1 to osc 1.pitch.2",
            p -> song(p, 2).required.set(0, p.cord("keys.pitch 1", "osc 1.pitch.1"))),
        spoilt(
            "a cord that runs backwards",
            "a cord runs backwards: mix 1.3.in to osc 2.sine",
            p -> song(p, 2).parks("mix 1.3.in", "osc 2.sine")),
        spoilt(
            "two plugs in one jack",
            "two plugs in osc 2.saw",
            p -> song(p, 2).parks("osc 2.saw", "mix 1.3.in")),
        spoilt(
            "a jack that is not there",
            "there is no jack mult 2.tap.5",
            p -> song(p, 2).parked.add(withTap(p, 5))));
  }

  static List<Arguments> wrongStock() {
    return List.of(
        spoilt(
            "more cords than in stock",
            "8 cords of length 70 are plugged, 7 are in stock",
            p ->
                song(p, 2)
                    .parks("keys.gate 1", "mult 2.tap.1")
                    .parks("mult 2.tap.2", "mix 1.3.in")
                    .parks("osc 2.sine", "mix 1.4.in")),
        spoilt(
            "a cord that does not reach",
            "a cord of length 70 for osc 3.saw to mult 2.tap.1",
            p ->
                song(p, 2)
                    .parked
                    .add(new PluggedCord(p.cord("osc 3.saw", "mult 2.tap.1").cord(), 70))),
        spoilt(
            "a cord of a length that is not in stock",
            "1 cords of length 75 are plugged, 0 are in stock",
            p ->
                song(p, 2)
                    .parked
                    .add(new PluggedCord(p.cord("keys.gate 1", "mult 2.tap.1").cord(), 75))));
  }

  private static PluggedCord withTap(PlanDraft plan, int number) {
    Socket tap = plan.socket("mult 2.tap.1");
    Socket wrong = new Socket(tap.module(), tap.group(), number, tap.jack());
    return new PluggedCord(new Cord(plan.socket("keys.gate 1"), wrong), 70);
  }

  static List<Arguments> wrongParking() {
    return List.of(
        spoilt(
            "parked in a module that plays",
            "a parked cord would be heard: keys.gate 1 to osc 1.fm",
            p -> song(p, 2).parks("keys.gate 1", "osc 1.fm")),
        spoilt(
            "parked in a channel that is open",
            "a parked cord would be heard: osc 2.saw to mix 1.2.in",
            p -> song(p, 3).stands("mix 1.2.level", 1)),
        spoilt(
            "parked in a channel of which nobody knows how it stands",
            "a parked cord would be heard: osc 2.saw to mix 1.2.in",
            p -> song(p, 3).positions.remove(p.control("mix 1.2.level"))),
        spoilt(
            "parked in a channel that the song names",
            "a parked cord would be heard: osc 2.saw to mix 1.1.in",
            p -> song(p, 3).parks("osc 2.saw", "mix 1.1.in")),
        spoilt(
            "two outputs joined in an idle multiple",
            "parked cords join two outputs in mult 2",
            p ->
                song(p, 2)
                    .parks("keys.gate 1", "mult 2.tap.1")
                    .parks("keys.gate 2", "mult 2.tap.2")),
        spoilt(
            "a parked cord into a multiple that plays",
            "a parked cord would be heard: keys.gate 1 to mult 1.tap.4",
            p -> song(p, 1).parks("keys.gate 1", "mult 1.tap.4")));
  }

  static List<Arguments> wrongPositions() {
    return List.of(
        spoilt(
            "a knob outside what the song accepts",
            "filter 1.cutoff stands at 6.5",
            p -> song(p, 1).stands("filter 1.cutoff", 6.5)),
        spoilt(
            "a knob that nobody set",
            "filter 1.cutoff stands at no known place",
            p -> song(p, 1).positions.remove(p.control("filter 1.cutoff"))),
        spoilt(
            "a switch at another position",
            "filter 1.slope stands at other",
            p -> song(p, 2).stands("filter 1.slope", "other")),
        spoilt(
            "a knob beyond its scale",
            "filter 1.resonance cannot stand at 11",
            p -> song(p, 1).stands("filter 1.resonance", 11)),
        spoilt(
            "a switch at a position that it has not",
            "osc 2.octave cannot stand at 7",
            p -> song(p, 1).stands("osc 2.octave", "7")),
        spoilt(
            "a jumper the other way",
            "jumper other slope of filter 1 is not at 3-pole",
            p -> p.jumper("filter 1", "other slope", "2-pole")),
        spoilt(
            "a jumper forgotten",
            "jumper other slope of filter 1 is not at 3-pole",
            p -> p.jumpers.clear()),
        spoilt(
            "a jumper at a position that it has not",
            "jumper filter 1.other slope cannot stand at 4-pole",
            p -> p.jumper("filter 1", "other slope", "4-pole")));
  }
}
