package entracte.check;

import entracte.setlist.Setting;

/**
 * A knob, switch or jumper that a patch asks of a role.
 *
 * @param channel the channel's name or number; empty for a control of the module's own
 */
record ControlAsk(Setting setting, RoleDraft role, String channel) {
  String control() {
    return setting.control();
  }

  String value() {
    return setting.value().strip();
  }
}
