/**
 * Words for the hands. A plan says what changes; this package says it in the order in which two
 * hands should do it, one line for each thing they take hold of, and with the reason.
 *
 * <p>The order within a changeover is: the main level down; gain steps down; plugs out, the
 * destination end first; cords of which one plug moves; plugs in, the source end first; switches;
 * knobs, those left to the ear last; gain steps up; tuning, the reference first; the level up. So
 * nothing is heard while it changes, no jack is entered before it is free, and what drifts is tuned
 * last. Within each of these the hands travel once from left to right.
 *
 * <p>The front door is {@link entracte.cue.CueSheet#of}. Everything it hands out is text and
 * numbers, so that screens, paper and rehearsal can show the same words without knowing the
 * planner.
 */
package entracte.cue;
