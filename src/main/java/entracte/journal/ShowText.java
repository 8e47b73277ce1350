package entracte.journal;

import entracte.cue.Change;
import entracte.cue.Ear;
import entracte.cue.Spot;
import entracte.cue.Verb;
import entracte.journal.Fields.In;
import entracte.journal.Fields.Out;
import entracte.stage.Move;
import entracte.stage.TrueRig;
import entracte.stage.Way;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Rigs, ways and moves as fields and back. */
final class ShowText {
  private static final String RUNS = " by runs ";

  private ShowText() {}

  /** A night begins with nothing tuned and the level up; the rest is told move by move. */
  static void write(Out out, TrueRig rig) {
    out.each(rig.cords(), cord -> write(out, cord));
    write(out, rig.positions());
    write(out, rig.jumpers());
  }

  static void write(Out out, Map<String, String> positions) {
    out.each(positions.entrySet(), e -> out.add(e.getKey()).add(e.getValue()));
  }

  static TrueRig rig(In in) {
    List<Change.Plugged> cords = in.each(ShowText::plugged);
    return new TrueRig(cords, positions(in), positions(in));
  }

  /** By name; none at the end of a line that an earlier version wrote. */
  static Map<String, String> positions(In in) {
    Map<String, String> positions = new LinkedHashMap<>();
    if (in.goesOn()) {
      in.each(field -> positions.put(field.text(), field.text()));
    }
    return positions;
  }

  private static Change.Plugged plugged(In in) {
    if (change(in) instanceof Change.Plugged plugged) {
      return plugged;
    }
    throw new IllegalArgumentException("what a rig holds is cords");
  }

  static void write(Out out, Way way) {
    out.add(way.song()).add(way.setUp()).each(way.moves(), move -> write(out, move));
    out.add(way.seconds() + (way.runs() == 0 ? "" : RUNS + way.runs()));
    out.each(way.lookAt(), out::add);
  }

  /** Runs stand behind the seconds, so that what an earlier version wrote is read. */
  static Way way(In in) {
    int song = in.whole();
    boolean setUp = in.yes();
    List<Move> moves = in.each(ShowText::move);
    String[] seconds = in.text().split(RUNS);
    int runs = seconds.length > 1 ? Integer.parseInt(seconds[1]) : 0;
    double each = Double.parseDouble(seconds[0]);
    return new Way(song, setUp, moves, each, runs, in.each(In::text));
  }

  private static void write(Out out, Move move) {
    out.add(move.verb().name()).add(text(move)).add(move.moves());
    out.each(
        move.reach(),
        spot -> out.add(spot.module()).add(spot.row()).add(spot.centreCm()).add(spot.part()));
    out.each(move.changes(), change -> write(out, change)).add(move.unheard());
  }

  /** Its notes are the further lines of its text, so that what an earlier version wrote is read. */
  private static String text(Move move) {
    return Stream.concat(Stream.of(move.text()), move.notes().stream())
        .collect(Collectors.joining("\n"));
  }

  private static Move move(In in) {
    Verb verb = Verb.valueOf(in.text());
    List<String> lines = List.of(in.text().split("\n"));
    return new Move(
        verb,
        lines.get(0),
        in.whole(),
        in.each(s -> new Spot(s.text(), s.whole(), s.figure(), s.whole())),
        in.each(ShowText::change),
        in.yes(),
        lines.subList(1, lines.size()));
  }

  private static void write(Out out, Change change) {
    if (change instanceof Change.Plugged plugged) {
      out.add("plugged").add(plugged.source()).add(plugged.sink()).add(plugged.lengthCm());
    } else if (change instanceof Change.Pulled pulled) {
      out.add("pulled").add(pulled.source()).add(pulled.sink());
    } else if (change instanceof Change.Set set) {
      out.add("set").add(set.control()).add(set.position());
    } else if (change instanceof Change.Tuned tuned) {
      out.add("tuned").add(tuned.module());
      write(out, tuned.ear());
    } else if (change instanceof Change.Touched touched) {
      out.add("touched").add(touched.module());
    } else if (change instanceof Change.Level level) {
      out.add("level").add(level.down());
    }
  }

  private static void write(Out out, Ear ear) {
    out.each(ear.cords(), out::add);
    out.each(ear.loads().entrySet(), load -> out.add(load.getKey()).add(load.getValue()));
    write(out, ear.settings());
    out.add(ear.wish());
  }

  private static Change change(In in) {
    return switch (in.text()) {
      case "plugged" -> new Change.Plugged(in.text(), in.text(), in.whole());
      case "pulled" -> new Change.Pulled(in.text(), in.text());
      case "tuned" -> new Change.Tuned(in.text(), ear(in));
      case "touched" -> new Change.Touched(in.text());
      case "level" -> new Change.Level(in.yes());
      default -> new Change.Set(in.text(), in.text());
    };
  }

  private static Ear ear(In in) {
    Set<String> cords = Set.copyOf(in.each(In::text));
    Map<String, Long> loads = new LinkedHashMap<>();
    in.each(load -> loads.put(load.text(), load.wide()));
    return new Ear(cords, loads, positions(in), in.text());
  }
}
