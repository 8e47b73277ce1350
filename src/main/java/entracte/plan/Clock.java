package entracte.plan;

/** How long the changeovers of a plan take, for the aim {@link Aim#EVEN}. */
@FunctionalInterface
public interface Clock {
  /** Seconds for each changeover of a plan, the set-up included; the same whenever it is asked. */
  double[] seconds(Plan plan);
}
