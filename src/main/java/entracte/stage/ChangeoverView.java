package entracte.stage;

import entracte.cue.TimeText;
import java.util.List;

/**
 * On the way to a song: the move at hand large, the next ones below it, those that are done above
 * it and dim, and where on the rig the hands go.
 */
final class ChangeoverView {
  /** Below this many columns there is room for the moves only. */
  private static final int WIDE = 60;

  private static final int BAR_CELLS = 20;
  private static final int LEAST_FOLLOWING = 2;

  /** The sentence of a move, on two lines, stays above its notes. */
  private static final int LEAST_NOTED = 2;

  /** The rows of two lines of the smaller large letters. */
  private static final int TWO_LINES = 10;

  private final Area body;
  private final Show show;
  private final State now;
  private final double gone;

  private ChangeoverView(Area body, Show show, State now, long nowMillis) {
    this.body = body;
    this.show = show;
    this.now = now;
    this.gone = (nowMillis - now.since()) / 1000.0;
  }

  static void draw(Area body, Show show, State now, long nowMillis) {
    new ChangeoverView(body, show, now, nowMillis).draw();
  }

  private void draw() {
    ShowSong song = show.songs().get(now.order().get(now.at()));
    body.line(song.title() + time(song), over(song) ? Style.WARN : Style.TEXT);
    if (now.way().isEmpty()) {
      body.blank();
      body.lines(
          now.waiting() ? "The moves are being worked out." : "No way is planned to this song.",
          Style.STRONG);
      return;
    }
    if (now.current().isPresent()) {
      moves(now.current().get());
    } else {
      allDone(song);
    }
  }

  private String time(ShowSong song) {
    if (now.began() == 0) {
      return ": nobody waits";
    }
    if (song.gapSeconds().isEmpty()) {
      return ": " + TimeText.of(gone);
    }
    double gap = song.gapSeconds().getAsDouble();
    String bar = body.width() < WIDE ? "" : "  " + bar(gone / gap);
    String over = gone > gap ? ", " + TimeText.of(gone - gap) + " over" : "";
    return ": " + TimeText.of(gone) + " of " + TimeText.of(gap) + over + bar;
  }

  private boolean over(ShowSong song) {
    return song.gapSeconds().isPresent()
        && now.began() > 0
        && gone > song.gapSeconds().getAsDouble();
  }

  private static String bar(double part) {
    int full = (int) Math.round(Math.min(1, Math.max(0, part)) * BAR_CELLS);
    return "[" + "=".repeat(full) + ".".repeat(BAR_CELLS - full) + "]";
  }

  private void moves(int current) {
    List<Move> moves = now.way().orElseThrow().moves();
    body.line("step " + (current + 1) + " of " + moves.size() + toGo(moves), Style.DIM);
    int map = body.left() >= 12 && body.width() >= WIDE ? RigMap.rows(show) : 0;
    if (current > 0 && body.left() > 6) {
      body.line(sign(current - 1) + moves.get(current - 1).text(), Style.DIM);
    }
    List<String> notes =
        moves.get(current).notes().stream()
            .flatMap(note -> Canvas.wrap(note, body.width()).stream())
            .toList();
    int noted = Math.min(notes.size(), body.left() - map - LEAST_NOTED);
    body.headline(moves.get(current).text(), large(map + noted, moves.size() - 1 - current));
    notes.stream().limit(Math.max(0, noted)).forEach(note -> body.line(note, Style.STRONG));
    if (map > 0) {
      RigMap.draw(body, show, moves.get(current));
    }
    if (body.left() > LEAST_FOLLOWING) {
      body.blank();
    }
    following(moves, current);
  }

  /** Moves as they are counted everywhere: a step may be two, or none. */
  private String toGo(List<Move> moves) {
    int open = 0;
    for (int move = 0; move < moves.size(); move++) {
      open += now.done().get(move) == Done.OPEN ? moves.get(move).moves() : 0;
    }
    return ", " + open + (open == 1 ? " move" : " moves") + " to go";
  }

  /** How many rows may be large: the map stays, and something of what follows. */
  private int large(int map, int following) {
    int sentence = 1;
    int room = body.left() - map - sentence - Math.min(LEAST_FOLLOWING, following);
    return Math.max(0, Math.min(room, Math.max(TWO_LINES, (body.left() - map) * 2 / 3)));
  }

  /** The moves to come, with the module's name where the hand comes to another one. */
  private void following(List<Move> moves, int current) {
    String place = place(moves.get(current));
    for (int move = current + 1; move < moves.size() && body.left() > 0; move++) {
      String here = place(moves.get(move));
      boolean wide = body.width() >= WIDE;
      String shown = here.equals(place) ? "" : here;
      String column = wide ? Cells.cut(shown, 10) : "";
      String pad = wide ? " ".repeat(12 - Cells.of(column)) : "";
      body.line(column + pad + sign(move) + moves.get(move).text(), Style.TEXT);
      place = here;
    }
  }

  private static String place(Move move) {
    return move.reach().isEmpty() ? "" : move.reach().get(0).module();
  }

  private String sign(int move) {
    return switch (now.done().get(move)) {
      case OPEN -> "";
      case DONE -> "done  ";
      case LEFT -> "left  ";
    };
  }

  private void allDone(ShowSong song) {
    body.blank();
    body.large(song.title());
    List<String> lookAt = now.way().orElseThrow().lookAt();
    if (!lookAt.isEmpty()) {
      body.line("Before you play, check:", Style.TEXT);
      lookAt.forEach(each -> body.lines("  " + each, Style.STRONG));
    }
    song.lines().forEach(line -> body.lines(line, Style.TEXT));
  }
}
