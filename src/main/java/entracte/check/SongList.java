package entracte.check;

import entracte.finding.NearestName;
import entracte.rig.Figures;
import entracte.setlist.SetList;
import entracte.setlist.Song;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A set has songs, told apart by name, with time between them. */
final class SongList {
  private final Findings findings;

  SongList(Findings findings) {
    this.findings = findings;
  }

  void check(SetList set) {
    if (set.songs().isEmpty()) {
      findings.error(
          set, "the set has no songs", "List them under \"songs\", each with its patch.");
    }
    checkNames(set.songs());
    checkGaps(set.songs());
    checkFallback(set);
    checkEncores(set.songs());
  }

  private void checkFallback(SetList set) {
    List<String> names = set.songs().stream().map(Song::name).toList();
    set.fallback()
        .filter(name -> !names.contains(name))
        .ifPresent(
            name ->
                findings.error(
                    set,
                    "the fallback \"" + name + "\" is no song of the set",
                    NearestName.advice(name, names)));
  }

  /** Encores wait at the end: between two songs of the set nobody calls for one. */
  private void checkEncores(List<Song> songs) {
    for (int song = 1; song < songs.size(); song++) {
      if (songs.get(song - 1).card().encore() && !songs.get(song).card().encore()) {
        findings.error(
            songs.get(song),
            "\"" + songs.get(song).name() + "\" stands after an encore",
            "Put the encores last.");
      }
    }
  }

  private void checkNames(List<Song> songs) {
    Map<String, Integer> times = new HashMap<>();
    for (Song song : songs) {
      if (times.merge(song.name(), 1, Integer::sum) == 2) {
        findings.warning(
            song,
            "two songs are called \"" + song.name() + "\"",
            "Give one of them a longer name, so that you can tell them apart on stage.");
      }
    }
  }

  /** One wrong gap of the set reaches every song, and is told once. */
  private void checkGaps(List<Song> songs) {
    Map<Double, List<Song>> wrong = new LinkedHashMap<>();
    for (Song song : songs) {
      double gap = song.gapSeconds().orElse(1);
      if (!(gap > 0)) {
        wrong.computeIfAbsent(gap, seconds -> new ArrayList<>()).add(song);
      }
    }
    wrong.forEach(
        (gap, all) -> {
          int more = all.size() - 1;
          String others = more == 0 ? "" : " and " + Quoted.count(more, "more song");
          findings.error(
              all.get(0),
              "the gap before \"%s\"%s is %s s"
                  .formatted(all.get(0).name(), others, Figures.plain(gap)),
              "Give the seconds that the audience will wait, or leave the gap out.");
        });
  }
}
