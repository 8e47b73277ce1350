package entracte.plan.oracle;

import com.google.ortools.Loader;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.LinearExpr;
import entracte.check.Part;
import entracte.check.PlayableSet;
import entracte.plan.Start;
import entracte.plan.Tempo;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;

/**
 * The whole planning problem as one constraint model, solved by CP-SAT: other people's search, and
 * no code of ours but the model. Casting, strips, taps, chains of multiples, jumpers, parking,
 * stock by length, lengths that stay with their cord, positions and the matching of plugs that stay
 * are all variables of one model, with nothing relaxed; so its optimum is the optimum. Aims in
 * order: fewest moves in the changeovers, then fewest in the set-up.
 */
public final class CpSatOracle {
  static {
    Loader.loadNativeLibraries();
  }

  private final Cp cp = new Cp();
  private final PlayableSet set;
  private final Start start;
  private final double effort;
  private final List<SongVars> songs = new ArrayList<>();
  private final List<CordVars> cords = new ArrayList<>();
  private final List<Changes> changes = new ArrayList<>();
  private final ControlVars controls;
  private final Jumpers jumpers;
  private final LinearExpr moves;
  private final LinearExpr setUpMoves;

  /**
   * @param alike whether things of one kind are told apart by nothing
   */
  private CpSatOracle(PlayableSet set, Start start, double effort, boolean alike) {
    this.set = set;
    this.start = start;
    this.effort = effort;
    for (Part part : set.parts()) {
      songs.add(new SongVars(cp, set.setList().rig(), part));
    }
    Universe universe = new Universe(set.setList().rig(), start.state(), songs);
    controls = new ControlVars(cp, universe, songs);
    jumpers = new Jumpers(cp, songs);
    for (int song = 0; song < songs.size(); song++) {
      cords.add(new CordVars(cp, universe, songs.get(song), set.setList().parking(), !alike));
      cords.get(song).waitUnheard(controls.shut.get(song));
      CordVars before = song == 0 ? null : cords.get(song - 1);
      changes.add(new Changes(cp, universe, before, cords.get(song)));
    }
    if (alike) {
      new Symmetry(cp, universe, songs).orderAll();
    }
    int firstCounted = start.midSet() ? 0 : 1;
    moves = movesOf(firstCounted, songs.size());
    setUpMoves = movesOf(0, Math.min(firstCounted, songs.size()));
  }

  /**
   * Solves {@code set} from {@code start}.
   *
   * @param effort the most work for each of the two aims, by the solver's own count of its steps,
   *     which is the same on any machine; one is about a second on a fast one
   */
  public static Answer solve(PlayableSet set, Start start, double effort) {
    return new CpSatOracle(set, start, effort, true).solve();
  }

  /**
   * The least time of all changeovers, in hundredths of a second, at a tempo in whole hundredths;
   * empty if the effort does not suffice.
   *
   * @param idly whether a cord may be plugged that no song needs then or later
   */
  public static OptionalLong quickest(
      PlayableSet set, Start start, Tempo tempo, boolean idly, double effort) {
    CpSatOracle oracle = new CpSatOracle(set, start, effort, false);
    if (!idly) {
      oracle.plugNothingIdly();
    }
    oracle.cp.model.minimize(oracle.time(start.midSet() ? 0 : 1, tempo));
    CpSolver solver = oracle.solver();
    return solver.solve(oracle.cp.model) == CpSolverStatus.OPTIMAL
        ? OptionalLong.of(Math.round(solver.objectiveValue()))
        : OptionalLong.empty();
  }

  private void plugNothingIdly() {
    changes.subList(1, songs.size()).forEach(Changes::plugNothingIdly);
    CordVars last = cords.get(songs.size() - 1);
    last.waits.values().forEach(waits -> cp.atMost(waits.fresh(), 0));
  }

  private LinearExpr time(int from, Tempo tempo) {
    List<LinearArgument> all = new ArrayList<>();
    for (int song = from; song < songs.size(); song++) {
      all.add(changes.get(song).time(tempo));
      int index = song;
      controls.moved.forEach(
          (control, bySong) -> {
            double seconds = control.isKnob() ? tempo.turn(control) : tempo.flip(control);
            all.add(LinearExpr.term(bySong.get(index), Changes.hundredths(seconds)));
          });
    }
    return Cp.sum(all);
  }

