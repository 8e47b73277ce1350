package entracte.stage;

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
    song.lines().forEach(line -> body.lines(line, Style.STRONG));
    body.blank();
    ahead(body, show, now);
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

  /** What comes after. */
  static void ahead(Area body, Show show, State now) {
    int index = now.ahead();
    if (index >= now.order().size()) {
      body.line("Then: nothing, this is the last.", Style.TEXT);
      return;
    }
    ShowSong coming = show.songs().get(now.order().get(index));
    String moves =
        now.way()
            .map(way -> moves(way, coming.gapSeconds()))
            .orElse(now.waiting() ? "the moves are being worked out" : "no way is planned");
    body.lines("Then: " + coming.title() + ", " + moves, Style.TEXT);
  }

  private static String moves(Way way, OptionalDouble gap) {
    String moves = way.count() + " moves, about " + TimeText.of(way.seconds());
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
