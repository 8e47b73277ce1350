package entracte.setlist;

/**
 * What one knob, switch or jumper shall be set to.
 *
 * @param owner a role, a module, or a role's channel ({@code blend.low})
 * @param control the knob, switch or jumper
 * @param value as written: {@code 6.5 +-0.5}, {@code 3-pole}
 */
public record Setting(String owner, String control, String value) {}
