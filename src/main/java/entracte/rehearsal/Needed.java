package entracte.rehearsal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.distribution.continuous.TDistribution;

/**
 * How many more runs until a changeover fits its gap with the odds wanted. What is not known, the
 * law of learning and the player's level, is taken at many likely values; each has its own answer.
 *
 * @param few runs that suffice with probability one in ten
 * @param likely runs that suffice as likely as not
 * @param many runs that suffice with probability nine in ten; {@link #MOST} stands for never
 * @param chance that {@link #MOST} suffice at all
 */
record Needed(int few, int likely, int many, double chance) {
  static final int MOST = 50;

  private static final int LEVELS = 9;
  private static final double FEW = 0.1;
  private static final double LIKELY = 0.5;
  private static final double MANY = 0.9;

  private record Answer(int runs, double weight) {}

  static Needed of(Outlook outlook, double gapSeconds, double odds) {
    List<Answer> answers = new ArrayList<>();
    double margin = new NormalDistribution(0, 1).inverseCumulativeProbability(odds);
    for (Outlook.Branch branch : outlook.branches()) {
      Level level = branch.level();
      TDistribution doubt = new TDistribution(level.freedom());
      for (int i = 0; i < LEVELS; i++) {
        double off = doubt.inverseCumulativeProbability((i + 0.5) / LEVELS);
        double at = level.mean() + off * level.spread() / Math.sqrt(level.weight());
        double room = Math.log(gapSeconds) - at - margin * level.spread();
        answers.add(new Answer(runs(branch.law(), outlook.runs(), room), branch.weight() / LEVELS));
      }
    }
    answers.sort(Comparator.comparingInt(Answer::runs));
    double chance = answers.stream().filter(a -> a.runs() < MOST).mapToDouble(Answer::weight).sum();
    return answers.isEmpty()
        ? new Needed(0, 0, 0, 1)
        : new Needed(at(answers, FEW), at(answers, LIKELY), at(answers, MANY), chance);
  }

  /** The runs after which the law has fallen into the room there is. */
  private static int runs(Law law, int done, double room) {
    for (int more = 0; more < MOST; more++) {
      if (law.log(done + more + 1) <= room) {
        return more;
      }
    }
    return MOST;
  }

  private static int at(List<Answer> answers, double chance) {
    double sum = 0;
    for (Answer answer : answers) {
      sum += answer.weight();
      if (sum >= chance) {
        return answer.runs();
      }
    }
    return answers.get(answers.size() - 1).runs();
  }
}
