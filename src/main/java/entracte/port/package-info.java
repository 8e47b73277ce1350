/** Finds MIDI devices, sends to them and listens to pedals. */
package entracte.port;
