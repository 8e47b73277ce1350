package entracte.plan;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.function.IntFunction;
import java.util.stream.IntStream;

/**
 * One run of the planner, in rounds: anneal castings from several seeds, write the best out as a
 * plan, prove a bound, and again with longer runs, until bound and plan meet or the options say
 * stop. Rounds are counted in steps, not seconds, and the seeds do not depend on the number of
 * cores, so that the same rounds find the same plan on any machine.
 */
final class Search {
  private static final int SEEDS = 2;
  private static final long LOOSE_STEPS_PER_SONG = 20_000;
  private static final long MOST_STEPS = 600_000;
  private static final long PROBE_STEPS_PER_SONG = 5_000;
  private static final long TIGHT_STEPS_PER_SONG = 12_000;
  private static final long LOOKOUT_STEPS_PER_SONG = 5_000;
  private static final long LOOKOUT_STEPS_IN_A_SMALL_SET = 100_000;
  private static final long PROOF_STEPS = 15_000;
  private static final long FIRST_PROOF_STEPS = 2_000;
  private static final long QUICKEST_STEPS = 1_000_000;

  /** For each thing to choose, the steps that a search needs to gain from forgetting. */
  private static final double STEPS_TO_FORGET = 300;

  private static final double GENTLE = 0.25;
  private static final int LOOKOUTS = 2;

  /** Of the moves of a plan, a bound that is less will not meet it. */
  private static final double FAR = 0.7;

  private static final int SMALL_SET = 5;
  private static final int ROUNDS_OF_SMALL_SET = 6;

  private final Problem problem;
  private final Options options;
  private final Timekeeper time;
  private final Finish finish;

  /** The problem with moves counted, whatever the aim: bounds are bounds on moves. */
  private final Problem toBound;

  private Stock stock = Stock.LOOSE;

  /** Read by the proof as well. */
  private volatile Optional<Plan> best = Optional.empty();

  private Plan touched;
  private Casting bestCasting;
  private int bound;
  private int setUpBound;
  private boolean quickest;

  Search(Problem problem, Casting first, Options options, long begun) {
    this.problem = problem;
    this.options = options;
    time = new Timekeeper(options, begun);
    finish = new Finish(problem);
    bestCasting =
        options.near().map(plan -> new KnownCasting(problem).from(plan, first)).orElse(first);
    toBound = options.aim() == Aim.FASTEST ? new Problem(problem.set, options.start()) : problem;
    setUpBound = SetUpBound.of(problem);
  }

  Result run() {
    try (Workers workers = new Workers()) {
      Bounds bounds = new Bounds(toBound, workers, time::proofMustStop);
      if (rounds() == 1 && !isSmall() && options.near().isEmpty()) {
        atOnce(workers, bounds);
      } else {
        inRounds(workers, bounds);
      }
    }
    return best.<Result>map(this::planned)
        .orElse(
            new Result.NoneFound(
                time.isUp()
                    ? "The time was up before one was found; --seconds gives it more."
                    : "No casting was found that the jumpers and the cords in stock can serve."));
  }

  /** One round alone, and beside it the proof, for the cores that the search leaves idle. */
  private void atOnce(Workers workers, Bounds bounds) {
    CompletableFuture<Void> proof =
        CompletableFuture.runAsync(
            () -> {
              bounds.improveSmall(2, proofSteps(FIRST_PROOF_STEPS));
              bounds.improve(3, proofSteps(PROOF_STEPS), this::enough);
            });
    anneal(workers, 0, 1);
    lookOut(workers, 0, 1);
    bound = bounds.whole(); // As far as it is proven: only told, and proven further meanwhile.
    tell();
    touch();
    proof.join();
    take(bounds);
    touch();
  }

  private void inRounds(Workers workers, Bounds bounds) {
    if (options.near().isPresent()) {
      keepIfBetter(bestCasting, finish.plan(bestCasting));
      tell();
    } else {
      time.beginFirstProof();
      bounds.improveSmall(2, proofSteps(FIRST_PROOF_STEPS));
      bound = bounds.whole();
    }
    for (int round = 0; round < rounds() && !isProven() && !time.mustStop(); round++) {
      long longer = Timekeeper.longer(round);
      time.beginRound();
      anneal(workers, round, longer);
      lookOut(workers, round, longer);
      tell();
      if (best.isPresent() && !time.mustStop()) {
        time.beginProof();
        bounds.improve(round + 3, proofSteps(PROOF_STEPS) * longer, this::enough);
        take(bounds);
        proveQuickest(QUICKEST_STEPS * longer);
      }
    }
    touch();
  }

