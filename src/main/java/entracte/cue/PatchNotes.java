package entracte.cue;

import entracte.plan.Plan;
import entracte.plan.SongPlan;
import java.util.List;
import java.util.Map;

/**
 * What a patch card says besides what to plug and to set.
 *
 * @param playing which hand plays what, how notes follow each other, where the wheel goes
 * @param pitch what becomes of the pitch on its way
 * @param levels the gain steps that are up
 * @param slopes how steeply the filters fall
 * @param listenFor what tells that the sound is right
 */
public record PatchNotes(
    List<String> playing,
    List<String> pitch,
    List<String> levels,
    List<String> slopes,
    List<String> listenFor) {
  public PatchNotes {
    playing = List.copyOf(playing);
    pitch = List.copyOf(pitch);
    levels = List.copyOf(levels);
    slopes = List.copyOf(slopes);
    listenFor = List.copyOf(listenFor);
  }

  static PatchNotes of(SongPlan song, Map<Plan.JumperIn, String> jumpers) {
    return new PatchNotes(
        Playing.of(song),
        PitchNotes.of(song).lines(),
        new Levels(song).steps(),
        Slopes.of(song, jumpers),
        EarNotes.listenFor(song.song()));
  }
}
