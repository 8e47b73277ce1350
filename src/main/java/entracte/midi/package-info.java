/**
 * MIDI messages as bytes, and what takes them.
 *
 * <p>A message is a status byte from 80 to EF (hexadecimal), whose low half is the channel less
 * one, and one or two data bytes of 7 bits. What a musician sets for a song is a {@link
 * entracte.midi.SongProgram}: it lets go of notes and pedals, chooses a bank and a program, gives
 * the gear time to load it, and only then sets controllers, because loading a program would
 * overwrite them. The result is a {@link entracte.midi.Dispatch}: timed messages for one port.
 *
 * <p>Source of the bytes: MIDI 1.0 Detailed Specification (MIDI Manufacturers Association, 96.1).
 * Programs, channels and values are here as on the wire, save that channels are counted from 1 as
 * on every panel.
 */
package entracte.midi;
