package entracte.plan;

import static entracte.plan.ThreeSongs.song;
import static entracte.plan.ThreeSongs.spoilt;

import entracte.plan.PlanDraft.SongDraft;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** What the verifier sees between songs. The plan is that of {@link ThreeSongs}. */
final class VerifiedMovesTest {
  @ParameterizedTest(name = "{0}")
  @MethodSource({"wrongMoves", "wrongShapes", "wrongTurns", "wrongNumbers"})
  void everyWayToSpoilItIsNoticed(String how, String complaint, Consumer<PlanDraft> spoil) {
    ThreeSongs.assertNoticed(how, complaint, spoil);
  }

  static List<Arguments> wrongMoves() {
    return List.of(
        spoilt(
            "a removal left out",
            "the moves leave a cord between [filter 1.audio, mix 1.out]",
            p -> drop(song(p, 2), "mix 1.out")),
        spoilt(
            "an addition left out",
            "no move brings the cord between [filter 1.out, out.left]",
            p -> drop(song(p, 1), "filter 1.out")),
        spoilt(
            "a cord pulled that is not there",
            "there is no cord to pull from keys.gate 1 to osc 2.fm",
            p -> song(p, 2).removes("keys.gate 1", "osc 2.fm")),
        spoilt(
            "a cord plugged where it already is",
            "there already is a cord from osc 2.saw to mix 1.2.in",
            p -> song(p, 2).adds("osc 2.saw", "mix 1.2.in")));
  }

  static List<Arguments> wrongTurns() {
    return List.of(
        spoilt(
            "a knob left unturned",
            "the moves leave filter 1.cutoff at null, the song has it at 5.5",
            p -> dropTurn(song(p, 1), "filter 1.cutoff")),
        spoilt(
            "a knob that moves by itself",
            "the moves leave mix 1.2.level at 0, the song has it at 3",
            p -> song(p, 2).stands("mix 1.2.level", 3)),
        spoilt(
            "a knob turned from where it does not stand",
            "filter 1.cutoff does not stand at Optional.empty",
            p ->
                song(p, 2)
                    .actions
                    .add(
                        new Action.Turn(
                            p.control("filter 1.cutoff"),
                            Optional.empty(),
                            PlanDraft.position(5.5)))),
        spoilt(
            "a knob turned twice",
            "filter 1.resonance is set twice",
            p ->
                song(p, 1)
                    .stands("filter 1.resonance", 2)
                    .turns("filter 1.resonance", 2)
                    .turns("filter 1.resonance", 2)));
  }

  static List<Arguments> wrongNumbers() {
    return List.of(
        spoilt(
            "a cord removed and another added where one could keep a plug",
            "8 moves, where 6 do",
            p -> {
              song(p, 3).actions.removeIf(action -> shiftsFrom(action, "filter 1.out"));
              song(p, 3).removes("filter 1.out", "out.left").adds("mix 1.out", "out.left");
            }),
        spoilt(
            "a move that does nothing",
            "10 moves, where 9 do",
            p ->
                song(p, 2)
                    .actions
                    .add(
                        new Action.Turn(
                            p.control("filter 1.cutoff"),
                            Optional.of(PlanDraft.position(5.5)),
                            PlanDraft.position(5.5)))));
  }

  static List<Arguments> wrongShapes() {
    return List.of(
        spoilt(
            "a song without a plan",
            "a set of 3 songs, planned as 2 with 2 changeovers",
            p -> p.songs.remove(2)),
        spoilt(
            "the songs in another order",
            "song 2 is two, planned as three",
            p -> song(p, 2).song = song(p, 3).song),
        spoilt(
            "a changeover to another song", "changeover 2 leads to song 3", p -> song(p, 2).to = 2),
        spoilt(
            "a changeover that calls itself a set-up",
            "changeover 2 is called a set-up",
            p -> song(p, 2).setUp = true),
        spoilt(
            "a set-up in mid-set",
            "changeover 1 is called a set-up",
            p -> p.start = Start.midSet(p.start.state())),
        spoilt(
            "a start that the moves do not know",
            "the moves leave a cord between [keys.gate 1, osc 2.fm]",
            p -> p.startsWith(false, "keys.gate 1", "osc 2.fm")));
  }

  private static void drop(SongDraft song, String source) {
    song.actions.removeIf(
        action ->
            !(action instanceof Action.Shift)
                && Stream.of(action.cordBefore(), action.cordAfter())
                    .flatMap(Optional::stream)
                    .anyMatch(cord -> cord.cord().source().toString().equals(source)));
  }

  private static boolean shiftsFrom(Action action, String source) {
    return action instanceof Action.Shift shift
        && shift.from().cord().source().toString().equals(source);
  }

  private static void dropTurn(SongDraft song, String knob) {
    song.actions.removeIf(
        action -> action instanceof Action.Turn turn && turn.knob().toString().equals(knob));
  }
}
