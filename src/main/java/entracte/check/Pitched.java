package entracte.check;

import entracte.check.Part.CastRole;
import entracte.check.Part.JackUse;
import entracte.check.Part.Net;
import entracte.rig.Direction;
import entracte.rig.Group;
import entracte.rig.Jack;
import entracte.rig.Kind;
import entracte.rig.Module;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * What sounds at a pitch gets one from the keys, as far as a patch shows that it was meant to. A
 * drum or a drone rightly has no cord to its pitch; so a role is told of only beside one of its own
 * kind that has such a cord (the two feed a role that passes them on, or the one feeds the other),
 * and where the keys give a gate and no pitch in the whole patch has a cord.
 */
final class Pitched {
  private static final String PITCH = "pitch";

  private final Findings findings;

  Pitched(Findings findings) {
    this.findings = findings;
  }

  void check(Part part, List<RoleDraft> drafts) {
    boolean gates = false;
    BitSet fed = new BitSet();
    List<BitSet> feeds = new ArrayList<>();
    part.roles().forEach(role -> feeds.add(new BitSet()));
    for (Net net : part.nets()) {
      for (JackUse sink : net.sinks()) {
        feeds.get(net.source().owner().role()).set(sink.owner().role());
        if (isPitch(sink.jack())) {
          fed.set(sink.owner().role());
        }
        gates |= Gated.isGate(sink.jack()) && givesPitch(part, net.source());
      }
    }
    for (int role = 0; role < feeds.size(); role++) {
      if (!fed.get(role) && !feeds.get(role).isEmpty() && hasPitch(part, role, Direction.IN)) {
        Optional<String> peer = peer(role, part, fed, feeds);
        if (peer.isPresent()) {
          reportBeside(drafts.get(role), peer.get());
        } else if (fed.isEmpty() && gates) {
          reportNone(drafts.get(role));
        }
      }
    }
  }

  private void reportBeside(RoleDraft role, String peer) {
    findings.warning(
        role.piece(),
        "no cord comes to the \"pitch\" of \"%s\", and one comes to that of \"%s\""
            .formatted(role.name(), peer),
        "Feed it a pitch, unless it is meant to stay where it is tuned.");
  }

  private void reportNone(RoleDraft role) {
    findings.warning(
        role.piece(),
        "no cord comes to the \"pitch\" of \"%s\", nor to any other pitch of this patch"
            .formatted(role.name()),
        "Feed it a pitch, unless it is meant to stay where it is tuned.");
  }

  private static Optional<String> peer(int role, Part part, BitSet fed, List<BitSet> feeds) {
    return fed.stream()
        .filter(other -> feeds.get(role).get(other) || meet(role, other, feeds))
        .filter(other -> kinds(part, role).stream().anyMatch(kinds(part, other)::contains))
        .mapToObj(other -> part.roles().get(other).name())
        .findFirst();
  }

  /** At the output of the rig all voices meet; that says nothing. */
  private static boolean meet(int role, int other, List<BitSet> feeds) {
    return feeds.get(role).stream()
        .anyMatch(sink -> feeds.get(other).get(sink) && !feeds.get(sink).isEmpty());
  }

  private static Set<Kind> kinds(Part part, int role) {
    Set<Kind> kinds = new HashSet<>();
    part.roles().get(role).candidates().stream().map(Module::kind).forEach(kinds::add);
    return kinds;
  }

  private static boolean givesPitch(Part part, JackUse source) {
    return hasPitch(part, source.owner().role(), Direction.OUT);
  }

  /** Whether the role's modules have a jack named for pitch. */
  static boolean hasPitch(Part part, int role, Direction direction) {
    CastRole cast = part.roles().get(role);
    Predicate<Jack> wanted = jack -> jack.direction() == direction && isPitch(jack.name());
    Stream<Group> groups = cast.candidates().get(0).kind().groups().stream();
    return groups.map(Group::jacks).flatMap(List::stream).anyMatch(wanted);
  }

  /** {@code pitch}, or {@code pitch 2} where equal jacks have names of their own. */
  static boolean isPitch(String jack) {
    String name = jack.toLowerCase(Locale.ROOT);
    return name.equals(PITCH) || name.startsWith(PITCH + " ");
  }
}
