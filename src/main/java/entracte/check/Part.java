package entracte.check;

import entracte.rig.Group;
import entracte.rig.Kind;
import entracte.rig.Module;
import entracte.setlist.Interval;
import entracte.setlist.Song;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiPredicate;

/**
 * What one song needs of the rig, with every name resolved.
 *
 * <p>A module that the patch names outright ({@code keys}) is a role like any other, with one
 * candidate. The multiples that a source with several sinks needs are not yet among the roles: the
 * planner finds them.
 *
 * @param nets each source that is patched; no source stands twice
 * @param settings of knobs and switches
 */
public record Part(
    Song song,
    List<CastRole> roles,
    List<Net> nets,
    List<Wanted> settings,
    List<JumperNeed> jumpers) {
  public Part {
    roles = List.copyOf(roles);
    nets = List.copyOf(nets);
    settings = List.copyOf(settings);
    jumpers = List.copyOf(jumpers);
  }

  /** How the patch calls the channel or the equal jack; empty for a jack of the module's own. */
  String strip(JackUse jack) {
    Owner owner = jack.owner();
    return owner.strip() == Owner.OWN
        ? ""
        : roles.get(owner.role()).channels().get(owner.strip()).label();
  }

  /** The same part, for which these modules are no candidates. */
  Part without(Set<Module> dead) {
    return casting((role, module) -> !dead.contains(module));
  }

  /** The same part, in which jumpers stand where they stand. */
  Part withJumpers(Map<String, String> positions) {
    return casting(
        (role, module) ->
            jumpers.stream()
                .filter(need -> roles.get(need.role()) == role)
                .allMatch(
                    need ->
                        need.position()
                            .equals(positions.get(module.name() + "." + need.jumper()))));
  }

  private Part casting(BiPredicate<CastRole, Module> fits) {
    List<CastRole> left =
        roles.stream()
            .map(
                role ->
                    new CastRole(
                        role.name(),
                        role.candidates().stream().filter(m -> fits.test(role, m)).toList(),
                        role.channels()))
            .toList();
    return new Part(song, left, nets, settings, jumpers);
  }

  /** The same part in another song that plays the same patch. */
  Part playedBy(Song other) {
    return new Part(other, roles, nets, settings, jumpers);
  }

  /**
   * A role and the modules that can play it.
   *
   * @param channels the strips of the module that the role needs, each another one
   */
  public record CastRole(String name, List<Module> candidates, List<Strip> channels) {
    public CastRole {
      candidates = List.copyOf(candidates);
      channels = List.copyOf(channels);
    }
  }

  /**
   * A strip that a role needs: a channel of a mixer, or one of several equal jacks. Strips of one
   * role with the same group are different physical strips.
   *
   * @param label how the patch calls it: {@code low} for {@code blend.low}, {@code pitch} or {@code
   *     pitch 2} for an equal jack
   * @param jack the name of the equal jack; empty for a channel
   * @param number the very strip, if the patch says which; else 0
   */
  public record Strip(String label, String jack, int number) {
    public boolean isChannel() {
      return jack.isEmpty();
    }

    /**
     * The group of {@code kind} that the strip is one of; empty if the kind has none. A role may
     * accept a kind with two equal pitch jacks and another with a single one: there the strip is
     * the module's own group.
     */
    public Optional<Group> groupOf(Kind kind) {
      if (isChannel()) {
        return kind.channels();
      }
      return kind.equalJacks(jack).or(() -> kind.own().jack(jack).map(single -> kind.own()));
    }
  }

  /** Where a jack, knob or switch belongs: a role, and its strip or {@link #OWN}. */
  public record Owner(int role, int strip) {
    /** The module's own jacks and controls. */
    public static final int OWN = -1;
  }

  /** A jack that the song uses; which hole it is depends on the casting. */
  public record JackUse(Owner owner, String jack) {}

  /** A source and the sinks it feeds, in the order written. */
  public record Net(JackUse source, List<JackUse> sinks) {
    public Net {
      sinks = List.copyOf(sinks);
    }
  }

  /** What a knob or a switch is wanted at. */
  public sealed interface Wanted {
    Owner owner();

    String control();

    /**
     * A knob within an interval, as written: which knob it is, and so which scale clips it, depends
     * on the casting. The nominal value lies on the scale of every candidate.
     */
    record Knob(Owner owner, String control, Interval interval) implements Wanted {}

    /** A switch at a position. */
    record Switch(Owner owner, String control, String position) implements Wanted {}
  }

  /** A jumper that must stand at a position in whichever module plays the role. */
  public record JumperNeed(int role, String jumper, String position) {}
}
