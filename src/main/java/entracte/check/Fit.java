package entracte.check;

import entracte.check.RoleDraft.Offer;
import entracte.rig.Module;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Which of the kinds that a role accepts have everything that its patch asks for. The first that
 * does decides how names are read; another that reads them otherwise (a switch where the first has
 * a knob) will not do.
 */
final class Fit {
  /** What one kind replies to every ask, in the order of the asks. */
  private record Replies(
      Offer offer, List<Reply<JackShape>> jacks, List<Reply<ControlShape>> controls) {
    Optional<Lack> firstLack() {
      for (Reply<JackShape> reply : jacks) {
        if (reply.lack().isPresent()) {
          return reply.lack();
        }
      }
      return controls.stream().flatMap(reply -> reply.lack().stream()).findFirst();
    }

    boolean agrees(Replies first) {
      for (int i = 0; i < jacks.size(); i++) {
        if (!jacks.get(i).found().orElseThrow().agrees(first.jacks.get(i).found().orElseThrow())) {
          return false;
        }
      }
      for (int i = 0; i < controls.size(); i++) {
        if (!controls.get(i).found().equals(first.controls.get(i).found())) {
          return false;
        }
      }
      return true;
    }
  }

  private final RoleDraft role;
  private final List<Replies> all = new ArrayList<>();
  private final List<Replies> fitting = new ArrayList<>();

  Fit(RoleDraft role) {
    this.role = role;
    for (Offer offer : role.offers()) {
      Replies replies = replies(offer);
      all.add(replies);
      if (replies.firstLack().isEmpty() && (fitting.isEmpty() || replies.agrees(fitting.get(0)))) {
        fitting.add(replies);
      }
    }
  }

  private Replies replies(Offer offer) {
    KindReading jacks = new KindReading(offer.kind(), role.name());
    ControlReading controls = new ControlReading(offer.kind(), jacks);
    return new Replies(
        offer,
        role.jacks().stream().map(jacks::jack).toList(),
        role.controls().stream().map(controls::control).toList());
  }

  /** The modules that can play the role, kind after kind; empty if none can. */
  List<Module> candidates() {
    Set<Module> modules = new LinkedHashSet<>();
    fitting.forEach(replies -> modules.addAll(replies.offer().modules()));
    return List.copyOf(modules);
  }

  /** How the {@code i}-th jack is read; equal if any kind that fits has several of them. */
  JackShape jack(int i) {
    JackShape first = fitting.get(0).jacks().get(i).found().orElseThrow();
    boolean equal =
        fitting.stream().anyMatch(replies -> replies.jacks().get(i).found().orElseThrow().equal());
    return new JackShape(first.jack(), first.number(), equal);
  }

  ControlShape control(int i) {
    return fitting.get(0).controls().get(i).found().orElseThrow();
  }

  /** Whether the {@code i}-th jack runs the wrong way, whoever plays the role. */
  boolean wrongWay(int i) {
    return !all.isEmpty()
        && all.stream().allMatch(replies -> replies.jacks().get(i).lack().isPresent())
        && all.get(0).jacks().get(i).lack().orElseThrow().wrongWay();
  }

  /** Reports what no kind has; where some kind will do, notes which will not. */
  void report(Findings findings) {
    if (all.isEmpty()) {
      return;
    }
    if (!fitting.isEmpty()) {
      all.stream().filter(replies -> !fitting.contains(replies)).forEach(r -> note(r, findings));
      return;
    }
    Set<String> said = new LinkedHashSet<>();
    boolean shared = false;
    for (int i = 0; i < role.jacks().size(); i++) {
      int ask = i;
      List<Optional<Lack>> lacks = all.stream().map(r -> r.jacks().get(ask).lack()).toList();
      shared |= wrongWay(i) || reportAsk(role.jacks().get(i).end(), lacks, said, findings);
    }
    for (int i = 0; i < role.controls().size(); i++) {
      int ask = i;
      List<Optional<Lack>> lacks = all.stream().map(r -> r.controls().get(ask).lack()).toList();
      shared |= reportAsk(role.controls().get(i).setting(), lacks, said, findings);
    }
    if (!shared) {
      reportMixed(findings);
    }
  }

  /** Reports an ask that every kind refuses, in the words of the first. */
  private boolean reportAsk(
      Object piece, List<Optional<Lack>> lacks, Set<String> said, Findings findings) {
    if (lacks.stream().anyMatch(Optional::isEmpty)) {
      return false;
    }
    Lack lack = lacks.get(0).orElseThrow();
    String message = lack.message(role.subject(role.offers().get(0)));
    if (said.add(message)) {
      findings.error(piece, message, lack.advice());
    }
    return true;
  }

  /** Each kind has something that another lacks, and none has all. */
  private void reportMixed(Findings findings) {
    List<String> lacks = new ArrayList<>();
    for (Replies replies : all) {
      lacks.add(
          role.subject(replies.offer()) + " " + replies.firstLack().orElseThrow().predicate());
    }
    findings.error(
        role.piece(),
        "nothing in the rig can play \"%s\": %s".formatted(role.name(), String.join("; ", lacks)),
        "Split the role in two, or leave out what only one of them has.");
  }

  private void note(Replies replies, Findings findings) {
    String why = replies.firstLack().map(Lack::predicate).orElse("reads the patch in another way");
    findings.note(
        role.piece(),
        "%s will not do for \"%s\": it %s"
            .formatted(role.subject(replies.offer()), role.name(), why),
        "Others will do, so the set can be played; it has fewer ways to be planned.");
  }
}
