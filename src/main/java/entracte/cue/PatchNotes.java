package entracte.cue;

import entracte.plan.SongPlan;
import java.util.List;

/**
 * What a patch card says besides what to plug and to set.
 *
 * @param playing which hand plays what, how notes follow each other, where the wheel goes
 * @param pitch what becomes of the pitch on its way
 * @param levels the gain steps that are up
 * @param listenFor what tells that the sound is right
 */
public record PatchNotes(
    List<String> playing, List<String> pitch, List<String> levels, List<String> listenFor) {
  public PatchNotes {
    playing = List.copyOf(playing);
    pitch = List.copyOf(pitch);
    levels = List.copyOf(levels);
    listenFor = List.copyOf(listenFor);
  }

  static PatchNotes of(SongPlan song) {
    return new PatchNotes(
        Playing.of(song),
        PitchNotes.of(song).lines(),
        new Levels(song).steps(),
        EarNotes.listenFor(song.song()));
  }
}
