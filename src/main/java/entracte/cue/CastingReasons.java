package entracte.cue;

import entracte.plan.SongPlan;
import entracte.plan.SongPlan.CastAs;
import entracte.rig.Control;
import entracte.rig.Module;
import entracte.rig.Socket;
import java.util.List;
import java.util.Optional;

/** What a module is in a song, and why this one and none of its equals. Parts of sentences. */
final class CastingReasons {
  private final Course course;

  CastingReasons(Course course) {
    this.course = course;
  }

  /** A jack by what it is in the sound: {@code bass pitch}, {@code blend low in}. */
  String part(int song, Socket socket) {
    Optional<CastAs> cast = cast(song, socket.module());
    boolean plain = cast.isEmpty() || isNamedOutright(cast.get()) || isImplied(cast.get());
    return plain ? Wording.name(socket) : cast.get().role() + " " + local(cast.get(), socket);
  }

  /** {@code osc 3 plays bass, the only one free}; empty for what the patch names outright. */
  Optional<String> plays(int song, Module module) {
    return cast(song, module)
        .filter(cast -> !isNamedOutright(cast))
        .map(cast -> Wording.plays(module, cast.role()) + why(song, cast));
  }

  /** Whether nobody asked for it but a cord that has to be split. */
  boolean isImplied(int song, Module module) {
    return cast(song, module).filter(CastingReasons::isImplied).isPresent();
  }

  private Optional<CastAs> cast(int song, Module module) {
    return course.song(song).casting().stream()
        .filter(cast -> cast.module().equals(module))
        .findFirst();
  }

  private static boolean isNamedOutright(CastAs cast) {
    return cast.role().equals(cast.module().name());
  }

  private static boolean isImplied(CastAs cast) {
    return Wording.isImplied(cast.module(), cast.role());
  }

  private static String local(CastAs cast, Socket socket) {
    return switch (socket.group().form()) {
      case OWN -> socket.jack().name();
      case EQUAL_JACKS -> socket.jack().name() + " " + socket.number();
      case CHANNELS -> channel(cast, socket.number()) + " " + socket.jack().name();
    };
  }

  private static String channel(CastAs cast, int number) {
    return cast.strips().stream()
        .filter(strip -> strip.number() == number)
        .map(SongPlan.StripAs::label)
        .filter(label -> !label.equals(Integer.toString(number)))
        .filter(label -> cast.module().kind().equalJacks(jack(label)).isEmpty())
        .findFirst()
        .orElse("channel " + number);
  }

  private static String jack(String label) {
    return label.replaceFirst(" \\d+$", "");
  }

  private String why(int song, CastAs cast) {
    List<Module> others =
        course.rig().modules().stream()
            .filter(module -> !module.equals(cast.module()) && isAccepted(song, cast, module))
            .toList();
    if (others.isEmpty()) {
      return ", the only one that can";
    }
    long kept = kept(song, cast.module());
    if (kept > 0) {
      return ", and keeps " + (kept == 1 ? "a cord" : kept + " cords") + " from the song before";
    }
    if (isSet(song, cast.module())) {
      return ", already set";
    }
    boolean free = others.stream().anyMatch(module -> course.role(song, module).isEmpty());
    return free ? "" : ", the only one free";
  }

  /** By the patch; an implied multiple has no line there, and any with taps will do. */
  private boolean isAccepted(int song, CastAs cast, Module module) {
    if (isImplied(cast)) {
      return module.kind().taps() > 0;
    }
    return course.song(song).song().patch().roles().stream()
        .filter(role -> role.name().equals(cast.role()))
        .findFirst()
        .map(role -> role.accepts())
        .orElse(List.of(cast.module().kind().name()))
        .stream()
        .anyMatch(name -> name.equals(module.kind().name()) || name.equals(module.name()));
  }

  private long kept(int song, Module module) {
    return song == 0
        ? 0
        : course.song(song).required().stream()
            .filter(
                cord ->
                    cord.cord().sink().module().equals(module)
                        || cord.cord().source().module().equals(module))
            .filter(cord -> course.isPlugged(song - 1, cord.cord()))
            .count();
  }

  /** Whether all that the song asks of its knobs and switches stood so in the song before. */
  private boolean isSet(int song, Module module) {
    List<Control> named =
        course.settings(song).all().stream()
            .map(NamedSettings.Named::control)
            .filter(control -> control.module().equals(module))
            .toList();
    return song > 0
        && !named.isEmpty()
        && named.stream().allMatch(control -> at(song, control).equals(at(song - 1, control)));
  }

  private Optional<?> at(int song, Control control) {
    return Optional.ofNullable(course.song(song).positions().get(control));
  }
}
