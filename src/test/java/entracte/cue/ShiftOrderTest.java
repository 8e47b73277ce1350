package entracte.cue;

import static org.junit.jupiter.api.Assertions.assertEquals;

import entracte.plan.Action.Shift;
import entracte.plan.PluggedCord;
import entracte.rig.CordStock;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class ShiftOrderTest {
  private final SmallRig rig = new SmallRig(CordStock.unlimited());

  @Test
  void aChainIsDoneFromItsFreeEnd() {
    Shift first = sinkMoves("osc 1.saw", "mix 1.1.in", "mix 1.2.in");
    Shift second = sinkMoves("osc 1.pulse", "mix 1.2.in", "mix 1.3.in");
    assertEquals(
        List.of(
            "MOVE from mix 1 channel 2 in, to mix 1 channel 3 in; keep the plug in osc 1 pulse",
            "MOVE from mix 1 channel 1 in, to mix 1 channel 2 in; keep the plug in osc 1 saw"),
        worded(List.of(first, second)));
  }

  @Test
  void aRingIsOpenedByLettingOnePlugHang() {
    Shift first = sinkMoves("osc 1.saw", "mix 1.1.in", "mix 1.2.in");
    Shift second = sinkMoves("osc 1.pulse", "mix 1.2.in", "mix 1.1.in");
    assertEquals(
        List.of(
            "PULL mix 1 channel 1 in, let it hang; keep the plug in osc 1 saw",
            "MOVE from mix 1 channel 2 in, to mix 1 channel 1 in; keep the plug in osc 1 pulse",
            "PLUG mix 1 channel 2 in with the loose end of the cord in osc 1 saw"),
        worded(List.of(first, second)));
  }

  @Test
  void theHandStaysAtItsModuleBeforeItGoesBack() {
    Shift waits = sinkMoves("lfo 1.out", "osc 1.fm", "osc 2.fm");
    Shift frees = sinkMoves("mix 1.out", "osc 2.fm", "filter 1.audio");
    Shift beside = sinkMoves("keys.pitch 1", "osc 2.pitch.1", "osc 1.pitch.1");
    assertEquals(
        List.of(
            "MOVE from osc 2 fm, to filter 1 audio; keep the plug in mix 1 out",
            "MOVE from osc 2 pitch 1, to osc 1 pitch 1; keep the plug in keys pitch 1",
            "MOVE from osc 1 fm, to osc 2 fm; keep the plug in lfo 1 out"),
        worded(List.of(waits, frees, beside)));
  }

  @Test
  void noPlugEverComesToATakenJack() {
    List<String> sinks =
        List.of("mix 1.1.in", "mix 1.2.in", "mix 1.3.in", "osc 1.fm", "osc 2.fm", "filter 1.audio");
    List<String> sources =
        List.of("osc 1.saw", "osc 1.pulse", "osc 2.saw", "osc 2.pulse", "lfo 1.out");
    for (int seed = 0; seed < 300; seed++) {
      replay(randomShifts(sources, sinks, new Random(seed)));
    }
  }

  private List<Shift> randomShifts(List<String> sources, List<String> sinks, Random random) {
    List<Integer> before = shuffled(sinks.size(), random);
    List<Integer> after = shuffled(sinks.size(), random);
    return IntStream.range(0, sources.size())
        .filter(i -> !before.get(i).equals(after.get(i)))
        .mapToObj(i -> sinkMoves(sources.get(i), sinks.get(before.get(i)), sinks.get(after.get(i))))
        .toList();
  }

  private static List<Integer> shuffled(int size, Random random) {
    List<Integer> numbers = new ArrayList<>(IntStream.range(0, size).boxed().toList());
    java.util.Collections.shuffle(numbers, random);
    return numbers;
  }

  private static void replay(List<Shift> shifts) {
    Set<String> taken = new HashSet<>();
    shifts.forEach(shift -> taken.add(ShiftOrder.leaves(shift).toString()));
    int plugs = 0;
    for (ShiftOrder.Ordered each : ShiftOrder.of(shifts)) {
      if (each.form() != ShiftOrder.Form.PLUG_HANGING) {
        assertEquals(true, taken.remove(ShiftOrder.leaves(each.shift()).toString()));
      }
      if (each.form() != ShiftOrder.Form.LET_HANG) {
        assertEquals(true, taken.add(ShiftOrder.enters(each.shift()).toString()));
        plugs++;
      }
    }
    assertEquals(shifts.size(), plugs);
  }

  private static List<String> worded(List<Shift> shifts) {
    return ShiftOrder.of(shifts).stream()
        .map(
            each ->
                switch (each.form()) {
                  case WHOLE -> Wording.move(each.shift());
                  case LET_HANG -> Wording.letHang(each.shift());
                  case PLUG_HANGING -> Wording.plugHanging(each.shift());
                })
        .toList();
  }

  private Shift sinkMoves(String source, String before, String after) {
    return new Shift(plugged(source, before), plugged(source, after), rig.socket(source));
  }

  private PluggedCord plugged(String source, String sink) {
    return new PluggedCord(rig.cord(source, sink), CordStock.ANY_LENGTH);
  }
}
