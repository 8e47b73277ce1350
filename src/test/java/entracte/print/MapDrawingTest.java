package entracte.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import entracte.cue.CaseMap;
import entracte.cue.CaseMap.Panel;
import entracte.cue.KitchenDances;
import entracte.cue.Pace;
import entracte.cue.Paperwork;
import entracte.print.Mark.Path;
import entracte.print.Mark.Point;
import entracte.print.Mark.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class MapDrawingTest {
  private static final double CAPITAL = 4;

  private final Lettering lettering = new Lettering();
  private final Paperwork papers = Paperwork.of(KitchenDances.plan(), Pace.estimated());
  private final List<String> words = new ArrayList<>();
  private final List<Path> frames = new ArrayList<>();

  private void draw(CaseMap map, List<Place> places, double width) {
    Mark.Pen pen =
        new Mark.Pen() {
          @Override
          public void words(Words each) {
            words.add(each.text());
          }

          @Override
          public void path(Path path) {
            if (path.points().size() == 4 && path.closed() && path.width() == 0.35) {
              frames.add(path);
            }
          }
        };
    new MapDrawing(lettering, map, places, true, CAPITAL, width)
        .rows(Double.MAX_VALUE)
        .forEach(row -> row.marks().forEach(mark -> mark.draw(pen)));
  }

  private static double width(Path frame) {
    List<Double> xs = frame.points().stream().map(Point::x).sorted().toList();
    return xs.get(3) - xs.get(0);
  }

  @Test
  void modulesKeepTheirProportions() {
    CaseMap map = new CaseMap(List.of(List.of(new Panel("a", 0, 3), new Panel("b", 3, 12))), 300);
    draw(map, List.of(), 277);
    assertEquals(4, width(frames.get(1)) / width(frames.get(0)), 1e-9);
  }

  @Test
  void aNarrowModuleWithALongNameMakesTheWholeCaseLarger() {
    CaseMap map =
        new CaseMap(List.of(List.of(new Panel("modulator", 0, 3), new Panel("b", 3, 6))), 300);
    draw(map, List.of(), 277);
    assertTrue(width(frames.get(0)) > lettering.width("modulator", Face.PLAIN, CAPITAL));
    assertEquals(2, width(frames.get(1)) / width(frames.get(0)), 1e-9);
  }

  @Test
  void everyPlaceOfEveryMoveIsThereOnce() {
    List<Place> places = Place.of(papers.sheet().cues().get(2));
    draw(papers.map(), places, 277);
    for (Place place : places) {
      assertEquals(1, words.stream().filter(place.label()::equals).count(), place.label());
    }
    assertEquals(7, frames.size());
  }

  @Test
  void jacksAndKnobsAreNamedAtTheirStamps() {
    draw(papers.map(), Place.of(papers.sheet().cues().get(1)), 277);
    assertTrue(words.containsAll(List.of("pitch 1", "pitch 2", "cutoff")), words.toString());
  }

  @Test
  void aNameThatHasNoRoomBesideItsStampStandsBelowIt() {
    Place place = Place.of(papers.sheet().cues().get(1)).get(0);
    Stamps stamps = new Stamps(lettering, CAPITAL, 300);
    MapCells cells = new MapCells(lettering, stamps, CAPITAL, true);
    double name = lettering.width(place.name(), Face.PLAIN, CAPITAL);
    double wide = cells.set(List.of(place), stamps.width(place) + CAPITAL + name).height();
    double narrow = cells.set(List.of(place), cells.need(place)).height();
    assertEquals(stamps.height(), wide, CAPITAL);
    assertTrue(narrow >= wide + lettering.lineHeight(CAPITAL), narrow + " and " + wide);
  }

  @Test
  void placesAreNumberedInTheOrderOfTheHands() {
    assertEquals(
        List.of("2a", "2b", "3a", "3b", "4", "5", "6"),
        Place.of(papers.sheet().cues().get(1)).stream().map(Place::label).toList());
  }

  @Test
  void aRowThatIsTooWideIsPartedBetweenModules() {
    List<Panel> row =
        Stream.iterate(0, i -> i + 1)
            .limit(30)
            .map(i -> new Panel("osc " + (i + 1), 6 * i, 6))
            .toList();
    CaseMap map = new CaseMap(List.of(row), 300);
    MapDrawing drawing = new MapDrawing(lettering, map, List.of(), true, CAPITAL, 150);
    assertFalse(drawing.isWhole());
    draw(map, List.of(), 150);
    assertEquals(30, frames.size());
    for (Path frame : frames) {
      assertTrue(frame.points().stream().allMatch(p -> p.x() <= 150 + 1e-6));
    }
  }

  @Test
  void thePartsOfARowSayWhichRowAndWhichPartTheyAre() {
    CaseMap two =
        new CaseMap(
            List.of(
                List.of(new CaseMap.Panel("oscillator one", 0, 60), new CaseMap.Panel("b", 60, 60)),
                List.of(new CaseMap.Panel("c", 0, 6))),
            300);
    List<String> said = new ArrayList<>();
    new MapDrawing(lettering, two, List.of(), true, 12, 90)
        .rows(1000).stream()
            .filter(Slab::keeps)
            .flatMap(slab -> slab.marks().stream())
            .forEach(mark -> said.add(((Words) mark).text()));
    assertEquals("row 1, left part row 1, right part", String.join(" ", said));
  }

  @Test
  void theLegendNamesEachShapeOnce() {
    List<Place> places = Place.of(papers.sheet().cues().get(2));
    Stamps stamps = new Stamps(lettering, CAPITAL, 300);
    List<String> said = new ArrayList<>();
    Slab legend = new MapLegend(lettering, stamps, CAPITAL, 277).of(places, Set.of());
    for (Mark mark : legend.marks()) {
      mark.draw(
          new Mark.Pen() {
            @Override
            public void words(Words each) {
              said.add(each.text());
            }

            @Override
            public void path(Path path) {}
          });
    }
    assertTrue(
        said.containsAll(
            List.of(
                "pull out",
                "plug in",
                "switch: ring old, black new",
                "turn: thin old, thick new",
                "tune")),
        said.toString());
  }
}
