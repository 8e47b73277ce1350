package entracte.midi;

/** Controller numbers that this program itself needs; see table III of MIDI 1.0 (96.1). */
public final class Controllers {
  public static final int BANK_HIGH = 0;
  public static final int DATA_HIGH = 6;
  public static final int BANK_LOW = 32;
  public static final int DATA_LOW = 38;
  public static final int SUSTAIN = 64;
  public static final int SOSTENUTO = 66;
  public static final int OPEN_PARAMETER_LOW = 98;
  public static final int OPEN_PARAMETER_HIGH = 99;
  public static final int REGISTERED_PARAMETER_LOW = 100;
  public static final int REGISTERED_PARAMETER_HIGH = 101;
  public static final int ALL_SOUND_OFF = 120;
  public static final int ALL_NOTES_OFF = 123;

  /** From here on controllers are orders to the whole channel. */
  public static final int FIRST_CHANNEL_MODE = 120;

  /** The low byte of controller n is controller n + 32, for n up to 31. */
  public static final int LOW_BYTE = 32;

  private Controllers() {}
}
