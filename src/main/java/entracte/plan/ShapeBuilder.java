package entracte.plan;

import entracte.check.Part;
import entracte.rig.Group;
import entracte.rig.Jumper;
import entracte.rig.Kind;
import entracte.rig.Module;
import entracte.rig.Scale;
import entracte.setlist.Interval;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Puts together the {@link Shape} of a song for one choice of multiples. */
final class ShapeBuilder {
  private static final int OWN_GROUP = 0;
  private static final int NONE = -1;

  final List<String> roleNames = new ArrayList<>();
  final List<int[]> candidates = new ArrayList<>();
  final List<Part.Strip> strips = new ArrayList<>();
  final List<Integer> roleOfStrip = new ArrayList<>();
  final List<int[]> groupOfStrip = new ArrayList<>();
  final List<Integer> roleOfEnd = new ArrayList<>();
  final List<Integer> stripOfEnd = new ArrayList<>();
  final List<int[]> jackOfEnd = new ArrayList<>();
  Shape.Wants wants;
  Shape.JumperWants jumpers;

  private final RigIndex rig;
  private final Part part;
  private final List<Integer> firstStripOfRole = new ArrayList<>();

  /**
   * @param chains the kinds of the multiples that split each net, by net; empty for a net with one
   *     sink
   */
  static Shape build(RigIndex rig, Part part, List<List<Kind>> chains) {
    ShapeBuilder builder = new ShapeBuilder(rig, part);
    for (int net = 0; net < part.nets().size(); net++) {
      builder.addNet(part.nets().get(net), chains.get(net));
    }
    builder.wants = builder.new WantsBuilder().build();
    builder.jumpers = builder.jumperWants();
    return new Shape(builder);
  }

  private ShapeBuilder(RigIndex rig, Part part) {
    this.rig = rig;
    this.part = part;
    for (Part.CastRole role : part.roles()) {
      addRole(role.name(), role.candidates(), role.channels());
    }
  }

  private int addRole(String name, List<Module> modules, List<Part.Strip> needed) {
    int role = roleNames.size();
    roleNames.add(name);
    candidates.add(modules.stream().mapToInt(rig::indexOf).toArray());
    firstStripOfRole.add(strips.size());
    for (Part.Strip strip : needed) {
      strips.add(strip);
      roleOfStrip.add(role);
      groupOfStrip.add(perKind(kind -> groupFor(kind, strip)));
    }
    return role;
  }

  private static int groupFor(Kind kind, Part.Strip strip) {
    Optional<Group> group = strip.isChannel() ? kind.channels() : kind.equalJacks(strip.jack());
    return group.map(g -> kind.groups().indexOf(g)).orElse(OWN_GROUP);
  }

  private void addNet(Part.Net net, List<Kind> chain) {
    if (chain.isEmpty()) {
      addCord(end(net.source()), end(net.sinks().get(0)));
      return;
    }
    End feed = end(net.source());
    int sink = 0;
    for (int member = 0; member < chain.size(); member++) {
      boolean last = member == chain.size() - 1;
      int room = chain.get(member).taps() - (last ? 1 : 2);
      int here = Math.min(room, net.sinks().size() - sink);
      List<End> taps =
          addMultiple(
              nameOf(net.source()) + " multiple " + (member + 1),
              chain.get(member),
              here + (last ? 1 : 2));
      addCord(feed, taps.get(0));
      for (int i = 0; i < here; i++) {
        addCord(taps.get(i + 1), end(net.sinks().get(sink++)));
      }
      feed = taps.get(taps.size() - 1);
    }
  }

  private String nameOf(Part.JackUse use) {
    Part.CastRole role = part.roles().get(use.owner().role());
    if (use.owner().strip() == Part.Owner.OWN) {
      return role.name() + "." + use.jack();
    }
    Part.Strip strip = role.channels().get(use.owner().strip());
    return role.name() + "." + strip.label() + (strip.isChannel() ? "." + use.jack() : "");
  }

  private List<End> addMultiple(String name, Kind kind, int taps) {
    Group group =
        kind.groups().stream()
            .filter(g -> g.form() == Group.Form.EQUAL_JACKS)
            .findFirst()
            .orElseThrow();
    List<Part.Strip> needed = new ArrayList<>();
    for (int i = 0; i < taps; i++) {
      needed.add(new Part.Strip(group.name(), group.name(), 0));
    }
    List<Module> multiples =
        rig.modules.stream().filter(m -> m.kind().name().equals(kind.name())).toList();
    int role = addRole(name, multiples, needed);
    List<End> ends = new ArrayList<>();
    for (int i = 0; i < taps; i++) {
      ends.add(new End(role, firstStripOfRole.get(role) + i, group.name()));
    }
    return ends;
  }

  /** The end of a cord before it is numbered; {@code strip} counts through the song. */
  private record End(int role, int strip, String jack) {}

  private End end(Part.JackUse use) {
    return new End(use.owner().role(), stripIndex(use.owner()), use.jack());
  }

