package entracte.read;

import entracte.finding.Finding;
import entracte.rig.RigState;
import java.util.List;
import java.util.Optional;

/**
 * What was read of a saved state.
 *
 * @param name what the state was saved as
 * @param state empty if there is any finding: a rig that is half known is not known
 */
public record ReadState(String name, Optional<RigState> state, List<Finding> findings) {
  public ReadState {
    findings = List.copyOf(findings);
  }
}
