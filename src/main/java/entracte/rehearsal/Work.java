package entracte.rehearsal;

import java.util.Locale;

/** What the time of a changeover goes into. Players differ in each. */
enum Work {
  READ,
  PULL,
  PLUG,
  TURN,
  SWITCH,
  TUNE,
  LEVEL;

  /** The name used in files: {@code read}. */
  String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
