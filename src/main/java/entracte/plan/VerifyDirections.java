package entracte.plan;

import entracte.rig.Cord;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

/**
 * A cord between two taps can serve both ways. While it waits, it counts the way it was used last;
 * before it was used at all, the way it will be used. (What it was used for last decides which end
 * is the sink, and so where it may wait.)
 */
final class VerifyDirections {
  private final Consumer<String> complain;
  private Map<Wire, Known> before = new HashMap<>();

  /** How a plugged cord counts, and whether a use has settled that. */
  private record Known(Cord cord, boolean used) {}

  private VerifyDirections(Consumer<String> complain) {
    this.complain = complain;
  }

  static void check(Plan plan, Consumer<String> complain) {
    VerifyDirections check = new VerifyDirections(complain);
    List<Cord> cords = plan.start().state().cords();
    for (int cord = 0; cord < cords.size(); cord++) {
      int length = plan.start().state().lengthCm().get(cord);
      Wire wire = Wire.of(new PluggedCord(cords.get(cord), length));
      check.before.put(wire, new Known(cords.get(cord), true));
    }
    plan.songs().forEach(check::follow);
  }

  private void follow(SongPlan song) {
    Map<Wire, Known> now = new HashMap<>();
    for (PluggedCord each : song.required()) {
      Known known = before.get(Wire.of(each));
      if (known != null && !known.used() && !known.cord().equals(each.cord())) {
        complain.accept("%s waited the other way round before its first use".formatted(each));
      }
      now.put(Wire.of(each), new Known(each.cord(), true));
    }
    for (PluggedCord each : song.parked()) {
      Known known = before.get(Wire.of(each));
      if (known != null && !known.cord().equals(each.cord())) {
        complain.accept("%s waits the other way round than before".formatted(each));
      }
      now.put(Wire.of(each), new Known(each.cord(), known != null && known.used()));
    }
    before = now;
  }
}
