package entracte.plan;

import static entracte.check.PatchBuilder.patch;
import static org.junit.jupiter.api.Assertions.assertEquals;

import entracte.check.PlayableSet;
import entracte.check.RigBuilder;
import entracte.check.SetBuilder;
import entracte.plan.PlanDraft.SongDraft;
import entracte.rig.Rig;
import entracte.setlist.SetList;
import entracte.setlist.Song;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * A pitch that goes to three oscillators through two multiples of three taps, chained; in another
 * song all that only waits. The cord between the multiples could serve both ways.
 */
final class VerifiedChainTest {
  private static final Rig RIG =
      RigBuilder.rig()
          .kind("keys", k -> k.out("pitch", "gate"))
          .kind("oscillator", k -> k.in("pitch"))
          .kind("envelope", k -> k.in("gate"))
          .kind("multiple", k -> k.taps(3))
          .row("keys: keys", "m 1: multiple", "m 2: multiple", "shape 1: envelope")
          .row("osc 1: oscillator", "osc 2: oscillator", "osc 3: oscillator")
          .cords(7)
          .build();
  private static final Song SPREAD =
      patch("spread")
          .role("a", "oscillator")
          .role("b", "oscillator")
          .role("c", "oscillator")
          .cord("keys.pitch", "a.pitch", "b.pitch", "c.pitch")
          .song();
  private static final Song REST =
      patch("rest").role("shape", "envelope").cord("keys.gate", "shape.gate").song();

  private static void spread(SongDraft song) {
    song.cast("a", "osc 1")
        .cast("b", "osc 2")
        .cast("c", "osc 3")
        .cast("keys", "keys")
        .cast("keys.pitch multiple 1", "m 1", "tap = 1", "tap = 2", "tap = 3")
        .cast("keys.pitch multiple 2", "m 2", "tap = 1", "tap = 2", "tap = 3")
        .needs("keys.pitch", "m 1.tap.1")
        .needs("m 1.tap.2", "osc 1.pitch")
        .needs("m 1.tap.3", "m 2.tap.1")
        .needs("m 2.tap.2", "osc 2.pitch")
        .needs("m 2.tap.3", "osc 3.pitch");
  }

  private static SongDraft rest(SongDraft song) {
    return song.cast("shape", "shape 1")
        .cast("keys", "keys")
        .needs("keys.gate", "shape 1.gate")
        .parks("keys.pitch", "m 1.tap.1")
        .parks("m 1.tap.2", "osc 1.pitch")
        .parks("m 2.tap.2", "osc 2.pitch")
        .parks("m 2.tap.3", "osc 3.pitch");
  }

  private static PlanDraft spreadThenRest(boolean reversed) {
    PlayableSet set = SetBuilder.playable(RIG, SPREAD, REST);
    PlanDraft plan = new PlanDraft(set);
    SongDraft first = plan.song();
    spread(first);
    first.required.forEach(cord -> first.actions.add(new Action.Add(cord)));
    link(rest(plan.song()), reversed).adds("keys.gate", "shape 1.gate");
    return plan;
  }

  private static PlanDraft restThenSpread(boolean reversed) {
    PlayableSet set = SetBuilder.playable(RIG, REST, SPREAD);
    PlanDraft plan = new PlanDraft(set);
    SongDraft first = link(rest(plan.song()), reversed);
    first.required.forEach(cord -> first.actions.add(new Action.Add(cord)));
    first.parked.forEach(cord -> first.actions.add(new Action.Add(cord)));
    SongDraft second = plan.song();
    spread(second);
    second.removes("keys.gate", "shape 1.gate");
    return plan;
  }

  private static SongDraft link(SongDraft song, boolean reversed) {
    return reversed ? song.parks("m 2.tap.1", "m 1.tap.3") : song.parks("m 1.tap.3", "m 2.tap.1");
  }

  @Test
  void aChainPassesInUseAndAtRest() {
    assertEquals(List.of(), spreadThenRest(false).complaints());
    assertEquals(List.of(), restThenSpread(false).complaints());
  }

  @Test
  void aCordThatWaitsKeepsTheWayItWasUsed() {
    assertEquals(
        List.of(
            "song 2, rest: parked cords join two outputs in m 1",
            "m 2.tap.1 to m 1.tap.3 waits the other way round than before"),
        spreadThenRest(true).complaints());
  }

  @Test
  void aCordThatWaitsForItsFirstUseHasTheWayOfThatUse() {
    assertEquals(
        List.of(
            "song 1, rest: parked cords join two outputs in m 1",
            "m 1.tap.3 to m 2.tap.1 waited the other way round before its first use"),
        restThenSpread(true).complaints());
  }

  @Test
  void sinksGoOnTheChainInTheOrderWritten() {
    PlanDraft plan = spreadThenRest(false);
    SongDraft first = plan.songs.get(0);
    first.required.set(1, plan.cord("m 1.tap.2", "osc 2.pitch"));
    first.required.set(3, plan.cord("m 2.tap.2", "osc 1.pitch"));
    assertEquals(
        List.of(
            "song 1, spread: no cord from a tap of m 1 to osc 1.pitch",
            "song 1, spread: no cord from a tap of m 2 to osc 2.pitch",
            "song 1, spread: no need for a cord from m 1.tap.2 to osc 2.pitch",
            "song 1, spread: no need for a cord from m 2.tap.2 to osc 1.pitch"),
        plan.complaints().stream().filter(c -> c.startsWith("song")).toList());
  }

  @Test
  void theLinksOfAChainAreInTheirOrder() {
    PlanDraft plan = spreadThenRest(false);
    plan.songs.get(0).required.set(2, plan.cord("m 2.tap.1", "m 1.tap.3"));
    assertEquals(
        List.of(
            "song 1, spread: no cord from a tap of m 1 to a tap of m 2",
            "song 1, spread: no need for a cord from m 2.tap.1 to m 1.tap.3"),
        plan.complaints().stream().filter(c -> c.startsWith("song")).toList());
  }

  @Test
  void aCordThatStaysKeepsItsLength() {
    PlanDraft plan = spreadThenRest(false);
    SongDraft second = plan.songs.get(1);
    second.parked.set(0, new PluggedCord(second.parked.get(0).cord(), 1));
    assertEquals(
        List.of(
            "song 2, rest: a cord of length 1 for keys.pitch to m 1.tap.1",
            "song 2, rest: 1 cords of length 1 are plugged, 0 are in stock",
            "way to song 2, rest: the moves leave a cord between [keys.pitch, m 1.tap.1]",
            "way to song 2, rest: no move brings the cord between [keys.pitch, m 1.tap.1]",
            "way to song 2, rest: 2 moves, where 6 do"),
        plan.complaints());
  }

  @Test
  void whatMayNotWaitIsSaidOfEveryCord() {
    PlayableSet set =
        SetBuilder.playable(new SetList("no parking", RIG, List.of(SPREAD, REST), false));
    PlanDraft right = spreadThenRest(false);
    Plan plan = right.plan();
    Plan forbidden = new Plan(set, plan.start(), plan.songs(), plan.jumpers(), plan.changeovers());
    assertEquals(
        5,
        Verifier.verify(forbidden).stream()
            .filter(c -> c.contains("nothing may be parked, yet there is"))
            .count());
  }
}
