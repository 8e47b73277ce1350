package entracte.check;

import entracte.finding.Finding;
import java.util.List;
import java.util.Optional;

/**
 * What the check found.
 *
 * @param findings in the order of the rules; the same mistake never twice
 * @param set empty if there is an error among the findings
 */
public record Checked(List<Finding> findings, Optional<PlayableSet> set) {
  public Checked {
    findings = List.copyOf(findings);
  }
}
