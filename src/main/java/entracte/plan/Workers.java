package entracte.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/** As many threads as there are cores; they die with the search. */
final class Workers implements AutoCloseable {
  private final ExecutorService pool;
  private final int count;

  Workers() {
    count = Math.max(1, Runtime.getRuntime().availableProcessors());
    pool =
        Executors.newFixedThreadPool(
            count,
            task -> {
              Thread thread = new Thread(task, "entracte-planner");
              thread.setDaemon(true);
              return thread;
            });
  }

  /** Runs the tasks, waits for all, and hands back their results in order. */
  <T> List<T> all(List<Callable<T>> tasks) {
    try {
      List<T> results = new ArrayList<>();
      for (Future<T> future : pool.invokeAll(tasks)) {
        results.add(future.get());
      }
      return results;
    } catch (ExecutionException failed) {
      throw new IllegalStateException("a worker failed", failed.getCause());
    } catch (InterruptedException interrupted) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted while planning", interrupted);
    }
  }

  @Override
  public void close() {
    pool.shutdownNow();
  }
}
