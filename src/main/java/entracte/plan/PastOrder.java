package entracte.plan;

import java.util.Arrays;

/**
 * Puts modules and strips that are alike into an order that depends on what is written of them, not
 * on their numbers: by the colours that refining their contents along the cords gives (Weisfeiler
 * and Leman 1968). Where colours are equal the numbers decide.
 */
final class PastOrder {
  private static final long MIX = 0x9E3779B97F4A7C15L;

  private final RigIndex rig;
  private final long[] stripColour;
  private final long[] moduleColour;
  private final long[] newColour;
  private final int[] modules;
  private final int[] strips;

  /** The number that a socket has in the order. */
  private final int[] name;

  private int[] figures;
  private int[] links;
  private int[] start;

  PastOrder(RigIndex rig) {
    this.rig = rig;
    stripColour = new long[rig.strips()];
    newColour = new long[rig.strips()];
    moduleColour = new long[rig.modules.size()];
    modules = new int[moduleColour.length];
    strips = new int[stripColour.length];
    name = new int[rig.sockets.size()];
  }

  /**
   * @param figures what is written of all strips, one after another
   * @param links the socket that a figure stands for, or -1
   * @param start where the figures of each strip begin
   */
  void find(Coming coming, int[] figures, int[] links, int[] start, int rounds) {
    this.figures = figures;
    this.links = links;
    this.start = start;
    Arrays.fill(stripColour, 0);
    for (int module = 0; module < moduleColour.length; module++) {
      moduleColour[module] = coming.alike.moduleClass[module];
    }
    for (int round = 0; round < rounds; round++) {
      refine(coming);
    }
    sort(coming);
  }

  private void refine(Coming coming) {
    for (int strip = 0; strip < stripColour.length; strip++) {
      long colour = coming.alike.stripIsSpecial[strip] ? rig.numberOfStrip[strip] : 0;
      for (int i = start[strip]; i < start[strip + 1]; i++) {
        colour = mix(colour, links[i] < 0 ? figures[i] : colourOf(links[i]));
      }
      newColour[strip] = colour;
    }
    System.arraycopy(newColour, 0, stripColour, 0, newColour.length);
    for (int module = 0; module < moduleColour.length; module++) {
      long colour = coming.alike.moduleClass[module];
      for (int group = 0; group < rig.firstStrip[module].length; group++) {
        long sum = 0;
        for (int strip = first(module, group); strip < rig.endOfGroup(module, group); strip++) {
          sum += mix(7, stripColour[strip]);
        }
        colour = mix(colour, sum);
      }
      moduleColour[module] = colour;
    }
  }

  private long colourOf(int socket) {
    int strip = rig.stripOfSocket[socket];
    long jack = socket - rig.firstSocketOfStrip[strip];
    return mix(mix(jack, stripColour[strip]), moduleColour[rig.moduleOfSocket[socket]]);
  }

  private static long mix(long a, long b) {
    long z = (a + MIX) * 0xBF58476D1CE4E5B9L ^ (b + MIX) * 0x94D049BB133111EBL;
    return z ^ z >>> 31;
  }

  private int first(int module, int group) {
    return rig.firstStrip[module][group];
  }

  private void sort(Coming coming) {
    int[] classOf = coming.alike.moduleClass;
    for (int i = 0; i < modules.length; i++) {
      int at = i;
      for (; at > 0 && comesBefore(i, modules[at - 1], classOf); at--) {
        modules[at] = modules[at - 1];
      }
      modules[at] = i;
    }
    int named = 0;
    int placed = 0;
    for (int module : modules) {
      for (int group = 0; group < rig.firstStrip[module].length; group++) {
        int from = placed;
        for (int strip = first(module, group); strip < rig.endOfGroup(module, group); strip++) {
          placed = insert(strip, from, placed, coming);
        }
        for (int i = from; i < placed; i++) {
          named = nameSockets(strips[i], named);
        }
      }
    }
  }

  private boolean comesBefore(int module, int other, int[] classOf) {
    return classOf[module] != classOf[other]
        ? classOf[module] < classOf[other]
        : moduleColour[module] < moduleColour[other];
  }

  /** Strips that a song tells apart come first and keep their order. */
  private int insert(int strip, int from, int placed, Coming coming) {
    int at = placed;
    boolean special = coming.alike.stripIsSpecial[strip];
    while (at > from) {
      int before = strips[at - 1];
      boolean beforeIsSpecial = coming.alike.stripIsSpecial[before];
      boolean swaps =
          special ? !beforeIsSpecial : !beforeIsSpecial && stripColour[strip] < stripColour[before];
      if (!swaps) {
        break;
      }
      strips[at--] = before;
    }
    strips[at] = strip;
    return placed + 1;
  }

  private int nameSockets(int strip, int named) {
    int next = named;
    for (int s = rig.firstSocketOfStrip[strip]; s < rig.firstSocketOfStrip[strip + 1]; s++) {
      name[s] = next++;
    }
    return next;
  }

  /** All figures in the order found, after those of the caller's own. */
  int[] written(int... head) {
    int[] out = Arrays.copyOf(head, head.length + start[start.length - 1] + strips.length);
    int next = head.length;
    for (int strip : strips) {
      out[next++] = start[strip + 1] - start[strip];
      for (int i = start[strip]; i < start[strip + 1]; i++) {
        out[next++] = links[i] < 0 ? figures[i] : name[links[i]];
      }
    }
    return out;
  }
}
