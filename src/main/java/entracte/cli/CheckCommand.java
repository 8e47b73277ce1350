package entracte.cli;

import entracte.check.PlayableSet;
import entracte.finding.Finding;
import entracte.finding.FindingPrinter;
import entracte.finding.Severity;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Tells every mistake at once. */
@Command(
    name = "check",
    sortOptions = false,
    description =
        "Tells every mistake in a set at once: where it stands, what is wrong, what helps.",
    footer = {
      "",
      "Ends with 1 if there are errors, 0 if not. Examples:",
      "  java -jar target/entracte.jar check sets/kitchen-table",
      "  java -jar target/entracte.jar check sets/kitchen-table --stage"
    })
final class CheckCommand implements Callable<Integer> {
  private final Streams streams;
  private final Hearing hearing;
  private final Planning planning;

  @Mixin private SetArgument set;

  @Option(names = "--json", description = "Print the findings as JSON, for other programs.")
  private boolean json;

  @Option(
      names = "--stage",
      description =
          "Also try what the stage needs: journal, disk, terminal, letters, power, clock, MIDI"
              + " ports and pedal. Nothing is sent to the gear. Ends with 3 if something is not"
              + " ready.")
  private boolean stage;

  CheckCommand(Streams streams, Hearing hearing, Planning planning) {
    this.streams = streams;
    this.hearing = hearing;
    this.planning = planning;
  }

  @Override
  public Integer call() throws InterruptedException {
    planning.soon();
    Loader.Loaded loaded = loaded();
    List<Trial> trials = stage && loaded.set().isPresent() ? trials(loaded.set().get()) : List.of();
    if (json) {
      Map<String, Object> all = FindingsJson.of(loaded);
      if (stage) {
        all.put("stage", TrialText.json(trials));
      }
      streams.text(Json.write(all));
    } else {
      streams.text(FindingPrinter.print(loaded.findings()));
      if (!set.quiet()) {
        streams.line(summary(loaded));
      }
      if (!trials.isEmpty()) {
        TrialText.print(trials, streams);
      }
    }
    if (loaded.set().isEmpty()) {
      return ExitCode.FINDINGS;
    }
    return TrialText.allUsable(trials) ? ExitCode.DONE : ExitCode.TROUBLE;
  }

  private Loader.Loaded loaded() {
    Loader.Loaded files = Loader.load(set.path());
    List<Finding> findings = new ArrayList<>(files.findings());
    findings.addAll(LogLook.beside(set.path()));
    return new Loader.Loaded(List.copyOf(findings), files.set(), files.files());
  }

  private List<Trial> trials(PlayableSet playable) throws InterruptedException {
    return new StageTrials(streams, hearing.venue(), hearing.clock().now())
        .of(playable, set.path());
  }

  private static String summary(Loader.Loaded loaded) {
    List<String> counts = new ArrayList<>();
    for (Severity severity : Severity.values()) {
      long count = loaded.count(severity);
      if (count > 0) {
        counts.add(count + " " + severity.word() + (count == 1 ? "" : "s"));
      }
    }
    String found = counts.isEmpty() ? "No mistakes found" : String.join(", ", counts);
    return found + (loaded.set().isPresent() ? "; the set can be planned." : ".");
  }
}
