package entracte.plan.oracle;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.Literal;
import entracte.rig.Cord;
import entracte.rig.Direction;
import entracte.rig.Module;
import entracte.rig.Socket;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What is plugged in one song. */
final class CordVars {
  /** A cord of one length between two jacks. */
  record Piece(Wire wire, int length) {}

  final Map<Piece, BoolVar> plugged = new LinkedHashMap<>();
  final Map<Cord, LinearExpr> required = new LinkedHashMap<>();
  final Map<Cord, Waits> waits = new LinkedHashMap<>();

  private final Cp cp;
  private final Universe universe;
  private final SongVars song;

  /**
   * @param tells whether of every waiting cord it must be known if it was in use before
   */
  CordVars(Cp cp, Universe universe, SongVars song, boolean parking, boolean tells) {
    this.cp = cp;
    this.universe = universe;
    this.song = song;
    Map<Cord, List<BoolVar>> hops = song.required();
    for (Wire wire : universe.wires()) {
      List<LinearArgument> uses = new ArrayList<>();
      for (Cord way : wire.ways()) {
        required.put(way, Cp.sum(hops.getOrDefault(way, List.of())));
        waits.put(
            way,
            wire.ways().size() == 1 && !tells
                ? Waits.oneWay(cp, way.toString())
                : Waits.bothWays(cp, way.toString()));
        uses.add(required.get(way));
        uses.addAll(waits.get(way).either());
      }
      List<BoolVar> lengths = new ArrayList<>();
      for (int length : wire.lengths()) {
        lengths.add(cp.bool("plugged " + wire.one() + wire.other() + length));
        plugged.put(new Piece(wire, length), lengths.get(lengths.size() - 1));
      }
      cp.equal(Cp.sum(lengths), Cp.sum(uses));
    }
    onePlugPerJack();
    stock();
    if (parking) {
      outputsApart();
    } else {
      waits.values().forEach(each -> cp.atMost(Cp.sum(each.either()), 0));
    }
  }

  private void onePlugPerJack() {
    Map<Socket, List<BoolVar>> plugs = new LinkedHashMap<>();
    plugged.forEach(
        (piece, in) ->
            piece
                .wire()
                .jacks()
                .forEach(jack -> plugs.computeIfAbsent(jack, j -> new ArrayList<>()).add(in)));
    plugs.values().forEach(cp::atMostOne);
  }

  private void stock() {
    Map<Integer, List<BoolVar>> byLength = new LinkedHashMap<>();
    plugged.forEach(
        (piece, in) -> byLength.computeIfAbsent(piece.length(), l -> new ArrayList<>()).add(in));
    byLength.forEach(
        (length, all) -> {
          int stock = universe.rig().cords().countByLengthCm().get(length);
          if (stock < all.size()) {
            cp.atMost(Cp.sum(all), stock);
          }
        });
  }

  /** An idle multiple gets a signal from one side at most, an active one from none. */
  private void outputsApart() {
    Map<Module, List<BoolVar>> into = new LinkedHashMap<>();
    waits.forEach(
        (way, each) -> {
          if (way.sink().jack().direction() == Direction.TAP) {
            into.computeIfAbsent(way.sink().module(), m -> new ArrayList<>()).addAll(each.either());
          }
        });
    into.forEach(
        (multiple, all) -> {
          List<LinearArgument> terms = new ArrayList<>(all);
          terms.add(song.active(multiple));
          cp.atMost(Cp.sum(terms), 1);
        });
  }

  /**
   * A cord into an input waits only if the module is idle or, should it have one, its channel shut.
   */
  void waitUnheard(Map<Spot, Literal> shut) {
    waits.forEach(
        (way, each) -> {
          Socket sink = way.sink();
          if (sink.jack().direction() != Direction.TAP) {
            List<LinearArgument> left = new ArrayList<>(each.either());
            left.add(song.active(sink.module()));
            List<LinearArgument> right = new ArrayList<>(List.of(LinearExpr.constant(1)));
            Literal closed = shut.get(new Spot(sink.module(), sink.group(), sink.number()));
            if (closed != null) {
              right.add(closed);
            }
            cp.atMostSum(Cp.sum(left), right);
          }
        });
  }
}
