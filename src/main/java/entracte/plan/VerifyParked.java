package entracte.plan;

import entracte.rig.Control;
import entracte.rig.Direction;
import entracte.rig.Group;
import entracte.rig.Module;
import entracte.rig.Position;
import entracte.rig.Socket;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;

/**
 * A parked cord ends in an idle module, or in a closed channel that the song does not name; and no
 * idle multiple gets a signal from two sides, which would join two outputs.
 */
final class VerifyParked {
  private VerifyParked() {}

  static void check(boolean parking, CastPart cast, Consumer<String> complain) {
    Set<Module> active = cast.active();
    Set<Module> fed = new HashSet<>();
    for (PluggedCord each : cast.song().parked()) {
      Socket sink = each.cord().sink();
      if (!parking) {
        complain.accept("nothing may be parked, yet there is " + each);
      }
      if (active.contains(sink.module()) && !isClosed(cast, sink)) {
        complain.accept("a parked cord would be heard: " + each);
      }
      if (sink.jack().direction() == Direction.TAP && !fed.add(sink.module())) {
        complain.accept("parked cords join two outputs in " + sink.module());
      }
    }
  }

  private static boolean isClosed(CastPart cast, Socket sink) {
    Group group = sink.group();
    return group.form() == Group.Form.CHANNELS
        && !group.closed().isEmpty()
        && !cast.namesChannel(sink.module(), sink.number())
        && standsClosed(cast.song().positions(), sink);
  }

  private static boolean standsClosed(Map<Control, Position> positions, Socket sink) {
    return sink.module().controls().stream()
        .filter(c -> c.group().equals(sink.group()) && c.number() == sink.number())
        .filter(c -> sink.group().closed().containsKey(c.name()))
        .allMatch(c -> sink.group().closed().get(c.name()).equals(positions.get(c)));
  }
}
