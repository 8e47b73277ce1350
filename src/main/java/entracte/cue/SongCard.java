package entracte.cue;

import entracte.plan.SongPlan;
import entracte.setlist.GearCue;
import entracte.setlist.Song;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What stands on a song's card besides the moves.
 *
 * @param lines key, tempo, who starts and notes, those that the set gives
 * @param gear what each piece of gear is sent, one line for each
 * @param casting who plays what, such as {@code osc 2 plays bass}; modules that the patch names
 *     outright are left out
 * @param encore whether it is played only if it is called for
 */
public record SongCard(
    List<String> lines, List<String> gear, List<String> casting, boolean encore) {
  public SongCard {
    lines = List.copyOf(lines);
    gear = List.copyOf(gear);
    casting = List.copyOf(casting);
  }

  /** The card of a song that is played in any case. */
  public SongCard(List<String> lines, List<String> gear, List<String> casting) {
    this(lines, gear, casting, false);
  }

  static SongCard of(SongPlan plan) {
    return new SongCard(
        lines(plan.song().card()),
        plan.song().gear().stream().map(SongCard::gear).toList(),
        plan.casting().stream().flatMap(cast -> casting(cast).stream()).toList(),
        plan.song().card().encore());
  }

  private static List<String> lines(Song.Card card) {
    List<String> lines = new ArrayList<>();
    add(lines, "Key", card.key());
    add(lines, "Tempo", card.tempo());
    add(lines, "Starts", card.starts());
    add(lines, "Notes", card.notes());
    return lines;
  }

  private static void add(List<String> lines, String label, Optional<String> text) {
    text.ifPresent(t -> lines.add(label + ": " + t));
  }

  private static String gear(GearCue cue) {
    List<String> parts = new ArrayList<>();
    cue.bank().ifPresent(bank -> parts.add("bank " + bank.high() + "/" + bank.low()));
    cue.program().ifPresent(program -> parts.add("program " + program));
    cue.controls().forEach(c -> parts.add(at(c.written(), c.value())));
    cue.fine().forEach(f -> parts.add(at(f.written(), f.value())));
    return cue.gear() + " to " + String.join(", ", parts);
  }

  /** {@code volume 90}, but {@code cc 7 at 90}: two figures in a row would run together. */
  private static String at(String written, int value) {
    boolean figures = Character.isDigit(written.charAt(written.length() - 1));
    return written + (figures ? " at " : " ") + value;
  }

  private static Optional<String> casting(SongPlan.CastAs cast) {
    String strips = strips(cast);
    return cast.role().equals(cast.module().name()) && strips.isEmpty()
        ? Optional.empty()
        : Optional.of(Wording.plays(cast.module(), cast.role()) + strips);
  }

  private static String strips(SongPlan.CastAs cast) {
    List<String> named =
        cast.strips().stream()
            .filter(strip -> isNamedChannel(cast, strip))
            .map(strip -> strip.label() + " on " + strip.number())
            .toList();
    return named.isEmpty() ? "" : " (" + String.join(", ", named) + ")";
  }

  /** Equal jacks are strips too, but which of them it is says nothing that the cords do not say. */
  private static boolean isNamedChannel(SongPlan.CastAs cast, SongPlan.StripAs strip) {
    String jack = strip.label().replaceFirst(" \\d+$", "");
    return cast.module().kind().channels().isPresent()
        && cast.module().kind().equalJacks(jack).isEmpty()
        && !strip.label().equals(Integer.toString(strip.number()));
  }
}
