package entracte.check;

import entracte.finding.NearestName;
import entracte.setlist.OrderRule;
import entracte.setlist.SetList;
import entracte.setlist.Song;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * The rules for the order of songs name songs of the set and do not contradict each other. Of rules
 * that do, only those are named without any of which the others could be kept.
 */
final class SongOrder {
  private final Findings findings;

  SongOrder(Findings findings) {
    this.findings = findings;
  }

  void check(SetList set) {
    List<String> names = set.songs().stream().map(Song::name).toList();
    boolean known = true;
    for (OrderRule rule : set.order()) {
      known &= namesSongs(rule, names);
    }
    if (!known || set.order().isEmpty()) {
      return;
    }
    if (contradict(set, set.order())) {
      tellContradiction(set);
    } else {
      tellBroken(set);
    }
  }

  private boolean namesSongs(OrderRule rule, List<String> names) {
    boolean good = true;
    for (String song : Set.copyOf(rule.songs())) {
      int times = Collections.frequency(names, song);
      if (times == 0) {
        findings.error(
            rule, "\"" + song + "\" is no song of the set", NearestName.advice(song, names));
      } else if (times > 1) {
        findings.error(
            rule,
            "a rule is about \"" + song + "\", and " + times + " songs are called so",
            "Give each a name of its own.");
      }
      good &= times == 1;
    }
    if (good && new HashSet<>(rule.songs()).size() < rule.songs().size()) {
      findings.error(
          rule, "a rule names \"" + rule.songs().get(0) + "\" and the same song again", "");
      good = false;
    }
    return good;
  }

  private static boolean contradict(SetList set, List<OrderRule> rules) {
    OrderSeeker seeker = new OrderSeeker(new PermittedOrders(set, rules));
    return seeker.find().isEmpty() && !seeker.gaveUp();
  }

  private void tellContradiction(SetList set) {
    List<OrderRule> core = new ArrayList<>(set.order());
    for (OrderRule rule : set.order()) {
      List<OrderRule> without = new ArrayList<>(core);
      without.remove(rule);
      if (contradict(set, without)) {
        core = without;
      }
    }
    if (core.isEmpty()) {
      return; // encores in the wrong place are told by the list of songs
    }
    List<String> clauses = core.stream().map(OrderRule::says).toList();
    findings.error(
        core.get(0),
        core.size() == 1
            ? "no order of the songs can keep this: " + clauses.get(0)
            : "no order of the songs keeps all of these: " + String.join("; ", clauses),
        core.size() == 1 ? "Drop it, or write it otherwise." : "Drop one of them.");
  }

  /** The order as written may break a rule: it is played all the same, so this is a note. */
  private void tellBroken(SetList set) {
    int[] written = IntStream.range(0, set.songs().size()).toArray();
    for (OrderRule rule : set.order()) {
      if (!new PermittedOrders(set, List.of(rule)).permits(written)) {
        findings.note(
            rule,
            "the songs are not written in such an order: " + rule.says(),
            "The command order proposes one that keeps every rule.");
      }
    }
  }
}
