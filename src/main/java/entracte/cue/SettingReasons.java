package entracte.cue;

import entracte.rig.Control;
import java.util.OptionalInt;

/** Why a knob is turned or a switch thrown. Sentences without their full stops. */
final class SettingReasons {
  private final Course course;

  SettingReasons(Course course) {
    this.course = course;
  }

  int songFor(int to, Control control) {
    return isShutting(to, control) ? to : course.named(to, control).orElse(to);
  }

  String why(int to, Control control) {
    OptionalInt named = course.named(to, control);
    if (isShutting(to, control)) {
      return "shut, so that the cord waiting there is not heard";
    }
    if (named.isEmpty()) {
      return "the plan wants it so";
    }
    int song = named.getAsInt();
    return song == to
        ? course.settings(song).of(control).orElseThrow().owner()
            + " wants it in "
            + course.title(song)
        : course.early(song) + free(to, song, control);
  }

  /** Whether it shuts a channel that the coming song does not use, for a cord that waits in it. */
  private boolean isShutting(int to, Control control) {
    return course.settings(to).of(control).isEmpty()
        && control.group().closed().containsKey(control.name())
        && course.role(to, control.module()).isPresent()
        && waits(to, control);
  }

  private boolean waits(int to, Control control) {
    return control.module().sockets().stream()
        .filter(s -> s.group().form() == control.group().form() && s.number() == control.number())
        .anyMatch(
            s -> course.user(to, s).filter(c -> !course.isRequired(to, c.cord())).isPresent());
  }

  private String free(int from, int song, Control control) {
    return course.idle(from, song, control.module())
        ? control.module().name() + " is idle until then"
        : "no song before that cares";
  }
}
