/** Timed runs of changeovers, predicted seconds, odds, and what to practise next. */
package entracte.rehearsal;
