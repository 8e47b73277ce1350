package entracte.journal;

import entracte.journal.Fields.In;
import entracte.journal.Fields.Out;
import entracte.stage.Event;
import entracte.stage.Input;
import java.util.NoSuchElementException;
import java.util.Optional;

/** Events as lines and back. */
final class EventText {
  private EventText() {}

  static String write(Event event) {
    Out out = new Out().add(event.atMillis());
    if (event instanceof Event.Begun begun) {
      out.add("begun").add(begun.fingerprint()).each(begun.order(), out::add);
      ShowText.write(out, begun.rig());
      OutlineText.write(out, begun.basis());
    } else if (event instanceof Event.Pressed pressed) {
      out.add("pressed").add(pressed.input().name());
    } else if (event instanceof Event.Typed typed) {
      out.add("typed").add(typed.letter());
    } else if (event instanceof Event.Planned planned) {
      out.add("planned").add(planned.request()).each(planned.order(), out::add);
      out.each(planned.ways(), way -> ShowText.write(out, way)).add(planned.note());
      ShowText.write(out, planned.jumpers());
    } else if (event instanceof Event.Unplanned unplanned) {
      out.add("unplanned").add(unplanned.request()).add(unplanned.reason());
    } else if (event instanceof Event.Resumed resumed) {
      out.add("resumed").add(resumed.changed());
      OutlineText.write(out, resumed.basis());
    }
    return out.line();
  }

  private static Event resumed(long at, In in) {
    boolean changed = in.goesOn() && in.yes();
    return new Event.Resumed(at, OutlineText.basis(in), changed);
  }

  /** The event; empty for a line that is only told to readers, or is none of ours. */
  static Optional<Event> read(String line) {
    try {
      In in = new In(line);
      long at = in.wide();
      return switch (in.text()) {
        case "begun" ->
            Optional.of(
                new Event.Begun(
                    at, in.text(), in.each(In::whole), ShowText.rig(in), OutlineText.basis(in)));
        case "pressed" -> Optional.of(new Event.Pressed(at, Input.valueOf(in.text())));
        case "typed" -> Optional.of(new Event.Typed(at, in.whole()));
        case "planned" ->
            Optional.of(
                new Event.Planned(
                    at,
                    in.whole(),
                    in.each(In::whole),
                    in.each(ShowText::way),
                    in.text(),
                    ShowText.positions(in)));
        case "unplanned" -> Optional.of(new Event.Unplanned(at, in.whole(), in.text()));
        case "resumed" -> Optional.of(resumed(at, in));
        default -> Optional.empty();
      };
    } catch (NoSuchElementException | IllegalArgumentException broken) {
      return Optional.empty();
    }
  }
}
