package entracte.cue;

import entracte.midi.Dispatch;
import entracte.midi.Outlet;
import entracte.midi.SongProgram;
import entracte.rig.Gear;
import entracte.rig.Rig;
import entracte.setlist.GearCue;
import entracte.setlist.Song;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What leaves for the MIDI gear because of one song.
 *
 * @param changeover sent when the changeover to the song begins
 * @param song sent when the song begins
 * @param sections what each later section of the song sends, in their order
 */
public record GearSends(List<Dispatch> changeover, List<Dispatch> song, List<Section> sections) {
  private static final double MILLIS = 1000;

  public GearSends {
    changeover = List.copyOf(changeover);
    song = List.copyOf(song);
    sections = List.copyOf(sections);
  }

  /** A part of a song and what it sends. */
  public record Section(String name, List<Dispatch> sends) {
    public Section {
      sends = List.copyOf(sends);
    }
  }

  /** Whether nothing is sent at all. */
  public boolean isEmpty() {
    return changeover.isEmpty() && song.isEmpty() && sections.isEmpty();
  }

  /** What {@code song} sends to the gear of {@code rig}; its names and ranges have been checked. */
  public static GearSends of(Rig rig, Song song) {
    List<Dispatch> early = new ArrayList<>();
    List<Dispatch> late = new ArrayList<>();
    for (GearCue cue : song.gear()) {
      Gear gear = gear(rig, cue);
      boolean atSong = gear.manners().sendAt() == Gear.SendAt.SONG;
      (atSong ? late : early).add(dispatch(gear, program(gear, cue).messages()));
    }
    return new GearSends(
        early, late, song.sections().stream().map(part -> section(rig, part)).toList());
  }

  /** What makes every piece of gear fall silent. */
  public static List<Dispatch> quiet(Rig rig) {
    return rig.gear().stream()
        .map(
            gear ->
                Dispatch.atOnce(
                    gear.name(),
                    outlet(gear),
                    SongProgram.quiet(gear.channel(), gear.manners().notesOffOneByOne())))
        .toList();
  }

  /** Where the bytes for a piece of gear leave. */
  public static Outlet outlet(Gear gear) {
    return gear.device().isEmpty()
        ? new Outlet.Port(gear.port())
        : new Outlet.Device(gear.device());
  }

  private static Section section(Rig rig, Song.Section part) {
    return new Section(
        part.name(),
        part.gear().stream()
            .map(cue -> dispatch(gear(rig, cue), program(gear(rig, cue), cue).inSong()))
            .toList());
  }

  private static Gear gear(Rig rig, GearCue cue) {
    return rig.gear().stream()
        .filter(gear -> gear.name().equals(cue.gear()))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no gear is called " + cue.gear()));
  }

  private static Dispatch dispatch(Gear gear, List<Dispatch.Timed> messages) {
    return new Dispatch(gear.name(), outlet(gear), messages);
  }

  private static SongProgram program(Gear gear, GearCue cue) {
    return new SongProgram(
        gear.channel(),
        bank(gear, cue),
        cue.program().map(p -> OptionalInt.of(p - gear.programsFrom())).orElse(OptionalInt.empty()),
        (int) Math.round(gear.manners().settleSeconds() * MILLIS),
        settings(cue));
  }

  private static Optional<SongProgram.Bank> bank(Gear gear, GearCue cue) {
    SongProgram.Bank.Use use =
        switch (gear.manners().banks()) {
          case BOTH -> SongProgram.Bank.Use.BOTH;
          case HIGH -> SongProgram.Bank.Use.HIGH;
          case LOW -> SongProgram.Bank.Use.LOW;
        };
    return cue.bank().map(bank -> new SongProgram.Bank(bank.high(), bank.low(), use));
  }

  private static List<SongProgram.Setting> settings(GearCue cue) {
    List<SongProgram.Setting> settings = new ArrayList<>();
    cue.controls().forEach(c -> settings.add(new SongProgram.Coarse(c.controller(), c.value())));
    cue.fine().forEach(fine -> settings.add(setting(fine)));
    return settings;
  }

  private static SongProgram.Setting setting(GearCue.Fine fine) {
    return switch (fine.kind()) {
      case CONTROLLER -> new SongProgram.Fine(fine.number(), fine.value());
      case REGISTERED -> new SongProgram.Parameter(true, fine.number(), fine.value());
      case OPEN -> new SongProgram.Parameter(false, fine.number(), fine.value());
    };
  }
}
