package entracte.cli;

import entracte.check.PlayableSet;
import entracte.cue.Cue;
import entracte.cue.CueSheet;
import entracte.cue.Pace;
import entracte.plan.Options;
import entracte.plan.Plan;
import entracte.plan.Result;
import entracte.plan.Start;
import entracte.plan.Verifier;
import entracte.rehearsal.Learned;
import entracte.rig.Module;
import entracte.rig.RigState;
import entracte.stage.Effect;
import entracte.stage.Event;
import entracte.stage.TrueRig;
import entracte.stage.Way;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;

/**
 * The answer to one request of the stage. The first plan of a night is the very one that {@code
 * plan} and {@code sheet} give, so that screen and paper agree; it may take a while, for nobody
 * waits yet. Later ones come at once, and a better one follows if there is any within a few
 * seconds. Jumpers stay where the first plan had them: they are inside the case. A song that cannot
 * be played any more is left out and named.
 */
final class StageAnswer {
  /** A plan mostly takes no time; where it does, the search is given more each time. */
  private static final double AT_ONCE_SECONDS = 0.1;

  private static final double NEXT_SECONDS = 0.5;
  private static final double[] PATIENT_SECONDS = {2, 20};
  private static final double BETTER_SECONDS = 3;

  private final PlayableSet set;
  private final Planning planning;
  private final Pace pace;
  private final InstantSource clock;
  private final Effect.Plan request;
  private final BooleanSupplier obsolete;
  private final Consumer<Event> told;
  private final Set<Module> dead = new HashSet<>();
  private final PlayableSet standing;

  /** The songs that can still be played, and the names of the others. */
  private final List<Integer> order = new ArrayList<>();

  private final List<String> lost = new ArrayList<>();

  /** The plan in force, from which the next one begins. */
  private Optional<Plan> known;

  /**
   * @param set with its drone, if it has one, as the last song
   * @param known the plan in force, if there is one
   * @param obsolete whether a newer request has come
   */
  StageAnswer(
      PlayableSet set,
      Planning planning,
      Pace pace,
      InstantSource clock,
      Effect.Plan request,
      Optional<Plan> known,
      BooleanSupplier obsolete,
      Consumer<Event> told) {
    this.set = set;
    this.planning = planning;
    this.pace = pace;
    this.clock = clock;
    this.request = request;
    this.known = known;
    this.obsolete = obsolete;
    this.told = told;
    request.dead().forEach(name -> set.setList().rig().module(name).ifPresent(dead::add));
    Map<String, String> jumpers = request.rig().jumpers();
    standing = jumpers.isEmpty() ? set : set.withJumpers(jumpers);
  }

  /** The plan in force after the answer. */
  Optional<Plan> known() {
    return known;
  }

  void give() {
    for (int song : request.order()) {
      if (standing.canDoWithout(dead, song)) {
        order.add(song);
      } else {
        lose(song);
      }
    }
    if (order.isEmpty()) {
      told(List.of(), note(), Map.of());
    } else if (!request.midShow() && isBare(request.rig())) {
      asOnPaper();
    } else if (isDrone(order.get(0))) {
      toDrone();
    } else {
      soon();
    }
  }

  /** Whatever was done to the main level: nothing is plugged, and no control is known. */
  private static boolean isBare(TrueRig rig) {
    return rig.cords().isEmpty() && rig.positions().isEmpty() && rig.jumpers().isEmpty();
  }

  private void lose(int song) {
    lost.add(set.setList().songs().get(song).name());
  }

  private boolean isDrone(int song) {
    return set.setList().drone().isPresent() && song == set.setList().songs().size() - 1;
  }

  private PlayableSet songs(List<Integer> some) {
    PlayableSet left = standing.inOrder(some.stream().mapToInt(Integer::intValue).toArray());
    return dead.isEmpty() ? left : left.without(dead);
  }

  private void asOnPaper() {
    Options options =
        Options.defaults().withClock(Search.clock(Learned.unrehearsed(set.setList().rig())));
    Result result = planning.plan(songs(order), options.withCancel(obsolete));
    if (isRight(result)) {
      tell((Result.Planned) result, pace.origin());
    } else {
      fail("No plan was found; the command plan tells why.");
    }
  }

