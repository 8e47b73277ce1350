package entracte.read;

import entracte.check.Checker;
import entracte.finding.Finding;
import entracte.finding.FindingPrinter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Any bytes as one file of a set whose other files are sound: it is read, checked and told of. */
final class FilesFuzz {
  private static final Path FOLDER = folder();

  private FilesFuzz() {}

  private static Path folder() {
    try {
      Path folder = Files.createTempDirectory("entracte-fuzz-");
      Folder.nightFerry(folder);
      return folder;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static void read(String name, byte[] bytes) {
    new Folder(FOLDER).with(name, bytes);
    ReadSet read = new Folder(FOLDER).read();
    List<Finding> findings = new ArrayList<>(read.findings());
    read.setList()
        .ifPresent(
            set -> findings.addAll(Checker.check(set, read.places(), read.findings()).findings()));
    if (read.setList().isEmpty() && findings.isEmpty()) {
      throw new AssertionError("nothing was read, and nothing said");
    }
    FindingPrinter.print(findings);
    for (Finding finding : findings) {
      String line = finding.place().lineText();
      boolean within = finding.place().column() <= line.codePointCount(0, line.length()) + 1;
      if (finding.message().isBlank() || !within) {
        throw new AssertionError("nobody can act on " + finding);
      }
    }
  }
}
