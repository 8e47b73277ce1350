/**
 * Every rule of the trade that needs no ear. A set that has no error becomes a {@link
 * entracte.check.PlayableSet}: all names are known, every role has modules that can play it, every
 * value lies on its scale. The planner takes nothing else.
 */
package entracte.check;
