package entracte.check;

import static entracte.check.PatchBuilder.patch;
import static entracte.check.SetBuilder.say;
import static org.junit.jupiter.api.Assertions.assertEquals;

import entracte.setlist.Patch;
import entracte.setlist.Sound;
import entracte.setlist.Sound.Wish;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What a patch wishes for the ear, of two oscillators on one mixer. */
class WishesTest {
  private static final String FORM =
      "Write it like \"pure fifth above bass\", \"unison with bass\" or \"E2\".";

  @Test
  void anIntervalOrANoteIsUnderstood() {
    assertEquals(List.of(), tuned("pure fifth above bass"));
    assertEquals(List.of(), tuned("E2"));
  }

  @Test
  void anUnknownRoleIsNamedWithTheNearOne() {
    assertEquals(
        List.of(
            "error: \"bas\" is no role of this patch and no module that it names / Did you mean"
                + " \"bass\"?"),
        tuned("fifth above bas"));
  }

  @Test
  void whatIsNearlyADistanceIsPutRight() {
    assertEquals(
        List.of(
            "error: \"5:4\" is nothing to tune to / Say from which role: \"5:4 above bass\", or"
                + " below it."),
        tuned("5:4"));
    assertEquals(
        List.of(
            "error: \"-7 semitones above bass\" is nothing to tune to / Write it without the minus,"
                + " and \"below\"."),
        tuned("-7 semitones above bass"));
    assertEquals(
        List.of(
            "error: \"99999 cents above bass\" is nothing to tune to / A distance is at most 9999"
                + " semitones or cents."),
        tuned("99999 cents above bass"));
  }

  @Test
  void whatCannotBeTunedToIsSaid() {
    assertEquals(List.of("error: \"sweetly\" is nothing to tune to / " + FORM), tuned("sweetly"));
    assertEquals(
        List.of(
            "error: \"a pure fith above bass\" is nothing to tune to / Did you mean \"fifth\"?"),
        tuned("a pure fith above bass"));
  }

  @Test
  void nothingIsTunedByItself() {
    assertEquals(
        List.of(
            "error: \"lead\" is tuned by itself in the end / Let one role be the reference, and"
                + " tune the others to it."),
        tuned("octave above lead"));
  }

  @Test
  void aScaleIsAFigureOrAName() {
    Sound narrow = sound(List.of(), List.of(new Wish("lead", "narrow")), List.of());
    assertEquals(
        List.of(
            "error: \"narrow\" does not say how far one key goes / Write it like \"quarter tones\","
                + " \"50 cents\" or \"24 per octave\"."),
        said(narrow));
  }

  @Test
  void driveIsWantedOrNot() {
    Sound maybe = sound(List.of(), List.of(), List.of(new Wish("lead", "wnated")));
    assertEquals(List.of("error: drive is not \"wnated\" / Did you mean \"wanted\"?"), said(maybe));
  }

  private static List<String> tuned(String wish) {
    return said(sound(List.of(new Wish("lead", wish)), List.of(), List.of()));
  }

  private static Sound sound(List<Wish> tune, List<Wish> scale, List<Wish> drive) {
    return new Sound(tune, scale, drive, Optional.empty());
  }

  private static List<String> said(Sound sound) {
    Patch plain =
        patch("two")
            .role("lead", "oscillator")
            .role("bass", "oscillator")
            .cord("lead.out", "main.in 1")
            .cord("bass.out", "main.in 2")
            .build();
    Patch heard =
        new Patch(plain.name(), plain.roles(), plain.connections(), plain.settings(), sound);
    return say(
        SetBuilder.check(
                RigBuilder.rig()
                    .kind("oscillator", k -> k.in("pitch").out("out").knob("level", 0, 10))
                    .kind("output", k -> k.in("in 1", "in 2"))
                    .row("o1: oscillator", "o2: oscillator", "main: output")
                    .build(),
                PatchBuilder.song("One", heard))
            .findings());
  }
}
