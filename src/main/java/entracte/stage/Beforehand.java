package entracte.stage;

import entracte.cue.Change;
import entracte.cue.Spot;
import entracte.cue.Verb;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What the hands do before the moves that were planned. The planner knows nothing of dead modules,
 * so their cords come out first: the other plug of such a cord is in a jack that plays.
 */
final class Beforehand {
  static final String LOWER = "LOWER the main level before any plug or switch moves";

  private Beforehand() {}

  /** The rig as it stands once that is done. */
  static TrueRig leaves(TrueRig base, Set<String> dead) {
    TrueRig rig = base;
    for (String module : dead) {
      rig = rig.withoutModule(module);
    }
    return rig;
  }

  /** The first way with {@code first} and the cords of dead modules in front, the level down. */
  static List<Way> of(Draft draft, List<Way> ways) {
    List<Move> moves = new ArrayList<>(draft.first);
    TrueRig left = leaves(draft.base, draft.dead);
    for (Change.Plugged cord : draft.base.cords()) {
      if (!left.cords().contains(cord)) {
        moves.add(pull(draft.show, cord));
      }
    }
    if (ways.isEmpty() || moves.isEmpty() && !staysDown(draft.base, ways.get(0))) {
      return ways;
    }
    List<Way> all = new ArrayList<>(ways);
    all.set(0, ways.get(0).with(levelled(moves, ways.get(0).moves())));
    return all;
  }

  /** Whether a level that was lowered for another way would stay down on this one. */
  private static boolean staysDown(TrueRig base, Way way) {
    return base.levelDown() && way.moves().stream().noneMatch(move -> move.verb() == Verb.RAISE);
  }

  /** The level goes down once, before the first plug, and up at the end. */
  private static List<Move> levelled(List<Move> first, List<Move> planned) {
    List<Move> all = new ArrayList<>();
    if (!first.isEmpty() && first.get(0).verb() != Verb.LOWER) {
      all.add(fixed(Verb.LOWER, LOWER));
    }
    all.addAll(first);
    planned.stream().filter(move -> move.verb() != Verb.LOWER).forEach(all::add);
    if (planned.stream().noneMatch(move -> move.verb() == Verb.RAISE)) {
      all.add(fixed(Verb.RAISE, "RAISE the main level slowly"));
    }
    return all;
  }

  private static Move pull(Show show, Change.Plugged cord) {
    return new Move(
        Verb.PULL,
        "PULL " + spoken(cord.sink()) + ", then " + spoken(cord.source()),
        2,
        Stream.of(cord.sink(), cord.source()).flatMap(jack -> spot(show, jack)).toList(),
        List.of(new Change.Pulled(cord.source(), cord.sink())),
        false);
  }

  private static Stream<Spot> spot(Show show, String jack) {
    return show.modules().stream().filter(spot -> jack.startsWith(spot.module() + "."));
  }

  private static String spoken(String jack) {
    return jack.replace('.', ' ');
  }

  /** A move that changes nothing the planner knows of. */
  static Move fixed(Verb verb, String text) {
    List<Change> level =
        switch (verb) {
          case LOWER, RAISE -> List.of(new Change.Level(verb == Verb.LOWER));
          case PULL, MOVE, PLUG, SWITCH, TURN, TUNE -> List.of();
        };
    return new Move(verb, text, 0, List.of(), level, false);
  }
}
