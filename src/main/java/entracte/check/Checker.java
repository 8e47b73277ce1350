package entracte.check;

import entracte.finding.Finding;
import entracte.finding.Place;
import entracte.finding.Places;
import entracte.finding.Severity;
import entracte.setlist.SetList;
import entracte.setlist.Song;
import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The front door of this package: checks a set against every rule.
 *
 * <p>One mistake gives one finding. So a rule keeps silent where it would only repeat, in other
 * words, what has been said; and a patch that several songs use is judged once.
 */
public final class Checker {
  private final SetList set;
  private final Findings findings;

  private Checker(SetList set, Places places) {
    this.set = set;
    this.findings = new Findings(places);
  }

  /** Checks {@code set}; findings stand where {@code places} knows their pieces to be. */
  public static Checked check(SetList set, Places places) {
    return check(set, places, List.of());
  }

  /**
   * Checks a set that could not be read without mistakes.
   *
   * @param soFar what is known to be wrong; of a rig that has an error in its file modules may be
   *     missing, so it is not said that they are too few
   */
  public static Checked check(SetList set, Places places, List<Finding> soFar) {
    String rigFile = places.of(set.rig()).file();
    boolean rigIsWhole =
        soFar.stream()
            .noneMatch(f -> f.severity() == Severity.ERROR && f.place().file().equals(rigFile));
    return new Checker(set, places).check(rigIsWhole);
  }

  /** A set that came from no file, as the planner takes it; empty if it has an error. */
  public static Optional<PlayableSet> playable(SetList set) {
    return check(set, new Places(Place.wholeFile(""))).set();
  }

  private Checked check(boolean rigIsWhole) {
    RigIndex rig = new RigIndex(set.rig());
    boolean rigIsSound = checkRig(rig) && rigIsWhole;
    new LongNames(findings).check(set);
    new SongList(findings).check(set);
    new SetTimes(findings).check(set);
    new SongOrder(findings).check(set);
    GearCues cues = new GearCues(set.rig(), findings);
    set.songs().forEach(cues::check);
    new GearBanks(findings).check(set.songs());
    List<Part> parts =
        checkSongs(new Resolver(rig, findings), new Rules(rig, rigIsSound, findings));
    return new Checked(
        findings.list(), findings.errors() > 0 ? Optional.empty() : Optional.of(playable(parts)));
  }

  private PlayableSet playable(List<Part> parts) {
    int songs = set.songs().size();
    Optional<Part> drone = set.drone().map(song -> parts.get(songs));
    return new PlayableSet(set, parts.subList(0, songs), drone);
  }

  /** Whether the names of the rig are in order. */
  private boolean checkRig(RigIndex rig) {
    new RigNames(rig, findings).check();
    boolean sound = findings.errors() == 0;
    KindsMakeSense kinds = new KindsMakeSense(findings);
    set.rig().kinds().forEach(kinds::check);
    set.rig().kinds().forEach(new KindElectrics(findings)::check);
    new GearOnRig(findings).check(set.rig());
    return sound;
  }

  /** The parts of the songs, and the drone's behind them: it shares their jumpers. */
  private List<Part> checkSongs(Resolver resolver, Rules rules) {
    Set<Reading> judged = Collections.newSetFromMap(new IdentityHashMap<>());
    List<Part> parts = new ArrayList<>();
    List<Song> all = new ArrayList<>(set.songs());
    set.drone().ifPresent(all::add);
    for (Song song : all) {
      Reading reading = resolver.read(song);
      if (judged.add(reading)) {
        rules.check(reading);
      }
      reading.part().ifPresent(part -> parts.add(part.playedBy(song)));
    }
    rules.finish();
    return parts;
  }
}