  /** Takes over what the proof has found. */
  private void take(Bounds bounds) {
    bound = Math.max(bound, bounds.whole());
    if (toBound == problem) {
      bounds.found().ifPresent(this::keepIfBetter);
    }
    tell();
  }

  /** The bound that no proof need surpass. */
  private int enough() {
    return best.map(Plan::moves).orElse(Integer.MAX_VALUE);
  }

  /** Gives the best plan its last touch, once; one that is near another is left as it is. */
  private void touch() {
    if (options.near().isEmpty() && best.isPresent() && best.get() != touched) {
      touched = new LastTouch(problem, options, time::isOver).of(best.get(), bestCasting);
      best = Optional.of(touched);
    }
  }

  /** A round takes twice as long as the one before; small sets get more of them. */
  private int rounds() {
    if (options.rounds() != Options.FITTING_ROUNDS) {
      return options.rounds();
    }
    if (isSmall()) {
      return ROUNDS_OF_SMALL_SET;
    }
    return 1;
  }

  private boolean isSmall() {
    return isSmall(problem);
  }

  static boolean isSmall(Problem problem) {
    return problem.songs() <= SMALL_SET;
  }

  /** A large set is not proven in the usual time, so that less of it is spent on trying. */
  private long proofSteps(long most) {
    return SMALL_SET * most / Math.max(SMALL_SET, problem.songs());
  }

  private Result planned(Plan plan) {
    return new Result.Planned(
        options.aim(), plan, bound, setUpBound, quickest, stopped(), time.seconds());
  }

  private Result.Stopped stopped() {
    if (isProven()) {
      return Result.Stopped.PROVEN;
    }
    if (options.cancelled().getAsBoolean()) {
      return Result.Stopped.CANCELLED;
    }
    return time.isUp() ? Result.Stopped.TIME : Result.Stopped.ROUNDS;
  }

  /** In a large set a short search first shows whether the bag will do. */
  private void anneal(Workers workers, int round, long longer) {
    if (best.isEmpty() && stock == Stock.LOOSE && !isSmall()) {
      time.beginAnnealing(true, true);
      takeUp(annealed(workers, round, PROBE_STEPS_PER_SONG * problem.songs()));
    }
    if (stock == Stock.LOOSE) {
      takeUp(annealed(workers, round, beginLong(LOOSE_STEPS_PER_SONG, longer)));
    }
    if (stock == Stock.TIGHT) {
      long steps = beginLong(TIGHT_STEPS_PER_SONG, longer);
      lookOut(workers, i -> lookout(Stock.TIGHT, round * 101L + i, heat(i, false), steps));
    }
  }

  /** Begins an annealing that is more than a probe; says how many steps it has. */
  private long beginLong(long perSong, long longer) {
    long usual = Math.min(perSong * problem.songs(), MOST_STEPS) * longer;
    long steps = time.fitting(usual, isFar());
    time.beginAnnealing(false, best.isEmpty() && stock == Stock.LOOSE);
    return steps;
  }

  /** Where nothing but the bag stands in the way of a casting, the bag is what to look at. */
  private void takeUp(List<Annealer> annealed) {
    Casting least = least(annealed);
    Optional<Plan> plan = finish.loosePlan(least);
    keepIfBetter(least, plan);
    if (plan.isEmpty() && new Layout(problem, least.copy()).faults() == 0) {
      stock = Stock.TIGHT;
      annealed.forEach(annealer -> keepIfBetter(annealer.best()));
    }
  }

  private List<Annealer> annealed(Workers workers, int round, long steps) {
    boolean hurried = !time.hasTimeFor(STEPS_TO_FORGET * problem.choices(), steps);
    List<Callable<Annealer>> tasks =
        IntStream.range(0, SEEDS)
            .mapToObj(
                i ->
                    (Callable<Annealer>)
                        () -> {
                          long seed = options.seed() * 1_000_003L + round * 101L + i;
                          Annealer annealer = new Annealer(problem, bestCasting, stock, seed);
                          anneal(annealer, steps, heat(i, hurried));
                          return annealer;
                        })
            .toList();
    double before = time.seconds();
    List<Annealer> annealed = workers.all(tasks);
    time.tookSteps(annealed.get(0).steps(), before);
    return annealed;
  }

