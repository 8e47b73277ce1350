package entracte.plan;

import entracte.check.Checker;
import entracte.check.PlayableSet;
import entracte.plan.WhatIf.Changed;
import entracte.rig.Kind;
import entracte.rig.Module;
import entracte.rig.Rig;
import entracte.setlist.SetList;
import entracte.setlist.Song;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BiConsumer;
import java.util.stream.IntStream;

/**
 * Answers what a set would be on another rig: with one more module of each kind, with more cords,
 * without each of its modules. Each other rig is a model of its own that goes through the check
 * anew, so that candidates and jumpers are those of that rig; and each is searched from the plan of
 * the rig as it is, by the same short annealing, in as many threads as there are cores. That plan
 * itself is improved in the same way first, so that nothing is put down to a purchase that a longer
 * search would have found without it.
 */
public final class Asker {
  public static final int MORE_CORDS = 6;

  private final PlayableSet set;
  private final ShortSearch search;
  private final Result.Planned base;

  private Asker(PlayableSet set, Result.Planned base, Options options) {
    this.set = set;
    this.search = new ShortSearch(options);
    Optional<Plan> better =
        search.find(set, base.plan()).filter(plan -> plan.moves() < base.plan().moves());
    this.base = better.map(plan -> withPlan(base, plan)).orElse(base);
  }

  private static Result.Planned withPlan(Result.Planned old, Plan plan) {
    return new Result.Planned(
        old.aim(),
        plan,
        old.lowerBound(),
        old.setUpLowerBound(),
        false,
        old.stopped(),
        old.searchSeconds());
  }

  /**
   * Asks everything about a set.
   *
   * @param base a plan of it as it is
   * @param progress told how many questions are answered, and of how many, from any thread
   */
  public static WhatIf.Answers ask(
      PlayableSet set,
      Result.Planned base,
      Options options,
      BiConsumer<Integer, Integer> progress) {
    return new Asker(set, base, options.withStart(Start.bare())).ask(progress);
  }

  private WhatIf.Answers ask(BiConsumer<Integer, Integer> progress) {
    Rig rig = set.setList().rig();
    List<Callable<WhatIf>> more = new ArrayList<>();
    for (Kind kind : rig.kinds()) {
      if (rig.modules().stream().anyMatch(m -> m.kind().equals(kind))) {
        more.add(() -> oneMore(kind));
      }
    }
    more.add(this::moreCords);
    List<Callable<WhatIf>> all = new ArrayList<>(more);
    rig.modules().forEach(module -> all.add(() -> without(module)));
    AtomicInteger done = new AtomicInteger();
    try (Workers workers = new Workers()) {
      List<WhatIf> answers =
          workers.all(
              all.stream().map(question -> counted(question, done, all.size(), progress)).toList());
      return new WhatIf.Answers(
          base, answers.subList(0, more.size()), answers.subList(more.size(), answers.size()));
    }
  }

  private static Callable<WhatIf> counted(
      Callable<WhatIf> question,
      AtomicInteger done,
      int all,
      BiConsumer<Integer, Integer> progress) {
    return () -> {
      WhatIf answer = question.call();
      progress.accept(done.incrementAndGet(), all);
      return answer;
    };
  }

  private WhatIf oneMore(Kind kind) {
    Rig rig = set.setList().rig().withOneMore(kind);
    Optional<PlayableSet> other = Checker.playable(set.setList().withRig(rig));
    Changed changed = new Changed.OneMore(kind);
    if (other.isEmpty() || (kind.taps() == 0 && !hasPart(other.get(), rig, kind))) {
      return asNow(changed, true);
    }
    return atMostAsNow(changed, other.get());
  }

  /** Whether some role could be played by the new module. */
  private boolean hasPart(PlayableSet other, Rig rig, Kind kind) {
    List<Module> old = set.setList().rig().modules();
    return other.parts().stream()
        .flatMap(part -> part.roles().stream())
        .flatMap(role -> role.candidates().stream())
        .anyMatch(module -> !old.contains(module));
  }

  private WhatIf moreCords() {
    Changed changed = new Changed.MoreCords(MORE_CORDS);
    SetList list = set.setList();
    if (list.rig().cords().isUnlimited()) {
      return asNow(changed, true);
    }
    Rig rig = list.rig().withCords(list.rig().cords().withMore(MORE_CORDS));
    return Checker.playable(list.withRig(rig))
        .map(other -> atMostAsNow(changed, other))
        .orElseGet(() -> asNow(changed, false));
  }

  private WhatIf asNow(Changed changed, boolean certain) {
    return new WhatIf(changed, List.of(), OptionalInt.of(base.plan().moves()), certain);
  }

  /** What has more can do all that the rig can do now. */
  private WhatIf atMostAsNow(Changed changed, PlayableSet other) {
    int now = base.plan().moves();
    int moves = search.find(other, base.plan()).map(Plan::moves).orElse(now);
    return new WhatIf(changed, List.of(), OptionalInt.of(Math.min(now, moves)), now == 0);
  }

  private WhatIf without(Module module) {
    Changed changed = new Changed.Without(module);
    SetList list = set.setList().withRig(set.setList().rig().without(module));
    List<String> lost =
        IntStream.range(0, list.songs().size())
            .mapToObj(list.songs()::get)
            .filter(song -> !plays(list, song))
            .map(Song::name)
            .toList();
    if (!lost.isEmpty()) {
      return new WhatIf(changed, lost, OptionalInt.empty(), true);
    }
    if (!isTouched(module)) {
      return asNow(changed, false);
    }
    Optional<Plan> plan = Checker.playable(list).flatMap(other -> search.find(other, base.plan()));
    OptionalInt moves = plan.map(p -> OptionalInt.of(p.moves())).orElse(OptionalInt.empty());
    return new WhatIf(changed, lost, moves, false);
  }

  /** Whether a song can be played on its own. */
  private static boolean plays(SetList list, Song song) {
    return Checker.playable(list.withSongs(List.of(song)))
        .map(alone -> new FirstCasting(new Problem(alone, Start.bare())).find())
        .filter(found -> found instanceof FirstCasting.Found.Cast)
        .isPresent();
  }

  /** Whether the plan as it is casts the module. */
  private boolean isTouched(Module module) {
    return base.plan().songs().stream()
        .flatMap(song -> song.casting().stream())
        .anyMatch(cast -> cast.module().equals(module));
  }
}
