package entracte.plan;

import entracte.rig.Control;
import entracte.rig.Module;
import entracte.rig.Position;
import entracte.rig.RigState;
import entracte.setlist.Song;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * The rig while a song sounds.
 *
 * @param casting who plays each role, in the order of the patch; implied multiples last
 * @param required the cords that the song needs
 * @param parked the cords that wait, unheard
 * @param positions every control whose position is known
 */
public record SongPlan(
    Song song,
    List<CastAs> casting,
    List<PluggedCord> required,
    List<PluggedCord> parked,
    Map<Control, Position> positions) {
  public SongPlan {
    casting = List.copyOf(casting);
    required = List.copyOf(required);
    parked = List.copyOf(parked);
    positions = Map.copyOf(positions);
  }

  /** All cords that are in. */
  public List<PluggedCord> cords() {
    return Stream.concat(required.stream(), parked.stream()).toList();
  }

  /** The rig as the song leaves it. */
  public RigState state() {
    return PluggedCord.state(cords(), positions);
  }

  /**
   * A role and the module that plays it. An implied multiple has the name of the source it splits,
   * such as {@code keys.pitch 2 multiple 1}.
   *
   * @param strips which strip of the module each strip of the role is, in the role's order
   */
  public record CastAs(String role, Module module, List<StripAs> strips) {
    public CastAs {
      strips = List.copyOf(strips);
    }
  }

  /**
   * @param label the strip's name in the patch: a channel's name, or an equal jack's
   * @param number the physical strip, from 1
   */
  public record StripAs(String label, int number) {}
}
