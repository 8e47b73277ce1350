/**
 * MIDI ports as they are on a stage: found by name, lost when a plug falls out, and back again.
 *
 * <p>Java's MIDI system tells nobody when a device goes: sending into a pulled plug throws nothing,
 * and the device that comes back is another object that the old one knows nothing of. So {@link
 * entracte.port.Wiring} asks for the list of ports once a second, calls a port lost when its name
 * is missing, closes it, and opens it afresh when the name is back. Each outlet has a thread of its
 * own, so that slow gear or a FIFO without a reader holds up nobody else and never the screen.
 *
 * <p>The foot is judged by {@link entracte.port.FootLogic}, which knows no device and no clock.
 */
package entracte.port;
