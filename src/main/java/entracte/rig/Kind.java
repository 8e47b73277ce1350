package entracte.rig;

import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A kind of module.
 *
 * @param groups the module's own jacks and controls first, then its groups of equal parts
 * @param leaves the output jacks that go straight to the desk, with no patch cord
 * @param electrics what it does to the voltages that pass it
 */
public record Kind(
    String name,
    List<Group> groups,
    List<Jumper> jumpers,
    double widthCm,
    Set<String> leaves,
    Electrics electrics) {
  public static final double DEFAULT_WIDTH_CM = 6;

  public Kind {
    groups = List.copyOf(groups);
    jumpers = List.copyOf(jumpers);
    leaves = Set.copyOf(leaves);
    if (groups.isEmpty() || groups.get(0).form() != Group.Form.OWN) {
      throw new IllegalArgumentException(name + ": the module's own group comes first");
    }
  }

  /** A kind of whose voltages nothing is said. */
  public Kind(
      String name, List<Group> groups, List<Jumper> jumpers, double widthCm, Set<String> leaves) {
    this(name, groups, jumpers, widthCm, leaves, Electrics.unsaid());
  }

  public Group own() {
    return groups.get(0);
  }

  /** The group of channels, if the kind has one. */
  public Optional<Group> channels() {
    return groups.stream().filter(g -> g.form() == Group.Form.CHANNELS).findFirst();
  }

  /** The equal jacks of that name, if the kind has several. */
  public Optional<Group> equalJacks(String jackName) {
    return groups.stream()
        .filter(g -> g.form() == Group.Form.EQUAL_JACKS && g.name().equals(jackName))
        .findFirst();
  }

  /** How many taps a multiple of this kind has; 0 if it is none. */
  public int taps() {
    return groups.stream()
        .filter(g -> g.jacks().stream().anyMatch(j -> j.direction() == Direction.TAP))
        .mapToInt(Group::count)
        .sum();
  }

  /** Whether it leads out of the rig: it only takes signals in, or has a jack that leaves. */
  public boolean isOutlet() {
    List<Jack> jacks = groups.stream().flatMap(group -> group.jacks().stream()).toList();
    boolean onlyInputs =
        !jacks.isEmpty() && jacks.stream().allMatch(j -> j.direction() == Direction.IN);
    return onlyInputs || !leaves.isEmpty();
  }

  public Optional<Jumper> jumper(String jumperName) {
    return jumpers.stream().filter(j -> j.name().equals(jumperName)).findFirst();
  }
}