  private int stripIndex(Part.Owner owner) {
    return owner.strip() == Part.Owner.OWN
        ? NONE
        : firstStripOfRole.get(owner.role()) + owner.strip();
  }

  private void addCord(End source, End sink) {
    addEnd(source);
    addEnd(sink);
  }

  private void addEnd(End end) {
    roleOfEnd.add(end.role());
    stripOfEnd.add(end.strip());
    jackOfEnd.add(
        perKind(
            kind -> {
              Group group = groupOfEnd(kind, end);
              return group.jack(end.jack()).map(group.jacks()::indexOf).orElse(NONE);
            }));
  }

  private Group groupOfEnd(Kind kind, End end) {
    return end.strip() == NONE
        ? kind.own()
        : kind.groups().get(groupFor(kind, strips.get(end.strip())));
  }

  int[][] cordsOfRole() {
    List<List<Integer>> cords = new ArrayList<>();
    roleNames.forEach(r -> cords.add(new ArrayList<>()));
    for (int end = 0; end < roleOfEnd.size(); end++) {
      List<Integer> ofRole = cords.get(roleOfEnd.get(end));
      if (!ofRole.contains(end / 2)) {
        ofRole.add(end / 2);
      }
    }
    return ragged(cords);
  }

  private Shape.JumperWants jumperWants() {
    List<Part.JumperNeed> needs = part.jumpers();
    int[][] which = new int[needs.size()][];
    int[][] position = new int[needs.size()][];
    for (int n = 0; n < needs.size(); n++) {
      Part.JumperNeed need = needs.get(n);
      which[n] = perKind(k -> k.jumper(need.jumper()).map(k.jumpers()::indexOf).orElse(NONE));
      position[n] =
          perKind(
              k ->
                  k.jumper(need.jumper())
                      .map(Jumper::positions)
                      .map(p -> p.indexOf(need.position()))
                      .orElse(NONE));
    }
    int[] roles = needs.stream().mapToInt(Part.JumperNeed::role).toArray();
    return new Shape.JumperWants(roles, which, position, byRole(roles));
  }

  private int[][] byRole(int[] roleOf) {
    List<List<Integer>> lists = new ArrayList<>();
    roleNames.forEach(r -> lists.add(new ArrayList<>()));
    for (int i = 0; i < roleOf.length; i++) {
      lists.get(roleOf[i]).add(i);
    }
    return ragged(lists);
  }

  private static int[][] ragged(List<List<Integer>> lists) {
    return lists.stream()
        .map(l -> l.stream().mapToInt(Integer::intValue).toArray())
        .toArray(int[][]::new);
  }

  private int[] perKind(java.util.function.ToIntFunction<Kind> answer) {
    return rig.kinds.stream().mapToInt(answer).toArray();
  }

  /** Numbers the wanted knobs and switches. */
  private final class WantsBuilder {
    private final int count = part.settings().size();
    private final int[] role = new int[count];
    private final int[] strip = new int[count];
    private final int[][] controlOf = new int[count][rig.kinds.size()];
    private final double[][] low = new double[count][rig.kinds.size()];
    private final double[][] high = new double[count][rig.kinds.size()];
    private final double[][] nominal = new double[count][rig.kinds.size()];

    Shape.Wants build() {
      for (int w = 0; w < count; w++) {
        Part.Wanted wanted = part.settings().get(w);
        role[w] = wanted.owner().role();
        strip[w] = stripIndex(wanted.owner());
        for (int k = 0; k < rig.kinds.size(); k++) {
          Kind kind = rig.kinds.get(k);
          Group group = groupOfEnd(kind, new End(role[w], strip[w], ""));
          number(w, k, wanted, group);
        }
      }
      return new Shape.Wants(role, strip, controlOf, low, high, nominal, byRole(role));
    }

    private void number(int w, int k, Part.Wanted wanted, Group group) {
      controlOf[w][k] = NONE;
      if (wanted instanceof Part.Wanted.Knob knob) {
        group
            .knob(knob.control())
            .ifPresent(it -> knob(w, k, knob.interval(), it.scale(), group.knobs().indexOf(it)));
      } else if (wanted instanceof Part.Wanted.Switch toggle) {
        group
            .switchNamed(toggle.control())
            .ifPresent(
                it -> {
                  controlOf[w][k] = group.knobs().size() + group.switches().indexOf(it);
                  low[w][k] = it.positions().indexOf(toggle.position());
                  high[w][k] = low[w][k];
                  nominal[w][k] = low[w][k];
                });
      }
    }

    private void knob(int w, int k, Interval interval, Scale scale, int place) {
      controlOf[w][k] = place;
      low[w][k] = Math.max(scale.low(), interval.low());
      high[w][k] = Math.min(scale.high(), interval.high());
      nominal[w][k] = Math.min(high[w][k], Math.max(low[w][k], interval.nominal()));
    }
  }
}
