/**
 * The papers of a set. Paper is what remains when the laptop dies, so it has to be read from where
 * the player stands, in the light there is.
 *
 * <p>An {@link entracte.print.Author} dictates, once, what the papers say; a scribe takes it down.
 * One scribe writes plain text, the other sets pages: letters of one family, embedded in the file,
 * never smaller than the eye needs at its distance ({@link entracte.print.Legibility}). What does
 * not fit goes on a further page. Pages are lists of black marks in millimetres; only the last step
 * knows of PDF or SVG.
 *
 * <p>The picture of a changeover shows the case as its rows and widths tell, and in each module a
 * stamp for each place of a move, numbered like the list of steps. Stamps differ in shape, so that
 * they work in grey, in red light, and for the one man in twelve who sees colours otherwise.
 *
 * <p>The front door is {@link entracte.print.Sheets}. The same papers make the same bytes.
 */
package entracte.print;
