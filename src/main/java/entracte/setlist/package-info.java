/**
 * What the musician wants to play: patches written by what they need (roles), the songs that use
 * them, and the set they make. Names are as written; that they mean something is found out by
 * {@code check}.
 */
package entracte.setlist;
