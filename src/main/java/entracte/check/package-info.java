/**
 * Every rule of the trade that needs no ear. A set that has no error becomes a {@link
 * entracte.check.PlayableSet}: all names are known, every role has modules that can play it, every
 * value lies on its scale. The planner takes nothing else.
 *
 * <p>The way of a song: its roles become <em>drafts</em> ({@link entracte.check.Drafts}), to which
 * every jack and control that the patch names is put as an <em>ask</em>. Each kind that a role
 * accepts <em>replies</em> to each ask with what it has or what it lacks ({@link
 * entracte.check.KindReading}, {@link entracte.check.ControlReading}); a <em>fit</em> weighs the
 * replies, and what fits becomes a {@link entracte.check.Part}. Then come the rules that see a song
 * as a whole ({@link entracte.check.Rules}), one class each, and last those that see all songs.
 *
 * <p>Errors stop planning: what is written cannot be played, or not be known. A warning is for what
 * can be played but is hardly meant, a note for what the player may like to know. One mistake gives
 * one finding.
 */
package entracte.check;
