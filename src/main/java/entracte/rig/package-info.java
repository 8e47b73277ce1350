/**
 * The instrument as it stands on stage: kinds of module with their jacks, knobs, switches and
 * jumpers, the modules in their rows, the stock of patch cords, and the MIDI gear around the case.
 *
 * <p>Equal parts of a module are grouped. A mixer's inputs are <em>channels</em>, two pitch jacks
 * that do the same are <em>equal jacks</em>, the jacks of a multiple are <em>taps</em>; what a
 * module has only once is its <em>own</em> group. Within a group the planner may pick any number.
 */
package entracte.rig;
