package entracte.plan;

import entracte.check.Part.JackUse;
import entracte.check.Part.Net;
import entracte.plan.SongPlan.CastAs;
import entracte.plan.SongPlan.StripAs;
import entracte.rig.Direction;
import entracte.rig.Module;
import entracte.rig.Rig;
import entracte.rig.Socket;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The required cords are the hops that the casting asks for: each one, and no other. */
final class VerifyRequired {
  private final CastPart cast;
  private final List<Integer> tapsLargestFirst;
  private final Consumer<String> complain;
  private final List<Hop> hops = new ArrayList<>();
  private final List<CastAs> spare;

  private VerifyRequired(Rig rig, CastPart cast, Consumer<String> complain) {
    this.cast = cast;
    this.complain = complain;
    this.spare = new ArrayList<>(cast.implied());
    this.tapsLargestFirst =
        rig.modules().stream()
            .map(module -> module.kind().taps())
            .filter(taps -> taps > 0)
            .sorted(Comparator.reverseOrder())
            .toList();
  }

  static void check(Rig rig, CastPart cast, Consumer<String> complain) {
    VerifyRequired check = new VerifyRequired(rig, cast, complain);
    cast.part().nets().forEach(check::addHops);
    check.spare.forEach(each -> complain.accept("%s splits no source".formatted(each.role())));
    check.compareWithPlan();
    cast.implied().forEach(check::compareTaps);
  }

  private void addHops(Net net) {
    Hop.Place source = Hop.Place.at(cast.socket(net.source()));
    if (net.sinks().size() == 1) {
      hops.add(new Hop(source, Hop.Place.at(cast.socket(net.sinks().get(0)))));
      return;
    }
    List<Module> chain = takeChain(net);
    if (chain.size() != smallestChain(net.sinks().size())
        || sinksThatFit(chain.stream().map(m -> m.kind().taps()).toList()) < net.sinks().size()) {
      complain.accept(
          "%s goes to %d jacks through %s, not through the smallest chain with enough taps"
              .formatted(cast.nameOf(net.source()), net.sinks().size(), chain));
    } else {
      addChain(source, chain, net.sinks());
    }
  }

  /** The multiples cast for a source, which bear its name, in their order. */
  private List<Module> takeChain(Net net) {
    List<Module> chain = new ArrayList<>();
    for (int link = 1; ; link++) {
      String name = cast.nameOf(net.source()) + " multiple " + link;
      CastAs found =
          spare.stream().filter(each -> each.role().equals(name)).findFirst().orElse(null);
      if (found == null) {
        return chain;
      }
      spare.remove(found);
      chain.add(found.module());
    }
  }

  private int smallestChain(int sinks) {
    int links = 1;
    while (links <= tapsLargestFirst.size()
        && sinksThatFit(tapsLargestFirst.subList(0, links)) < sinks) {
      links++;
    }
    return links;
  }

  /** One tap takes the source, and each link of the chain takes two more. */
  private static int sinksThatFit(List<Integer> taps) {
    return taps.stream().mapToInt(Integer::intValue).sum() - 1 - 2 * (taps.size() - 1);
  }

  private void addChain(Hop.Place source, List<Module> chain, List<JackUse> sinks) {
    Hop.Place before = source;
    int next = 0;
    for (int link = 0; link < chain.size(); link++) {
      Hop.Place here = Hop.Place.anyTapOf(chain.get(link));
      hops.add(new Hop(before, here));
      int kept = link == chain.size() - 1 ? 1 : 2;
      int room = chain.get(link).kind().taps() - kept;
      for (int sink = 0; sink < room && next < sinks.size(); sink++) {
        hops.add(new Hop(here, Hop.Place.at(cast.socket(sinks.get(next++)))));
      }
      before = here;
    }
  }

  private void compareWithPlan() {
    List<PluggedCord> left = new ArrayList<>(cast.song().required());
    for (Hop hop : hops) {
      PluggedCord made =
          left.stream().filter(each -> hop.isMadeBy(each.cord())).findFirst().orElse(null);
      if (made == null) {
        complain.accept("no cord from " + hop);
      }
      left.remove(made);
    }
    left.forEach(cord -> complain.accept("no need for a cord from " + cord));
  }

  /** An implied multiple's strips are the taps that its cords are in. */
  private void compareTaps(CastAs multiple) {
    TreeSet<Integer> used =
        cast.song().required().stream()
            .flatMap(each -> Stream.of(each.cord().source(), each.cord().sink()))
            .filter(socket -> socket.module().equals(multiple.module()))
            .filter(socket -> socket.jack().direction() == Direction.TAP)
            .map(Socket::number)
            .collect(Collectors.toCollection(TreeSet::new));
    TreeSet<Integer> told =
        multiple.strips().stream()
            .map(StripAs::number)
            .collect(Collectors.toCollection(TreeSet::new));
    if (!Objects.equals(used, told)) {
      complain.accept(
          "%s is cast on taps %s, its cords are in %s".formatted(multiple.role(), told, used));
    }
  }
}
