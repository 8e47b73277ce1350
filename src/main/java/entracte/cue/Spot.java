package entracte.cue;

import entracte.rig.Control;
import entracte.rig.Module;
import entracte.rig.Socket;

/**
 * Where a hand goes.
 *
 * @param module the module's name
 * @param row from 0 at the top
 * @param centreCm the distance of the module's centre from the left edge of its row
 * @param part which of the module's jacks or controls, counted as its kind lists them
 */
public record Spot(String module, int row, double centreCm, int part) {
  static Spot of(Socket socket) {
    return on(socket.module(), socket.module().sockets().indexOf(socket));
  }

  static Spot of(Control control) {
    return on(control.module(), control.module().controls().indexOf(control));
  }

  static Spot of(Module module) {
    return on(module, 0);
  }

  private static Spot on(Module module, int part) {
    return new Spot(module.name(), module.row(), module.centreCm(), part);
  }
}
