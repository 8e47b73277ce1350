package entracte.read;

import entracte.finding.Finding;
import entracte.finding.Severity;
import java.util.List;
import java.util.regex.Pattern;

/**
 * The mistakes that the readers tell and a schema cannot: it sees one file, no name against
 * another, no figure against another, and does no sums. Nor does it see what YAML makes of a text
 * first: {@code 1e3} is a thousand, of a key that stands twice one is left, and {@code <<} is
 * merged.
 */
final class Unseen {
  private static final Pattern MESSAGE =
      Pattern.compile(
          ".*(there is no file |is a folder, not a file|there is no kind |does not rise"
              + "|are counted twice|no inherited connection|is a (set|rig|patch|state), not a "
              + "|out of reach of any hands|has \".*\" twice|less than no time"
              + "|is no tuning of A4"
              + "|\"1e3\" is not a (whole number|size|figure)|\"1e3\" is no resistance"
              + "|\"<<\" is not known here"
              + ").*");

  private Unseen() {}

  /** Whether the readers tell of something in a file that its schema should tell of, too. */
  static boolean leavesAny(ReadSet read, String text) {
    List<Finding> mistakes =
        read.findings().stream().filter(found -> found.severity() == Severity.ERROR).toList();
    return mistakes.stream().noneMatch(each -> each.message().endsWith(" is written twice"))
        && mistakes.stream().anyMatch(each -> isSeen(each, text));
  }

  private static boolean isSeen(Finding mistake, String text) {
    boolean closed =
        mistake.message().endsWith(" is not a figure")
            && text.lines().toList().get(mistake.place().line() - 1).contains("closed:");
    return !closed && !MESSAGE.matcher(mistake.message()).matches();
  }
}
