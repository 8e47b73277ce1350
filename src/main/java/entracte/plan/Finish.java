package entracte.plan;

import java.util.List;
import java.util.Optional;

/** Turns a casting into a plan, with the stock of cords that there is. */
final class Finish {
  private static final int FLOWS = 100;

  /** How many times as many a dive may end at. */
  private static final int PATIENCE = 4;

  /** Of uses times songs: in a larger set one flow takes longer than the whole of a search. */
  private static final long MOST_TO_FLOW = 300_000;

  private final Problem problem;
  private final int flows;

  Finish(Problem problem) {
    this(problem, FLOWS);
  }

  /** Takes so many flows of cords for a plugging before it makes do with less than the best. */
  Finish(Problem problem, int flows) {
    this.problem = problem;
    this.flows = flows;
  }

  /** The best plan known for a casting; empty if it has a fault or the bag cannot serve it. */
  Optional<Plan> plan(Casting casting) {
    return plan(casting, Long.MAX_VALUE);
  }

  /** The same; it may also be empty if no plan of this casting weighs less than {@code below}. */
  Optional<Plan> plan(Casting casting, long below) {
    Optional<Plan> loose = loosePlan(casting);
    return loose.isPresent() ? loose : tightPlan(casting, below);
  }

  /** The plan that is the least for this casting; empty if it has a fault or the bag too little. */
  Optional<Plan> loosePlan(Casting casting) {
    Ledger ledger = new Ledger(problem, casting.copy(), Stock.LOOSE);
    if (ledger.layout.faults() > 0) {
      return Optional.empty();
    }
    CordLedger cords = ledger.layout.cords;
    Stays stays = new Stays(cords, PlugSchedule.of(cords, problem));
    return CordLengths.find(problem, cords, stays)
        .map(lengths -> check(PlanMaker.make(ledger.layout, stays, lengths)));
  }

  /** Whether the set is small enough for a flow of its cords. */
  static boolean mayFlow(Layout layout) {
    return (long) layout.cords.columnOf.length * layout.cords.columns <= MOST_TO_FLOW;
  }

  /** The better of what the flow of cords and what the bag rule find. */
  private Optional<Plan> tightPlan(Casting casting, long below) {
    Layout layout = new Layout(problem, casting.copy());
    if (layout.faults() > 0) {
      return Optional.empty();
    }
    if (!mayFlow(layout)) {
      return ruledPlan(layout);
    }
    long left = below - layout.controlsCost();
    BagProof proof = new BagProof(problem, layout, flows, PATIENCE * flows, left);
    if (proof.lowerBound() >= left) {
      return Optional.empty();
    }
    Optional<Plan> ruled = ruledPlan(layout);
    Optional<Plan> flowing = proof.stays().flatMap(stays -> lengths(layout, stays));
    boolean isBetter =
        flowing.isPresent() && (ruled.isEmpty() || flowing.get().moves() <= ruled.get().moves());
    return isBetter ? flowing : ruled;
  }

  private Optional<Plan> lengths(Layout layout, Stays stays) {
    return CordLengths.find(problem, layout.cords, stays)
        .map(lengths -> check(PlanMaker.make(layout, stays, lengths)));
  }

  private Optional<Plan> ruledPlan(Layout layout) {
    BagRule bag = new BagRule(problem, layout.cords);
    if (!bag.play(layout.firstUse)) {
      return Optional.empty();
    }
    Stays stays = new Stays(layout.cords, bag.stays);
    return Optional.of(check(PlanMaker.make(layout, stays, bag.lengthsOf())));
  }

  private Plan check(Plan plan) {
    Aim aim = problem.prices.areEven ? Aim.FEWEST : Aim.FASTEST;
    List<String> complaints = Verifier.verify(plan, aim);
    if (!complaints.isEmpty()) {
      throw new IllegalStateException("a wrong plan: " + complaints);
    }
    return plan;
  }
}
