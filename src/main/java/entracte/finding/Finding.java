package entracte.finding;

import java.util.Objects;

/**
 * One thing to tell the musician.
 *
 * @param advice what would help, as a sentence of its own; empty if there is nothing to add
 */
public record Finding(Severity severity, Place place, String message, String advice) {
  public Finding {
    Objects.requireNonNull(severity);
    Objects.requireNonNull(place);
    Objects.requireNonNull(message);
    Objects.requireNonNull(advice);
  }
}
