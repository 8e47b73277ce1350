package entracte.rig;

/**
 * The pedal that says "next".
 *
 * @param port the name of its MIDI port; empty for one that acts as a keyboard
 * @param press what it sends, as written: {@code cc 64}, {@code note 60}, {@code page down}
 * @param hold what a long press does, as written; empty for nothing
 */
public record FootSwitch(String port, String press, String hold) {}
