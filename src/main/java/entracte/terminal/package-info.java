/**
 * The terminal: paints what {@code stage} drew, turns keys into what a player says, and always
 * gives the terminal back as it was.
 *
 * <p>Lanterna does the work, with four precautions. The output is buffered but flushed, the size is
 * asked of {@code stty} and not of the terminal, the keys that would stop or freeze the program
 * (Ctrl-S, Ctrl-Z, Ctrl-\) are taken as keys, and a thread of its own waits for keys, because only
 * a blocking read tells when the terminal is gone.
 */
package entracte.terminal;
