package entracte.plan;

import entracte.check.Part;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/**
 * An independent judge of plans: replays a plan from the definition alone and says everything that
 * is wrong with it. It shares no code with the search, so that a mistake there cannot hide here.
 *
 * <p>What it checks, song by song: every role is cast on a module that can play it, no module
 * twice; the required cords are exactly those that the casting asks for, with the smallest chains
 * of multiples; whatever else is plugged may be parked there; no jack holds two plugs; the cords
 * exist and are long enough; knobs, switches and jumpers stand where the song wants them. Then
 * changeover by changeover: the actions turn the one state into the next, and take as few moves as
 * these two states allow. That the states themselves are well chosen is not checked: a plan can be
 * right without being the best.
 *
 * <p>Readings. Two taps' cord plugged the other way round is the same cord; while it waits it has
 * the direction of the use that was, or, before any, of the use to come. A chain has as few
 * multiples as the largest of the rig would need, and may then be made of any that have the taps.
 *
 * <p>Time: linear in songs times what is plugged and set, save the matchings, which take plugs
 * moved times cords moved. Memory: one song's state.
 */
public final class Verifier {
  private Verifier() {}

  /** Complaints, in the order of the show; empty if the plan is right. */
  public static List<String> verify(Plan plan) {
    return verify(plan, Aim.FEWEST);
  }

  /**
   * The same of a plan with some aim: where that is seconds, a changeover may take more moves than
   * its two states need.
   */
  public static List<String> verify(Plan plan, Aim aim) {
    List<String> complaints = new ArrayList<>();
    if (VerifyShape.passes(plan, complaints::add)) {
      boolean wellCast = true;
      for (int song = 0; song < plan.songs().size(); song++) {
        wellCast &= verifySong(plan, song, about("song", plan, song, complaints));
      }
      VerifyDirections.check(plan, complaints::add);
      if (wellCast) {
        VerifyJumpers.check(plan, complaints::add);
      }
      verifyChangeovers(plan, aim, complaints);
    }
    return complaints;
  }

  private static boolean verifySong(Plan plan, int index, Consumer<String> complain) {
    Part part = plan.set().parts().get(index);
    SongPlan song = plan.songs().get(index);
    VerifyPlugs.check(plan.set().setList().rig(), song, complain);
    if (!VerifyCasting.passes(part, song, complain)) {
      return false;
    }
    CastPart cast = new CastPart(part, song);
    VerifyRequired.check(plan.set().setList().rig(), cast, complain);
    VerifyParked.check(plan.set().setList().parking(), cast, complain);
    VerifySettings.check(cast, complain);
    return true;
  }

  private static void verifyChangeovers(Plan plan, Aim aim, List<String> complaints) {
    RigNow before = RigNow.of(plan.start().state());
    for (int song = 0; song < plan.songs().size(); song++) {
      RigNow after = RigNow.of(plan.songs().get(song));
      Consumer<String> complain = about("way to song", plan, song, complaints);
      VerifyChangeover.check(before, plan.changeovers().get(song), after, aim, complain);
      before = after;
    }
  }

  private static Consumer<String> about(String what, Plan plan, int song, List<String> complaints) {
    String subject = what + " " + (song + 1) + ", " + plan.songs().get(song).song().name() + ": ";
    return complaint -> complaints.add(subject + complaint);
  }
}
