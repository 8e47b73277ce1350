package entracte.read;

import entracte.finding.Finding;
import entracte.finding.Place;
import entracte.finding.Places;
import entracte.finding.Severity;
import java.util.ArrayList;
import java.util.List;

/** What one run of reading has found so far, and where each piece of the model was written. */
final class Notebook {
  /** So many mistakes in one set are one mistake: it is the wrong file, or a broken one. */
  static final int MOST = 1000;

  private final List<Finding> findings = new ArrayList<>();
  private final Places places;
  private int losses;

  Notebook(Place fallback) {
    places = new Places(fallback);
  }

  /** Notes a mistake that costs a piece of what was written. */
  void error(Place place, String message, String advice) {
    losses++;
    slip(place, message, advice);
  }

  /** Notes a mistake that costs nothing: the piece is read as what it most likely meant. */
  void slip(Place place, String message, String advice) {
    add(Severity.ERROR, place, message, advice);
  }

  /** Notes what can be, and is hardly meant. */
  void doubt(Place place, String message, String advice) {
    add(Severity.WARNING, place, message, advice);
  }

  /** Notes what is no mistake, and may yet not be meant. */
  void remark(Place place, String message, String advice) {
    add(Severity.NOTE, place, message, advice);
  }

  private void add(Severity severity, Place place, String message, String advice) {
    if (!isFull()) {
      findings.add(new Finding(severity, place, message, advice));
    }
  }

  /**
   * How many pieces are lost so far. What has lost a piece is not checked any further, so that one
   * mistake is said once.
   */
  int losses() {
    return losses;
  }

  /** Whether nothing more is noted; what takes long to word need not be worded then. */
  boolean isFull() {
    return findings.size() >= MOST;
  }

  /** Notes where {@code piece} was written and hands it back. */
  <T> T note(T piece, Place place) {
    return places.note(piece, place);
  }

  /** Notes where a number in {@code piece} was written. */
  void notePart(Object piece, String part, Place place) {
    places.notePart(piece, part, place);
  }

  Places places() {
    return places;
  }

  List<Finding> findings() {
    return List.copyOf(findings);
  }
}
