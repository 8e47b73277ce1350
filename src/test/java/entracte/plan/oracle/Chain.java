package entracte.plan.oracle;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.Literal;
import entracte.rig.Direction;
import entracte.rig.Module;
import entracte.rig.Rig;
import entracte.rig.Socket;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The multiples that split one source: which they are, in which order, and which tap each cord is
 * in. Where the rig has several sizes, the sizes along the chain are chosen first; they say which
 * sink hangs on which link.
 */
final class Chain {
  final List<Map<Module, Literal>> members = new ArrayList<>();

  private final Cp cp;
  private final int sinks;
  private final List<Module> multiples;
  private final List<Map<Socket, Literal>> inTaps = new ArrayList<>();
  private final List<Map<Socket, Literal>> onTaps = new ArrayList<>();
  private final List<Map<Socket, Literal>> sinkTaps = new ArrayList<>();

  Chain(Cp cp, Rig rig, int sinks) {
    this.cp = cp;
    this.sinks = sinks;
    this.multiples = rig.modules().stream().filter(m -> m.kind().taps() > 0).toList();
    int length = smallest();
    for (int link = 0; link < length; link++) {
      Map<Module, Literal> member = new LinkedHashMap<>();
      multiples.forEach(m -> member.put(m, cp.bool("multiple " + m)));
      cp.exactlyOne(member.values());
      members.add(member);
      inTaps.add(tapsOf(member));
      onTaps.add(link < length - 1 ? tapsOf(member) : Map.of());
    }
    addSinks();
  }

  int length() {
    return members.size();
  }

  /** The tap of a link that the signal comes in by. */
  Map<Socket, Literal> in(int link) {
    return inTaps.get(link);
  }

  /** The tap of a link from which the next one is fed. */
  Map<Socket, Literal> on(int link) {
    return onTaps.get(link);
  }

  /** The tap that feeds a sink. */
  Map<Socket, Literal> to(int sink) {
    return sinkTaps.get(sink);
  }

  /** Whatever wants a tap of its own, in the order of the chain. */
  List<Map<Socket, Literal>> everyTap() {
    List<Map<Socket, Literal>> all = new ArrayList<>(inTaps);
    all.addAll(onTaps);
    all.addAll(sinkTaps);
    return all;
  }

  private int smallest() {
    List<Integer> largestFirst =
        multiples.stream().map(m -> m.kind().taps()).sorted(Comparator.reverseOrder()).toList();
    int length = 1;
    while (length < largestFirst.size() && room(largestFirst.subList(0, length)) < sinks) {
      length++;
    }
    return length;
  }

  private static int room(List<Integer> sizes) {
    return sizes.stream().mapToInt(Integer::intValue).sum() + 1 - 2 * sizes.size();
  }

  private void addSinks() {
    List<Map<Module, Literal>> holders = new ArrayList<>();
    for (int sink = 0; sink < sinks; sink++) {
      Map<Module, Literal> holder = new LinkedHashMap<>();
      multiples.forEach(m -> holder.put(m, cp.bool("sink on " + m)));
      cp.exactlyOne(holder.values());
      holders.add(holder);
      sinkTaps.add(tapsOf(holder));
    }
    List<BoolVar> chosen = new ArrayList<>();
    for (List<Integer> sizes : fittingSizes()) {
      BoolVar pattern = cp.bool("sizes " + sizes);
      chosen.add(pattern);
      follow(pattern, sizes, holders);
    }
    cp.exactlyOne(chosen);
  }

  /** Every row of sizes, one for each link, that has room for the sinks. */
  private List<List<Integer>> fittingSizes() {
    List<Integer> sizes = multiples.stream().map(m -> m.kind().taps()).distinct().toList();
    List<List<Integer>> rows = List.of(List.of());
    for (int link = 0; link < length(); link++) {
      List<List<Integer>> longer = new ArrayList<>();
      for (List<Integer> row : rows) {
        for (int size : sizes) {
          List<Integer> next = new ArrayList<>(row);
          next.add(size);
          longer.add(next);
        }
      }
      rows = longer;
    }
    return rows.stream().filter(row -> room(row) >= sinks).toList();
  }

  /** If the links have these sizes, the sinks go on as early as they fit. */
  private void follow(BoolVar pattern, List<Integer> sizes, List<Map<Module, Literal>> holders) {
    int sink = 0;
    for (int link = 0; link < sizes.size(); link++) {
      int size = sizes.get(link);
      List<Literal> ofSize = new ArrayList<>();
      members.get(link).forEach((m, is) -> addIf(m.kind().taps() == size, ofSize, is));
      cp.model.addBoolOr(ofSize.toArray(new Literal[0])).onlyEnforceIf(pattern);
      int room = size - (link == sizes.size() - 1 ? 1 : 2);
      for (int each = 0; each < room && sink < sinks; each++) {
        Map<Module, Literal> holder = holders.get(sink++);
        members
            .get(link)
            .forEach((m, is) -> cp.model.addEquality(holder.get(m), is).onlyEnforceIf(pattern));
      }
    }
  }

  private static void addIf(boolean condition, List<Literal> list, Literal literal) {
    if (condition) {
      list.add(literal);
    }
  }

  private Map<Socket, Literal> tapsOf(Map<Module, Literal> member) {
    Map<Socket, Literal> taps = new LinkedHashMap<>();
    member.forEach(
        (module, here) -> {
          List<Literal> ofModule = new ArrayList<>();
          for (Socket socket : module.sockets()) {
            if (socket.jack().direction() == Direction.TAP) {
              ofModule.add(cp.bool("tap " + socket));
              taps.put(socket, ofModule.get(ofModule.size() - 1));
            }
          }
          LinearExpr used = Cp.sum(ofModule);
          cp.equal(here, used);
        });
    return taps;
  }
}
