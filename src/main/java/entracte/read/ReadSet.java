package entracte.read;

import entracte.finding.Finding;
import entracte.finding.Places;
import entracte.finding.Severity;
import entracte.setlist.SetList;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * What was read of a set.
 *
 * @param setList empty if a part of the rig or all songs are lost; with errors among the findings
 *     it lacks what is broken and serves only to look for further mistakes
 * @param places where each piece of the set list was written. Besides the records of the model
 *     itself, these strings have a place of their own: the kinds that a role accepts, and the owner
 *     and the value of a setting
 * @param files every file that was asked for, also those that are not there
 */
public record ReadSet(
    Optional<SetList> setList, Places places, List<Finding> findings, List<Path> files) {
  public ReadSet {
    findings = List.copyOf(findings);
    files = List.copyOf(files);
  }

  public boolean hasErrors() {
    return findings.stream().anyMatch(f -> f.severity() == Severity.ERROR);
  }
}
