package entracte.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import entracte.check.PatchBuilder;
import entracte.check.PlayableSet;
import entracte.check.RigBuilder;
import entracte.check.SetBuilder;
import entracte.rig.Rig;
import entracte.setlist.Song;
import java.util.List;
import java.util.OptionalInt;
import java.util.concurrent.ConcurrentLinkedQueue;
import org.junit.jupiter.api.Test;

/**
 * A tone with three knobs stands otherwise in every second song: three turns each time. With a
 * second tone each could stand as it is, and one plug of one cord moves, which is a pull and a
 * plug-in.
 */
class AskerTest {
  private static RigBuilder kinds() {
    return RigBuilder.rig()
        .kind("tone", k -> k.out("wave").knob("a", 0, 9).knob("b", 0, 9).knob("c", 0, 9))
        .kind("box", k -> k.in("audio", "side").out("out").leaves("out"))
        .kind("bell", k -> k.out("ring"));
  }

  private static final Rig RIG =
      kinds().row("tone 1: tone", "box 1: box", "bell 1: bell", "bell 2: bell").build();

  private static Song song(String name, String at) {
    return PatchBuilder.patch(name)
        .role("voice", "tone")
        .role("end", "box")
        .cord("voice.wave", "end.audio")
        .set("voice", "a", at)
        .set("voice", "b", at)
        .set("voice", "c", at)
        .song();
  }

  private static Song ringing(String name) {
    return PatchBuilder.patch(name)
        .role("bell", "bell")
        .cord("bell.ring", "box 1.side")
        .cord("tone 1.wave", "box 1.audio")
        .song();
  }

  private static WhatIf.Answers ask(Rig rig, Song... songs) {
    PlayableSet set = SetBuilder.playable(rig, songs);
    Options options = Options.defaults().withRounds(1);
    return Asker.ask(set, (Result.Planned) Planner.plan(set, options), options, (done, all) -> {});
  }

  private static WhatIf of(List<WhatIf> answers, String what) {
    return answers.stream().filter(a -> a.changed().what().equals(what)).findFirst().orElseThrow();
  }

  @Test
  void oneMoreToneSavesTheTurns() {
    WhatIf.Answers answers = ask(RIG, song("one", "2"), song("two", "7"), song("three", "2"));
    assertEquals(6, answers.base().plan().moves());
    assertEquals(OptionalInt.of(4), of(answers.more(), "tone").moves());
    assertEquals(OptionalInt.of(6), of(answers.more(), "box").moves());
  }

  @Test
  void whatNoSongCanUseIsCertainlyWorthNothing() {
    WhatIf.Answers answers = ask(RIG, song("one", "2"), song("two", "7"));
    assertTrue(of(answers.more(), "bell").certain());
    assertEquals(OptionalInt.of(3), of(answers.more(), "bell").moves());
    assertTrue(of(answers.more(), "6 more cords").certain());
  }

  @Test
  void aDeadModuleTakesItsSongsAlong() {
    WhatIf.Answers answers = ask(RIG, song("one", "2"), song("two", "7"), ringing("three"));
    assertEquals(List.of("one", "two", "three"), of(answers.without(), "tone 1").lost());
    assertEquals(List.of(), of(answers.without(), "bell 1").lost());
    assertEquals(answers.base().plan().moves(), of(answers.without(), "bell 1").moves().getAsInt());
  }

  @Test
  void theLossOfOneOfTwoCostsMoves() {
    Rig two = kinds().row("tone 1: tone", "tone 2: tone", "box 1: box").build();
    WhatIf.Answers answers = ask(two, song("one", "2"), song("two", "7"), song("three", "2"));
    assertEquals(4, answers.base().plan().moves());
    assertEquals(OptionalInt.of(6), of(answers.without(), "tone 1").moves());
    assertEquals(OptionalInt.of(6), of(answers.without(), "tone 2").moves());
  }

  /** Three cords take turns in a bag of two; with one more all could wait where they are. */
  @Test
  void moreCordsHelpWhereTheBagIsTight() {
    ToolSet tight = new ToolSet(2, "1101 1010 0111");
    PlayableSet set = tight.set();
    Options options = Options.defaults().withRounds(1);
    Result.Planned base = (Result.Planned) Planner.plan(set, options);
    assertTrue(base.plan().moves() > 0);
    WhatIf.Answers answers = Asker.ask(set, base, options, (done, all) -> {});
    assertEquals(OptionalInt.of(0), of(answers.more(), "6 more cords").moves());
  }

  @Test
  void everyQuestionIsCounted() {
    PlayableSet set = SetBuilder.playable(RIG, song("one", "2"), song("two", "7"));
    Options options = Options.defaults().withRounds(1);
    ConcurrentLinkedQueue<Integer> told = new ConcurrentLinkedQueue<>();
    Asker.ask(
        set,
        (Result.Planned) Planner.plan(set, options),
        options,
        (done, all) -> told.add(100 * all + done));
    assertEquals(List.of(801, 802, 803, 804, 805, 806, 807, 808), told.stream().sorted().toList());
  }
}