  private void anneal(Annealer annealer, long steps, double heat) {
    annealer.keepTo(time.gone());
    annealer.anneal(steps, heat, time::mustMoveOn);
  }

  /** Whether the bound is so far below what was found that no proof is near. */
  private boolean isFar() {
    return best.isPresent() && bound < FAR * best.get().moves();
  }

  /** One search stays near where it begins, another, if there is time, forgets it. */
  private double heat(int seed, boolean hurried) {
    boolean known = options.near().isPresent() || stock == Stock.TIGHT;
    return hurried || known == (seed == 0) ? GENTLE : 1;
  }

  private static Casting least(List<Annealer> annealers) {
    Annealer least = annealers.get(0);
    for (Annealer other : annealers) {
      least = other.bestCost() < least.bestCost() ? other : least;
    }
    return least.best();
  }

  /** Where a casting makes a dearer plan than it seemed, one that seems as dear may do better. */
  private void lookOut(Workers workers, int round, long longer) {
    if (best.isPresent() && !time.mustStop() && fallsShort()) {
      long least = isSmall() ? LOOKOUT_STEPS_IN_A_SMALL_SET : 0;
      long steps = Math.max(least, LOOKOUT_STEPS_PER_SONG * problem.songs()) * longer;
      lookOut(
          workers,
          i -> lookout(Stock.LOOSE, -1 - round * LOOKOUTS - i, i % 2 == 0 ? GENTLE : 1, steps));
    }
  }

  private void lookOut(Workers workers, IntFunction<Callable<Lookout>> lookouts) {
    List<Callable<Optional<Lookout.Found>>> tasks =
        IntStream.range(0, LOOKOUTS)
            .mapToObj(lookouts)
            .<Callable<Optional<Lookout.Found>>>map(lookout -> () -> lookout.call().found())
            .toList();
    for (Optional<Lookout.Found> found : workers.all(tasks)) {
      found.ifPresent(it -> keepIfBetter(it.casting(), Optional.of(it.plan())));
    }
  }

  /** Whether cords are short, or an idle multiple would have two feeds. */
  private boolean fallsShort() {
    return stock == Stock.TIGHT
        || options.weigh(best.get()) > new Ledger(problem, bestCasting.copy(), stock).moves();
  }

  private Callable<Lookout> lookout(Stock with, long number, double heat, long steps) {
    long seed = options.seed() * 1_000_003L + number;
    long below = best.map(options::weigh).orElse(Long.MAX_VALUE);
    return () -> {
      Annealer annealer = new Annealer(problem, bestCasting, with, seed);
      Lookout lookout = new Lookout(problem, annealer, options::weigh, below, time::mustStop);
      anneal(annealer, steps, heat);
      return lookout;
    };
  }

  /** Without a plan so far, the next search begins from the casting all the same. */
  private void keepIfBetter(Casting casting) {
    keepIfBetter(casting, stock == Stock.LOOSE ? finish.loosePlan(casting) : finish.plan(casting));
  }

  private void keepIfBetter(Casting casting, Optional<Plan> plan) {
    boolean better =
        plan.isPresent() && (best.isEmpty() || options.prefers(plan.get(), best.get()));
    if (better) {
      best = plan;
    }
    if (better || best.isEmpty()) {
      bestCasting = casting;
    }
  }

  /** In a small set, looks for anything quicker than the best plan, until there is nothing. */
  private void proveQuickest(long steps) {
    boolean goesOn = options.aim() == Aim.FASTEST && isSmall();
    while (goesOn) {
      WindowProof proof = new WindowProof(problem, new int[problem.songs()], time::proofMustStop);
      proof.allow(steps);
      quickest = proof.isInVain(Weights.changeoverMoves(options.weigh(best.get())));
      Plan before = best.get();
      proof.found().ifPresent(casting -> keepIfBetter(casting, finish.plan(casting)));
      goesOn = best.get() != before;
    }
  }

  private boolean isProven() {
    return switch (options.aim()) {
      case FEWEST -> best.filter(plan -> plan.moves() == bound).isPresent();
      case FASTEST -> quickest;
      case EVEN -> false;
    };
  }

  private void tell() {
    best.ifPresent(
        plan ->
            options.progress().accept(new Options.Progress(plan.moves(), bound, time.seconds())));
  }
}
