package entracte.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import entracte.cue.KitchenDances;
import entracte.cue.Pace;
import entracte.cue.Paperwork;
import java.util.List;
import org.junit.jupiter.api.Test;

class TextScribeTest {
  private final List<String> lines =
      Sheets.text(Paperwork.of(KitchenDances.plan(), Pace.estimated()), Part.all());

  @Test
  void theRunningOrderComesFirst() {
    assertEquals(
        """
        Kitchen Dances
        ========================================================================
          1  Plain Morning (set-up). D minor, tempo 92, starts: viola, four
             bars; 13 moves, 1:03
          2  Two Kettles (0:27). D minor, tempo 92, starts: viola, four bars; 6
             moves, gap 0:30
          3  Late Bus (1:00). D minor, tempo 92, starts: viola, four bars; 10
             moves, gap 0:40 is 0:20 short
        The time is for the way to the song. Between songs: 16 moves, 1:27.
        """,
        from("Kitchen Dances", 9));
  }

  @Test
  void theSetUpBeginsWithCautionsAndJumpers() {
    assertEquals(
        """
        Set-up for 1 Plain Morning
        ========================================================================
        ! Jumpers first: power off and mains plug out before a panel is opened,
          and only by someone able to. No jumper is touched once the show has
          begun.
        ! Switch on with the main level down: the rig first, amplifiers and
          loudspeakers last. Switch off the other way round: a thump harms ears
          and loudspeakers.
        ! Main level down before any plug moves: pops harm ears and
          loudspeakers.
        ! Raise levels slowly, headphones too. Loud sound harms hearing for
          good.
        ! Keep cords off the floor and drinks off the case.
        ! Mains work is for a licensed electrician under local code.
        13 moves, about 1 min 3 s. Times are estimates until you have rehearsed.
        From a bare rig: no cord in, every knob anywhere.

        Jumpers, power off and unplugged
        [ ] SET jumper filter 1 other slope to 3-pole

        Power
        [ ] Main level down, then switch on: the rig and its gear first, the
            desk next, loudspeakers last.

        First
        [ ]  1 LOWER the main level before any plug or switch moves

        Cords
        [ ]  2 PLUG keys pitch 1, then osc 1 pitch 1
        [ ]  3 PLUG osc 1 saw, then mix 1 channel 1 in
        [ ]  4 PLUG lfo 1 out, then osc 2 fm (early, for song 3)
        [ ]  5 PLUG mix 1 out, then filter 1 audio

        Switches
        [ ]  6 SWITCH osc 1 octave to 8
        [ ]  7 SWITCH osc 2 octave to 4 (early, for song 3)
        """,
        from("Set-up for 1 Plain Morning", 36));
  }

  @Test
  void eachChangeoverSaysWhatItStartsFromWhatToDoAndWhatToCheck() {
    assertEquals(
        """
        To 2 Two Kettles
        ========================================================================
        6 moves, about 27 s, gap 30 s.
        From 1 Plain Morning as on its patch card: 4 cords in, 1 of them
            waiting.
        [ ]  1 LOWER the main level before any plug or switch moves
        [ ]  2 MOVE from keys pitch 1, to keys pitch 2; keep the plug in osc 1
               pitch 1
        [ ]  3 MOVE from mix 1 channel 1 in, to mix 1 channel 2 in; keep the
               plug in osc 1 saw
        [ ]  4 TURN mix 1 channel 2 level to 5
        [ ]  5 TURN filter 1 cutoff from 4 to 6.5
        Before tuning: main level still down, headphones up from zero, or a
            tuner.
        [ ]  6 TUNE osc 1 (another pitch cord)
        [ ]  7 RAISE the main level slowly

        Tune in this order, with A4, the A above middle C, held (440 Hz)
        osc 1: 440 Hz
        Before you play, check: mix 1 channel 2 level at 5; filter 1 resonance
            at 3; osc 1 octave at 8.
        Gear: piano to bank 1/2, program 5, volume 90.
        Stays parked, unheard: lfo 1 out to osc 2 fm.
        The song: key D minor; tempo 92; starts: viola, four bars.
        """,
        from("To 2 Two Kettles", 24));
  }

  @Test
  void aPatchCardBuildsTheSoundFromNothing() {
    assertEquals(
        """
        Patch 2 Two Kettles
        ========================================================================
        Who plays: osc 1 plays lead; filter 1 plays bright; mix 1 plays blend
            (low on 2).

        Jumpers, power off and unplugged
        [ ] filter 1 other slope at 3-pole

        Cords, level down
        [ ] keys pitch 2 to osc 1 pitch 1
        [ ] osc 1 saw to mix 1 channel 2 in
        [ ] mix 1 out to filter 1 audio

        Knobs and switches
        [ ] osc 1: octave at 8
        [ ] mix 1: channel 2 level at 5
        [ ] filter 1: cutoff at 6.5, resonance at 3
        """,
        from("Patch 2 Two Kettles", 17));
  }

  @Test
  void theEngineerIsToldThatSilenceIsMeant() {
    assertEquals(
        """
        Engineer: Kitchen Dances
        ========================================================================
        One patch-cable synthesizer, plugged anew by hand between songs with its
            level down. That it is silent before a song, for as long as the
            figure with it, is meant; nothing is broken.
        Times are estimates until you have rehearsed.
          1  Plain Morning. starts: viola, four bars
          2  Two Kettles (0:27). starts: viola, four bars
          3  Late Bus (1:00). starts: viola, four bars
        """,
        from("Engineer: Kitchen Dances", 9));
  }

  @Test
  void noLineIsWiderThanThePaper() {
    assertTrue(lines.stream().allMatch(line -> line.length() <= Sheets.TEXT_WIDTH));
  }

  private String from(String title, int count) {
    int from = lines.indexOf(title);
    return String.join("\n", lines.subList(from, from + count)) + "\n";
  }
}
