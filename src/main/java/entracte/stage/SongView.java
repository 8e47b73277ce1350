package entracte.stage;

import entracte.cue.Cue;
import entracte.cue.TimeText;
import java.util.List;
import java.util.OptionalDouble;

/** While a song sounds: its name from afar, what the player wants to know, and what comes. */
final class SongView {
  private SongView() {}

  static void draw(Area body, Show show, State now, long nowMillis) {
    ShowSong song = show.songs().get(now.order().get(now.at()));
    body.large(song.title());
    body.line(time(song, (nowMillis - now.since()) / 1000.0), Style.TEXT);
    List<String> ahead = Canvas.wrap(ahead(show, now), body.width());
    song.lines().stream()
        .flatMap(line -> Canvas.wrap(line, body.width()).stream())
        .limit(Math.max(0, body.left() - ahead.size()))
        .forEach(line -> body.line(line, Style.STRONG));
    if (body.left() > ahead.size()) {
      body.blank();
    }
    ahead.forEach(line -> body.line(line, Style.TEXT));
    if (now.ready()) {
      ready(body, now);
    }
  }

  private static String time(ShowSong song, double seconds) {
    String gone = clock(seconds) + " in the song";
    return song.lengthSeconds().isPresent()
        ? gone + ", of " + clock(song.lengthSeconds().getAsDouble())
        : gone;
  }

  /** {@code 4:05}. */
  static String clock(double seconds) {
    long whole = Math.max(0, Math.round(seconds));
    return "%d:%02d".formatted(whole / 60, whole % 60);
  }

  /** What comes after; it stays on the screen where there is little room. */
  static String ahead(Show show, State now) {
    int index = now.ahead();
    if (index >= now.order().size()) {
      return "Then: nothing, this is the last.";
    }
    ShowSong coming = show.songs().get(now.order().get(index));
    String moves =
        now.way()
            .map(way -> moves(way, coming.gapSeconds()))
            .orElse(now.waiting() ? "the moves are being worked out" : "no way is planned");
    return "Then: " + coming.title() + ", " + moves;
  }

  private static String moves(Way way, OptionalDouble gap) {
    String moves =
        way.count()
            + (way.count() == 1 ? " move, about " : " moves, about ")
            + TimeText.of(way.seconds())
            + Cue.ofRuns(way.runs());
    if (gap.isEmpty()) {
      return moves;
    }
    String most = TimeText.of(gap.getAsDouble());
    return moves
        + (way.seconds() > gap.getAsDouble() ? ", longer than the gap of " : " of ")
        + most;
  }

  private static void ready(Area body, State now) {
    List<Move> moves = now.way().map(Way::moves).orElse(List.of());
    body.line("May be made ready now, unheard:", Style.TEXT);
    boolean any = false;
    for (int move = 0; move < moves.size(); move++) {
      if (moves.get(move).unheard() && now.done().get(move) == Done.OPEN) {
        any = true;
        body.line("  " + moves.get(move).text(), Style.STRONG);
      }
    }
    if (!any) {
      body.line("  nothing", Style.TEXT);
    }
  }
}
