package entracte.rehearsal;

import entracte.cue.Cue;
import entracte.cue.CueSheet;
import entracte.cue.Detour;
import entracte.plan.Plan;
import entracte.setlist.SetList;
import entracte.setlist.Song;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import org.hipparchus.distribution.continuous.NormalDistribution;

/**
 * How long the whole set takes: songs, and between two songs the longer of talk and changeover,
 * since talk goes on while the hands work. Tuning is part of the changeovers; the set-up is over
 * before the set begins.
 *
 * <p>The odds come from playing the set through many times in numbers, each changeover drawn from
 * its {@link Outlook}, each song a little shorter or longer than written. A player who is slower
 * than foretold in one changeover is likely to be so in the next, so the changeovers of one night
 * are drawn together (a Gaussian copula with one factor). The draws are the same every time.
 */
final class SetLength {
  private static final int DRAWS = 4000;
  private static final long SEED = 1;

  /** How far a song is off its written length, as a part of it. An estimate. */
  private static final double SONG_SCATTER = 0.02;

  /** How far the changeovers of one night are slow or quick together; 0 not at all. An estimate. */
  private static final double TOGETHER = 0.1;

  private static final NormalDistribution NORMAL = new NormalDistribution(0, 1);

  private static final double LOW = 0.1;
  private static final double HIGH = 0.9;

  private final SetList set;
  private final Plan plan;
  private final CueSheet sheet;
  private final Learned learned;
  private final double[] totals = new double[DRAWS];
  private final boolean[] over = new boolean[DRAWS];

  /** A song that may be left out, and the seconds that saves. */
  record Drop(int number, String song, double songSeconds, double savedSeconds) {}

  SetLength(Plan plan, CueSheet sheet, Learned learned) {
    this.plan = plan;
    this.set = plan.setList();
    this.sheet = sheet;
    this.learned = learned;
    draw();
  }

  /** The songs that do not say how long they are; they are counted as nothing. */
  List<String> untimed() {
    return set.songs().stream()
        .filter(song -> song.card().lengthSeconds().isEmpty())
        .map(Song::name)
        .toList();
  }

  /** As many nights are longer as shorter. */
  double typical() {
    return at(0.5);
  }

  /** One night in ten is shorter. */
  double low() {
    return at(LOW);
  }

  /** One night in ten is longer. */
  double high() {
    return at(HIGH);
  }

  /** The odds of ending by then. */
  double odds(double seconds) {
    return Arrays.stream(totals).filter(total -> total <= seconds).count() / (double) DRAWS;
  }

  /** The odds of making every gap in one night. */
  double everyGap() {
    int failed = 0;
    for (boolean each : over) {
      failed += each ? 1 : 0;
    }
    return 1 - failed / (double) DRAWS;
  }

  /** The songs that may be left out, the one to leave out first first. */
  List<Drop> drops(double roomSeconds) {
    double late = high() - roomSeconds;
    List<Drop> drops = new ArrayList<>();
    for (int song = 1; song < set.songs().size() - 1; song++) {
      if (!set.songs().get(song).running().keep() && songSeconds(song) > 0) {
        drops.add(drop(song));
      }
    }
    Comparator<Drop> enough = Comparator.comparing(d -> d.savedSeconds() < late);
    drops.sort(
        enough.thenComparing(
            (a, b) ->
                a.savedSeconds() >= late
                    ? Double.compare(a.songSeconds(), b.songSeconds())
                    : Double.compare(b.savedSeconds(), a.savedSeconds())));
    return drops;
  }

  private Drop drop(int song) {
    double direct = learned.seconds(Detour.steps(plan, song - 1, song + 1));
    double between = Math.max(direct, talk(song + 1));
    double saved = way(song) + songSeconds(song) + way(song + 1) - between;
    return new Drop(song + 1, set.songs().get(song).name(), songSeconds(song), saved);
  }

  /** What usually passes before a song. */
  private double way(int song) {
    Cue cue = sheet.cues().get(song);
    return cue.setUp() ? 0 : Math.max(learned.outlook(cue.steps()).typical(1), talk(song));
  }

  private double talk(int song) {
    return set.songs().get(song).running().talkSeconds();
  }

  private double songSeconds(int song) {
    return set.songs().get(song).card().lengthSeconds().orElse(0);
  }

  private double at(double chance) {
    return totals[(int) (chance * DRAWS)];
  }

  private void draw() {
    SplittableRandom random = new SplittableRandom(SEED);
    double[] nights = new double[DRAWS];
    Arrays.setAll(nights, i -> random.nextGaussian());
    for (int song = 0; song < set.songs().size(); song++) {
      Cue cue = sheet.cues().get(song);
      List<Outlook.Chance> spread =
          cue.setUp() ? List.of(new Outlook.Chance(0, 1)) : learned.outlook(cue.steps()).spread(1);
      double[] upTo = upTo(spread);
      double talk = cue.setUp() ? 0 : talk(song);
      double gap = cue.setUp() ? 0 : cue.gapSeconds().orElse(Double.MAX_VALUE);
      for (int i = 0; i < DRAWS; i++) {
        double off = 1 + SONG_SCATTER * random.nextGaussian();
        double way = pick(spread, upTo, chance(nights[i], random.nextGaussian()));
        totals[i] += songSeconds(song) * off + Math.max(talk, way);
        over[i] |= way > gap;
      }
    }
    Arrays.sort(totals);
  }

  private static double chance(double night, double own) {
    return NORMAL.cumulativeProbability(
        Math.sqrt(TOGETHER) * night + Math.sqrt(1 - TOGETHER) * own);
  }

  /** Of each time the weight of all up to it. */
  private static double[] upTo(List<Outlook.Chance> spread) {
    double[] sums = new double[spread.size()];
    double sum = 0;
    for (int i = 0; i < sums.length; i++) {
      sum += spread.get(i).weight();
      sums[i] = sum;
    }
    return sums;
  }

  private static double pick(List<Outlook.Chance> spread, double[] upTo, double chance) {
    int found = Arrays.binarySearch(upTo, chance);
    int index = found >= 0 ? found : -found - 1;
    return spread.get(Math.min(index, upTo.length - 1)).seconds();
  }
}
