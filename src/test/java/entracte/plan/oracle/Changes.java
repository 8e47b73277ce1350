package entracte.plan.oracle;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.LinearExpr;
import entracte.plan.Tempo;
import entracte.plan.oracle.CordVars.Piece;
import entracte.rig.Cord;
import entracte.rig.Socket;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The cords of one changeover. A cord that was plugged and is plugged stays; the others are removed
 * or added. A removed one may keep the plug at one of its ends, for an added one of the same length
 * that has a plug in that jack: as each jack holds one plug before and one after, those choices are
 * exactly a matching between the removed and the added.
 */
final class Changes {
  final Map<Piece, BoolVar> stays = new LinkedHashMap<>();

  final Map<Piece, BoolVar> gone = new LinkedHashMap<>();
  final Map<Piece, BoolVar> come = new LinkedHashMap<>();

  /** Which plug of a removed cord stays. */
  final Map<Piece, Map<Socket, BoolVar>> kept = new LinkedHashMap<>();

  /** Which plug of an added cord was there before. */
  final Map<Piece, Map<Socket, BoolVar>> taken = new LinkedHashMap<>();

  private final Cp cp;
  private final Universe universe;
  private final CordVars before;
  private final CordVars after;

  /**
   * @param before null if the changeover leads from the start
   */
  Changes(Cp cp, Universe universe, CordVars before, CordVars after) {
    this.cp = cp;
    this.universe = universe;
    this.before = before;
    this.after = after;
    after.plugged.keySet().forEach(this::follow);
    matchPlugs();
    for (Wire wire : universe.wires()) {
      if (after.waits.get(wire.ways().get(0)).fresh() != null) {
        keepDirection(wire);
      }
    }
  }

  private LinearArgument was(Piece piece) {
    return before == null
        ? LinearExpr.constant(universe.atStart(piece.wire(), piece.length()))
        : before.plugged.get(piece);
  }

  boolean wasPlugged(CpSolver values, Piece piece) {
    return values.value(was(piece)) == 1;
  }

  boolean isPlugged(CpSolver values, Piece piece) {
    return values.booleanValue(after.plugged.get(piece));
  }

  private void follow(Piece piece) {
    BoolVar stay = cp.bool("stays");
    stays.put(piece, stay);
    gone.put(piece, cp.bool("goes to the bag"));
    come.put(piece, cp.bool("comes from the bag"));
    kept.put(piece, plugs(piece, was(piece), stay, gone.get(piece)));
    taken.put(piece, plugs(piece, after.plugged.get(piece), stay, come.get(piece)));
    cp.model.addGreaterOrEqual(
        stay, LinearExpr.newBuilder().add(was(piece)).add(after.plugged.get(piece)).add(-1));
  }

  /** A cord that is there stays, has to do with the bag, or moves one of its plugs. */
  private Map<Socket, BoolVar> plugs(Piece piece, LinearArgument there, BoolVar stay, BoolVar bag) {
    Map<Socket, BoolVar> plugs = new LinkedHashMap<>();
    piece.wire().jacks().forEach(jack -> plugs.put(jack, cp.bool("plug in " + jack)));
    List<LinearArgument> fates = new ArrayList<>(plugs.values());
    fates.add(stay);
    fates.add(bag);
    cp.equal(Cp.sum(fates), there);
    return plugs;
  }

  private void matchPlugs() {
    Map<List<Object>, List<BoolVar>> left = new LinkedHashMap<>();
    Map<List<Object>, List<BoolVar>> right = new LinkedHashMap<>();
    for (Piece piece : stays.keySet()) {
      for (Socket jack : piece.wire().jacks()) {
        List<Object> key = List.of(jack, piece.length());
        left.computeIfAbsent(key, k -> new ArrayList<>()).add(kept.get(piece).get(jack));
        right.computeIfAbsent(key, k -> new ArrayList<>()).add(taken.get(piece).get(jack));
      }
    }
    left.forEach((key, all) -> cp.equal(Cp.sum(all), Cp.sum(right.get(key))));
  }

  private void keepDirection(Wire wire) {
    List<BoolVar> lengths =
        wire.lengths().stream().map(length -> stays.get(new Piece(wire, length))).toList();
    LinearExpr stay = Cp.sum(lengths);
    for (Cord way : wire.ways()) {
      Waits now = after.waits.get(way);
      List<LinearArgument> used = new ArrayList<>();
      if (before != null) {
        used.add(before.required.get(way));
        used.add(before.waits.get(way).after());
      } else if (universe.runsAtStart(way)) {
        used.add(LinearExpr.constant(1));
      }
      cp.atMostSum(now.after(), used);
      cp.model.addLessOrEqual(now.after(), stay);
      if (before != null) {
        freshAsLong(wire, way, stay);
      } else {
        cp.atMost(Cp.sum(List.of(now.fresh(), stay)), 1);
      }
    }
  }

  /** What waits before its first use goes on waiting that way, and is then used that way. */
  private void freshAsLong(Wire wire, Cord way, LinearExpr stay) {
    LinearExpr one = LinearExpr.constant(1);
    BoolVar was = before.waits.get(way).fresh();
    LinearArgument left = Cp.sum(List.of(after.waits.get(way).fresh(), stay));
    cp.atMostSum(left, List.of(one, was));
    for (Cord otherWay : wire.ways()) {
      if (!otherWay.equals(way)) {
        cp.atMost(Cp.sum(List.of(was, after.required.get(otherWay), stay)), 2);
      }
    }
  }

  /** What waits before its first use goes on to it: nothing is plugged that no song needs. */
  void plugNothingIdly() {
    for (Wire wire : universe.wires()) {
      List<BoolVar> stay =
          wire.lengths().stream().map(length -> stays.get(new Piece(wire, length))).toList();
      wire.ways().forEach(way -> cp.atMostSum(before.waits.get(way).fresh(), stay));
    }
  }

  /** Pulls and plugs. */
  LinearExpr moves() {
    var moves = LinearExpr.newBuilder();
    for (Piece piece : stays.keySet()) {
      moves.addTerm(gone.get(piece), 2).addTerm(come.get(piece), 2);
      kept.get(piece).values().forEach(moves::add);
      taken.get(piece).values().forEach(moves::add);
    }
    return moves.build();
  }

  /** What pulls and plugs take, in hundredths of a second. */
  LinearExpr time(Tempo tempo) {
    var time = LinearExpr.newBuilder();
    for (Piece piece : stays.keySet()) {
      long pulls = piece.wire().jacks().stream().mapToLong(j -> hundredths(tempo.pull(j))).sum();
      long plugs = piece.wire().jacks().stream().mapToLong(j -> hundredths(tempo.plug(j))).sum();
      time.addTerm(gone.get(piece), pulls).addTerm(come.get(piece), plugs);
      kept.get(piece)
          .forEach((jack, keeps) -> time.addTerm(keeps, pulls - hundredths(tempo.pull(jack))));
      taken
          .get(piece)
          .forEach((jack, takes) -> time.addTerm(takes, plugs - hundredths(tempo.plug(jack))));
    }
    return time.build();
  }

  static long hundredths(double seconds) {
    return Math.round(100 * seconds);
  }
}
