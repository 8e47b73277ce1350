package entracte.cue;

import entracte.plan.Changeover;
import entracte.plan.Plan;
import entracte.plan.SongPlan;
import entracte.rig.Warmth;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A whole plan in words: the front door of this package.
 *
 * @param cautions what to mind before the first step
 * @param jumpers what each jumper is to be set to: {@code filter 1 other slope to 3-pole}
 * @param cues the way to each song, in the order of the set; the first is the set-up, unless the
 *     plan starts in mid-set
 * @param aboutTimes where the seconds come from, as a sentence
 * @param slot songs, talk and changeovers added up against the slot; empty if the set gives neither
 *     a slot nor lengths
 */
public record CueSheet(
    String set,
    String rig,
    List<String> cautions,
    List<String> jumpers,
    List<Cue> cues,
    String aboutTimes,
    Optional<String> slot) {

  public CueSheet {
    cautions = List.copyOf(cautions);
    jumpers = List.copyOf(jumpers);
    cues = List.copyOf(cues);
  }

  /** A sheet of a set that counts no time. */
  public CueSheet(
      String set,
      String rig,
      List<String> cautions,
      List<String> jumpers,
      List<Cue> cues,
      String aboutTimes) {
    this(set, rig, cautions, jumpers, cues, aboutTimes, Optional.empty());
  }

  /** Whether there is time before the show: then jumpers can be set, else they must stand so. */
  public boolean hasSetUp() {
    return cues.stream().anyMatch(Cue::setUp);
  }

  /** The ways that somebody waits for: all but the set-up. */
  public List<Cue> betweenSongs() {
    return cues.stream().filter(cue -> !cue.setUp()).toList();
  }

  /** What they take, each in whole seconds as it is shown. */
  public long secondsBetweenSongs() {
    return betweenSongs().stream().mapToLong(Cue::wholeSeconds).sum();
  }

  /** Words {@code plan} for hands that move at {@code pace}. */
  public static CueSheet of(Plan plan, Pace pace) {
    return of(plan, pace, Tunings.none());
  }

  /** The same on a night on which the ear has been at work. */
  public static CueSheet of(Plan plan, Pace pace, Tunings soFar) {
    Course course = new Course(plan);
    CordReasons cords = new CordReasons(course, plan.setList().parking());
    SettingReasons settings = new SettingReasons(course);
    Tuning tuning = new Tuning(!plan.start().midSet(), soFar, plan.setList().rig());
    Unheard unheard = new Unheard(course, plan.setList().parking());
    List<Cue> cues = new ArrayList<>();
    for (Changeover changeover : plan.changeovers()) {
      SongPlan song = course.song(changeover.to());
      Tuning.Ahead ahead =
          changeover.setUp()
              ? tuning.inSetUp(plan.songs(), changeover.to())
              : tuning.before(song, changeover.to());
      Optional<SongPlan> before = before(course, changeover);
      EarNotes ear =
          EarNotes.of(ahead, song, plan.setList().pitch(), before, warmUp(changeover, plan));
      List<Step> steps =
          ChangeoverSteps.framed(
              new ChangeoverSteps(changeover, cords, settings, unheard).moves(),
              ear.onto(ahead.steps()),
              before.map(last -> Levels.stayingUp(last, song)).orElse(List.of()),
              before.map(last -> new Levels(song).rise(new Levels(last))).orElse(""),
              changeover.to());
      List<String> lookAt = LastLook.before(song, course.settings(changeover.to()), changeover);
      cues.add(cue(changeover, song, steps, pace, lookAt, ear));
    }
    return new CueSheet(
        plan.setList().name(),
        plan.setList().rig().name(),
        cautions(plan),
        jumpers(plan),
        cues,
        pace.origin(),
        SlotSum.of(
            plan.setList().slot(), plan.songs().stream().map(SongPlan::song).toList(), cues));
  }

  private static OptionalDouble warmUp(Changeover changeover, Plan plan) {
    return changeover.setUp()
        ? plan.setList().rig().warmth().warmUpSeconds()
        : OptionalDouble.empty();
  }

  private static Optional<SongPlan> before(Course course, Changeover changeover) {
    return changeover.to() == 0 ? Optional.empty() : Optional.of(course.song(changeover.to() - 1));
  }

  private static Cue cue(
      Changeover changeover,
      SongPlan song,
      List<Step> steps,
      Pace pace,
      List<String> lookAt,
      EarNotes ear) {
    return new Cue(
        changeover.to() + 1,
        song.song().name(),
        changeover.setUp(),
        steps,
        pace.seconds(steps),
        pace.runs(steps),
        song.song().gapSeconds(),
        lookAt,
        song.parked().stream().map(Wording::both).sorted().toList(),
        SongCard.of(song),
        ear);
  }

  private static List<String> cautions(Plan plan) {
    boolean jumpers = !plan.jumpers().isEmpty();
    Warmth warmth = plan.setList().rig().warmth();
    return plan.start().midSet()
        ? SetUpCautions.inMidSet(jumpers, warmth)
        : SetUpCautions.of(jumpers, warmth);
  }

  private static List<String> jumpers(Plan plan) {
    Comparator<Plan.JumperIn> byPlace =
        Comparator.comparing(jumper -> Spot.of(jumper.module()), HandOrder.SPOTS);
    return plan.jumpers().keySet().stream()
        .sorted(byPlace.thenComparing(jumper -> jumper.jumper().name()))
        .map(in -> Wording.jumper(in, plan.jumpers().get(in)))
        .toList();
  }
}
