package entracte.stage;

import entracte.cue.TimeText;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Draws the night. The first row says where we are, the last rows what the player must know at any
 * moment: notices, what the next press will do, and whether pedal and ports are alive.
 */
public final class Screen {
  /** Smaller than this nothing can be shown that helps. */
  public static final int LEAST_WIDTH = 40;

  public static final int LEAST_HEIGHT = 12;

  private static final int FOOT_ROWS = 2;

  /** From so many columns on there is room for whole sentences. */
  private static final int WIDE = 60;

  /** From so many rows on there is room for longer notices. */
  private static final int TALL = 20;

  private static final int MILLIS = 1000;

  private final Show show;
  private final Night night;
  private final State now;
  private final Around around;
  private final Canvas canvas;

  private Screen(Show show, Night night, Around around, int width, int height) {
    this.show = show;
    this.night = night;
    this.now = night.now();
    this.around = around;
    this.canvas = new Canvas(width, height);
  }

  /** The night on a screen of that size. */
  public static Frame draw(Show show, Night night, Around around, int width, int height) {
    if (width < LEAST_WIDTH || height < LEAST_HEIGHT) {
      return tooSmall(Math.max(1, width), Math.max(1, height));
    }
    return new Screen(show, night, around, width, height).draw();
  }

  /** Whether a title can be shown in large letters, given a window that is wide enough. */
  public static boolean hasLargeLetters(String title) {
    return LargeLetters.has(title);
  }

  private static Frame tooSmall(int width, int height) {
    Canvas canvas = new Canvas(width, height);
    canvas.put(0, 0, "needs 40x12", Style.STRONG);
    return canvas.frame();
  }

  private Frame draw() {
    head();
    List<String> notices = notices();
    int foot = FOOT_ROWS + Math.max(1, notices.size());
    Area body = new Area(canvas, 2, canvas.height() - foot);
    if (now.menu().isPresent()) {
      MenuView.draw(body, show, night, now.menu().get(), around.nowMillis());
    } else {
      body(body);
    }
    foot(notices);
    return canvas.frame();
  }

  private void body(Area body) {
    switch (now.phase()) {
      case WAITING -> body.large(show.set());
      case CHANGEOVER -> ChangeoverView.draw(body, show, now, around.nowMillis());
      case SONG -> SongView.draw(body, show, now, around.nowMillis());
      case PAUSE -> {
        body.large("encore?");
        body.lines(SongView.ahead(show, now), Style.TEXT);
      }
      case END -> body.large("end of the set");
    }
  }

  private void head() {
    canvas.put(0, 0, Cells.cut(where(), canvas.width() - 2 - Cells.of(times())), Style.TEXT);
    canvas.putRight(0, times(), Style.TEXT);
  }

  private String where() {
    String count = Math.min(now.at() + 1, now.order().size()) + " of " + now.order().size();
    return switch (now.phase()) {
      case WAITING -> show.set();
      case CHANGEOVER -> now.began() == 0 ? "set-up" : "changeover to " + count;
      case SONG -> "song " + count + section();
      case PAUSE -> "pause";
      case END -> "end";
    };
  }

  private String section() {
    return now.section() == 0
        ? ""
        : ", "
            + show.songs()
                .get(now.order().get(now.at()))
                .sends()
                .sections()
                .get(now.section() - 1)
                .name();
  }

  private String times() {
    String left = "";
    if (show.slotSeconds().isPresent() && now.began() > 0) {
      double gone = (around.nowMillis() - now.began()) / (double) MILLIS;
      double rest = show.slotSeconds().getAsDouble() - gone;
      boolean over = rest < 0;
      left =
          canvas.width() < WIDE
              ? SongView.clock(Math.abs(rest)) + (over ? " over  " : " left  ")
              : TimeText.of(Math.abs(rest)) + (over ? " over the slot  " : " of slot left  ");
    }
    return left + around.clock();
  }

  private void foot(List<String> notices) {
    int last = canvas.height() - 1;
    for (int line = 0; line < notices.size(); line++) {
      canvas.put(0, last - 1 - notices.size() + line, notices.get(line), Style.WARN);
    }
    canvas.bar(last - 1, NextPress.says(show, night, canvas.width()), Style.STRONG);
    ports(last);
  }

  /** What the last press did, and what is wrong around; as much of it as a small screen takes. */
  private List<String> notices() {
    int most = canvas.height() < TALL ? 3 : 4;
    List<String> lines = new ArrayList<>(Canvas.wrap(now.notice(), canvas.width()));
    lines.addAll(Canvas.wrap(around.trouble(), canvas.width()));
    if (lines.size() > most) {
      lines.clear();
      lines.addAll(Canvas.wrap(now.notice() + " " + around.trouble(), canvas.width()));
    }
    if (lines.size() < most) {
      show.drift()
          .says(night, around.nowMillis())
          .ifPresent(said -> lines.add(Cells.cut(said, canvas.width())));
    }
    if (lines.size() > most) {
      lines.set(most - 1, Cells.cut(lines.get(most - 1) + " " + lines.get(most), canvas.width()));
    }
    return lines.subList(0, Math.min(most, lines.size()));
  }

  private void ports(int row) {
    List<String> each = new ArrayList<>();
    Map<String, String> ill = new TreeMap<>();
    around
        .ports()
        .forEach(
            (name, port) -> {
              each.add(name + " " + port.word());
              if (port != Around.Port.OK) {
                ill.merge(port.word() + ": ", name, (some, one) -> some + ", " + one);
              }
            });
    String all = each.isEmpty() ? "no MIDI ports" : String.join("  ", each);
    String few = ill.isEmpty() ? "all " + each.size() + " ports ok" : named(ill);
    String shown = Cells.of(all) <= canvas.width() ? all : few;
    canvas.put(0, row, Cells.cut(shown, canvas.width()), ill.isEmpty() ? Style.DIM : Style.WARN);
  }

  /** {@code FAILS: Stage Piano; LOST: Drum Box, Pedal}. */
  private static String named(Map<String, String> ill) {
    return String.join("; ", ill.entrySet().stream().map(e -> e.getKey() + e.getValue()).toList());
  }
}