  /**
   * Looks for the fewest moves in the changeovers for so many seconds, with several workers that
   * search in the solver's own different ways. The set-up is as it comes.
   *
   * @param atLeast for the changeover before each song, moves that it is known to take at least: so
   *     the solver need not find by itself what flows over two songs tell
   */
  public static Answer race(
      PlayableSet set, Start start, double seconds, int workers, int[] atLeast) {
    CpSatOracle oracle = new CpSatOracle(set, start, seconds, true);
    for (int song = 0; song < atLeast.length; song++) {
      oracle.cp.atLeast(oracle.movesOf(song, song + 1), atLeast[song]);
    }
    return oracle.race(workers);
  }

  private Answer race(int workers) {
    cp.model.minimize(moves);
    CpSolver solver = new CpSolver();
    solver
        .getParameters()
        .setMaxTimeInSeconds(effort)
        .setRandomSeed(1)
        .setNumWorkers(workers)
        .setLinearizationLevel(2);
    CpSolverStatus status = solver.solve(cp.model);
    if (status != CpSolverStatus.OPTIMAL && status != CpSolverStatus.FEASIBLE) {
      return Answer.without(Answer.State.UNKNOWN);
    }
    return new Answer(
        status == CpSolverStatus.OPTIMAL ? Answer.State.OPTIMAL : Answer.State.FOUND,
        (int) Math.round(solver.objectiveValue()),
        roundUp(solver.bestObjectiveBound()),
        0,
        0,
        Optional.of(
            new PlanReading(solver, set, start, songs, cords, changes, controls, jumpers).plan()));
  }

  private LinearExpr movesOf(int from, int to) {
    List<LinearArgument> all = new ArrayList<>();
    for (int song = from; song < to; song++) {
      all.add(changes.get(song).moves());
      int index = song;
      controls.moved.values().forEach(bySong -> all.add(bySong.get(index)));
    }
    return Cp.sum(all);
  }

  private Answer solve() {
    cp.model.minimize(moves);
    CpSolver first = solver();
    CpSolverStatus status = first.solve(cp.model);
    if (status != CpSolverStatus.OPTIMAL && status != CpSolverStatus.FEASIBLE) {
      return Answer.without(
          status == CpSolverStatus.INFEASIBLE ? Answer.State.IMPOSSIBLE : Answer.State.UNKNOWN);
    }
    int least = (int) Math.round(first.objectiveValue());
    int bound = roundUp(first.bestObjectiveBound());
    cp.atMost(moves, least);
    cp.model.minimize(setUpMoves);
    CpSolver second = solver();
    CpSolverStatus secondStatus = second.solve(cp.model);
    if (secondStatus != CpSolverStatus.OPTIMAL && secondStatus != CpSolverStatus.FEASIBLE) {
      return Answer.without(Answer.State.UNKNOWN);
    }
    boolean optimal = status == CpSolverStatus.OPTIMAL && secondStatus == CpSolverStatus.OPTIMAL;
    return new Answer(
        optimal ? Answer.State.OPTIMAL : Answer.State.FOUND,
        least,
        bound,
        (int) Math.round(second.objectiveValue()),
        roundUp(second.bestObjectiveBound()),
        Optional.of(
            new PlanReading(second, set, start, songs, cords, changes, controls, jumpers).plan()));
  }

  private static int roundUp(double bound) {
    return (int) Math.ceil(bound - 1e-6);
  }

  /**
   * One worker that climbs from below proves these models far sooner than any number that search
   * from above; probing costs more than it finds.
   */
  private CpSolver solver() {
    CpSolver solver = new CpSolver();
    solver
        .getParameters()
        .setMaxDeterministicTime(effort)
        .setRandomSeed(1)
        .setNumWorkers(1)
        .setOptimizeWithLbTreeSearch(true)
        .setLinearizationLevel(2)
        .setCpModelProbingLevel(0);
    return solver;
  }
}
