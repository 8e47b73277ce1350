package entracte.check;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import entracte.rig.Rig;
import entracte.setlist.OrderRule;
import entracte.setlist.OrderRule.Apart;
import entracte.setlist.OrderRule.Before;
import entracte.setlist.OrderRule.First;
import entracte.setlist.OrderRule.Last;
import entracte.setlist.OrderRule.Place;
import entracte.setlist.OrderRule.Together;
import entracte.setlist.SetList;
import entracte.setlist.Song;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Rules for the order of songs: what they permit, and what is wrong with them. */
class SongOrderTest {
  private static final Rig RIG =
      RigBuilder.rig()
          .kind("tone", k -> k.out("wave"))
          .kind("box", k -> k.in("audio").out("out").leaves("out"))
          .row("tone 1: tone", "box 1: box")
          .build();

  /** Songs A, B, C ...; those named in small letters are encores. */
  private static SetList set(String songs, OrderRule... rules) {
    List<Song> all = new ArrayList<>();
    for (String name : songs.split(" ")) {
      boolean encore = Character.isLowerCase(name.charAt(0));
      all.add(
          new Song(
              name,
              PatchBuilder.patch(name)
                  .role("voice", "tone")
                  .role("end", "box")
                  .cord("voice.wave", "end.audio")
                  .build(),
              List.of(),
              OptionalDouble.empty(),
              List.of(),
              new Song.Card(
                  Optional.empty(),
                  Optional.empty(),
                  Optional.empty(),
                  Optional.empty(),
                  OptionalDouble.empty(),
                  encore)));
    }
    return new SetList("letters", RIG, all, true).withOrder(List.of(rules));
  }

  private static List<String> said(SetList set) {
    return SetBuilder.say(SetBuilder.check(set).findings());
  }

  /** All permitted orders, as words: looked at as a whole, and song by song. */
  private static List<String> orders(SetList set) {
    PermittedOrders permitted = new PermittedOrders(set, set.order());
    List<String> found = new ArrayList<>();
    List<String> stepByStep = new ArrayList<>();
    extend(new int[0], set, permitted::permits, found);
    extend(new int[0], set, order -> isEveryStepPermitted(permitted, order), stepByStep);
    assertEquals(found, stepByStep);
    return found;
  }

  private static void extend(
      int[] start, SetList set, Predicate<int[]> isPermitted, List<String> found) {
    if (start.length == set.songs().size()) {
      if (isPermitted.test(start)) {
        StringBuilder word = new StringBuilder();
        Arrays.stream(start).forEach(song -> word.append(set.songs().get(song).name()));
        found.add(word.toString());
      }
      return;
    }
    for (int next = 0; next < set.songs().size(); next++) {
      int song = next;
      if (Arrays.stream(start).noneMatch(s -> s == song)) {
        int[] longer = Arrays.copyOf(start, start.length + 1);
        longer[start.length] = next;
        extend(longer, set, isPermitted, found);
      }
    }
  }

  private static boolean isEveryStepPermitted(PermittedOrders permitted, int[] order) {
    return IntStream.range(0, order.length)
        .allMatch(
            count ->
                permitted.mayFollow(
                    song -> Arrays.stream(order, 0, count).anyMatch(s -> s == song),
                    count,
                    count == 0 ? 0 : order[count - 1],
                    order[count]));
  }

  @Test
  void withoutRulesEveryOrderIsPermitted() {
    assertEquals(6, orders(set("A B C")).size());
    assertFalse(SetBuilder.playable(set("A B C")).permittedOrders().anyForbidden());
  }

  @Test
  void encoresStayBehindAllOthers() {
    assertEquals(List.of("ABde", "ABed", "BAde", "BAed"), orders(set("A B d e")));
    assertTrue(SetBuilder.playable(set("A b")).permittedOrders().anyForbidden());
  }

  @Test
  void placesAreHeld() {
    assertEquals(List.of("BAC", "BCA"), orders(set("A B C", new First("B"))));
    assertEquals(List.of("ABd", "BAd"), orders(set("A B d", new First("d"))));
    assertEquals(List.of("BAd"), orders(set("A B d", new Last("A"))));
    assertEquals(
        List.of("ABCed"),
        orders(set("A B C d e", new Last("d"), new First("A"), new Place("B", 2))));
    assertEquals(List.of("BCA", "CBA"), orders(set("A B C", new Place("A", 3))));
  }

