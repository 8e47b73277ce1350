package entracte.cue;

import entracte.plan.Action;
import entracte.plan.Changeover;
import entracte.rig.Control;
import entracte.rig.Cord;
import entracte.rig.Module;

/**
 * Which moves can be made while the song before the changeover still sounds. A cord that waits may
 * be pulled; a cord may be plugged where it could wait as well: its jacks are free and the module
 * at its sink end is idle; a control may be set if its module is idle. Nothing is known of what
 * sounds before a plan begins, and there the answer is no.
 */
final class Unheard {
  private final Course course;
  private final boolean parking;

  Unheard(Course course, boolean parking) {
    this.course = course;
    this.parking = parking;
  }

  boolean pull(Changeover changeover, Cord cord) {
    int before = changeover.to() - 1;
    return before >= 0 && !course.isRequired(before, cord);
  }

  boolean plug(Changeover changeover, Cord cord) {
    int before = changeover.to() - 1;
    return before >= 0
        && parking
        && idle(before, cord.sink().module())
        && idle(before, cord.source().module())
        && course.user(before, cord.sink()).isEmpty()
        && course.user(before, cord.source()).isEmpty();
  }

  /** The cord waits before, and could wait after, whatever jack its moving plug goes to. */
  boolean shift(Changeover changeover, Action.Shift shift) {
    int before = changeover.to() - 1;
    return before >= 0
        && parking
        && !course.isRequired(before, shift.from().cord())
        && idle(before, shift.to().cord().sink().module())
        && idle(before, shift.to().cord().source().module())
        && course.user(before, ShiftOrder.enters(shift)).isEmpty();
  }

  boolean set(Changeover changeover, Control control) {
    int before = changeover.to() - 1;
    return before >= 0 && idle(before, control.module());
  }

  private boolean idle(int song, Module module) {
    return course.role(song, module).isEmpty();
  }
}
