package entracte.rehearsal;

import entracte.cue.CueSheet;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Which changeovers a rehearsal takes, in which order. */
public sealed interface Choice {
  /** The songs that they lead to, from 0, by what is known so far. */
  List<Integer> songs(CueSheet sheet, Learned learned);

  /** Whether to choose anew, once these are done, until the player ends it. */
  default boolean endless() {
    return false;
  }

  /** One after the other, each time the one that practice helps most. */
  record MostHelped() implements Choice {
    @Override
    public List<Integer> songs(CueSheet sheet, Learned learned) {
      return numbers(Ranking.byGain(sheet, learned).stream().limit(1));
    }

    @Override
    public boolean endless() {
      return true;
    }
  }

  /** The way to one song, from 1. */
  record To(int number) implements Choice {
    @Override
    public List<Integer> songs(CueSheet sheet, Learned learned) {
      return List.of(number - 1);
    }
  }

  /** So many of those that run over their gaps most. */
  record Worst(int count) implements Choice {
    @Override
    public List<Integer> songs(CueSheet sheet, Learned learned) {
      return numbers(Ranking.worst(sheet, learned).stream().limit(count));
    }
  }

  /** From a song drawn by lot to the end of the set; another one after each further run. */
  record Anywhere(long seed) implements Choice {
    @Override
    public List<Integer> songs(CueSheet sheet, Learned learned) {
      int songs = sheet.cues().size();
      SplittableRandom random = new SplittableRandom(seed + learned.timedRuns());
      int first = songs < 2 ? 0 : 1 + random.nextInt(songs - 1);
      return IntStream.range(first, songs).boxed().toList();
    }
  }

  /** The whole set. */
  record All() implements Choice {
    @Override
    public List<Integer> songs(CueSheet sheet, Learned learned) {
      return sheet.cues().stream()
          .filter(cue -> !cue.setUp())
          .map(cue -> cue.number() - 1)
          .toList();
    }
  }

  private static List<Integer> numbers(Stream<Standing> standings) {
    return standings.map(standing -> standing.cue().number() - 1).toList();
  }
}
