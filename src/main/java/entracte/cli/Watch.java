package entracte.cli;

import entracte.plan.Plan;
import entracte.read.SetReader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * Plans whenever a file of the set is saved. What is planned does not depend on what was planned
 * before: the last plan is the one that the command gives without watching.
 */
final class Watch {
  private static final String WAITING = "Waiting for the next save; Ctrl-C ends.";

  private final Streams streams;
  private final Saves saves;
  private Optional<Plan> last = Optional.empty();

  Watch(Streams streams, Saves saves) {
    this.streams = streams;
    this.saves = saves;
  }

  /**
   * Plans once and then after every save.
   *
   * @param extra a file that the plan depends on besides those of the set
   * @param planning plans and prints; stops if there is no plan
   */
  int plan(Path set, Optional<Path> extra, Supplier<Plan> planning) throws InterruptedException {
    List<Path> files = files(set, extra);
    FileLooks looks = FileLooks.of(files);
    attempt(planning);
    while (saves.await(files, looks)) {
      files = files(set, extra);
      looks = FileLooks.of(files);
      attempt(planning);
    }
    return ExitCode.DONE;
  }

  private static List<Path> files(Path set, Optional<Path> extra) {
    List<Path> files = new ArrayList<>(SetReader.read(set).files());
    extra.ifPresent(files::add);
    return files;
  }

  /** What nobody can mend while we wait ends the command. */
  private void attempt(Supplier<Plan> planning) {
    try {
      Plan plan = planning.get();
      streams.complain(comparison(plan) + WAITING);
      last = Optional.of(plan);
    } catch (Stop stop) {
      boolean mendable = stop.exitCode() == ExitCode.FINDINGS || last.isPresent();
      if (!mendable) {
        throw stop;
      }
      stop.tell(streams);
      streams.complain((last.isPresent() ? "The last plan stands. " : "") + WAITING);
    }
  }

  private String comparison(Plan plan) {
    if (last.isEmpty()) {
      return "";
    }
    int before = last.get().moves();
    int now = plan.moves();
    return now == before
        ? "As many moves between songs as before: " + now + ".\n"
        : "Moves between songs: " + now + ", before this save " + before + ".\n";
  }
}
