package entracte.rig;

import static org.junit.jupiter.api.Assertions.assertEquals;

import entracte.check.RigBuilder;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** Rigs made from a rig: one more module, one less, more cords. */
class OtherRigTest {
  private static final Rig RIG =
      RigBuilder.rig()
          .kind("wide", k -> k.out("wave").width(10))
          .kind("slim", k -> k.in("audio").width(4))
          .row("wide 1: wide", "slim 1: slim")
          .row("slim 2: slim", "another slim: slim")
          .build();

  private static List<String> names(Rig rig) {
    return rig.rows().stream()
        .map(row -> String.join(", ", row.stream().map(Module::name).toList()))
        .toList();
  }

  @Test
  void oneMoreStandsAtTheEndOfTheRowOfItsKind() {
    Rig more = RIG.withOneMore(RIG.kind("wide").orElseThrow());
    assertEquals(List.of("wide 1, slim 1, another wide", "slim 2, another slim"), names(more));
    assertEquals(19, more.module("another wide").orElseThrow().centreCm());
    assertEquals(0, more.module("another wide").orElseThrow().row());
  }

  @Test
  void itsNameIsFree() {
    Rig more = RIG.withOneMore(RIG.kind("slim").orElseThrow());
    assertEquals(List.of("wide 1, slim 1", "slim 2, another slim, yet another slim"), names(more));
  }

  @Test
  void withoutAModuleTheOthersStayInPlace() {
    Rig less = RIG.without(RIG.module("wide 1").orElseThrow());
    assertEquals(List.of("slim 1", "slim 2, another slim"), names(less));
    assertEquals(12, less.module("slim 1").orElseThrow().centreCm());
  }

  @Test
  void moreCordsAreOfTheGreatestLength() {
    CordStock stock = new CordStock(new TreeMap<>(Map.of(30, 2, 90, 1)));
    assertEquals(Map.of(30, 2, 90, 7), stock.withMore(6).countByLengthCm());
    assertEquals(Map.of(0, 10), CordStock.ofAnyLength(4).withMore(6).countByLengthCm());
    assertEquals(10, RIG.withCords(CordStock.ofAnyLength(10)).cords().total());
  }
}
