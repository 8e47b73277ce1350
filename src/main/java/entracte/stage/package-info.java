/**
 * The show as a pure state. Whatever happens (a foot, a key, a plan that arrives) is an {@link
 * entracte.stage.Event} with its time; {@link entracte.stage.Stage#after} makes of a {@link
 * entracte.stage.Night} and an event the next night, and says in {@link entracte.stage.Effect}s
 * what the world shall do: send, plan, end. {@link entracte.stage.Screen} draws a night as a {@link
 * entracte.stage.Frame} of styled cells. Nothing here knows a clock, a file, a terminal or a port,
 * so a whole show can be played in a test, and a journal of events gives the night back after a
 * crash.
 *
 * <p>The true state of the rig is kept move by move: what was plugged when the changeover began,
 * and the changes of every move that is marked done. When something is otherwise than planned, the
 * state is put right and a new plan asked for from there.
 */
package entracte.stage;
