package entracte.cue;

import static org.junit.jupiter.api.Assertions.assertEquals;

import entracte.plan.Action;
import entracte.plan.Changeover;
import entracte.plan.SongPlan;
import entracte.plan.SongPlan.CastAs;
import entracte.rig.Control;
import entracte.rig.CordStock;
import entracte.rig.Position;
import entracte.setlist.Patch;
import entracte.setlist.Setting;
import entracte.setlist.Song;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class LastLookTest {
  private final SmallRig rig = new SmallRig(CordStock.unlimited());
  private final Map<Control, Position> positions = new HashMap<>();

  @Test
  void whatHurtsAndHasChangedComesFirstTheWorstNameFirst() {
    Action resonance = turn("filter 1.resonance", 2, 3);
    Action drive = turn("filter 1.drive", 5, 6);
    assertEquals(
        List.of("filter 1 drive at 6", "filter 1 resonance at 3", "osc 1 octave at 8"),
        lookAt(
            named("cutoff", "resonance", "drive"),
            resonance,
            drive,
            turn("filter 1.cutoff", 0, 9)));
  }

  @Test
  void ofTwoEquallyBadNamesTheLargerChangeComesFirst() {
    positions.put(rig.control("mix 1.1.level"), new Position.At(5));
    Stream<Setting> settings =
        Stream.concat(named("resonance"), Stream.of(new Setting("blend.1", "level", "5")));
    assertEquals(
        List.of("mix 1 channel 1 level at 5", "filter 1 resonance at 3", "osc 1 octave at 8"),
        lookAt(settings, turn("filter 1.resonance", 2, 3), turn("mix 1.1.level", 1, 5)));
  }

  @Test
  void harmlessKnobsFillUpToThree() {
    assertEquals(
        List.of("osc 1 octave at 8", "filter 1 cutoff at 9"),
        lookAt(named("cutoff"), turn("filter 1.cutoff", 0, 9)));
  }

  @Test
  void aKnobThatTheSongDoesNotNameIsNotLookedAt() {
    assertEquals(List.of("osc 1 octave at 8"), lookAt(named(), turn("filter 1.drive", 0, 9)));
  }

  private List<String> lookAt(Stream<Setting> settings, Action... actions) {
    positions.put(rig.control("osc 1.octave"), new Position.Thrown("8"));
    positions.putIfAbsent(rig.control("filter 1.resonance"), new Position.At(3));
    List<Setting> all =
        Stream.concat(settings, Stream.of(new Setting("lead", "octave", "8"))).toList();
    Patch patch = new Patch("any", List.of(), List.of(), all);
    Song song =
        new Song("Any", patch, List.of(), OptionalDouble.empty(), List.of(), Song.Card.blank());
    List<CastAs> casting = List.of(cast("lead", "osc 1"), cast("bright", "filter 1"), mixer());
    SongPlan plan = new SongPlan(song, casting, List.of(), List.of(), positions);
    return LastLook.before(
        plan, NamedSettings.of(plan), new Changeover(1, false, List.of(actions)));
  }

  private CastAs cast(String role, String module) {
    return new CastAs(role, rig.module(module), List.of());
  }

  private CastAs mixer() {
    return new CastAs("blend", rig.module("mix 1"), List.of(new SongPlan.StripAs("1", 1)));
  }

  private static Stream<Setting> named(String... controls) {
    return Stream.of(controls).map(control -> new Setting("bright", control, "1"));
  }

  private Action turn(String knob, double from, double to) {
    positions.put(rig.control(knob), new Position.At(to));
    return new Action.Turn(
        rig.control(knob), Optional.of(new Position.At(from)), new Position.At(to));
  }
}
