package entracte.print;

import entracte.cue.Cue;
import entracte.cue.CueSheet;
import entracte.cue.Paperwork;
import entracte.cue.PatchNotes;
import entracte.cue.SongSheet;
import entracte.cue.TimeText;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** Dictates the papers of a set, so that paper and plain text say the same. */
final class Author {
  private static final String SILENCE =
      "One patch-cable synthesizer, plugged anew by hand between songs with its level down. That"
          + " it is silent before a song, for as long as the figure with it, is meant; nothing is"
          + " broken.";

  private static final String COUNT_IN =
      "Level down, loudspeakers off first, then the rig; mains plug out. Then count every thing"
          + " back in.";

  private final Paperwork papers;
  private final CueSheet sheet;
  private final Scribe scribe;

  Author(Paperwork papers, Scribe scribe) {
    this.papers = papers;
    this.sheet = papers.sheet();
    this.scribe = scribe;
  }

  /** The chosen parts, in the order in which they are needed. */
  void dictate(Set<Part> parts) {
    for (Part part : Part.values()) {
      if (parts.contains(part)) {
        dictate(part);
      }
    }
  }

  private void dictate(Part part) {
    CueCards cards = new CueCards(papers, scribe);
    switch (part) {
      case ORDER -> order();
      case SET_UP -> sheet.cues().stream().filter(Cue::setUp).forEach(cards::setUp);
      case CHANGEOVERS -> sheet.betweenSongs().forEach(cards::card);
      case PATCHES -> papers.songs().forEach(this::patch);
      case PACKING -> packing();
      case COUNT_IN -> countIn();
      case ENGINEER -> engineer();
    }
  }

  private void order() {
    scribe.section(Part.ORDER, sheet.set());
    boolean encores = false;
    for (Cue cue : sheet.cues()) {
      SongSheet song = papers.song(cue);
      encores = encoreLine(song, encores);
      String about = String.join(", ", parts(song));
      String number = Integer.toString(song.number());
      scribe.entry(new Scribe.Entry(number, song.song(), seconds(cue), about, hands(cue, song)));
    }
    scribe.closing(
        "The time is for the way to the song." + between(),
        "Moves, gaps and talk are on the card of each song.");
    if (!sheet.hasSetUp()) {
      scribe.labelled("Jumpers must have been set", sheet.jumpers());
    }
  }

  private boolean encoreLine(SongSheet song, boolean drawn) {
    if (song.encore() && !drawn) {
      scribe.line("Encore");
    }
    return drawn || song.encore();
  }

  /** All that hands do while the audience waits; nothing where there is one such way or none. */
  private String between() {
    List<Cue> waited = sheet.betweenSongs();
    long seconds = waited.stream().mapToLong(Cue::wholeSeconds).sum();
    return waited.size() < 2
        ? ""
        : " Between songs: "
            + CueCards.moves(waited.stream().mapToInt(Cue::moves).sum())
            + ", "
            + TimeText.clock(seconds)
            + ".";
  }

  /** What the way to a song asks of the hands; the song's card says it, too. */
  private static String hands(Cue cue, SongSheet song) {
    List<String> hands = new ArrayList<>(List.of(CueCards.moves(cue.moves())));
    if (cue.setUp()) {
      hands.add(TimeText.clock(cue.seconds()));
    }
    if (!cue.setUp() && cue.gapSeconds().isPresent()) {
      hands.add("gap " + TimeText.clock(cue.gapSeconds().getAsDouble()) + over(cue));
    }
    if (song.talkSeconds() > 0) {
      hands.add("talk " + TimeText.clock(song.talkSeconds()));
    }
    return String.join(", ", hands);
  }

  private static List<String> parts(SongSheet song) {
    List<String> parts = new ArrayList<>();
    song.key().ifPresent(parts::add);
    song.tempo().ifPresent(tempo -> parts.add("tempo " + tempo));
    song.starts().ifPresent(starts -> parts.add("starts: " + starts));
    return parts;
  }

  private static String over(Cue cue) {
    return cue.wholeOverrun() == 0 ? "" : " is " + TimeText.clock(cue.wholeOverrun()) + " short";
  }

  private static String seconds(Cue cue) {
    return cue.setUp() ? "set-up" : TimeText.clock(cue.seconds());
  }

  private void patch(SongSheet song) {
    scribe.section(Part.PATCHES, "Patch " + song.number() + " " + song.song());
    scribe.labelled("Who plays", song.casting());
    ticks("Jumpers, power off and unplugged", song.jumpers(), "");
    ticks("Cords, level down", song.cords(), "");
    ticks("Knobs and switches", song.settings(), "");
    ticks("Gear", song.gear(), "");
    new CueCards(papers, scribe).tuning(song.tuning());
    scribe.labelled("Listen to each alone", song.voices());
    PatchNotes notes = song.patchNotes();
    scribe.labelled("Pitch on its way", notes.pitch());
    scribe.labelled("Who moves what", notes.playing());
    scribe.labelled("Gain steps", notes.levels());
    scribe.labelled("Filters fall", notes.slopes());
    scribe.labelled("Listen for", notes.listenFor());
    scribe.labelled("In the set also in, unheard", song.beside().cords());
    scribe.labelled("Set already, for later songs", song.beside().settings());
    scribe.labelled("The song", CueCards.about(song));
  }

  private void ticks(String heading, List<String> items, String verb) {
    if (!items.isEmpty()) {
      scribe.heading(heading);
      items.forEach(item -> scribe.tick("", verb + item));
    }
  }

  private void packing() {
    scribe.section(Part.PACKING, "Packing: " + sheet.set());
    ticks("Cords", papers.packing().cords(), "");
    ticks("Modules", papers.packing().modules(), "");
    List<String> rest = List.of("these papers, twice", "a light that needs no mains");
    ticks(
        "Beside the case",
        Stream.of(papers.packing().gear(), rest).flatMap(List::stream).toList(),
        "");
  }

  private void countIn() {
    scribe.section(Part.COUNT_IN, "Count in: " + sheet.set());
    scribe.caution(COUNT_IN);
    papers.packing().lines().forEach(line -> scribe.tick("", line));
  }

  /** What the line on the level has not said yet. */
  private static List<String> unsaid(List<String> desk, String level) {
    return desk.stream().filter(note -> !level.contains(note)).toList();
  }

  private void engineer() {
    scribe.section(Part.ENGINEER, "Engineer: " + sheet.set());
    scribe.text(SILENCE);
    sheet.slot().ifPresent(scribe::text);
    scribe.text(sheet.aboutTimes());
    boolean encores = false;
    for (Cue cue : sheet.cues()) {
      SongSheet song = papers.song(cue);
      encores = encoreLine(song, encores);
      List<String> parts = new ArrayList<>();
      if (song.talkSeconds() > 0) {
        parts.add(
            "talk before it, "
                + TimeText.clock(song.talkSeconds())
                + ": leave the microphone open");
      }
      song.starts().ifPresent(starts -> parts.add("starts: " + starts));
      cue.ear().level().ifPresent(parts::add);
      parts.addAll(unsaid(song.desk(), cue.ear().level().orElse("")));
      String about = String.join("; ", parts);
      String silence = cue.setUp() ? "" : TimeText.clock(cue.seconds());
      String number = Integer.toString(song.number());
      scribe.entry(new Scribe.Entry(number, song.song(), silence, about, ""));
    }
  }
}
