package entracte.check;

import entracte.check.Part.JumperNeed;
import entracte.check.Part.Owner;
import entracte.check.Part.Wanted;
import entracte.setlist.Interval;
import java.util.List;

/** How a kind reads the name of a control and the value it shall have. */
sealed interface ControlShape {
  /** Adds what is wanted to the one list where it belongs. */
  void addTo(List<Wanted> settings, List<JumperNeed> jumpers, Owner owner, String control);

  record Knob(Interval interval) implements ControlShape {
    @Override
    public void addTo(
        List<Wanted> settings, List<JumperNeed> jumpers, Owner owner, String control) {
      settings.add(new Wanted.Knob(owner, control, interval));
    }
  }

  record Switch(String position) implements ControlShape {
    @Override
    public void addTo(
        List<Wanted> settings, List<JumperNeed> jumpers, Owner owner, String control) {
      settings.add(new Wanted.Switch(owner, control, position));
    }
  }

  record Jumper(String position) implements ControlShape {
    @Override
    public void addTo(
        List<Wanted> settings, List<JumperNeed> jumpers, Owner owner, String control) {
      jumpers.add(new JumperNeed(owner.role(), control, position));
    }
  }
}
