/** Paints frames on the terminal and turns its keys into events. */
package entracte.terminal;
