package entracte.check;

import entracte.setlist.OrderRule;
import entracte.setlist.SetList;
import entracte.setlist.Song;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.IntSummaryStatistics;
import java.util.List;
import java.util.Map;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/**
 * The orders of a set's songs that its rules permit, said step by step: which song may come next
 * after those placed so far. An order is permitted exactly if every one of its steps is. Songs are
 * numbered from 0 in the order of the set.
 */
public final class PermittedOrders {
  private final int songs;

  /** The first and the last place, from 0, that each song may have. */
  private final int[] earliest;

  private final int[] latest;

  private final boolean[] encore;

  /** The songs that must come before each song. */
  private final List<List<Integer>> before = new ArrayList<>();

  private final List<int[]> together = new ArrayList<>();
  private final List<int[]> apart = new ArrayList<>();

  /**
   * @param rules that name songs of the set only; a name that several songs share means the first
   */
  PermittedOrders(SetList set, List<OrderRule> rules) {
    songs = set.songs().size();
    earliest = new int[songs];
    latest = new int[songs];
    encore = new boolean[songs];
    int mains = (int) set.songs().stream().filter(s -> !s.card().encore()).count();
    Map<String, Integer> byName = new HashMap<>();
    for (int song = 0; song < songs; song++) {
      Song each = set.songs().get(song);
      byName.putIfAbsent(each.name(), song);
      encore[song] = each.card().encore();
      earliest[song] = encore[song] ? mains : 0;
      latest[song] = encore[song] ? songs - 1 : mains - 1;
      before.add(new ArrayList<>());
    }
    Entry entry = new Entry(byName, mains);
    rules.forEach(rule -> rule.tell(entry));
    tighten();
  }

  /** Enters rules into the tables. */
  private final class Entry implements OrderRule.Taker {
    private final Map<String, Integer> byName;
    private final int mains;

    Entry(Map<String, Integer> byName, int mains) {
      this.byName = byName;
      this.mains = mains;
    }

    @Override
    public void first(String song) {
      at(byName.get(song), isEncore(song) ? mains : 0);
    }

    @Override
    public void last(String song) {
      at(byName.get(song), (isEncore(song) ? songs : mains) - 1);
    }

    @Override
    public void place(String song, int place) {
      at(byName.get(song), place - 1);
    }

    @Override
    public void before(String song, String later) {
      before.get(byName.get(later)).add(byName.get(song));
    }

    @Override
    public void together(List<String> group) {
      together.add(numbers(group));
    }

    @Override
    public void apart(List<String> group) {
      apart.add(numbers(group));
    }

    private int[] numbers(List<String> group) {
      return group.stream().mapToInt(byName::get).toArray();
    }

    private boolean isEncore(String song) {
      return encore[byName.get(song)];
    }

    private void at(int song, int place) {
      earliest[song] = Math.max(earliest[song], place);
      latest[song] = Math.min(latest[song], place);
    }
  }

  /** A song before one that has a last place has an earlier last place. */
  private void tighten() {
    boolean tighter = true;
    for (int round = 0; round < songs && tighter; round++) {
      tighter = false;
      for (int song = 0; song < songs; song++) {
        for (int earlier : before.get(song)) {
          tighter |= latest[earlier] >= latest[song] || earliest[song] <= earliest[earlier];
          latest[earlier] = Math.min(latest[earlier], latest[song] - 1);
          earliest[song] = Math.max(earliest[song], earliest[earlier] + 1);
        }
      }
    }
  }

  /** How many songs there are. */
  public int songs() {
    return songs;
  }

  /** Whether any rule, or any encore, forbids an order. */
  public boolean anyForbidden() {
    for (int song = 0; song < songs; song++) {
      if (earliest[song] > 0 || latest[song] < songs - 1) {
        return true;
      }
    }
    return before.stream().anyMatch(b -> !b.isEmpty()) || !together.isEmpty() || !apart.isEmpty();
  }

  /**
   * Whether {@code next} may follow.
   *
   * @param placed whether a song is placed already; {@code next} is not
   * @param count how many are placed
   * @param last the song placed last; anything if none is
   */
  public boolean mayFollow(IntPredicate placed, int count, int last, int next) {
    if (count < earliest[next] || count > latest[next]) {
      return false;
    }
    for (int song = 0; song < songs; song++) {
      if (latest[song] == count && song != next && !placed.test(song)) {
        return false;
      }
    }
    for (int earlier : before.get(next)) {
      if (!placed.test(earlier)) {
        return false;
      }
    }
    return staysTogether(placed, next) && (count == 0 || staysApart(last, next));
  }

  /** A group that has begun and is not complete goes on. */
  private boolean staysTogether(IntPredicate placed, int next) {
    for (int[] group : together) {
      int there = 0;
      for (int song : group) {
        there += placed.test(song) ? 1 : 0;
      }
      if (there > 0 && there < group.length && !holds(group, next)) {
        return false;
      }
    }
    return true;
  }

  private boolean staysApart(int last, int next) {
    for (int[] group : apart) {
      if (holds(group, last) && holds(group, next)) {
        return false;
      }
    }
    return true;
  }

  private static boolean holds(int[] group, int song) {
    for (int each : group) {
      if (each == song) {
        return true;
      }
    }
    return false;
  }

  /** Whether a whole order is permitted: the same as if every step of it may follow. */
  public boolean permits(int[] order) {
    int[] place = new int[songs];
    for (int at = 0; at < songs; at++) {
      place[order[at]] = at;
    }
    for (int song = 0; song < songs; song++) {
      if (place[song] < earliest[song] || place[song] > latest[song]) {
        return false;
      }
      for (int earlier : before.get(song)) {
        if (place[earlier] > place[song]) {
          return false;
        }
      }
    }
    return together.stream().allMatch(group -> spread(group, place) == group.length - 1)
        && apart.stream().allMatch(group -> noneMeet(group, place));
  }

  /** How many places lie from the first of a group to the last. */
  private static int spread(int[] group, int[] place) {
    IntSummaryStatistics places = Arrays.stream(group).map(song -> place[song]).summaryStatistics();
    return places.getMax() - places.getMin();
  }

  private static boolean noneMeet(int[] group, int[] place) {
    int[] places = Arrays.stream(group).map(song -> place[song]).sorted().toArray();
    return IntStream.range(1, places.length).noneMatch(i -> places[i] == places[i - 1] + 1);
  }
}
