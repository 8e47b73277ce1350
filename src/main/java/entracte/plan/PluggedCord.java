package entracte.plan;

import entracte.rig.Cord;

/**
 * A cord in its two jacks.
 *
 * @param lengthCm the length taken from the stock; {@code CordStock.ANY_LENGTH} where length does
 *     not matter. A cord that stays, or of which one plug stays, keeps its length.
 */
public record PluggedCord(Cord cord, int lengthCm) {
  @Override
  public String toString() {
    return cord.toString();
  }
}
