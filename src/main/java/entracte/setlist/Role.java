package entracte.setlist;

import java.util.List;

/**
 * What a patch needs a module for.
 *
 * @param accepts the kinds that will do, or one module by name
 */
public record Role(String name, List<String> accepts) {
  public Role {
    accepts = List.copyOf(accepts);
  }
}
