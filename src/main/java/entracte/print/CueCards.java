package entracte.print;

import entracte.cue.Cue;
import entracte.cue.CueSheet;
import entracte.cue.Paperwork;
import entracte.cue.SongSheet;
import entracte.cue.Standing;
import entracte.cue.Step;
import entracte.cue.TimeText;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Dictates the way to each song: the set-up, and a card for each changeover. */
final class CueCards {
  static final String TUNING = "Tune in this order";

  private static final String POWER =
      "Main level down, then switch on: the rig and its gear first, the desk next, loudspeakers"
          + " last.";

  private final Paperwork papers;
  private final CueSheet sheet;
  private final Scribe scribe;

  CueCards(Paperwork papers, Scribe scribe) {
    this.papers = papers;
    this.sheet = papers.sheet();
    this.scribe = scribe;
  }

  void setUp(Cue cue) {
    SongSheet song = papers.song(cue);
    scribe.section(Part.SET_UP, cue.heading());
    sheet.cautions().forEach(scribe::caution);
    scribe.text(moves(cue) + ", about " + TimeText.of(cue.seconds()) + ". " + sheet.aboutTimes());
    scribe.text(startsFrom(cue));
    if (!sheet.jumpers().isEmpty()) {
      scribe.heading("Jumpers, power off and unplugged");
      sheet.jumpers().forEach(jumper -> scribe.tick("", "SET jumper " + jumper));
    }
    already();
    scribe.heading("Power");
    scribe.tick("", POWER);
    setUpSteps(cue);
    tuning(cue.ear().targets());
    if (!song.voices().isEmpty()) {
      scribe.heading("Soundcheck, each voice alone");
      song.voices().forEach(voice -> scribe.tick("", "LISTEN: " + voice));
    }
    scribe.labelled("Who plays", cue.card().casting());
    after(cue);
  }

  /** The key that is held stands above the targets, and no page comes between. */
  void tuning(List<String> targets) {
    if (!targets.isEmpty()) {
      scribe.heading(TUNING + ", " + targets.get(0));
      targets.subList(1, targets.size()).forEach(scribe::text);
    }
  }

  private void setUpSteps(Cue cue) {
    String last = "";
    for (int i = 0; i < cue.steps().size(); i++) {
      String part = part(cue.steps().get(i)).orElse(last);
      if (!part.equals(last)) {
        scribe.heading(part);
      }
      last = part;
      step(cue, i);
    }
  }

  /** The part of the set-up that a step belongs to; empty where it only goes on. */
  private static Optional<String> part(Step step) {
    return switch (step.verb()) {
      case LOWER -> Optional.of("First");
      case RAISE -> Optional.empty();
      case PULL -> Optional.of("Cords that go");
      case MOVE, PLUG -> Optional.of("Cords");
      case SWITCH -> Optional.of("Switches");
      case TURN -> Optional.of("Knobs");
      case TUNE -> Optional.of("Tuning");
    };
  }

  private void step(Cue cue, int index) {
    Step step = cue.steps().get(index);
    if (cue.beginsTuning(step)) {
      scribe.labelled("Before tuning", cue.ear().before());
    }
    String early = step.early() ? " (early, for song " + (step.forSong() + 1) + ")" : "";
    scribe.tick(Integer.toString(index + 1), step.text() + early);
  }

  /** What the rig is like before the first step. */
  private void already() {
    scribe.labelled("In already", papers.start().cords());
    scribe.labelled("Set already", papers.start().settings());
  }

  void card(Cue cue) {
    scribe.section(Part.CHANGEOVERS, cue.heading());
    if (cue.number() == 1) {
      sheet.cautions().forEach(scribe::caution);
      scribe.labelled("Jumpers must have been set", sheet.jumpers());
    }
    scribe.text(times(cue));
    scribe.text(startsFrom(cue));
    if (cue.number() == 1) {
      already();
    }
    for (int i = 0; i < cue.steps().size(); i++) {
      step(cue, i);
    }
    if (cue.steps().isEmpty()) {
      scribe.text("Nothing moves.");
    }
    tuning(cue.ear().targets());
    scribe.labelled("Trust the tuning of", cue.ear().trusted());
    after(cue);
  }

  private String times(Cue cue) {
    String head = moves(cue) + ", about " + TimeText.of(cue.seconds()) + cue.ofRuns();
    double talk = papers.song(cue).talkSeconds();
    String meanwhile = talk > 0 ? ", talk meanwhile " + TimeText.of(talk) : "";
    String gap =
        cue.gapSeconds().isEmpty() ? "" : ", gap " + TimeText.of(cue.gapSeconds().getAsDouble());
    long over = cue.wholeOverrun();
    String tooShort = over > 0 ? ": " + TimeText.of(over) + " too short" : "";
    return head + gap + tooShort + meanwhile + ".";
  }

  private static String moves(Cue cue) {
    return moves(cue.moves());
  }

  static String moves(int count) {
    return count == 1 ? "1 move" : count + " moves";
  }

  /** What stands before anything moves, so that a slip is seen in time. */
  private String startsFrom(Cue cue) {
    if (cue.number() == 1) {
      Standing start = papers.start();
      boolean bare = start.cords().isEmpty() && start.settings().isEmpty();
      return bare
          ? "From a bare rig: no cord in, every knob anywhere."
          : "From the rig as it was saved: " + cords(start.cords().size()) + " in.";
    }
    SongSheet before = papers.songs().get(cue.number() - 2);
    int waits = before.beside().cords().size();
    return "From "
        + before.number()
        + " "
        + before.song()
        + " as on its patch card: "
        + cords(papers.plugged().get(cue.number() - 2))
        + " in"
        + (waits == 0 ? "" : ", " + waits + " of them waiting")
        + ".";
  }

  private static String cords(int count) {
    return count == 1 ? "1 cord" : count + " cords";
  }

  private void after(Cue cue) {
    scribe.labelled("Mind", cue.ear().mind());
    scribe.labelled("Before you play, check", cue.lookAt());
    scribe.labelled("Listen for", cue.ear().listenFor());
    scribe.labelled("Gear", cue.card().gear());
    scribe.labelled("Stays parked, unheard", cue.parked());
    scribe.labelled("The song", about(papers.song(cue)));
    List<Place> places = Place.of(cue);
    if (!places.isEmpty()) {
      scribe.picture(papers.map(), places);
    }
  }

  /** Key, tempo, who starts, length and notes, those that the set gives. */
  static List<String> about(SongSheet song) {
    List<String> lines = new ArrayList<>();
    song.key().ifPresent(key -> lines.add("key " + key));
    song.tempo().ifPresent(tempo -> lines.add("tempo " + tempo));
    song.starts().ifPresent(starts -> lines.add("starts: " + starts));
    song.lengthSeconds().ifPresent(length -> lines.add("length " + TimeText.of(length)));
    song.notes().ifPresent(notes -> lines.add(notes));
    return lines;
  }
}
