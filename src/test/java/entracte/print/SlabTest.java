package entracte.print;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class SlabTest {
  private static Slab slab(double height) {
    return Slab.empty(height);
  }

  private static List<List<Double>> heights(List<Slab> slabs, double page) {
    return Slab.pages(slabs, page).stream()
        .map(each -> each.stream().map(Slab::height).toList())
        .toList();
  }

  @Test
  void aPageIsFilledBeforeTheNextBegins() {
    assertEquals(
        List.of(List.of(4.0, 5.0), List.of(3.0)), heights(List.of(slab(4), slab(5), slab(3)), 10));
  }

  @Test
  void whatFitsExactlyFits() {
    assertEquals(List.of(List.of(4.0, 6.0)), heights(List.of(slab(4), slab(6)), 10));
  }

  @Test
  void aHeadingGoesOverWithWhatItHeads() {
    assertEquals(
        List.of(List.of(6.0), List.of(2.0, 5.0)),
        heights(List.of(slab(6), slab(2).keeping(), slab(5)), 10));
  }

  @Test
  void aHeadingAloneOnAPageStaysThere() {
    assertEquals(
        List.of(List.of(2.0), List.of(9.0)), heights(List.of(slab(2).keeping(), slab(9)), 10));
  }

  @Test
  void aHeadingThatHasNoRoomAboveWhatItHeadsStaysWhereItIs() {
    assertEquals(
        List.of(List.of(4.0, 2.0), List.of(9.0)),
        heights(List.of(slab(4), slab(2).keeping(), slab(9)), 10));
  }

  @Test
  void whatIsTallerThanAPageIsPartedBetweenItsLines() {
    Slab tall = Slab.joined(List.of(slab(4), slab(4), slab(4)));
    assertEquals(List.of(List.of(4.0, 4.0), List.of(4.0)), heights(List.of(tall), 10));
  }

  @Test
  void whatHasNoRoomUnderItsHeadingIsPartedToo() {
    Slab nearlyAPage = Slab.joined(List.of(slab(4), slab(5)));
    assertEquals(
        List.of(List.of(5.0), List.of(2.0, 4.0), List.of(5.0)),
        heights(List.of(slab(5), slab(2).keeping(), nearlyAPage), 10));
  }

  @Test
  void neitherTheFirstNorTheLastLineOfAPartedTextStandsAlone() {
    Slab inked = Slab.of(3, List.of(new Lettering().words("a", Face.PLAIN, 0, 2, 2)));
    Slab tall = Slab.joined(List.of(slab(1), inked, inked, inked, inked, slab(1)));
    assertEquals(
        List.of(List.of(5.0), List.of(1.0, 3.0, 3.0), List.of(3.0, 3.0, 1.0)),
        heights(List.of(slab(5), tall), 10));
  }

  @Test
  void linesJoinedStandBelowEachOther() {
    Lettering lettering = new Lettering();
    Slab line = Slab.of(5, List.of(lettering.words("a", Face.PLAIN, 0, 4, 3)));
    Mark.Words second = (Mark.Words) Slab.joined(List.of(line, line)).marks().get(1);
    assertEquals(9, second.baseline());
  }
}
