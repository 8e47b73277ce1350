package entracte.read;

import entracte.finding.Finding;
import entracte.finding.Places;
import entracte.finding.Severity;
import entracte.setlist.SetList;
import java.util.List;
import java.util.Optional;

/**
 * What was read of a set.
 *
 * @param setList empty if there is no rig or no song to speak of; with errors among the findings it
 *     lacks their pieces and serves only to look for further mistakes
 * @param places where each piece of the set list was written
 */
public record ReadSet(Optional<SetList> setList, Places places, List<Finding> findings) {
  public ReadSet {
    findings = List.copyOf(findings);
  }

  public boolean hasErrors() {
    return findings.stream().anyMatch(f -> f.severity() == Severity.ERROR);
  }
}
