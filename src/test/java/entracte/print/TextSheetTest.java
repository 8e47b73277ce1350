package entracte.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import entracte.cue.CueSheet;
import entracte.cue.KitchenDances;
import entracte.cue.Pace;
import java.util.List;
import org.junit.jupiter.api.Test;

class TextSheetTest {
  private final List<String> lines =
      TextSheet.lines(CueSheet.of(KitchenDances.plan(), Pace.estimated()));

  @Test
  void theRunningOrderComesFirst() {
    assertEquals(
        """
        Kitchen Dances
        ========================================================================
        Played on Test case. Times are estimates until you have rehearsed.

        Running order
          1  Plain Morning. Key: D minor; Tempo: 92; Starts: viola, four bars
          2  Two Kettles. Key: D minor; Tempo: 92; Starts: viola, four bars
          3  Late Bus. Key: D minor; Tempo: 92; Starts: viola, four bars
        """,
        text(0, 8));
  }

  @Test
  void theSetUpBeginsWithCautionsAndJumpers() {
    int from = lines.indexOf("Set-up for 1 PLAIN MORNING: 13 moves, about 63 s");
    assertEquals(
        """
        Set-up for 1 PLAIN MORNING: 13 moves, about 63 s
        ! Jumpers first: power off and mains plug out before a panel is opened,
          and only by someone able to. No jumper is touched once the show has
          begun.
        ! Main level down before any plug moves: pops harm ears and
          loudspeakers.
        ! Raise levels slowly, headphones too. Loud sound harms hearing for
          good.
        ! Keep cords off the floor and drinks off the case.
        ! Mains work is for a licensed electrician under local code.

        Jumpers, power off
        [ ] SET jumper filter 1 other slope to 3-pole

        [ ] LOWER the main level before any plug or switch moves

        Cords for Plain Morning
        [ ] PLUG keys pitch 1, then osc 1 pitch 1
        [ ] PLUG osc 1 saw, then mix 1 channel 1 in
        [ ] PLUG mix 1 out, then filter 1 audio

        Cords that wait for later songs
        [ ] PLUG lfo 1 out, then osc 2 fm (early, for song 3)

        Switches
        [ ] SWITCH osc 1 octave to 8
        [ ] SWITCH osc 2 octave to 4 (early, for song 3)
        """,
        text(from, 27));
  }

  @Test
  void eachChangeoverHasACard() {
    int from = lines.indexOf("To 2 TWO KETTLES: 6 moves, about 27 s of a gap of 30 s");
    assertEquals(
        """
        To 2 TWO KETTLES: 6 moves, about 27 s of a gap of 30 s

        [ ] LOWER the main level before any plug or switch moves
        [ ] MOVE from keys pitch 1, to keys pitch 2; keep the plug in osc 1
            pitch 1
        [ ] MOVE from mix 1 channel 1 in, to mix 1 channel 2 in; keep the plug
            in osc 1 saw
        [ ] TURN mix 1 channel 2 level to 5
        [ ] TURN filter 1 cutoff from 4 to 6.5
        [ ] TUNE osc 1 (another pitch cord)
        [ ] RAISE the main level slowly

        Gear: piano: bank 1/2, program 5, controller 7 at 90.
        Who plays: osc 1 plays lead; filter 1 plays bright; mix 1 plays blend
            (low on 2).
        Waits unheard: lfo 1 out to osc 2 fm.
        Before you play, check: mix 1 channel 2 level at 5; filter 1 resonance
            at 3; osc 1 octave at 8.
        Key: D minor
        Tempo: 92
        Starts: viola, four bars
        """,
        text(from, 21));
  }

  @Test
  void noLineIsWiderThanThePaper() {
    assertTrue(lines.stream().allMatch(line -> line.length() <= TextSheet.WIDTH));
  }

  private String text(int from, int count) {
    return String.join("\n", lines.subList(from, from + count)) + "\n";
  }
}
