package entracte.check;

import entracte.rig.Direction;
import entracte.setlist.Connection;
import entracte.setlist.End;
import entracte.setlist.Patch;
import entracte.setlist.Setting;
import entracte.setlist.Song;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Turns the names of a song into what the rig has. A patch is read once for all the songs that add
 * no settings of their own. Time is linear in what is written, as long as roles are few.
 */
final class Resolver {
  private final RigIndex rig;
  private final Findings findings;
  private final Map<Patch, Reading> plain = new IdentityHashMap<>();

  Resolver(RigIndex rig, Findings findings) {
    this.rig = rig;
    this.findings = findings;
  }

  /** Reads a song; one that adds nothing to its patch shares the reading of the first such song. */
  Reading read(Song song) {
    return song.settings().isEmpty()
        ? plain.computeIfAbsent(song.patch(), patch -> readAnew(song))
        : readAnew(song);
  }

  private Reading readAnew(Song song) {
    int before = findings.errors();
    Drafts drafts = new Drafts(rig, song.patch(), findings);
    List<Wire> wires = new ArrayList<>();
    for (Connection connection : song.patch().connections()) {
      wire(connection, drafts).ifPresent(wires::add);
    }
    settings(song, drafts);
    Map<RoleDraft, Fit> fits = new IdentityHashMap<>();
    for (RoleDraft draft : drafts.all()) {
      Fit fit = new Fit(draft, findings);
      fit.report();
      fits.put(draft, fit);
    }
    if (!fits.values().stream().allMatch(Fit::isPlayable)) {
      checkWays(wires, fits);
    }
    List<RoleDraft> all = List.copyOf(drafts.all());
    Optional<Part> part =
        findings.errors() > before
            ? Optional.empty()
            : Optional.of(new PartMaker(all, fits).make(song, wires));
    return new Reading(song, all, fits, part);
  }

  /** Finds the owners of both ends; empty if an end has none. */
  private Optional<Wire> wire(Connection connection, Drafts drafts) {
    Optional<JackAsk> source = ask(connection.source(), true, drafts);
    List<JackAsk> sinks = new ArrayList<>();
    for (End sink : connection.sinks()) {
      ask(sink, false, drafts).ifPresent(sinks::add);
    }
    if (connection.sinks().isEmpty()) {
      findings.error(
          connection,
          "\"" + connection.source() + "\" leads to nothing",
          "Name the jack that it feeds, or leave the line out.");
    }
    return source.isEmpty() || sinks.isEmpty()
        ? Optional.empty()
        : Optional.of(new Wire(connection, source.get(), sinks));
  }

  private Optional<JackAsk> ask(End end, boolean source, Drafts drafts) {
    Optional<JackAsk> ask =
        drafts
            .owner(end.owner(), end, end)
            .map(owned -> new JackAsk(end, owned.role(), owned.channel(), end.jack(), source));
    ask.ifPresent(jack -> jack.role().ask(jack));
    return ask;
  }

  private record ControlKey(RoleDraft role, String channel, String control) {}

  /** The song's own settings stand in the place of those of its patch. */
  private static void settings(Song song, Drafts drafts) {
    Map<ControlKey, ControlAsk> asks = new LinkedHashMap<>();
    for (List<Setting> settings : List.of(song.patch().settings(), song.settings())) {
      for (Setting setting : settings) {
        drafts
            .owner(setting.owner().strip(), setting.owner(), setting)
            .ifPresent(
                owned ->
                    asks.put(
                        new ControlKey(owned.role(), owned.channel(), setting.control()),
                        new ControlAsk(setting, owned.role(), owned.channel())));
      }
    }
    asks.values().forEach(ask -> ask.role().ask(ask));
  }

  private void checkWays(List<Wire> wires, Map<RoleDraft, Fit> fits) {
    Map<JackAsk, Direction> directions = new IdentityHashMap<>();
    fits.forEach(
        (draft, fit) -> {
          for (int i = 0; i < draft.jacks().size(); i++) {
            JackAsk ask = draft.jacks().get(i);
            fit.direction(i).ifPresent(direction -> directions.put(ask, direction));
          }
        });
    WrongWay rule = new WrongWay(directions, findings);
    wires.forEach(rule::check);
  }
}
