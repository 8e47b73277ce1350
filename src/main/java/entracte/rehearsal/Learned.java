package entracte.rehearsal;

import entracte.cue.Cue;
import entracte.cue.Pace;
import entracte.cue.Step;
import entracte.plan.Tempo;
import entracte.rig.Rig;
import java.io.IOException;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What is known of a player: the pace of hands that have rehearsed so far. The front door for all
 * that only wants seconds.
 */
public final class Learned implements Pace {
  /** How far the model may be off for one changeover, of a player who is known. An estimate. */
  private static final double CHANGEOVER_DOUBT = 0.2;

  /** How far a player may be off from the model, before the first run. An estimate. */
  private static final double PLAYER_DOUBT = 0.3;

  private final TimeModel model;
  private final List<Run> runs;
  private final Histories histories;
  private final Player player;
  private final LawEvidence evidence;

  private Learned(TimeModel model, List<Run> runs) {
    this.model = model;
    this.runs = List.copyOf(runs);
    this.histories = new Histories(runs);
    this.player = Player.of(histories);
    this.evidence = evidence();
  }

  static Learned from(Rig rig, List<Run> runs) {
    return new Learned(new TimeModel(rig), runs);
  }

  /** Somebody who never rehearsed: all as the rig's {@code hands} say. */
  public static Learned unrehearsed(Rig rig) {
    return from(rig, List.of());
  }

  /**
   * What a set's log tells of its player.
   *
   * @throws IOException if the log is there but cannot be read
   */
  public static Learned from(Rig rig, RunLog log) throws IOException {
    return from(rig, log.read().runs());
  }

  /** The beginning of the last day, in UTC, on which a run was timed; long ago if none was. */
  public Instant lastDay() {
    return histories.all().stream()
        .flatMap(List::stream)
        .map(run -> run.when().truncatedTo(ChronoUnit.DAYS))
        .max(Comparator.naturalOrder())
        .orElse(Instant.EPOCH);
  }

  TimeModel model() {
    return model;
  }

  Player player() {
    return player;
  }

  @Override
  public double seconds(Step step) {
    return player.seconds(model.makeup(step, Optional.empty()));
  }

  /**
   * What the next run of these steps will as likely exceed as not; what a trained hand of this
   * player takes if they were never timed.
   */
  @Override
  public double seconds(List<Step> steps) {
    return runs(steps) == 0 ? trained(steps) : outlook(steps).typical(1);
  }

  @Override
  public int runs(List<Step> steps) {
    return history(steps).size();
  }

  @Override
  public String origin() {
    int runs = histories.size();
    int changeovers = histories.all().size();
    return switch (runs) {
      case 0 -> Pace.super.origin();
      case 1 -> "Times are learned from 1 timed run.";
      default ->
          "Times are learned from "
              + runs
              + " timed runs of "
              + (changeovers == 1 ? "1 changeover." : changeovers + " changeovers.");
    };
  }

  /** The seconds of single moves, for the planner. */
  public Tempo tempo(Rig rig) {
    return new AverageTempo(rig, model, player);
  }

  /** How many runs led to the song of a cue by other moves than the cue's. */
  long othersTo(Cue cue) {
    String mark = Mark.of(cue.steps());
    return runs.stream().filter(r -> r.to().equals(cue.song()) && !r.mark().equals(mark)).count();
  }

  /** How many runs, of whatever changeover, all this comes from. */
  int timedRuns() {
    return histories.size();
  }

  List<Run> history(List<Step> steps) {
    return histories.of(Mark.of(steps));
  }

  /** What was known before that moment. */
  Learned before(Instant moment) {
    return new Learned(model, runs.stream().filter(run -> run.when().isBefore(moment)).toList());
  }

  Outlook outlook(List<Step> steps) {
    List<Double> seconds = seconds(history(steps).stream());
    return Outlook.of(trained(steps), doubt(), seconds, evidence.laws(Mark.of(steps)));
  }

  /** What run number {@code n} takes of the time of the first, by all that was timed so far. */
  double part(int n) {
    return evidence.laws("").stream().mapToDouble(w -> w.weight() * w.law().part(n)).sum();
  }

  private LawEvidence evidence() {
    LawEvidence evidence = new LawEvidence();
    for (List<Run> history : histories.all()) {
      Run last = history.get(history.size() - 1);
      double trained = player.seconds(last.makeup());
      if (trained > 0) {
        evidence.add(last.mark(), trained, doubt(), seconds(history.stream()));
      }
    }
    return evidence;
  }

  private static List<Double> seconds(Stream<Run> runs) {
    return runs.map(Run::seconds).toList();
  }

  /**
   * How far a trained hand's time may be off: the model and the player, as far as known. It takes
   * several changeovers to know a player; many runs of one tell of that one.
   */
  private double doubt() {
    double player = PLAYER_DOUBT * PLAYER_DOUBT / (1 + histories.all().size());
    return Math.sqrt(CHANGEOVER_DOUBT * CHANGEOVER_DOUBT + player);
  }

  private double trained(List<Step> steps) {
    return player.seconds(Makeup.sum(model.makeup(steps)));
  }
}
