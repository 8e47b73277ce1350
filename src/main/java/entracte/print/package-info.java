/** The sheets on paper. */
package entracte.print;
