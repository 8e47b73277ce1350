package entracte.cli;

import entracte.check.PlayableSet;
import entracte.cue.Cue;
import entracte.cue.CueSheet;
import entracte.cue.Pace;
import entracte.plan.Options;
import entracte.plan.Result;
import entracte.plan.Start;
import entracte.plan.Verifier;
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
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;

/**
 * Plans for the stage on a thread of its own. The first plan of a night is the very one that {@code
 * plan} and {@code sheet} give, so that screen and paper agree; it may take a while, for nobody
 * waits yet. Later ones come at once, and a better one follows if there is any within a few
 * seconds. A newer request ends the search for an older one. Jumpers stay where the first plan had
 * them: they are inside the case.
 */
final class StagePlanner {
  /** A first plan mostly takes no time; where it does, the search is given more each time. */
  private static final double AT_ONCE_SECONDS = 0.1;

  private static final double NEXT_SECONDS = 0.5;
  private static final double[] PATIENT_SECONDS = {2, 20};

  private static final double BETTER_SECONDS = 3;

  private final PlayableSet set;
  private final Planning planning;
  private final Pace pace;
  private final InstantSource clock;
  private final Consumer<Event> told;
  private final BlockingQueue<Effect.Plan> requests = new LinkedBlockingQueue<>();
  private final AtomicInteger latest = new AtomicInteger();

  StagePlanner(
      PlayableSet set, Planning planning, Pace pace, InstantSource clock, Consumer<Event> told) {
    this.set = set;
    this.planning = planning;
    this.pace = pace;
    this.clock = clock;
    this.told = told;
    Thread thread = new Thread(this::work, "plans");
    thread.setDaemon(true);
    thread.start();
  }

  void ask(Effect.Plan request) {
    latest.set(request.request());
    requests.add(request);
  }

  private void work() {
    try {
      while (true) {
        answer(requests.take());
      }
    } catch (InterruptedException ended) {
      // The show is over.
    }
  }

  private void answer(Effect.Plan request) {
    if (request.request() != latest.get()) {
      return;
    }
    try {
      plan(request);
    } catch (RuntimeException mistake) {
      fail(request, "The planner failed: " + mistake.getMessage());
    }
  }

  private void plan(Effect.Plan request) {
    Set<Module> dead = dead(request);
    PlayableSet standing = standing(request);
    List<Integer> order = new ArrayList<>();
    List<String> lost = new ArrayList<>();
    for (int song : request.order()) {
      if (standing.canDoWithout(dead, song)) {
        order.add(song);
      } else {
        lost.add(set.setList().songs().get(song).name());
      }
    }
    String note = lost.isEmpty() ? "" : "Cannot be played any more: " + String.join(", ", lost);
    if (order.isEmpty()) {
      told.accept(
          new Event.Planned(now(), request.request(), List.of(), List.of(), note, Map.of()));
      return;
    }
    PlayableSet left = standing.inOrder(order.stream().mapToInt(Integer::intValue).toArray());
    PlayableSet playable = dead.isEmpty() ? left : left.without(dead);
    if (isFirst(request)) {
      asOnPaper(request, order, playable);
    } else {
      soon(request, order, playable, note);
    }
  }

  /** Whether nothing has been plugged, and no jumper set. */
  private static boolean isFirst(Effect.Plan request) {
    return !request.midShow() && request.rig().equals(TrueRig.bare());
  }

  /** The set with its jumpers where they are, once a plan has said where. */
  private PlayableSet standing(Effect.Plan request) {
    return request.rig().jumpers().isEmpty() ? set : set.withJumpers(request.rig().jumpers());
  }

  private void asOnPaper(Effect.Plan request, List<Integer> order, PlayableSet playable) {
    Options options = Options.defaults().withCancel(() -> request.request() != latest.get());
    if (planning.plan(playable, options) instanceof Result.Planned planned && isRight(planned)) {
      tell(request, order, planned, pace.origin());
    } else {
      fail(request, "No plan was found; \"plan\" tells why.");
    }
  }

