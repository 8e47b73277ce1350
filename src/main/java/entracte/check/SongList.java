package entracte.check;

import entracte.finding.NearestName;
import entracte.setlist.SetList;
import entracte.setlist.Song;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** A set has songs, told apart by name, and its encores at the end. */
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
}
