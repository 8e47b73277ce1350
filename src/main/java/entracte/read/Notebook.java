package entracte.read;

import entracte.finding.Finding;
import entracte.finding.Place;
import entracte.finding.Places;
import entracte.finding.Severity;
import java.util.ArrayList;
import java.util.List;

/** What one run of reading has found so far, and where each piece of the model was written. */
final class Notebook {
  private final List<Finding> findings = new ArrayList<>();
  private final Places places;

  Notebook(Place fallback) {
    places = new Places(fallback);
  }

  void error(Place place, String message, String advice) {
    findings.add(new Finding(Severity.ERROR, place, message, advice));
  }

  /** Notes where {@code piece} was written and hands it back. */
  <T> T note(T piece, Place place) {
    return places.note(piece, place);
  }

  Places places() {
    return places;
  }

  List<Finding> findings() {
    return List.copyOf(findings);
  }
}
