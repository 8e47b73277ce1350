package entracte.check;

import entracte.setlist.End;

/**
 * A jack that a patch asks of a role.
 *
 * @param channel the channel's name or number; empty for a jack of the module's own
 * @param source whether a cord starts there
 */
record JackAsk(End end, RoleDraft role, String channel, String jack, boolean source) {}
