package entracte.cli;

import entracte.plan.Plan;
import entracte.plan.WhatIf;
import entracte.print.Fill;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** The answers of {@code whatif} as text for a screen of 80 columns. */
final class WhatIfText {
  private static final int LONGEST_NAME = 30;

  private final WhatIf.Answers answers;
  private final int songs;
  private final int now;
  private final int nameWidth;
  private final List<String> lines = new ArrayList<>();

  private WhatIfText(WhatIf.Answers answers) {
    this.answers = answers;
    songs = answers.base().plan().songs().size();
    now = answers.base().plan().moves();
    int longest =
        Stream.concat(answers.more().stream(), answers.without().stream())
            .mapToInt(answer -> Fill.width(answer.changed().what()))
            .max()
            .orElse(0);
    nameWidth = Math.min(LONGEST_NAME, longest);
  }

  static List<String> lines(WhatIf.Answers answers) {
    WhatIfText text = new WhatIfText(answers);
    text.heading();
    text.more();
    text.without();
    text.lines.add("");
    text.fill(
        "Each answer is the best of a short search, so that a purchase may save more than it says;"
            + " \"nothing\" behind a kind that no song can use is certain.",
        "",
        "  ");
    return text.lines;
  }

  private void heading() {
    Plan plan = answers.base().plan();
    String set = plan.setList().name() + " on " + plan.setList().rig().name();
    fill(set + ": " + Totals.moves(now) + " between songs", "", "  ");
  }

  private void more() {
    lines.add("");
    lines.add("One more of these would save");
    for (WhatIf answer : answers.more()) {
      int saved = now - answer.moves().orElse(now);
      String unused = answer.certain() && now > 0 ? "nothing: no song can use it" : "nothing found";
      row(answer, saved > 0 ? Totals.moves(saved) + ", to " + (now - saved) : unused);
    }
  }

  private void without() {
    lines.add("");
    lines.add("Without this one");
    answers.without().forEach(answer -> row(answer, left(answer)));
  }

  private String left(WhatIf answer) {
    if (answer.lost().size() == songs) {
      return "no song can be played";
    }
    if (!answer.lost().isEmpty()) {
      int left = songs - answer.lost().size();
      return left + " of " + songs + " songs play; lost: " + String.join(", ", answer.lost());
    }
    if (answer.moves().isEmpty()) {
      return "every song plays alone, but no plan was found for all";
    }
    int more = answer.moves().getAsInt() - now;
    return "all songs play, "
        + (more > 0 ? "with " + Totals.moves(more) + " more" : "with no more moves");
  }

  private void row(WhatIf answer, String text) {
    String name = answer.changed().what();
    String pad = " ".repeat(Math.max(0, nameWidth - Fill.width(name)));
    fill(text, "  " + name + pad + "  ", " ".repeat(nameWidth + 4));
  }

  private void fill(String text, String first, String rest) {
    lines.addAll(Fill.lines(text, PlanText.WIDTH, first, rest));
  }
}
