/** The ordered, worded steps of a set-up and of each changeover. */
package entracte.cue;
