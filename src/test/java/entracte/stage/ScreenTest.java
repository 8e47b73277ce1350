package entracte.stage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What the player sees. */
final class ScreenTest {
  private final SmallShow small = new SmallShow().begin();

  /** Relative luminance and contrast as WCAG 2 defines them; 7:1 is its level AAA for text. */
  private static double luminance(int ink) {
    double[] part = new double[3];
    for (int i = 0; i < 3; i++) {
      double c = (ink >> (16 - 8 * i) & 0xFF) / 255.0;
      part[i] = c <= 0.03928 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
    }
    return 0.2126 * part[0] + 0.7152 * part[1] + 0.0722 * part[2];
  }

  private static double contrast(int one, int other) {
    double a = luminance(one);
    double b = luminance(other);
    return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
  }

  /** Published pairs: black on white 21, #777777 on white 4.48, #595959 on white 7.0. */
  @Test
  void theContrastIsWorkedOutAsPublished() {
    assertEquals(21.0, contrast(0x000000, 0xFFFFFF), 1e-9);
    assertEquals(4.48, contrast(0x777777, 0xFFFFFF), 0.005);
    assertEquals(7.0, contrast(0x595959, 0xFFFFFF), 0.05);
  }

  @Test
  void everyStyleStandsOutAtLeastSevenToOne() {
    for (Style style : Style.values()) {
      assertTrue(contrast(style.ink(), Style.GROUND) >= 7, style.name());
    }
  }

  @Test
  void theFootAlwaysSaysWhatThePressWillDoAndWhatIsAlive() {
    for (int step = 0; step < 24; step++) {
      List<String> rows = small.rows(80, 24);
      assertTrue(rows.get(22).startsWith("next: "), rows.get(22));
      assertEquals("Pedal ok", rows.get(23));
      small.next(1);
    }
  }

  @Test
  void theChangeoverShowsMoveTimeAndWhatFollows() {
    small.next(6);
    List<String> rows = small.rows(80, 24);
    String all = String.join("\n", rows);
    assertEquals(
        "changeover to 2 of 4                             29 min 58 s of slot left  20:41",
        rows.get(0));
    assertTrue(all.contains("Clock: 1 s of 45 s  [....................]"), all);
    assertTrue(all.contains("step 2 of 3, 3 moves to go"), all);
    assertTrue(all.contains("done  LOWER the main level"), all);
    assertTrue(all.contains("TURN filter 1 cutoff to 1"), all);
    assertTrue(all.contains(" 1 osc 1 "), all);
    assertTrue(all.contains(" 2 filter 1"), all);
    assertEquals("next: this move is done", rows.get(22));
  }

  @Test
  void theMoveAtHandShowsItsNotesOnSmallScreensToo() {
    small.next(7);
    for (List<String> rows : List.of(small.rows(80, 24), small.rows(40, 12))) {
      String all = String.join("\n", rows);
      assertTrue(all.contains("TURN filter 1 cutoff to 1"), all);
      assertTrue(all.contains("a little darker than it seems right\nby ear"), all);
    }
  }

  @Test
  void theSongShowsWhatComesAndWhatMayBeMadeReady() {
    small.next(4).press(Input.READY);
    String all = String.join("\n", small.rows(80, 24));
    assertTrue(all.contains("Then: Clock, 3 moves, about 12 s (3 runs) of 45 s"), all);
    assertTrue(all.contains("May be made ready now, unheard:\n  PLUG osc 1 saw"), all);
    assertTrue(all.contains("next: changeover to Clock, gear is sent"), all);
  }

  @Test
  void allOfItFitsInFortyByTwelve() {
    for (int step = 0; step < 24; step++) {
      List<String> rows = small.rows(40, 12);
      assertEquals(12, rows.size());
      rows.forEach(row -> assertTrue(Cells.of(row) <= 40, row));
      assertTrue(rows.get(10).startsWith("next: "));
      small.next(1);
    }
  }

  @Test
  void theMoveAtHandIsSeenEvenOnTheSmallestScreen() {
    small.next(6);
    assertTrue(
        String.join(" ", small.rows(40, 12)).contains("PLUG osc 1 saw, then filter 1 audio 1"));
  }

  @Test
  void aLostPortIsSaidInWords() {
    Around around = new Around(small.now, "20:41", Map.of("Stage Piano", Around.Port.LOST), "gone");
    List<String> rows = Screen.draw(small.show, small.night, around, 80, 24).rows();
    assertEquals("Stage Piano LOST", rows.get(23));
    assertEquals("gone", rows.get(21));
  }

  @Test
  void aPortThatIsThereAndTakesNothingIsNotCalledWell() {
    Map<String, Around.Port> ports = new LinkedHashMap<>();
    ports.put("Stage Piano", Around.Port.FAILS);
    ports.put("Drum Box with a long name", Around.Port.OK);
    ports.put("Pedal", Around.Port.LOST);
    Around around = new Around(small.now, "20:41", ports, "gone");
    assertEquals(
        "Stage Piano FAILS  Drum Box with a long name ok  Pedal LOST",
        Screen.draw(small.show, small.night, around, 80, 24).rows().get(23));
    assertEquals(
        "FAILS: Stage Piano; LOST: Pedal",
        Screen.draw(small.show, small.night, around, 40, 12).rows().get(11));
  }

  @Test
  void onASmallScreenTitlesGiveWayAndNotWhatAPressDoes() {
    small.next(4);
    assertEquals("next: changeover to Clock, gear is sent", small.rows(40, 12).get(10));
    assertEquals("next: to Clock, gear is sent", NextPress.says(small.show, small.night, 38));
    assertEquals("next: to Cl.., gear is sent", NextPress.says(small.show, small.night, 27));
    small.press(Input.MENU);
    assertEquals("next: line down; hold: take; Esc: close", small.rows(40, 12).get(10));
    Map<String, Around.Port> ports = new LinkedHashMap<>();
    List.of("A Piano of a Long Name", "Drum Box", "Second Pedal")
        .forEach(name -> ports.put(name, Around.Port.OK));
    Around around = new Around(small.now, "20:41", ports, "");
    assertEquals(
        "all 3 ports ok", Screen.draw(small.show, small.night, around, 40, 12).rows().get(11));
  }

  @Test
  void longNoticesTakeMoreRowsAndWhatHappensAroundIsSaidToo() {
    small.next(4).press(Input.QUIET);
    String gone = "piano was not reached: there is no port Stage Piano, so it was sent nothing";
    Around around = new Around(small.now, "20:41", Map.of("Stage Piano", Around.Port.LOST), gone);
    List<String> rows = Screen.draw(small.show, small.night, around, 80, 24).rows();
    assertEquals("Quiet sent to all gear. The place is kept.", rows.get(20));
    assertEquals(gone, rows.get(21));
    rows = Screen.draw(small.show, small.night, around, 40, 12).rows();
    assertEquals("Quiet sent to all gear. The place is", rows.get(7));
    assertEquals("kept. piano was not reached: there is no", rows.get(8));
    assertEquals("port Stage Piano, so it was sent nothing", rows.get(9));
    assertTrue(rows.get(10).startsWith("next: "), rows.get(10));
  }

  @Test
  void aWindowThatIsTooSmallSaysSo() {
    assertEquals("needs 40x12", small.rows(39, 12).get(0));
    small.rows(1, 1);
  }

  @Test
  void theMarkedLineOfAMenuHasASignOfItsOwn() {
    small.next(4).press(Input.MENU);
    assertTrue(small.rows(80, 24).contains("* send everything again"));
  }
}
