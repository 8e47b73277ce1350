package entracte.cli;

import entracte.cue.EarNotes;
import entracte.cue.GearSends;
import entracte.cue.Spot;
import entracte.midi.Outlet;
import entracte.rig.FootSwitch;
import entracte.rig.Module;
import entracte.rig.Rig;
import entracte.setlist.SetList;
import entracte.setlist.Song;
import entracte.stage.Drift;
import entracte.stage.Show;
import entracte.stage.ShowSong;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Makes of a set what the stage needs to know of it. */
final class ShowMaker {
  private static final double MILLIS = 1000;

  private ShowMaker() {}

  static Show show(SetList set) {
    Rig rig = set.rig();
    return new Show(
        set.name(),
        Stream.concat(set.songs().stream(), set.drone().stream())
            .map(song -> song(rig, song))
            .toList(),
        rig.modules().stream().map(ShowMaker::spot).toList(),
        rig.modules().stream()
            .flatMap(module -> module.sockets().stream())
            .map(Object::toString)
            .toList(),
        GearSends.quiet(rig),
        set.slot().seconds(),
        set.fallback().flatMap(name -> index(set, name)),
        set.drone().map(drone -> set.songs().size()),
        rig.footSwitch().map(ShowMaker::hold).orElse(Show.Hold.MENU),
        Math.round(
            rig.footSwitch().map(FootSwitch::deafSeconds).orElse(FootSwitch.USUAL_DEAF_SECONDS)
                * MILLIS),
        new Drift(rig.warmth().warmUpSeconds(), rig.warmth().tuneAgainSeconds()));
  }

  private static Spot spot(Module module) {
    return new Spot(module.name(), module.row(), module.centreCm(), 0);
  }

  private static Optional<Integer> index(SetList set, String name) {
    return IntStream.range(0, set.songs().size())
        .filter(song -> set.songs().get(song).name().equals(name))
        .boxed()
        .findFirst();
  }

  /** A switch that says nothing of holding opens the menu; one that latches cannot be held. */
  private static Show.Hold hold(FootSwitch pedal) {
    return switch (pedal.hold()) {
      case "back" -> Show.Hold.BACK;
      case "nothing" -> Show.Hold.NOTHING;
      default -> Show.Hold.MENU;
    };
  }

  private static ShowSong song(Rig rig, Song song) {
    List<String> lines = new ArrayList<>();
    song.card().key().ifPresent(key -> lines.add("Key: " + key));
    song.card().tempo().ifPresent(tempo -> lines.add("Tempo: " + tempo));
    song.card().starts().ifPresent(starts -> lines.add("Starts: " + starts));
    song.card().notes().ifPresent(notes -> lines.add("Notes: " + notes));
    EarNotes.listenFor(song).forEach(each -> lines.add("Listen for: " + each));
    return new ShowSong(
        song.name(),
        lines,
        song.card().lengthSeconds(),
        song.gapSeconds(),
        song.card().encore(),
        GearSends.of(rig, song));
  }

  /** Where the gear hangs, each outlet once. */
  static List<Outlet> outlets(Rig rig) {
    return rig.gear().stream().map(GearSends::outlet).distinct().toList();
  }
}
