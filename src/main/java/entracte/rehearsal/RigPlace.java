package entracte.rehearsal;

import entracte.cue.Detour;
import entracte.cue.Step;
import entracte.plan.DirectWay;
import entracte.plan.Plan;
import entracte.rig.RigState;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** Where the rig stands in the course of a rehearsal, and the moves that bring it elsewhere. */
final class RigPlace {
  private final Plan plan;
  private final Answers answers;
  private int song;
  private Optional<RigState> between = Optional.empty();

  /**
   * @param song the one, from 0, that has left the rig as it stands; or {@link DirectWay#START}
   */
  RigPlace(Plan plan, Answers answers, int song) {
    this.plan = plan;
    this.answers = answers;
    this.song = song;
  }

  /** The song that has left the rig as it stands; empty if it stands between two songs. */
  OptionalInt song() {
    return between.isPresent() ? OptionalInt.empty() : OptionalInt.of(song);
  }

  /** The player says that it stands so. */
  void stands(int newSong) {
    song = newSong;
    between = Optional.empty();
  }

  /** The way to that song was broken off after some steps. */
  void standsOnTheWay(int to, List<Step> done) {
    between = Optional.of(PartWay.after(plan, to, done));
  }

  /** Gets the rig to where that song leaves it; false if the player ends the rehearsal. */
  boolean bring(int to) {
    if (to == song && between.isEmpty()) {
      return true;
    }
    answers.say("");
    String there = to == DirectWay.START ? start() : lead(to);
    String question = "Enter once the rig stands " + there + ", q to end: ";
    if (answers.to(question, "").equals(Answers.END)) {
      return false;
    }
    stands(to);
    return true;
  }

  private String start() {
    answers.say("Bring the rig to where the plan starts, as before the set-up.");
    return "as before the set-up";
  }

  /** Says the moves; the question after them says once more what for, since they may be many. */
  private String lead(int to) {
    String there = plan.songs().get(to).song().name() + " leaves it";
    List<Step> steps =
        between
            .map(state -> Detour.steps(plan, state, to))
            .orElseGet(() -> Detour.steps(plan, song, to));
    int moves = steps.stream().mapToInt(Step::moves).sum();
    answers.say(
        "Bring the rig to where "
            + there
            + ", without the clock: "
            + Summary.moves(moves)
            + from()
            + ".");
    answers.list(steps.stream().map(step -> "  " + step.text()).toList());
    return "as " + there;
  }

  private String from() {
    boolean bare =
        between.isEmpty() && song == DirectWay.START && plan.start().state().cords().isEmpty();
    return bare ? " from a rig with nothing plugged" : "";
  }
}
