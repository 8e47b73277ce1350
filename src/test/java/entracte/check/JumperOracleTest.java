package entracte.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import entracte.rig.Rig;
import entracte.setlist.Song;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * The rule for jumpers against every setting and every casting, tried one by one: three filters,
 * each with one jumper of two positions; songs whose roles want one, or the other, or do not care,
 * and may be pinned. The songs named are held to every smaller set of songs.
 */
final class JumperOracleTest {
  private static final int FILTERS = 3;
  private static final int CASES = 400;

  private static final Rig RIG =
      RigBuilder.commonKinds()
          .row("osc 1: oscillator", "filter 0: filter", "filter 1: filter", "filter 2: filter")
          .row("out: output")
          .build();

  /** What one role wants: a position or none, a filter or any. */
  private record Wish(String position, int filter) {}

  @Test
  void anErrorIsReportedJustWhereNothingWorks() {
    Random random = new Random(31);
    int impossible = 0;
    for (int i = 0; i < CASES; i++) {
      List<List<Wish>> songs = songs(random);
      boolean possible = possible(songs);
      impossible += possible ? 0 : 1;
      Checked checked = checked(songs);
      assertEquals(possible, checked.set().isPresent(), songs::toString);
      if (!possible) {
        String said = checked.findings().get(0).message();
        assertEquals(fewest(songs), said.split(" wants ", -1).length - 1, songs::toString);
        assertFalse(possible(named(said, songs)), said);
      }
    }
    assertTrue(impossible > CASES / 10 && impossible < CASES * 9 / 10, "lopsided: " + impossible);
  }

  private static List<List<Wish>> songs(Random random) {
    List<List<Wish>> songs = new ArrayList<>();
    for (int song = 0; song < 2 + random.nextInt(3); song++) {
      List<Integer> free = new ArrayList<>(List.of(0, 1, 2));
      List<Wish> wishes = new ArrayList<>();
      int roles = 1 + random.nextInt(FILTERS);
      for (int role = 0; role < roles; role++) {
        String position = List.of("2-pole", "3-pole", "").get(random.nextInt(3));
        int pin = random.nextInt(4) == 0 ? free.remove(random.nextInt(free.size())) : -1;
        wishes.add(new Wish(position, pin));
      }
      songs.add(wishes);
    }
    return songs;
  }

  private static Checked checked(List<List<Wish>> songs) {
    List<Song> all = new ArrayList<>();
    for (List<Wish> wishes : songs) {
      PatchBuilder patch = PatchBuilder.patch("song " + all.size());
      String from = "osc 1.saw";
      for (int i = 0; i < wishes.size(); i++) {
        Wish wish = wishes.get(i);
        patch.role("f" + i, wish.filter() < 0 ? "filter" : "filter " + wish.filter());
        patch.cord(from, "f" + i + ".audio");
        if (!wish.position().isEmpty()) {
          patch.set("f" + i, "other slope", wish.position());
        }
        from = "f" + i + ".out";
      }
      all.add(patch.cord(from, "out.left").song());
    }
    return SetBuilder.check(RIG, all.toArray(Song[]::new));
  }

  private static boolean possible(List<List<Wish>> songs) {
    for (int bits = 0; bits < 1 << FILTERS; bits++) {
      String[] set = new String[FILTERS];
      for (int filter = 0; filter < FILTERS; filter++) {
        set[filter] = (bits >> filter & 1) == 0 ? "2-pole" : "3-pole";
      }
      if (songs.stream().allMatch(wishes -> castable(wishes, 0, 0, set))) {
        return true;
      }
    }
    return false;
  }

  /** How many songs the smallest set has that cannot be served together. */
  private static int fewest(List<List<Wish>> songs) {
    int fewest = songs.size();
    for (int bits = 0; bits < 1 << songs.size(); bits++) {
      List<List<Wish>> some = new ArrayList<>();
      for (int song = 0; song < songs.size(); song++) {
        if ((bits >> song & 1) == 1) {
          some.add(songs.get(song));
        }
      }
      if (some.size() < fewest && !possible(some)) {
        fewest = some.size();
      }
    }
    return fewest;
  }

  private static List<List<Wish>> named(String message, List<List<Wish>> songs) {
    List<List<Wish>> named = new ArrayList<>();
    for (int song = 0; song < songs.size(); song++) {
      if (message.contains("\"song " + song + "\" wants")) {
        named.add(songs.get(song));
      }
    }
    return named;
  }

  private static boolean castable(List<Wish> wishes, int role, int taken, String[] set) {
    if (role == wishes.size()) {
      return true;
    }
    Wish wish = wishes.get(role);
    for (int filter = 0; filter < FILTERS; filter++) {
      boolean free = (taken >> filter & 1) == 0;
      boolean allowed = wish.filter() < 0 || wish.filter() == filter;
      boolean stands = wish.position().isEmpty() || wish.position().equals(set[filter]);
      if (free && allowed && stands && castable(wishes, role + 1, taken | 1 << filter, set)) {
        return true;
      }
    }
    return false;
  }
}
