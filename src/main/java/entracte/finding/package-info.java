/**
 * What the program has to say about what a musician wrote: how grave it is, where it stands, what
 * is wrong and what would help.
 */
package entracte.finding;
