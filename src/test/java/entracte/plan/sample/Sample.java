package entracte.plan.sample;

import entracte.check.PlayableSet;
import entracte.plan.Start;

/**
 * A set to plan.
 *
 * @param label how to make it again
 */
public record Sample(String label, PlayableSet set, Start start) {
  public int songs() {
    return set.parts().size();
  }

  @Override
  public String toString() {
    return label;
  }
}
