package entracte.check;

import entracte.finding.Finding;
import entracte.finding.Place;
import entracte.finding.Places;
import entracte.finding.Severity;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * Collects findings. The same words at the same place are kept once, because a patch that ten songs
 * use has its mistake once; {@link #errors} counts every time, so that each of the ten songs knows
 * that it is wrong.
 */
final class Findings {
  private final Places places;
  private final Set<Finding> found = new LinkedHashSet<>();
  private int errors;

  Findings(Places places) {
    this.places = places;
  }

  void error(Object piece, String message, String advice) {
    error(piece, piece, message, advice);
  }

  /** An error in {@code piece}, or, if nobody knows where it stands, in the whole that holds it. */
  void error(Object piece, Object whole, String message, String advice) {
    errors++;
    add(Severity.ERROR, places.of(piece, whole), message, advice);
  }

  /** An error in a part of {@code piece} that is a mere number. */
  void errorInPart(Object piece, String part, String message, String advice) {
    errors++;
    add(Severity.ERROR, places.ofPart(piece, part), message, advice);
  }

  void warning(Object piece, String message, String advice) {
    warning(piece, piece, message, advice);
  }

  void warning(Object piece, Object whole, String message, String advice) {
    add(Severity.WARNING, places.of(piece, whole), message, advice);
  }

  /** A warning of a part of {@code piece} that is a mere number. */
  void warningInPart(Object piece, String part, String message, String advice) {
    add(Severity.WARNING, places.ofPart(piece, part), message, advice);
  }

  void note(Object piece, String message, String advice) {
    add(Severity.NOTE, places.of(piece), message, advice);
  }

  private void add(Severity severity, Place place, String message, String advice) {
    found.add(new Finding(severity, place, message, advice));
  }

  /** How often an error was reported, the same one twice counted twice. */
  int errors() {
    return errors;
  }

  List<Finding> list() {
    return List.copyOf(found);
  }
}
