package entracte.terminal;

import com.googlecode.lanterna.SGR;
import com.googlecode.lanterna.TextColor;
import entracte.stage.Style;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Map;

/** How a terminal shows the styles: with 24 bits, with its own 16 colours, or with one. */
public enum Palette {
  ONE,
  SIXTEEN,
  FULL;

  /** The palette for what the environment says; {@code colour} is false where nobody wants any. */
  public static Palette of(Map<String, String> environment, boolean colour) {
    if (!colour) {
      return ONE;
    }
    String depth = environment.getOrDefault("COLORTERM", "").toLowerCase(Locale.ROOT);
    return depth.equals("truecolor") || depth.equals("24bit") ? FULL : SIXTEEN;
  }

  TextColor ink(Style style) {
    return switch (this) {
      case ONE -> TextColor.ANSI.DEFAULT;
      case SIXTEEN ->
          switch (style) {
            case TEXT, DIM -> TextColor.ANSI.WHITE;
            case STRONG, LARGE, MARKED -> TextColor.ANSI.WHITE_BRIGHT;
            case WARN -> TextColor.ANSI.YELLOW_BRIGHT;
          };
      case FULL -> rgb(style.ink());
    };
  }

  TextColor ground() {
    return switch (this) {
      case ONE -> TextColor.ANSI.DEFAULT;
      case SIXTEEN -> TextColor.ANSI.BLACK;
      case FULL -> rgb(Style.GROUND);
    };
  }

  private static TextColor rgb(int ink) {
    return new TextColor.RGB(ink >> 16, ink >> 8 & 0xFF, ink & 0xFF);
  }

  EnumSet<SGR> marks(Style style) {
    EnumSet<SGR> marks = EnumSet.noneOf(SGR.class);
    if (style.bold()) {
      marks.add(SGR.BOLD);
    }
    if (style.turned()) {
      marks.add(SGR.REVERSE);
    }
    return marks;
  }
}
