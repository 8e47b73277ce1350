package entracte.rehearsal;

import entracte.cue.Detour;
import entracte.cue.Step;
import entracte.plan.DirectWay;
import entracte.plan.Plan;
import java.util.List;

/** Where the rig stands in the course of a rehearsal, and the moves that bring it elsewhere. */
final class RigPlace {
  private final Plan plan;
  private final Answers answers;
  private int song;

  /**
   * @param song the one, from 0, that has left the rig as it stands; or {@link DirectWay#START}
   */
  RigPlace(Plan plan, Answers answers, int song) {
    this.plan = plan;
    this.answers = answers;
    this.song = song;
  }

  int song() {
    return song;
  }

  /** The player says that it stands so. */
  void stands(int newSong) {
    song = newSong;
  }

  /** Gets the rig to where that song leaves it; false if the player ends the rehearsal. */
  boolean bring(int to) {
    if (to == song) {
      return true;
    }
    answers.say("");
    String there = to == DirectWay.START ? start() : lead(to);
    String question = "Enter once the rig stands " + there + ", q to end: ";
    if (answers.to(question, "").equals(Answers.END)) {
      return false;
    }
    song = to;
    return true;
  }

  private String start() {
    answers.say("Bring the rig to where the plan starts, as before the set-up.");
    return "as before the set-up";
  }

  /** Says the moves; the question after them says once more what for, since they may be many. */
  private String lead(int to) {
    String there = plan.songs().get(to).song().name() + " leaves it";
    List<Step> steps = Detour.steps(plan, song, to);
    int moves = steps.stream().mapToInt(Step::moves).sum();
    answers.say(
        "Bring the rig to where "
            + there
            + ", without the clock: "
            + Summary.moves(moves)
            + from()
            + ".");
    steps.forEach(step -> answers.say("  " + step.text()));
    return "as " + there;
  }

  private String from() {
    boolean bare = song == DirectWay.START && plan.start().state().cords().isEmpty();
    return bare ? " from a rig with nothing plugged" : "";
  }
}
