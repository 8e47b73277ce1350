package entracte.plan;

import java.util.List;
import java.util.Optional;

/** Turns a casting into a plan, with the stock of cords that there is. */
final class Finish {
  private final Problem problem;

  Finish(Problem problem) {
    this.problem = problem;
  }

  /** The best plan known for a casting; empty if it has a fault or the bag cannot serve it. */
  Optional<Plan> plan(Casting casting) {
    Optional<Plan> loose = loosePlan(casting);
    return loose.isPresent() ? loose : tightPlan(casting);
  }

  /** The plan that is the least for this casting; empty if it has a fault or the bag too little. */
  Optional<Plan> loosePlan(Casting casting) {
    Ledger ledger = new Ledger(problem, casting.copy(), Stock.LOOSE);
    if (ledger.layout.faults() > 0) {
      return Optional.empty();
    }
    CordLedger cords = ledger.layout.cords;
    Stays stays = new Stays(cords, PlugSchedule.of(cords, problem.rig, problem.weights));
    return CordLengths.find(problem, cords, stays)
        .map(lengths -> check(PlanMaker.make(ledger.layout, stays, lengths)));
  }

  private Optional<Plan> tightPlan(Casting casting) {
    Layout layout = new Layout(problem, casting.copy());
    BagRule bag = new BagRule(problem, layout.cords);
    if (layout.faults() > 0 || bag.play(layout.firstUse) >= BagRule.EMPTY_BAG) {
      return Optional.empty();
    }
    Stays stays = new Stays(layout.cords, bag.stays);
    return Optional.of(check(PlanMaker.make(layout, stays, bag.lengthsOf())));
  }

  private static Plan check(Plan plan) {
    List<String> complaints = Verifier.verify(plan);
    if (!complaints.isEmpty()) {
      throw new IllegalStateException("a wrong plan: " + complaints);
    }
    return plan;
  }
}
