package entracte.rig;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Figures as a musician writes them: {@code 6.5}, not {@code 6.5000001}; {@code 4}, not 4.0. */
public final class Figures {
  private static final int DECIMALS = 4;

  private Figures() {}

  public static String plain(double value) {
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(DECIMALS, RoundingMode.HALF_EVEN);
    String text = rounded.stripTrailingZeros().toPlainString();
    return rounded.signum() == 0 ? "0" : text;
  }
}
