package entracte.cue;

import entracte.plan.Action.Shift;
import entracte.rig.Socket;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Puts the cords of which one plug moves in an order in which every jack is free when a plug comes
 * to it. Each jack is left by at most one plug and entered by at most one, so the moves form chains
 * and rings. A chain is done from its free end. A ring has none: there one plug is pulled and hangs
 * until the others have moved round. Where several plugs are free the hand stays at its module, and
 * then takes the leftmost.
 */
final class ShiftOrder {
  /** How much of a shift is done at once. */
  enum Form {
    WHOLE,
    LET_HANG,
    PLUG_HANGING
  }

  record Ordered(Shift shift, Form form) {}

  private final List<Shift> waiting;
  private final List<Shift> hanging = new ArrayList<>();
  private final List<Ordered> done = new ArrayList<>();

  private ShiftOrder(List<Shift> shifts) {
    waiting = new ArrayList<>(shifts);
    waiting.sort(Comparator.comparing(shift -> Spot.of(leaves(shift)), HandOrder.SPOTS));
  }

  static List<Ordered> of(List<Shift> shifts) {
    ShiftOrder order = new ShiftOrder(shifts);
    while (!order.waiting.isEmpty() || !order.hanging.isEmpty()) {
      order.step();
    }
    return order.done;
  }

  static Socket leaves(Shift shift) {
    return Wording.otherEnd(shift.from(), shift.stays());
  }

  static Socket enters(Shift shift) {
    return Wording.otherEnd(shift.to(), shift.stays());
  }

  private void step() {
    if (!take(hanging, Form.PLUG_HANGING) && !take(waiting, Form.WHOLE)) {
      Shift first = waiting.remove(0);
      hanging.add(first);
      done.add(new Ordered(first, Form.LET_HANG));
    }
  }

  private boolean take(List<Shift> from, Form form) {
    List<Shift> free = from.stream().filter(shift -> !held(enters(shift))).toList();
    Optional<Shift> next = free.stream().filter(this::isWhereTheHandIs).findFirst();
    Optional<Shift> taken = next.or(() -> free.stream().findFirst());
    taken.ifPresent(shift -> done.add(new Ordered(shift, form)));
    return taken.map(from::remove).orElse(false);
  }

  private boolean isWhereTheHandIs(Shift shift) {
    return !done.isEmpty()
        && leaves(done.get(done.size() - 1).shift()).module().equals(leaves(shift).module());
  }

  private boolean held(Socket socket) {
    return waiting.stream().anyMatch(shift -> leaves(shift).equals(socket));
  }
}
