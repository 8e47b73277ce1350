package entracte.check;

import entracte.check.RoleDraft.Offer;
import entracte.rig.Direction;
import entracte.rig.Module;
import entracte.setlist.End;
import entracte.setlist.Setting;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

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
  private final Findings findings;
  private final List<Replies> all = new ArrayList<>();
  private final List<Replies> fitting = new ArrayList<>();

  Fit(RoleDraft role, Findings findings) {
    this.role = role;
    this.findings = findings;
    for (Offer offer : offers()) {
      Replies replies = replies(offer);
      all.add(replies);
      if (replies.firstLack().isEmpty() && (fitting.isEmpty() || replies.agrees(fitting.get(0)))) {
        fitting.add(replies);
      }
    }
  }

  /** Kinds with modules; if there are none at all, names can be checked all the same. */
  private List<Offer> offers() {
    List<Offer> owned = role.offers().stream().filter(o -> !o.modules().isEmpty()).toList();
    return owned.isEmpty() ? role.offers() : owned;
  }

  private Replies replies(Offer offer) {
    KindReading jacks = new KindReading(offer.kind(), role.name());
    ControlReading controls = new ControlReading(offer.kind(), jacks);
    return new Replies(
        offer,
        role.jacks().stream().map(jacks::jack).toList(),
        role.controls().stream().map(controls::control).toList());
  }

  boolean isPlayable() {
    return !fitting.isEmpty();
  }

  /** The modules that can play the role, kind after kind; empty if none can. */
  List<Module> candidates() {
    return fitting.isEmpty() ? List.of() : players();
  }

  /** The candidates; where a mistake leaves none, every module that the role accepts. */
  List<Module> players() {
    List<Replies> playing = fitting.isEmpty() ? all : fitting;
    if (playing.size() == 1) {
      return playing.get(0).offer().modules();
    }
    Set<Module> modules = new LinkedHashSet<>();
    playing.forEach(replies -> modules.addAll(replies.offer().modules()));
    return List.copyOf(modules);
  }

  /** How the {@code i}-th jack is read; equal if any kind that fits has several of them. */
  JackShape jack(int i) {
    JackShape first = fitting.get(0).jacks().get(i).found().orElseThrow();
    boolean equal =
        fitting.stream().anyMatch(replies -> replies.jacks().get(i).found().orElseThrow().equal());
    return new JackShape(first.jack(), first.number(), equal, first.direction());
  }

  ControlShape control(int i) {
    return fitting.get(0).controls().get(i).found().orElseThrow();
  }

  /** Which way the {@code i}-th jack runs; empty if no kind has it, which is reported here. */
  Optional<Direction> direction(int i) {
    Optional<Direction> right =
        all.stream()
            .flatMap(r -> r.jacks().get(i).found().stream())
            .findFirst()
            .map(JackShape::direction);
    if (right.isPresent() || all.isEmpty()) {
      return right;
    }
    return all.get(0).jacks().get(i).lack().orElseThrow().about() == Lack.About.DIRECTION
        ? Optional.of(role.jacks().get(i).source() ? Direction.IN : Direction.OUT)
        : Optional.empty();
  }

  /** Reports what no kind has; where some kind will do, notes which will not. */
  void report() {
    if (all.isEmpty()) {
      return;
    }
    if (!fitting.isEmpty()) {
      all.stream().filter(r -> !fitting.contains(r)).forEach(this::note);
      return;
    }
    Set<String> said = new HashSet<>();
    boolean shared = false;
    for (int i = 0; i < role.jacks().size(); i++) {
      int ask = i;
      End end = role.jacks().get(i).end();
      shared |= reportAsk(all.stream().map(r -> r.jacks().get(ask).lack()), end, end, said);
    }
    for (int i = 0; i < role.controls().size(); i++) {
      int ask = i;
      Setting setting = role.controls().get(i).setting();
      shared |=
          reportAsk(
              all.stream().map(r -> r.controls().get(ask).lack()), setting, setting.value(), said);
    }
    if (!shared) {
      reportMixed();
    }
  }

  /**
   * Reports an ask that every kind refuses, in the words of the first; the same words once.
   *
   * @return whether every kind refuses it
   */
  private boolean reportAsk(
      Stream<Optional<Lack>> answers, Object piece, Object value, Set<String> said) {
    List<Optional<Lack>> lacks = answers.toList();
    if (lacks.stream().anyMatch(Optional::isEmpty)) {
      return false;
    }
    Lack lack = lacks.get(0).orElseThrow();
    String message = lack.message(role.subject(all.get(0).offer()));
    if (lack.about() != Lack.About.DIRECTION && said.add(message)) {
      Object wrong = lack.about() == Lack.About.VALUE ? value : piece;
      findings.error(wrong, piece, message, lack.advice());
    }
    return true;
  }

  /** Each kind has something that another lacks, and none has all. */
  private void reportMixed() {
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

  private void note(Replies replies) {
    String why = replies.firstLack().map(Lack::predicate).orElse("reads the patch in another way");
    findings.note(
        role.piece(),
        "%s will not do for \"%s\": it %s"
            .formatted(role.subject(replies.offer()), role.name(), why),
        "Others will do; it only leaves the plan less freedom.");
  }
}
