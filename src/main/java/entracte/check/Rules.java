package entracte.check;

import entracte.setlist.Patch;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;

/** The rules for a song that has been read, each applied once to a patch where that is enough. */
final class Rules {
  private final boolean rigIsSound;
  private final PinnedOnce pinnedOnce;
  private final EnoughModules enough;
  private final Splits splits;
  private final CordCount cordCount;
  private final Reach reach;
  private final RoleNames roleNames;
  private final Wishes wishes;
  private final Connected connected;
  private final Heard heard;
  private final Gated gated;
  private final Leeway leeway;
  private final Pitched pitched;
  private final Loops loops;
  private final Signals signals;
  private final Driven driven;
  private final Attuned attuned;
  private final Tracking tracking;
  private final OneJumperPosition jumpers;
  private final Set<Patch> named = Collections.newSetFromMap(new IdentityHashMap<>());
  private final Set<Patch> walked = Collections.newSetFromMap(new IdentityHashMap<>());

  /**
   * @param rigIsSound whether the rig is as its owner meant it; with a module too few, "too few
   *     modules" would be said in vain
   */
  Rules(RigIndex rig, boolean rigIsSound, Findings findings) {
    this.rigIsSound = rigIsSound;
    pinnedOnce = new PinnedOnce(findings);
    enough = new EnoughModules(rig, findings);
    splits = new Splits(rig, findings);
    cordCount = new CordCount(rig, findings);
    reach = new Reach(rig, findings);
    roleNames = new RoleNames(rig, findings);
    wishes = new Wishes(findings);
    connected = new Connected(findings);
    heard = new Heard(rig, findings);
    gated = new Gated(findings);
    leeway = new Leeway(findings);
    pitched = new Pitched(findings);
    loops = new Loops(findings);
    signals = new Signals(findings);
    driven = new Driven(findings);
    attuned = new Attuned(findings);
    tracking = new Tracking(findings);
    jumpers = new OneJumperPosition(rig, findings);
  }

  /** Applies every rule to one song; a reading shared by several songs need come only once. */
  void check(Reading reading) {
    if (named.add(reading.song().patch())) {
      roleNames.check(reading.song().patch());
      wishes.check(reading.song().patch(), reading.drafts());
    }
    List<RoleDraft> roles = pinnedOnce.check(reading.drafts());
    boolean playable = rigIsSound && enough.check(roles, reading::players);
    if (reading.part().isEmpty() || roles.size() < reading.drafts().size()) {
      return;
    }
    leeway.check(reading.drafts());
    Part part = reading.part().get();
    driven.check(part, reading.drafts());
    attuned.check(part);
    tracking.check(part, reading.drafts());
    if (walked.add(reading.song().patch())) {
      PatchGraph graph = new PatchGraph(part);
      connected.check(part, graph, reading.drafts());
      heard.check(part, graph, reading.drafts());
      gated.check(part, reading.drafts());
      pitched.check(part, reading.drafts());
      loops.check(graph, reading.drafts());
      signals.check(part, reading.drafts());
    }
    if (playable && splits.check(part)) {
      cordCount.check(part);
      reach.check(part);
      jumpers.add(reading);
    }
  }

  /** Applies the rules that see the whole set. */
  void finish() {
    jumpers.check();
  }
}
