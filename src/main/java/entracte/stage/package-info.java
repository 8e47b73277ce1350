/** The show as pure state: events in, new state, frames and effects out. */
package entracte.stage;
