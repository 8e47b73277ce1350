/**
 * What the musician types and what comes back: the commands, the files they write, the exit codes,
 * and the wiring of everything else.
 *
 * <p>Results go to standard output; findings about a set that is being planned, progress and
 * trouble go to standard error, so that output can be sent on to another program. The exit code is
 * 0 if the command did what was asked, 1 if the set has errors or cannot be played, 2 if the
 * command was typed wrongly, 3 if a file or a device failed, and 70 if the program itself did.
 */
package entracte.cli;
