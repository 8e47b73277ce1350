package entracte.check;

import entracte.check.Part.CastRole;
import entracte.check.Part.JackUse;
import entracte.check.Part.JumperNeed;
import entracte.check.Part.Net;
import entracte.check.Part.Owner;
import entracte.check.Part.Strip;
import entracte.check.Part.Wanted;
import entracte.setlist.Song;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;

/** Makes the part of a song that has no error: numbers its roles and strips. */
final class PartMaker {
  private final List<RoleDraft> drafts;
  private final Map<RoleDraft, Fit> fits;
  private final List<CastRole> roles = new ArrayList<>();
  private final Map<JackAsk, JackUse> jacks = new IdentityHashMap<>();
  private final List<Wanted> settings = new ArrayList<>();
  private final List<JumperNeed> jumpers = new ArrayList<>();

  PartMaker(List<RoleDraft> drafts, Map<RoleDraft, Fit> fits) {
    this.drafts = drafts;
    this.fits = fits;
  }

  Part make(Song song, List<Wire> wires) {
    for (RoleDraft draft : drafts) {
      add(draft, fits.get(draft));
    }
    List<Net> nets = new ArrayList<>();
    for (Wire wire : wires) {
      nets.add(new Net(jacks.get(wire.source()), wire.sinks().stream().map(jacks::get).toList()));
    }
    return new Part(song, roles, nets, settings, jumpers);
  }

  private void add(RoleDraft draft, Fit fit) {
    Strips strips = new Strips(roles.size());
    for (int i = 0; i < draft.jacks().size(); i++) {
      JackAsk ask = draft.jacks().get(i);
      JackShape shape = fit.jack(i);
      Owner owner =
          shape.equal() ? strips.equalJack(ask.jack(), shape) : strips.channel(ask.channel());
      jacks.put(ask, new JackUse(owner, shape.jack()));
    }
    for (int i = 0; i < draft.controls().size(); i++) {
      ControlAsk ask = draft.controls().get(i);
      Owner owner = strips.channel(ask.channel());
      fit.control(i).addTo(settings, jumpers, owner, ask.control());
    }
    roles.add(new CastRole(draft.name(), fit.candidates(), strips.all));
  }

  /** The strips of one role: a channel is the same wherever it is named, an equal jack is not. */
  private static final class Strips {
    private final int role;
    private final List<Strip> all = new ArrayList<>();
    private final Map<String, Integer> channels = new HashMap<>();

    Strips(int role) {
      this.role = role;
    }

    Owner channel(String label) {
      if (label.isEmpty()) {
        return new Owner(role, Owner.OWN);
      }
      return new Owner(
          role,
          channels.computeIfAbsent(
              label,
              name -> {
                all.add(new Strip(name, "", Math.max(0, Digits.number(name))));
                return all.size() - 1;
              }));
    }

    Owner equalJack(String label, JackShape shape) {
      all.add(new Strip(label, shape.jack(), shape.number()));
      return new Owner(role, all.size() - 1);
    }
  }
}
