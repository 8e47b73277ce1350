package entracte.plan;

import java.util.List;
import java.util.function.Consumer;

/** Whether a plan has a song plan and a changeover for every song, in order. */
final class VerifyShape {
  private VerifyShape() {}

  /** False if the plan is so far off that nothing else can be said about it. */
  static boolean passes(Plan plan, Consumer<String> complain) {
    int songs = plan.set().parts().size();
    if (plan.songs().size() != songs || plan.changeovers().size() != songs) {
      complain.accept(
          "a set of %d songs, planned as %d with %d changeovers"
              .formatted(songs, plan.songs().size(), plan.changeovers().size()));
      return false;
    }
    for (int song = 0; song < songs; song++) {
      String wanted = plan.set().parts().get(song).song().name();
      String planned = plan.songs().get(song).song().name();
      if (!wanted.equals(planned)) {
        complain.accept("song %d is %s, planned as %s".formatted(song + 1, wanted, planned));
      }
    }
    checkOrder(plan.changeovers(), plan.start().midSet(), complain);
    return true;
  }

  private static void checkOrder(
      List<Changeover> changeovers, boolean midSet, Consumer<String> complain) {
    for (int song = 0; song < changeovers.size(); song++) {
      Changeover changeover = changeovers.get(song);
      if (changeover.to() != song) {
        complain.accept("changeover %d leads to song %d".formatted(song + 1, changeover.to() + 1));
      }
      if (changeover.setUp() != (song == 0 && !midSet)) {
        complain.accept(
            "changeover %d is %s set-up"
                .formatted(song + 1, changeover.setUp() ? "called a" : "not called a"));
      }
    }
  }
}
