package entracte.cli;

import entracte.check.PlayableSet;
import entracte.cue.Pace;
import entracte.plan.Plan;
import entracte.stage.Effect;
import entracte.stage.Event;
import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;

/**
 * Plans for the stage on a thread of its own, so that screen, foot and gear never wait for it. A
 * newer request ends the search for an older one.
 */
final class StagePlanner {
  private final PlayableSet set;
  private final Planning planning;
  private final Pace pace;
  private final InstantSource clock;
  private final SetFiles files;
  private final Consumer<Event> told;
  private final BlockingQueue<Effect.Plan> requests = new LinkedBlockingQueue<>();
  private final AtomicInteger latest = new AtomicInteger();

  /** The plan in force; only the planning thread looks at it. */
  private Optional<Plan> known = Optional.empty();

  /** The changed files that were told of. */
  private List<String> changed = List.of();

  /**
   * @param files those of the set, as they were when it was read
   */
  StagePlanner(
      PlayableSet set,
      Planning planning,
      Pace pace,
      InstantSource clock,
      SetFiles files,
      Consumer<Event> told) {
    this.files = files;
    this.set = set;
    this.planning = planning;
    this.pace = pace;
    this.clock = clock;
    this.told = told;
  }

  /** Begins to work at what was asked for. */
  void start() {
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

  /** What the player should know of files that were saved meanwhile; once of each change. */
  private String meanwhile() {
    List<String> now = files.now().changedSince(files.sums());
    if (now.equals(changed)) {
      return "";
    }
    changed = now;
    return now.isEmpty()
        ? ""
        : SetFiles.say(now) + ". Leave and start again to play by it; the place is kept.";
  }

  private void answer(Effect.Plan request) {
    String meanwhile = meanwhile();
    StageAnswer answer =
        new StageAnswer(
            set,
            planning,
            pace,
            clock,
            request,
            known,
            () -> request.request() != latest.get(),
            event -> told.accept(event instanceof Event.Planned p ? p.noting(meanwhile) : event));
    if (request.request() != latest.get()) {
      return;
    }
    try {
      answer.give();
      known = answer.known();
    } catch (RuntimeException mistake) {
      answer.fail("The planner failed: " + mistake.getMessage());
    }
  }
}
