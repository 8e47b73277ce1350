package entracte.read;

import static org.junit.jupiter.api.Assertions.assertEquals;

import entracte.rig.Hands;
import entracte.setlist.SetList;
import entracte.setlist.Slot;
import entracte.setlist.Song;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the files say of the player's hands and of the time on stage. */
final class HandsAndSlotTest {
  private static final String RIG =
      "rig: Box\nkinds: {oscillator: {out: [saw]}}\nrows:\n  - - osc 1: oscillator\n";
  private static final String SET = "set: A\nrig: box.yaml\n";
  private static final String SONG = "songs:\n- song: B\n  patch: b.yaml\n";

  @TempDir Path folder;

  private ReadSet read(String rig, String set) {
    return new Folder(folder)
        .with("box.yaml", RIG + rig)
        .with("b.yaml", "patch: b\n")
        .with("set.yaml", set)
        .read();
  }

  private SetList set(String rig, String set) {
    ReadSet read = read(rig, set);
    assertEquals(List.of(), read.findings());
    return read.setList().orElseThrow();
  }

  private void handsSay(String hands, String expected) {
    ReadSet read = read("hands: {" + hands + "}\n", SET + SONG);
    assertEquals(List.of(expected), new Folder(folder).lines(read.findings()));
  }

  @Test
  void aRigThatSaysNothingOfTheHandsHasTheUsualOnes() {
    assertEquals(Hands.usual(), set("", SET + SONG).rig().hands());
  }

  @Test
  void whatTheHandsLeaveOutIsAsUsual() {
    Hands hands = set("hands: {light: 1.5, plugs: tight, bag: 0.4 m}\n", SET + SONG).rig().hands();
    Hands usual = Hands.usual();
    assertEquals(
        new Hands(
            1.5,
            usual.readSeconds(),
            usual.tuning(),
            usual.level(),
            new Hands.Plugs(Hands.Fit.TIGHT, OptionalDouble.empty()),
            new Hands.Way(30, 5, 40, 20),
            usual.sweepDegrees()),
        hands);
  }

  @Test
  void everyTimeThatNobodyMeasuredMayBeSaid() {
    String said =
        "tune: 6 s, tune fifth: 7 s, tune other: 20 s, raise: 2 s, level: 270, pull: 0.5 s,"
            + " first: 45 cm, module: 4 cm, bag: 1 m, hang: 12 cm";
    Hands hands = set("hands: {" + said + "}\n", SET + SONG).rig().hands();
    assertEquals(new Hands.Tuning(6, 7, 20), hands.tuning());
    assertEquals(new Hands.Level(2, 270), hands.level());
    assertEquals(OptionalDouble.of(0.5), hands.plugs().pullSeconds());
    assertEquals(new Hands.Way(45, 4, 100, 12), hands.way());
  }

  @Test
  void otherIntervalsFollowTheTimeForAUnison() {
    assertEquals(
        new Hands.Tuning(4, 5, 6), set("hands: {tune: 4 s}\n", SET + SONG).rig().hands().tuning());
  }

  @Test
  void handsOfNothingAreRefused() {
    handsSay(
        "light: 0",
        "box.yaml:5:16: \"0\" is out of reach of any hands | It lies above 0 and up to 10.");
    handsSay(
        "read: 20 min",
        "box.yaml:5:15: \"20 min\" is out of reach of any hands"
            + " | It lies above 0 and up to 600 s.");
    handsSay("plugs: tigth", "box.yaml:5:16: plugs do not sit \"tigth\" | Did you mean \"tight\"?");
  }

  @Test
  void theSlotTheReserveAndTheTalk() {
    SetList set =
        set("", SET + "slot: 45 min\nreserve: 2:30\n" + SONG + "  talk: 40 s\n  keep: yes\n");
    assertEquals(new Slot(OptionalDouble.of(2700), 150), set.slot());
    assertEquals(new Song.Running(40, true), set.songs().get(0).running());
  }

  @Test
  void aSetThatSaysNothingMayTakeAsLongAsItTakes() {
    SetList set = set("", SET + SONG);
    assertEquals(Slot.open(), set.slot());
    assertEquals(Song.Running.plain(), set.songs().get(0).running());
  }

  @Test
  void aTimeBelowNothingIsRefused() {
    ReadSet read = read("", SET + "slot: -5 min\n" + SONG);
    assertEquals(
        List.of("set.yaml:3:7: \"-5 min\" is less than no time | Write it without the minus."),
        new Folder(folder).lines(read.findings()));
  }
}
