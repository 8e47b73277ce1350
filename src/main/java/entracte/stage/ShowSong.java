package entracte.stage;

import entracte.cue.GearSends;
import entracte.midi.Dispatch;
import entracte.midi.Outlet;
import java.util.List;
import java.util.OptionalDouble;

/**
 * One song as the stage knows it.
 *
 * @param lines key, tempo, who starts, notes, as far as the set says
 * @param lengthSeconds how long it sounds
 * @param gapSeconds the silence allowed before it
 * @param encore whether it is played only if called for
 */
public record ShowSong(
    String title,
    List<String> lines,
    OptionalDouble lengthSeconds,
    OptionalDouble gapSeconds,
    boolean encore,
    GearSends sends) {
  private static final Dispatch SOMETHING =
      Dispatch.atOnce("gear", new Outlet.Port("gear"), List.of());

  public ShowSong {
    lines = List.copyOf(lines);
  }

  /** A song of which nothing is to be read; whether it sends something is all that is known. */
  public static ShowSong outline(String title, boolean encore, GearSends sends) {
    return new ShowSong(
        title,
        List.of(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        encore,
        new GearSends(
            outline(sends.changeover()),
            outline(sends.song()),
            sends.sections().stream()
                .map(each -> new GearSends.Section(each.name(), outline(each.sends())))
                .toList()));
  }

  private static List<Dispatch> outline(List<Dispatch> sends) {
    return sending(!sends.isEmpty());
  }

  /** Stands for whatever is sent, or for nothing. */
  public static List<Dispatch> sending(boolean something) {
    return something ? List.of(SOMETHING) : List.of();
  }
}
