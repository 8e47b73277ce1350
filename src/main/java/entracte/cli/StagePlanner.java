package entracte.cli;

import entracte.check.PlayableSet;
import entracte.cue.Pace;
import entracte.plan.Plan;
import entracte.stage.Effect;
import entracte.stage.Event;
import java.time.InstantSource;
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
  private final Consumer<Event> told;
  private final BlockingQueue<Effect.Plan> requests = new LinkedBlockingQueue<>();
  private final AtomicInteger latest = new AtomicInteger();

  /** The plan in force; only the planning thread looks at it. */
  private Optional<Plan> known = Optional.empty();

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
    StageAnswer answer =
        new StageAnswer(
            set,
            planning,
            pace,
            clock,
            request,
            known,
            () -> request.request() != latest.get(),
            told);
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
