package entracte.cue;

import entracte.plan.Action;
import entracte.plan.PluggedCord;
import entracte.rig.Cord;
import entracte.rig.Module;
import entracte.rig.Socket;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Why a cord comes, goes or changes places. Sentences without their full stops. */
final class CordReasons {
  private final Course course;
  private final boolean parking;
  private final CastingReasons casting;

  CordReasons(Course course, boolean parking) {
    this.course = course;
    this.parking = parking;
    this.casting = new CastingReasons(course);
  }

  /** The song that a cord plugged before {@code to} is for. */
  int songFor(int to, Cord cord) {
    return course.needed(to, cord).orElse(to);
  }

  String whyPlugged(int to, Cord cord) {
    OptionalInt needed = course.needed(to, cord);
    if (needed.isEmpty()) {
      return "it waits there, unheard";
    }
    int song = needed.getAsInt();
    return song == to ? wanted(song, cord) : course.early(song) + quiet(to, song, cord);
  }

  /** Of a plug that must leave its jack now, that comes first, wherever it goes to wait. */
  String whyMoved(int to, Action.Shift shift) {
    Cord from = shift.from().cord();
    Cord next = shift.to().cord();
    int song = songFor(to, next);
    Optional<String> inTheWay = inTheWay(to, from);
    if (song > to && inTheWay.isPresent()) {
      return inTheWay.get()
          + "; its new place is for "
          + course.numbered(song)
          + ": "
          + quiet(to, song, next);
    }
    Optional<String> left =
        taken(to, from, ShiftOrder.leaves(shift)).or(() -> heard(to, from.sink().module()));
    boolean samePart = from.sink().module().equals(next.sink().module());
    return whyPlugged(to, next)
        + (samePart ? "" : left.map(reason -> "; where it was, " + reason).orElse(""));
  }

  String whyPulled(int to, Cord cord) {
    return inTheWay(to, cord).orElseGet(() -> notKept(to, cord));
  }

  /** Why the coming song cannot have the cord where it is; empty if it could stay. */
  Optional<String> inTheWay(int to, Cord cord) {
    return Stream.of(cord.sink(), cord.source())
        .map(socket -> taken(to, cord, socket))
        .flatMap(Optional::stream)
        .findFirst()
        .or(() -> heard(to, cord.sink().module()));
  }

  private Optional<String> taken(int to, Cord cord, Socket socket) {
    return course
        .user(to, socket)
        .filter(next -> !next.cord().sameJacks(cord))
        .filter(next -> course.isRequired(to, next.cord()))
        .map(next -> Wording.name(socket) + " is needed by " + far(next, socket));
  }

  private static String far(PluggedCord cord, Socket near) {
    return Wording.name(Wording.otherEnd(cord, near));
  }

  private Optional<String> heard(int to, Module sink) {
    return course
        .role(to, sink)
        .map(
            role ->
                role.equals(sink.name())
                    ? "it could be heard through " + sink.name()
                    : "it could be heard: " + Wording.plays(sink, role));
  }

  private String notKept(int to, Cord cord) {
    if (!parking) {
      return "this set parks no cords";
    }
    OptionalInt later =
        IntStream.range(to + 1, course.songs())
            .filter(song -> course.isRequired(song, cord) || inTheWay(song, cord).isPresent())
            .findFirst();
    if (later.isEmpty()) {
      return "no later song needs it";
    }
    int song = later.getAsInt();
    return course.isRequired(song, cord)
        ? "the cord or its jacks are needed first"
        : "in " + course.numbered(song) + " " + inTheWay(song, cord).orElseThrow();
  }

  /** From source to sink, by what they are in the sound; then who plays the part it comes to. */
  private String wanted(int song, Cord cord) {
    Module sink = cord.sink().module();
    Module source = cord.source().module();
    boolean split = casting.isImplied(song, sink);
    String to = split ? sink.name() + " to be split" : casting.part(song, cord.sink());
    Optional<String> plays =
        split ? Optional.empty() : casting.plays(song, sink).or(() -> casting.plays(song, source));
    return course.title(song)
        + ": "
        + from(song, cord.source())
        + " feeds "
        + to
        + plays.map(part -> "; " + part).orElse("");
  }

  /** A tap passes on what its multiple splits. */
  private String from(int song, Socket source) {
    String name = source.module().name();
    return casting.isImplied(song, source.module())
        ? Wording.splits(course.role(song, source.module()).orElseThrow())
            + ", split by "
            + name
            + ","
        : casting.part(song, source);
  }

  private String quiet(int from, int song, Cord cord) {
    Module sink = cord.sink().module();
    return course.idle(from, song, sink)
        ? sink.name() + " is idle until then"
        : "its channel of " + sink.name() + " is shut until then";
  }
}
