package entracte.check;

import java.util.List;

/**
 * A part, and where its roles are written.
 *
 * @param drafts the roles as they were read, in the order of the part's roles
 */
record Resolved(Part part, List<RoleDraft> drafts) {
  Resolved {
    drafts = List.copyOf(drafts);
  }
}
