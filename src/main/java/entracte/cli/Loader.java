package entracte.cli;

import entracte.check.Checked;
import entracte.check.Checker;
import entracte.check.PlayableSet;
import entracte.finding.Finding;
import entracte.finding.FindingPrinter;
import entracte.finding.Severity;
import entracte.read.ReadSet;
import entracte.read.SetReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads a set and checks it. */
final class Loader {
  private Loader() {}

  /**
   * A set as it was found.
   *
   * @param set empty if there is an error among the findings
   * @param files all that the set is written in
   */
  record Loaded(List<Finding> findings, Optional<PlayableSet> set, List<Path> files) {
    long count(Severity severity) {
      return findings.stream().distinct().filter(f -> f.severity() == severity).count();
    }
  }

  /** Reads and checks; a file or folder that is not there stops the command. */
  static Loaded load(Path path) {
    demand(path);
    ReadSet read = SetReader.read(path);
    List<Finding> findings = new ArrayList<>(read.findings());
    Optional<Checked> checked =
        read.setList().map(set -> Checker.check(set, read.places(), read.findings()));
    checked.ifPresent(c -> findings.addAll(c.findings()));
    Optional<PlayableSet> set = read.hasErrors() ? Optional.empty() : checked.flatMap(Checked::set);
    return new Loaded(List.copyOf(findings), set, read.files());
  }

  /** The set, if it can be played; otherwise its findings are told and the command stops. */
  static PlayableSet playable(Path path, Streams streams) {
    return playable(load(path), streams);
  }

  static PlayableSet playable(Loaded loaded, Streams streams) {
    List<Finding> telling =
        loaded.findings().stream().filter(f -> f.severity() != Severity.NOTE).toList();
    if (!telling.isEmpty()) {
      streams.complain(FindingPrinter.print(telling).stripTrailing());
    }
    return loaded
        .set()
        .orElseThrow(() -> Stop.impossible("a set with errors cannot be planned; mend them first"));
  }

  /** A set that is not there stops the command. */
  static void demand(Path path) {
    if (path.toString().isEmpty()) {
      throw Stop.wrongUsage(
          "the name of a set is empty",
          "Name a set's folder or its file; a dot is the folder that you are in.");
    }
    if (!Files.exists(path)) {
      throw Stop.trouble("there is no " + path, NearPath.advice(path));
    }
    if (Files.isDirectory(path) && !Files.exists(path.resolve(SetReader.SET_FILE))) {
      throw Stop.trouble(path + " holds no set.yaml", NearPath.advice(path));
    }
    if (!Files.isReadable(path)) {
      throw Stop.trouble(path + " may not be read", "Look at its permissions.");
    }
  }
}
