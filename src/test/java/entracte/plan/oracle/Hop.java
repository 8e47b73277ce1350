package entracte.plan.oracle;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.Literal;
import entracte.rig.Cord;
import entracte.rig.Socket;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * One required cord of a song: which hole each end is in is up to the casting, and {@code cords}
 * says which pair of holes that makes.
 */
final class Hop {
  final Map<Cord, BoolVar> cords = new LinkedHashMap<>();

  /**
   * @param oneModule whether both ends belong to one role; if not, they are on two modules
   */
  Hop(Cp cp, Map<Socket, Literal> from, Map<Socket, Literal> to, boolean oneModule) {
    Map<Socket, List<BoolVar>> leaving = new LinkedHashMap<>();
    Map<Socket, List<BoolVar>> arriving = new LinkedHashMap<>();
    from.keySet().forEach(socket -> leaving.put(socket, new ArrayList<>()));
    to.keySet().forEach(socket -> arriving.put(socket, new ArrayList<>()));
    for (Socket source : from.keySet()) {
      for (Socket sink : to.keySet()) {
        if (source.module().equals(sink.module()) == oneModule) {
          Cord cord = new Cord(source, sink);
          BoolVar made = cp.bool("hop " + cord);
          cords.put(cord, made);
          leaving.get(source).add(made);
          arriving.get(sink).add(made);
        }
      }
    }
    leaving.forEach((socket, made) -> cp.equal(from.get(socket), Cp.sum(made)));
    arriving.forEach((socket, made) -> cp.equal(to.get(socket), Cp.sum(made)));
  }
}