  @Test
  void oneComesBeforeAnother() {
    assertEquals(List.of("BAC", "BCA", "CBA"), orders(set("A B C", new Before("B", "A"))));
  }

  @Test
  void groupsStayTogetherInAnyOrder() {
    assertEquals(
        List.of("ACB", "BAC", "BCA", "CAB"), orders(set("A B C", new Together(List.of("A", "C")))));
  }

  @Test
  void someStayApart() {
    assertEquals(List.of("ABC", "CBA"), orders(set("A B C", new Apart(List.of("A", "C")))));
  }

  @Test
  void overlappingGroupsChain() {
    SetList set = set("A B C D", new Together(List.of("A", "B")), new Together(List.of("B", "C")));
    assertEquals(List.of("ABCD", "CBAD", "DABC", "DCBA"), orders(set));
  }

  /** Told only of D's last place, a search would begin with songs that leave no room for others. */
  @Test
  void theLastPlaceOfOneBindsThoseBeforeIt() {
    SetList set = set("A B C D", new Place("D", 3), new Before("C", "D"), new Before("B", "C"));
    assertEquals(List.of("BCDA"), orders(set));
    PermittedOrders permitted = new PermittedOrders(set, set.order());
    assertFalse(permitted.mayFollow(any -> false, 0, 0, 0), "A leaves no room for B and C");
  }

  @Test
  void theFirstPlaceOfOneBindsThoseAfterIt() {
    SetList set = set("A B C D", new Place("A", 2), new Before("A", "B"), new Before("B", "C"));
    assertEquals(List.of("DABC"), orders(set));
    PermittedOrders permitted = new PermittedOrders(set, set.order());
    assertFalse(permitted.mayFollow(any -> false, 0, 0, 2), "C has the last place");
  }

  @Test
  void aPermittedOrderIsFoundAndTheSetTakesIt() {
    PlayableSet set = SetBuilder.playable(set("A B C", new Last("A"), new Before("C", "B")));
    int[] order = set.somePermittedOrder().orElseThrow();
    assertArrayEquals(new int[] {2, 1, 0}, order);
    PlayableSet other = set.inOrder(order);
    assertEquals(List.of("C", "B", "A"), other.parts().stream().map(p -> p.song().name()).toList());
    assertTrue(other.permittedOrders().permits(new int[] {0, 1, 2}));
  }

  @Test
  void aRuleNamesSongsOfTheSet() {
    assertEquals(
        List.of("error: \"Kettel\" is no song of the set / Did you mean \"Kettle\"?"),
        said(set("Kettle B", new Before("B", "Kettel"))));
    assertEquals(
        List.of("error: a rule names \"B\" and the same song again"),
        said(set("A B", new Apart(List.of("B", "B")))));
    assertTrue(
        said(set("A B B", new First("B")))
            .contains(
                "error: a rule is about \"B\", and 2 songs are called so"
                    + " / Give each a name of its own."));
  }

  @Test
  void contradictionsAreToldWithoutTheRulesThatDoNoHarm() {
    assertEquals(
        List.of(
            "error: no order of the songs keeps all of these: \"A\" comes before \"B\";"
                + " \"B\" comes before \"C\"; \"C\" comes before \"A\" / Drop one of them."),
        said(
            set(
                "A B C D",
                new First("D"),
                new Before("A", "B"),
                new Before("B", "C"),
                new Before("C", "A"))));
    assertEquals(
        List.of(
            "error: no order of the songs keeps all of these: \"A\" is first; \"B\" is first"
                + " / Drop one of them."),
        said(set("A B C", new First("A"), new Together(List.of("A", "B")), new First("B"))));
    assertEquals(
        List.of(
            "error: no order of the songs can keep this: \"A\" has place 3"
                + " / Drop it, or write it otherwise."),
        said(set("A B c", new Place("A", 3))));
    assertEquals(
        List.of(
            "error: no order of the songs keeps all of these: \"A\" has place 2; \"A\" is first"
                + " / Drop one of them."),
        said(set("A B", new Place("A", 2), new First("A"))));
  }

  @Test
  void anOrderThatBreaksItsOwnRulesIsNoted() {
    assertEquals(
        List.of(
            "note: the songs are not written in such an order: \"B\" comes before \"A\""
                + " / The command order proposes one that keeps every rule."),
        said(set("A B", new Before("B", "A"))));
  }
}
