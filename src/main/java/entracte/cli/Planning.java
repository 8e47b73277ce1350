package entracte.cli;

import entracte.check.PlayableSet;
import entracte.plan.Options;
import entracte.plan.Result;

/** What plans a set; a test may put another in its place. */
interface Planning {
  /** Told as soon as it is known that a set will be read and worked on, before it is read. */
  default void soon() {}

  Result plan(PlayableSet set, Options options);
}
