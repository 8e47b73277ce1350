package entracte.cue;

import static org.junit.jupiter.api.Assertions.assertEquals;

import entracte.check.HandMadeSet;
import entracte.plan.Action;
import entracte.plan.Plan;
import entracte.plan.PluggedCord;
import entracte.plan.SongPlan;
import entracte.plan.SongPlan.CastAs;
import entracte.plan.SongPlan.StripAs;
import entracte.plan.Start;
import entracte.rig.Control;
import entracte.rig.CordStock;
import entracte.rig.Position;
import entracte.setlist.Patch;
import entracte.setlist.SetList;
import entracte.setlist.Setting;
import entracte.setlist.Song;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Why a cord goes, and why a knob turns, in small made-up courses of songs. */
class ReasonsTest {
  private final SmallRig rig = new SmallRig(CordStock.unlimited());
  private final List<SongPlan> songs = new ArrayList<>();

  @Test
  void aCordGoesBecauseItsJackIsNeeded() {
    song("One", List.of("lfo 1.out", "osc 1.fm"), List.of(), "lead", "osc 1");
    song("Two", List.of("osc 2.saw", "osc 1.fm"), List.of(), "lead", "osc 1");
    assertEquals("osc 1 fm is needed by osc 2 saw", whyPulled(1, "lfo 1.out", "osc 1.fm"));
  }

  @Test
  void aCordGoesBecauseItCouldBeHeard() {
    song("One", List.of("lfo 1.out", "osc 1.fm"), List.of(), "lead", "osc 1");
    song("Two", List.of("osc 1.saw", "filter 1.audio"), List.of(), "bass", "osc 1");
    assertEquals("it could be heard: osc 1 plays bass", whyPulled(1, "lfo 1.out", "osc 1.fm"));
  }

  @Test
  void aModuleThatThePatchNamesOutrightIsHeardToo() {
    song("One", List.of("mix 1.out", "filter 1.audio"), List.of(), "bright", "filter 1");
    song("Two", List.of("osc 1.saw", "filter 1.cutoff cv"), List.of(), "filter 1", "filter 1");
    assertEquals("it could be heard through filter 1", whyPulled(1, "mix 1.out", "filter 1.audio"));
  }

  @Test
  void aCordThatCouldStayGoesBecauseNoSongNeedsItAnyMore() {
    song("One", List.of("lfo 1.out", "osc 1.fm"), List.of(), "lead", "osc 1");
    song("Two", List.of(), List.of(), "lead", "osc 2");
    assertEquals("no later song needs it", whyPulled(1, "lfo 1.out", "osc 1.fm"));
  }

  @Test
  void aCordThatComesBackLaterGoesBecauseCordsOrJacksRunShort() {
    song("One", List.of("lfo 1.out", "osc 1.fm"), List.of(), "lead", "osc 1");
    song("Two", List.of(), List.of(), "lead", "osc 2");
    song("Three", List.of("lfo 1.out", "osc 1.fm"), List.of(), "lead", "osc 1");
    assertEquals("the cord or its jacks are needed first", whyPulled(1, "lfo 1.out", "osc 1.fm"));
  }

  @Test
  void aCordThatGoesBeforeItMustNamesTheSongThatNeedsItsJack() {
    song("One", List.of("lfo 1.out", "osc 1.fm"), List.of(), "lead", "osc 1");
    song("Two", List.of(), List.of(), "lead", "osc 2");
    song("Three", List.of("osc 2.saw", "osc 1.fm"), List.of(), "lead", "osc 1");
    assertEquals(
        "in song 3 (Three) osc 1 fm is needed by osc 2 saw", whyPulled(1, "lfo 1.out", "osc 1.fm"));
  }

  @Test
  void aPlugThatMustLeaveSaysSoBeforeWhereItWaits() {
    song("One", List.of("lfo 1.out", "osc 1.fm"), List.of(), "lead", "osc 1");
    List<String> waiting = List.of("lfo 1.out", "filter 1.cutoff cv");
    song("Two", List.of("osc 2.saw", "osc 1.fm"), waiting, "lead", "osc 1");
    song("Three", waiting, List.of(), "bright", "filter 1");
    Action.Shift shift =
        new Action.Shift(
            cords(List.of("lfo 1.out", "osc 1.fm")).get(0),
            cords(List.of("lfo 1.out", "filter 1.cutoff cv")).get(0),
            rig.cord("lfo 1.out", "osc 1.fm").source());
    assertEquals(
        "osc 1 fm is needed by osc 2 saw; its new place is for song 3 (Three): filter 1 is idle"
            + " until then",
        new CordReasons(course(), true).whyMoved(1, shift));
  }

