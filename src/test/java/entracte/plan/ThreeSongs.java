package entracte.plan;

import static entracte.check.PatchBuilder.patch;
import static org.junit.jupiter.api.Assertions.assertTrue;

import entracte.check.PlayableSet;
import entracte.check.RigBuilder;
import entracte.check.SetBuilder;
import entracte.plan.PlanDraft.SongDraft;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.junit.jupiter.params.provider.Arguments;

/**
 * Three songs, planned by hand. In the first, one pitch goes to two oscillators by way of a
 * multiple, and both go through a mixer to the filter. In the second, one oscillator goes to the
 * filter; the other waits with its cords. In the third, it waits in a channel that is shut. Every
 * cord is 70 cm long; a third oscillator hangs so low that only the one of 120 cm reaches it.
 */
final class ThreeSongs {
  private ThreeSongs() {}

  private static final PlayableSet SET =
      SetBuilder.playable(
          RigBuilder.commonKinds()
              .row(
                  "keys: keys",
                  "osc 1: oscillator",
                  "osc 2: oscillator",
                  "mult 1: multiple",
                  "mix 1: mixer",
                  "filter 1: filter",
                  "out: output",
                  "mult 2: multiple")
              .row("osc 3: oscillator")
              .rowHeight(60)
              .cords(Map.of(70, 7, 120, 1))
              .build(),
          patch("one")
              .role("lead", "oscillator")
              .role("low", "oscillator")
              .role("blend", "mixer")
              .role("bright", "filter")
              .cord("keys.pitch 1", "lead.pitch", "low.pitch")
              .cord("lead.saw", "blend.a.in")
              .cord("low.saw", "blend.2.in")
              .cord("blend.out", "bright.audio")
              .cord("bright.out", "out.left")
              .set("bright", "cutoff", "5 +-1")
              .set("bright", "slope", "other")
              .set("bright", "other slope", "3-pole")
              .set("blend.a", "level", "7")
              .song(),
          patch("two")
              .role("lead", "oscillator")
              .role("bright", "filter")
              .cord("keys.pitch 1", "lead.pitch")
              .cord("lead.saw", "bright.audio")
              .cord("bright.out", "out.left")
              .set("bright", "cutoff", "5.5")
              .set("bright", "slope", "steep")
              .set("lead", "octave", "8")
              .song(),
          patch("three")
              .role("lead", "oscillator")
              .role("blend", "mixer")
              .cord("lead.saw", "blend.a.in")
              .cord("blend.out", "out.left")
              .set("blend.a", "level", "7")
              .song());

  static PlanDraft right() {
    PlanDraft plan = new PlanDraft(SET).jumper("filter 1", "other slope", "3-pole");
    first(plan.song());
    second(plan.song());
    third(plan.song());
    return plan;
  }

  private static SongDraft positions(SongDraft song, String slope) {
    return song.stands("filter 1.cutoff", 5.5)
        .stands("filter 1.slope", slope)
        .stands("osc 1.octave", "8")
        .stands("mix 1.1.level", 7)
        .stands("mix 1.2.level", 0);
  }

  private static void first(SongDraft song) {
    song.cast("lead", "osc 1", "pitch = 1")
        .cast("low", "osc 2", "pitch = 1")
        .cast("blend", "mix 1", "a = 1", "2 = 2")
        .cast("bright", "filter 1")
        .cast("keys", "keys")
        .cast("out", "out")
        .cast("keys.pitch 1 multiple 1", "mult 1", "tap = 1", "tap = 2", "tap = 3");
    song.needs("keys.pitch 1", "mult 1.tap.1")
        .needs("mult 1.tap.2", "osc 1.pitch.1")
        .needs("mult 1.tap.3", "osc 2.pitch.1")
        .needs("osc 1.saw", "mix 1.1.in")
        .needs("osc 2.saw", "mix 1.2.in")
        .needs("mix 1.out", "filter 1.audio")
        .needs("filter 1.out", "out.left");
    song.required.forEach(cord -> song.actions.add(new Action.Add(cord)));
    positions(song, "other")
        .turns("filter 1.cutoff", 5.5)
        .turns("filter 1.slope", "other")
        .turns("osc 1.octave", "8")
        .turns("mix 1.1.level", 7)
        .turns("mix 1.2.level", 0);
  }

  private static void second(SongDraft song) {
    positions(song, "steep")
        .cast("lead", "osc 1", "pitch = 2")
        .cast("bright", "filter 1")
        .cast("keys", "keys")
        .cast("out", "out")
        .needs("keys.pitch 1", "osc 1.pitch.2")
        .needs("osc 1.saw", "filter 1.audio")
        .needs("filter 1.out", "out.left")
        .parks("mult 1.tap.3", "osc 2.pitch.1")
        .parks("osc 2.saw", "mix 1.2.in")
        .turns("filter 1.slope", "steep")
        .shifts("keys.pitch 1", "mult 1.tap.1", "keys.pitch 1", "osc 1.pitch.2")
        .removes("mult 1.tap.2", "osc 1.pitch.1")
        .shifts("osc 1.saw", "mix 1.1.in", "osc 1.saw", "filter 1.audio")
        .removes("mix 1.out", "filter 1.audio");
  }

  private static void third(SongDraft song) {
    positions(song, "steep")
        .cast("lead", "osc 1")
        .cast("blend", "mix 1", "a = 1")
        .cast("out", "out")
        .needs("osc 1.saw", "mix 1.1.in")
        .needs("mix 1.out", "out.left")
        .parks("mult 1.tap.3", "osc 2.pitch.1")
        .parks("osc 2.saw", "mix 1.2.in")
        .removes("keys.pitch 1", "osc 1.pitch.2")
        .shifts("osc 1.saw", "filter 1.audio", "osc 1.saw", "mix 1.1.in")
        .shifts("filter 1.out", "out.left", "mix 1.out", "out.left");
  }

  static Arguments spoilt(String how, String complaint, Consumer<PlanDraft> spoil) {
    return Arguments.of(how, complaint, spoil);
  }

  static SongDraft song(PlanDraft plan, int number) {
    return plan.songs.get(number - 1);
  }

  /** That the verifier notices. */
  static void assertNoticed(String how, String complaint, Consumer<PlanDraft> spoil) {
    PlanDraft plan = right();
    spoil.accept(plan);
    List<String> complaints = plan.complaints();
    assertTrue(
        complaints.stream().anyMatch(each -> each.contains(complaint)),
        how + " should say \"" + complaint + "\", says " + complaints);
  }
}
