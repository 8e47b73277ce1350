package entracte.plan.oracle;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpSolver;
import entracte.plan.Action;
import entracte.plan.PluggedCord;
import entracte.plan.oracle.CordVars.Piece;
import entracte.rig.Socket;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Reads the plugs of one changeover out of the solver's values. */
final class CordReading {
  private final CpSolver values;
  private final Changes changes;
  private final List<Action> actions = new ArrayList<>();

  CordReading(CpSolver values, Changes changes) {
    this.values = values;
    this.changes = changes;
  }

  List<Action> actions() {
    Map<List<Object>, Piece> leaving = new HashMap<>();
    for (Piece piece : changes.stays.keySet()) {
      if (changes.wasPlugged(values, piece) && !values.booleanValue(changes.stays.get(piece))) {
        Socket stays = stayingPlug(changes.kept.get(piece));
        if (stays == null) {
          actions.add(new Action.Remove(cord(piece)));
        } else {
          leaving.put(List.of(stays, piece.length()), piece);
        }
      }
    }
    changes.stays.keySet().forEach(piece -> plug(piece, leaving));
    return actions;
  }

  private void plug(Piece piece, Map<List<Object>, Piece> leaving) {
    if (changes.isPlugged(values, piece) && !values.booleanValue(changes.stays.get(piece))) {
      Socket stays = stayingPlug(changes.taken.get(piece));
      if (stays == null) {
        actions.add(new Action.Add(cord(piece)));
      } else {
        Piece from = leaving.get(List.of(stays, piece.length()));
        actions.add(new Action.Shift(cord(from), cord(piece), stays));
      }
    }
  }

  private Socket stayingPlug(Map<Socket, BoolVar> plugs) {
    return plugs.entrySet().stream()
        .filter(each -> values.booleanValue(each.getValue()))
        .map(Map.Entry::getKey)
        .findFirst()
        .orElse(null);
  }

  /** Which way the signal runs is of no matter to the hands. */
  private static PluggedCord cord(Piece piece) {
    return new PluggedCord(piece.wire().ways().get(0), piece.length());
  }
}
