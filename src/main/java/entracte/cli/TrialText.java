package entracte.cli;

import entracte.cli.Trial.Verdict;
import entracte.print.Fill;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What was tried for the stage, in lines and as JSON. */
final class TrialText {
  private static final int WORD = 11;
  private static final int WHAT = 10;
  private static final String HANGING = " ".repeat(WORD + WHAT);

  private TrialText() {}

  /** Prints all of it. */
  static void print(List<Trial> trials, Streams streams) {
    for (Trial trial : trials) {
      String word = trial.verdict().word();
      List<String> lines = lines(trial, word);
      streams.line(word, trial.verdict().colour(), lines.get(0).substring(word.length()));
      lines.stream().skip(1).forEach(streams::line);
    }
    streams.line(sum(trials));
  }

  private static List<String> lines(Trial trial, String word) {
    String head = pad(word, WORD) + pad(trial.what(), WHAT);
    List<String> lines = new ArrayList<>(Fill.lines(trial.says(), PlanText.WIDTH, head, HANGING));
    if (!trial.advice().isEmpty()) {
      lines.addAll(Fill.lines(trial.advice(), PlanText.WIDTH, HANGING, HANGING));
    }
    return lines;
  }

  static boolean allUsable(List<Trial> trials) {
    return count(trials, Verdict.NOT_READY) == 0;
  }

  private static String sum(List<Trial> trials) {
    long broken = count(trials, Verdict.NOT_READY);
    long looks = count(trials, Verdict.LOOK);
    String rest = looks == 0 ? "." : "; to look at yourself: " + looks + ".";
    return broken == 0
        ? "All that could be tried is ready" + rest
        : "Not ready: " + broken + " of " + trials.size() + rest;
  }

  private static long count(List<Trial> trials, Verdict verdict) {
    return trials.stream().filter(trial -> trial.verdict() == verdict).count();
  }

  private static String pad(String text, int width) {
    return text + " ".repeat(Math.max(1, width - text.length()));
  }

  static List<Map<String, Object>> json(List<Trial> trials) {
    return trials.stream().map(TrialText::json).toList();
  }

  private static Map<String, Object> json(Trial trial) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("what", trial.what());
    json.put("verdict", trial.verdict().word());
    json.put("says", trial.says());
    json.put("advice", trial.advice());
    return json;
  }
}
