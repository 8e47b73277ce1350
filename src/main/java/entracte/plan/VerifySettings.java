package entracte.plan;

import entracte.check.Part.Wanted;
import entracte.rig.Control;
import entracte.rig.Position;
import java.util.Map;
import java.util.function.Consumer;

/** Knobs stand within what the song accepts, switches at what it names, all on their scales. */
final class VerifySettings {
  private VerifySettings() {}

  static void check(CastPart cast, Consumer<String> complain) {
    Map<Control, Position> positions = cast.song().positions();
    positions.forEach(
        (control, position) -> {
          if (!isOn(control, position)) {
            complain.accept("%s cannot stand at %s".formatted(control, position));
          }
        });
    for (Wanted wanted : cast.part().settings()) {
      Control control = cast.control(wanted.owner(), wanted.control());
      Position position = positions.get(control);
      if (position == null || !accepts(wanted, position)) {
        complain.accept(
            "%s stands at %s".formatted(control, position == null ? "no known place" : position));
      }
    }
  }

  private static boolean isOn(Control control, Position position) {
    if (!control.module().kind().groups().contains(control.group())
        || control.number() < 1
        || control.number() > control.group().count()) {
      return false;
    }
    if (position instanceof Position.At at) {
      return control.scale().filter(scale -> scale.contains(at.value())).isPresent();
    }
    return control.positions().contains(position.toString());
  }

  private static boolean accepts(Wanted wanted, Position position) {
    if (wanted instanceof Wanted.Knob knob) {
      return position instanceof Position.At at && knob.interval().contains(at.value());
    }
    return wanted instanceof Wanted.Switch toggle
        && position.equals(new Position.Thrown(toggle.position()));
  }
}
