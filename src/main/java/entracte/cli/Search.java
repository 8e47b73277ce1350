package entracte.cli;

import entracte.check.PlayableSet;
import entracte.cue.Cue;
import entracte.cue.CueSheet;
import entracte.finding.FindingPrinter;
import entracte.plan.Aim;
import entracte.plan.Clock;
import entracte.plan.Options;
import entracte.plan.Ordered;
import entracte.plan.Orderer;
import entracte.plan.Result;
import entracte.plan.Start;
import entracte.plan.Tempo;
import entracte.plan.Verifier;
import entracte.read.ReadState;
import entracte.read.RigStateReader;
import entracte.rehearsal.Learned;
import entracte.rig.Rig;
import entracte.rig.RigState;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** Loads a set, plans it and has the plan verified; a command gets a right plan or is stopped. */
final class Search {
  /** What stops the usual steps on a slow machine. */
  private static final double MOST_SECONDS_FOR_AN_ORDER = 90;

  private final Streams streams;
  private final Planning planning;
  private final ProgressLine progress;

  Search(Streams streams, Planning planning) {
    this.streams = streams;
    this.planning = planning;
    progress = new ProgressLine(streams);
  }

  Result.Planned plan(SetArgument set, SearchOptions search) {
    return plan(Loader.playable(set.path(), streams), set, search);
  }

  /** Plans a set that was loaded from {@code set}. */
  Result.Planned plan(PlayableSet playable, SetArgument set, SearchOptions search) {
    return compared(playable, set, search).planned();
  }

  /** A plan, and what it gains over that of the fewest moves, if it was to take fewest seconds. */
  record Compared(Result.Planned planned, Optional<Saving> saving) {}

  /** Plans a set that was loaded from {@code set}, and looks what its aim gains. */
  Compared compared(PlayableSet playable, SetArgument set, SearchOptions search) {
    Rig rig = playable.setList().rig();
    Learned learned = Player.learned(rig, set.path());
    Options options =
        search
            .options(start(search, rig), learned.tempo(rig))
            .withClock(clock(search.aim() == Aim.EVEN ? learned : Learned.unrehearsed(rig)));
    Options begun = begun(playable, shown(options, set.quiet()));
    Result.Planned planned = planned(playable, begun);
    return new Compared(
        planned, begun.near().map(fewest -> Saving.of(planned.plan(), fewest, options.tempo())));
  }

  /**
   * The time of each changeover. Where it only says which gaps have room to spare, it must not be
   * the player's own: a run more in the log would make other ways of those that were practised.
   */
  static Clock clock(Learned learned) {
    return plan ->
        CueSheet.of(plan, learned).cues().stream().mapToDouble(Cue::wholeSeconds).toArray();
  }

  /** Plans a set that is loaded. */
  Result.Planned plan(PlayableSet playable, Options options, boolean quiet) {
    return planned(playable, begun(playable, shown(options, quiet)));
  }

  /** The same, with progress shown if anybody sees it. */
  private Options shown(Options options, boolean quiet) {
    return streams.progress() && !quiet ? options.withProgress(progress::show) : options;
  }

  private Result.Planned planned(PlayableSet playable, Options options) {
    Result result = planning.plan(playable, options);
    progress.clear();
    if (result instanceof Result.Planned planned) {
      return verified(planned);
    }
    if (result instanceof Result.NoneFound none) {
      throw Stop.impossible("no plan was found. " + none.reason());
    }
    throw Stop.impossible("there is no plan. " + ((Result.Impossible) result).reason());
  }

  /** Looks for a better order of a set. */
  Ordered.Found order(PlayableSet set, SearchOptions search, boolean quiet) {
    Options options = search.options(start(search, set.setList().rig()), Tempo.steady());
    if (!search.saysSeconds()) {
      options = options.withTime(MOST_SECONDS_FOR_AN_ORDER);
    }
    Ordered ordered = Orderer.order(set, shown(options, quiet));
    progress.clear();
    if (ordered instanceof Ordered.Found found) {
      verified(found.proposed());
      found.written().ifPresent(Search::verified);
      return found;
    }
    throw Stop.impossible(
        "there is no order to propose. " + ((Ordered.NoneFound) ordered).reason());
  }

  /** The fewest seconds are looked for near the fewest moves, so as never to end up behind them. */
  private Options begun(PlayableSet playable, Options options) {
    if (options.aim() != Aim.FASTEST) {
      return options;
    }
    Options fewest = options.withAim(Aim.FEWEST).withRounds(Options.FITTING_ROUNDS);
    Result result = planning.plan(playable, fewest);
    progress.clear();
    return result instanceof Result.Planned near ? options.withNear(near.plan()) : options;
  }

  private Start start(SearchOptions search, Rig rig) {
    if (search.from().isEmpty()) {
      return search.midSet() ? Start.midSet(RigState.bare()) : Start.bare();
    }
    Path file = search.from().get();
    if (!Files.exists(file)) {
      throw Stop.trouble("there is no " + file, "Name the file of a saved rig state.");
    }
    ReadState read = RigStateReader.read(file, rig);
    if (!read.findings().isEmpty()) {
      streams.complain(FindingPrinter.print(read.findings()).stripTrailing());
    }
    RigState state =
        read.state().orElseThrow(() -> Stop.impossible("nothing starts from a state with errors"));
    return search.midSet() ? Start.midSet(state) : Start.beforeShow(state);
  }

  private static Result.Planned verified(Result.Planned planned) {
    List<String> complaints = Verifier.verify(planned.plan(), planned.aim());
    if (!complaints.isEmpty()) {
      throw Stop.bug(
          "the plan that was found is wrong, so it is not shown: " + complaints.get(0),
          "This is a mistake in the program, not in your set. Another --seed may get round it.");
    }
    return planned;
  }
}