  @Test
  void whereNothingIsParkedThatIsReasonEnough() {
    song("One", List.of("lfo 1.out", "osc 1.fm"), List.of(), "lead", "osc 1");
    song("Two", List.of(), List.of(), "lead", "osc 2");
    CordReasons reasons = new CordReasons(course(), false);
    assertEquals(
        "this set parks no cords", reasons.whyPulled(1, rig.cord("lfo 1.out", "osc 1.fm")));
  }

  @Test
  void aCordWaitsInAShutChannelOfAModuleThatPlays() {
    song("One", List.of(), List.of("osc 2.saw", "mix 1.3.in"), "blend", "mix 1");
    song("Two", List.of("osc 2.saw", "mix 1.3.in"), List.of(), "blend", "mix 1");
    CordReasons reasons = new CordReasons(course(), true);
    assertEquals(
        "early, for song 2 (Two): its channel of mix 1 is shut until then",
        reasons.whyPlugged(0, rig.cord("osc 2.saw", "mix 1.3.in")));
  }

  @Test
  void aKnobThatShutsAChannelSaysSo() {
    song("One", List.of(), List.of("osc 2.saw", "mix 1.3.in"), "blend", "mix 1");
    song("Two", List.of("osc 2.saw", "mix 1.3.in"), List.of(), "blend", "mix 1");
    SettingReasons reasons = new SettingReasons(course());
    Control level = rig.control("mix 1.3.level");
    assertEquals("shut, so that the cord waiting there is not heard", reasons.why(0, level));
    assertEquals(0, reasons.songFor(0, level), "what keeps a song quiet is not done early");
    assertEquals(
        "for blend.high in Two; mix 1 plays blend, the only one that can", reasons.why(1, level));
  }

  @Test
  void aChannelMayBeShutEarlyForACordThatComesLater() {
    song("One", List.of(), List.of(), "lead", "osc 1");
    song("Two", List.of(), List.of("osc 2.saw", "mix 1.3.in"), "blend", "mix 1");
    SettingReasons reasons = new SettingReasons(course());
    assertEquals(
        "early, for song 2 (Two): mix 1 is idle until then",
        reasons.why(0, rig.control("mix 1.3.level")));
  }

  @Test
  void aKnobOfAPlayingModuleIsTurnedEarlyWhereNobodyCares() {
    song("One", List.of(), List.of(), "blend", "mix 1");
    song("Two", List.of("osc 2.saw", "mix 1.3.in"), List.of(), "blend", "mix 1");
    SettingReasons reasons = new SettingReasons(course());
    assertEquals(
        "early, for song 2 (Two): no song before that cares",
        reasons.why(0, rig.control("mix 1.3.level")));
  }

  @Test
  void aModuleWhoseEqualsAllPlayIsTheOnlyOneFree() {
    song("One", List.of("osc 1.saw", "osc 2.fm"), List.of(), "lead", "osc 2");
    assertEquals(
        "One: osc 1 saw feeds lead fm; osc 2 plays lead",
        new CordReasons(course(), true).whyPlugged(0, rig.cord("osc 1.saw", "osc 2.fm")));
    SongPlan one = songs.remove(0);
    List<CastAs> both =
        List.of(one.casting().get(0), new CastAs("bass", rig.module("osc 1"), List.of()));
    songs.add(new SongPlan(one.song(), both, one.required(), one.parked(), one.positions()));
    assertEquals(
        "One: bass saw feeds lead fm; osc 2 plays lead, the only one free",
        new CordReasons(course(), true).whyPlugged(0, rig.cord("osc 1.saw", "osc 2.fm")));
  }

  private String whyPulled(int to, String source, String sink) {
    return new CordReasons(course(), true).whyPulled(to, rig.cord(source, sink));
  }

  /** A song in which one module plays one role; the mixer's channel 3, if cabled, is its "high". */
  private void song(
      String name, List<String> required, List<String> parked, String role, String module) {
    boolean high = required.contains("mix 1.3.in");
    List<Setting> settings = high ? List.of(new Setting("blend.high", "level", "6")) : List.of();
    Patch patch = new Patch(name, List.of(), List.of(), settings);
    Song song =
        new Song(name, patch, List.of(), OptionalDouble.empty(), List.of(), Song.Card.blank());
    List<StripAs> strips = high ? List.of(new StripAs("high", 3)) : List.of();
    List<CastAs> casting = List.of(new CastAs(role, rig.module(module), strips));
    Map<Control, Position> positions = Map.of();
    songs.add(new SongPlan(song, casting, cords(required), cords(parked), positions));
  }

  private List<PluggedCord> cords(List<String> ends) {
    return ends.isEmpty()
        ? List.of()
        : List.of(new PluggedCord(rig.cord(ends.get(0), ends.get(1)), CordStock.ANY_LENGTH));
  }

  private Course course() {
    SetList set = new SetList("Any", rig.rig(), songs.stream().map(SongPlan::song).toList(), true);
    return new Course(new Plan(HandMadeSet.of(set), Start.bare(), songs, Map.of(), List.of()));
  }
}
