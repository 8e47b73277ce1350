package entracte.plan;

import entracte.rig.Kind;
import entracte.rig.Module;
import java.util.List;
import java.util.OptionalInt;

/**
 * What would be, were the rig another.
 *
 * @param changed how it is another
 * @param lost the songs that could not be played at all, by name
 * @param moves between songs, if a plan was found for all of them
 * @param certain whether no search can find other moves than the set has now
 */
public record WhatIf(Changed changed, List<String> lost, OptionalInt moves, boolean certain) {
  public WhatIf {
    lost = List.copyOf(lost);
  }

  /** How the rig is another. */
  public sealed interface Changed {
    /** What is added or missing, by its name. */
    String what();

    /** One more module of a kind. */
    record OneMore(Kind kind) implements Changed {
      @Override
      public String what() {
        return kind.name();
      }
    }

    /** More cords, of the greatest length there is. */
    record MoreCords(int count) implements Changed {
      @Override
      public String what() {
        return count + " more cords";
      }
    }

    /** One module that is out of order. */
    record Without(Module module) implements Changed {
      @Override
      public String what() {
        return module.name();
      }
    }
  }

  /**
   * All answers for a set.
   *
   * @param base the plan with the rig as it is
   * @param more the worth of what might be bought, kinds in the order of the rig, cords last
   * @param without what is left when a module dies, in the order of the rig
   */
  public record Answers(Result.Planned base, List<WhatIf> more, List<WhatIf> without) {
    public Answers {
      more = List.copyOf(more);
      without = List.copyOf(without);
    }
  }
}