  /** The way to the drone alone, without a move that only serves what comes later. */
  private void toDrone() {
    Result next = plan(List.of(order.get(0)), NEXT_SECONDS);
    if (isRight(next)) {
      tell((Result.Planned) next, note());
    } else {
      fail("No plan was found; pull every cord, or undo.");
    }
  }

  private void soon() {
    Result first = plan(order, AT_ONCE_SECONDS);
    if (first instanceof Result.Impossible) {
      thinOut();
      first = order.isEmpty() ? first : plan(order, AT_ONCE_SECONDS);
    }
    if (order.isEmpty()) {
      told(List.of(), note(), Map.of());
      return;
    }
    if (first instanceof Result.NoneFound && order.size() > 1) {
      Result next = plan(List.of(order.get(0)), NEXT_SECONDS);
      if (isRight(next)) {
        tell((Result.Planned) next, note());
      }
    }
    first = patiently(first);
    if (isRight(first)) {
      tell((Result.Planned) first, note());
      better((Result.Planned) first);
    } else {
      fail("No plan was found for what is left; skip a song, or undo.");
    }
  }

  /** Leaves out the songs that even alone cannot be played, such as for want of a multiple. */
  private void thinOut() {
    for (int song : List.copyOf(order)) {
      if (plan(List.of(song), AT_ONCE_SECONDS) instanceof Result.Impossible) {
        order.remove(Integer.valueOf(song));
        lose(song);
      }
    }
  }

  private Result plan(List<Integer> some, double seconds) {
    PlayableSet playable = songs(some);
    RigState state = new RigByName(playable.setList().rig()).state(request.rig());
    Start start = request.midShow() ? Start.midSet(state) : Start.beforeShow(state);
    Options options = Options.defaults().withStart(start).withSeconds(seconds).withCancel(obsolete);
    return planning.plan(playable, known.map(options::withNear).orElse(options));
  }

  private Result patiently(Result first) {
    Result result = first;
    for (double seconds : PATIENT_SECONDS) {
      if (!(result instanceof Result.NoneFound) || obsolete.getAsBoolean()) {
        break;
      }
      result = plan(order, seconds);
    }
    return result;
  }

  private void better(Result.Planned first) {
    if (first.proven()) {
      return;
    }
    Result second = plan(order, BETTER_SECONDS);
    if (isRight(second) && isBetter((Result.Planned) second, first)) {
      tell((Result.Planned) second, note());
    }
  }

  private static boolean isBetter(Result.Planned one, Result.Planned other) {
    int moves = Integer.compare(one.plan().moves(), other.plan().moves());
    return moves < 0 || moves == 0 && one.plan().setUpMoves() < other.plan().setUpMoves();
  }

  /** Nobody can look a plan over while an audience waits, so the verifier must find it right. */
  private static boolean isRight(Result result) {
    return result instanceof Result.Planned planned
        && Verifier.verify(planned.plan(), planned.aim()).isEmpty();
  }

  private String note() {
    return lost.isEmpty() ? "" : "Cannot be played any more: " + String.join(", ", lost) + ".";
  }

  private void tell(Result.Planned planned, String note) {
    List<Cue> cues = CueSheet.of(planned.plan(), pace, request.rig().tunings()).cues();
    List<Way> ways = new ArrayList<>();
    for (int way = 0; way < cues.size(); way++) {
      ways.add(Way.of(order.get(way), cues.get(way)));
    }
    Map<String, String> jumpers = new TreeMap<>();
    planned.plan().jumpers().forEach((in, position) -> jumpers.put(in.toString(), position));
    known = Optional.of(planned.plan());
    told(ways, note, jumpers);
  }

  private void told(List<Way> ways, String note, Map<String, String> jumpers) {
    if (!obsolete.getAsBoolean()) {
      told.accept(new Event.Planned(clock.millis(), request.request(), order, ways, note, jumpers));
    }
  }

  void fail(String reason) {
    told.accept(new Event.Unplanned(clock.millis(), request.request(), reason));
  }
}
