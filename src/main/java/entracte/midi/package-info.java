/** MIDI messages as bytes, and what a port that takes them is. */
package entracte.midi;
