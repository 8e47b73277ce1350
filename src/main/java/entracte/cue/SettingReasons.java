package entracte.cue;

import entracte.rig.Control;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/** Why a knob is turned or a switch thrown. Sentences without their full stops. */
final class SettingReasons {
  private final Course course;
  private final CastingReasons casting;

  SettingReasons(Course course) {
    this.course = course;
    this.casting = new CastingReasons(course);
  }

  /** The song that a control set before {@code to} is for. */
  int songFor(int to, Control control) {
    return firstCare(to, control).orElse(to);
  }

  /** Whether the ear has the last word on it in the coming song. */
  boolean byEar(int to, Control control) {
    return course.settings(to).of(control).filter(NamedSettings.Named::byEar).isPresent();
  }

  String why(int to, Control control) {
    OptionalInt care = firstCare(to, control);
    if (care.isEmpty()) {
      return "no song cares how it stands";
    }
    int song = care.getAsInt();
    if (song > to) {
      return course.early(song) + free(to, song, control);
    }
    return isShutting(to, control)
        ? "shut, so that the cord waiting there is not heard"
        : "for "
            + course.settings(to).of(control).orElseThrow().owner()
            + " in "
            + course.title(to)
            + casting.plays(to, control.module()).map(part -> "; " + part).orElse("");
  }

  private OptionalInt firstCare(int to, Control control) {
    return IntStream.range(to, course.songs())
        .filter(song -> course.settings(song).of(control).isPresent() || isShutting(song, control))
        .findFirst();
  }

  /** Whether it shuts a channel that the song does not use, for a cord that waits in it. */
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