  private void soon(
      Effect.Plan request, List<Integer> order, PlayableSet playable, String note) {
    Options options = options(request, playable);
    Result first = planning.plan(playable, options.withSeconds(AT_ONCE_SECONDS));
    if (first instanceof Result.NoneFound && order.size() > 1) {
      nextOnly(request, order, playable, options, note);
    }
    if (first instanceof Result.NoneFound) {
      first = patiently(request, playable, options);
    }
    if (first instanceof Result.Planned planned && isRight(planned)) {
      tell(request, order, planned, note);
      if (!planned.proven()) {
        better(request, order, planned, planning.plan(playable, options), note);
      }
    } else {
      fail(request, "No plan was found for what is left; skip a song, or undo.");
    }
  }

  /** The way to the next song alone is found sooner than the ways to all that are left. */
  private void nextOnly(
      Effect.Plan request, List<Integer> order, PlayableSet all, Options options, String note) {
    Result next = planning.plan(all.inOrder(0), options.withSeconds(NEXT_SECONDS));
    if (next instanceof Result.Planned planned
        && request.request() == latest.get()
        && isRight(planned)) {
      tell(request, order, planned, note);
    }
  }

  private Result patiently(Effect.Plan request, PlayableSet playable, Options options) {
    Result result = new Result.NoneFound("nobody looked");
    for (double seconds : PATIENT_SECONDS) {
      if (!(result instanceof Result.NoneFound) || request.request() != latest.get()) {
        break;
      }
      result = planning.plan(playable, options.withSeconds(seconds));
    }
    return result;
  }

  private Set<Module> dead(Effect.Plan request) {
    Set<Module> dead = new HashSet<>();
    request.dead().forEach(name -> set.setList().rig().module(name).ifPresent(dead::add));
    return dead;
  }

  private Options options(Effect.Plan request, PlayableSet playable) {
    RigState state = new RigByName(playable.setList().rig()).state(request.rig());
    Start start = request.midShow() ? Start.midSet(state) : Start.beforeShow(state);
    return Options.defaults()
        .withStart(start)
        .withSeconds(BETTER_SECONDS)
        .withCancel(() -> request.request() != latest.get());
  }

  private void better(
      Effect.Plan request, List<Integer> order, Result.Planned first, Result second, String note) {
    if (second instanceof Result.Planned planned
        && request.request() == latest.get()
        && isBetter(planned, first)
        && isRight(planned)) {
      tell(request, order, planned, note);
    }
  }

  /** Nobody can look a plan over while an audience waits, so the verifier must find it right. */
  private static boolean isRight(Result.Planned planned) {
    return Verifier.verify(planned.plan()).isEmpty();
  }

  private static boolean isBetter(Result.Planned one, Result.Planned other) {
    int moves = Integer.compare(one.plan().moves(), other.plan().moves());
    return moves < 0 || moves == 0 && one.plan().setUpMoves() < other.plan().setUpMoves();
  }

  private void tell(Effect.Plan request, List<Integer> order, Result.Planned planned, String note) {
    List<Cue> cues = CueSheet.of(planned.plan(), pace).cues();
    List<Way> ways = new ArrayList<>();
    for (int way = 0; way < cues.size(); way++) {
      ways.add(Way.of(order.get(way), cues.get(way)));
    }
    told.accept(
        new Event.Planned(now(), request.request(), order, ways, note, jumpers(planned)));
  }

  private static Map<String, String> jumpers(Result.Planned planned) {
    Map<String, String> positions = new TreeMap<>();
    planned.plan().jumpers().forEach((in, position) -> positions.put(in.toString(), position));
    return positions;
  }

  private void fail(Effect.Plan request, String reason) {
    told.accept(new Event.Unplanned(now(), request.request(), reason));
  }

  private long now() {
    return clock.millis();
  }
}
