package entracte.plan;

import entracte.rig.Direction;
import entracte.rig.Rig;
import entracte.rig.Socket;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;

/**
 * Every jack holds one plug at most, every cord leads from something that gives to something that
 * takes, and the bag holds the cords, each long enough.
 */
final class VerifyPlugs {
  private VerifyPlugs() {}

  static void check(Rig rig, SongPlan song, Consumer<String> complain) {
    List<PluggedCord> all = song.cords();
    checkJacks(all, complain);
    all.forEach(cord -> checkLength(rig, cord, complain));
    Map<Integer, Long> used =
        all.stream().collect(Collectors.groupingBy(PluggedCord::lengthCm, Collectors.counting()));
    used.forEach(
        (length, count) -> {
          int stock = rig.cords().countByLengthCm().getOrDefault(length, 0);
          if (count > stock) {
            complain.accept(
                "%d cords of length %d are plugged, %d are in stock"
                    .formatted(count, length, stock));
          }
        });
  }

  private static void checkJacks(List<PluggedCord> all, Consumer<String> complain) {
    Set<Socket> taken = new HashSet<>();
    for (PluggedCord each : all) {
      Socket source = each.cord().source();
      Socket sink = each.cord().sink();
      if (source.jack().direction() == Direction.IN || sink.jack().direction() == Direction.OUT) {
        complain.accept("a cord runs backwards: " + each);
      }
      for (Socket socket : List.of(source, sink)) {
        if (!exists(socket)) {
          complain.accept("there is no jack " + socket);
        }
        if (!taken.add(socket)) {
          complain.accept("two plugs in " + socket);
        }
      }
    }
  }

  private static boolean exists(Socket socket) {
    return socket.module().kind().groups().contains(socket.group())
        && socket.group().jacks().contains(socket.jack())
        && socket.number() >= 1
        && socket.number() <= socket.group().count();
  }

  private static void checkLength(Rig rig, PluggedCord each, Consumer<String> complain) {
    OptionalInt shortest =
        rig.cordLengthCm(each.cord().source().module(), each.cord().sink().module());
    boolean fits =
        rig.cords().lengthMatters()
            ? shortest.isPresent() && each.lengthCm() >= shortest.getAsInt()
            : each.lengthCm() == shortest.getAsInt();
    if (!fits) {
      complain.accept("a cord of length %d for %s".formatted(each.lengthCm(), each));
    }
  }
}
