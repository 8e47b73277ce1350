/**
 * Works out the fewest moves. A plan casts every role of every song, says what is plugged and where
 * every control stands in each song, and lists the actions of each changeover.
 */
package entracte.plan;
