package entracte.cue;

import java.util.Objects;

/**
 * What a step leaves changed on the rig and for the ear, by the names that plans and saved states
 * use ({@code osc 1.saw}), so that whoever keeps the true state of the rig need not know the
 * planner.
 */
public sealed interface Change {
  /** A cord hangs in two jacks from now on. */
  record Plugged(String source, String sink, int lengthCm) implements Change {
    public Plugged {
      Objects.requireNonNull(source);
      Objects.requireNonNull(sink);
    }
  }

  /** The cord in these two jacks is gone. */
  record Pulled(String source, String sink) implements Change {
    public Pulled {
      Objects.requireNonNull(source);
      Objects.requireNonNull(sink);
    }
  }

  /** A knob or a switch stands at another position. */
  record Set(String control, String position) implements Change {
    public Set {
      Objects.requireNonNull(control);
      Objects.requireNonNull(position);
    }
  }

  /** The ear has seen to a module, whose pitch hangs on {@code ear}. */
  record Tuned(String module, Ear ear) implements Change {
    public Tuned {
      Objects.requireNonNull(module);
      Objects.requireNonNull(ear);
    }
  }

  /** A knob or a switch that a module's pitch hangs on was moved. */
  record Touched(String module) implements Change {
    public Touched {
      Objects.requireNonNull(module);
    }
  }

  /** The main level is down from now on, or up again. */
  record Level(boolean down) implements Change {}
}
