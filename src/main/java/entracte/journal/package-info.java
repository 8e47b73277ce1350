/**
 * The night on disk. Every event is one line that is flushed to the disk before the next one, so
 * that after a crash, a pulled plug or an empty battery the show is taken up at the same move: the
 * events are replayed. A line carries a checksum; a last line that was torn is dropped with a note.
 *
 * <p>{@link entracte.journal.JournalFile} is the front door. Lines that tell what was sent are for
 * readers, and are passed over when a night is taken up.
 */
package entracte.journal;
