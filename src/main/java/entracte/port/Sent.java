package entracte.port;

import entracte.midi.Dispatch;

/**
 * What became of a dispatch. That it left does not say that anybody heard it.
 *
 * @param left whether every byte was handed over
 * @param millis from the first byte to the last, waits included
 * @param trouble what went wrong; empty if nothing
 */
public record Sent(Dispatch dispatch, boolean left, long millis, String trouble) {}
