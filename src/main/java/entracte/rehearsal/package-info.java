/**
 * How long changeovers take this player, and how to make them shorter.
 *
 * <p>Before anything was rehearsed a {@link entracte.rehearsal.TimeModel} adds up what each step
 * asks of the hands: reading, reaching, pulling, carrying, plugging, turning, throwing, tuning. Its
 * seconds come from published motion times; a rig's {@code hands} may change what is only guessed.
 *
 * <p>Each timed {@link entracte.rehearsal.Run} goes into the set's {@link
 * entracte.rehearsal.RunLog}. From all runs {@link entracte.rehearsal.Learned} finds how quick this
 * player is at each kind of work, and from the runs of one changeover an {@link
 * entracte.rehearsal.Outlook}: what the next run may take, with odds rather than one figure. Odds
 * are <em>predictive</em>: they hold the doubt about the player's level as well as the spread from
 * run to run, so few runs give careful odds.
 *
 * <p>{@link entracte.rehearsal.Ranking} says what to practise next, {@link
 * entracte.rehearsal.SetLength} whether the whole set fits its slot, and {@link
 * entracte.rehearsal.Practice} leads through a rehearsal line by line.
 */
package entracte.rehearsal;
