package entracte.terminal;

import com.googlecode.lanterna.input.KeyStroke;
import com.googlecode.lanterna.input.KeyType;
import entracte.stage.Input;
import java.util.Optional;

/**
 * Which key says what. Letters alone do nothing but narrow a menu: terminals let unknown sequences
 * slip through as letters.
 */
final class Keys {
  private static final int BACKSPACE = 8;

  private Keys() {}

  static Optional<Key> of(KeyStroke stroke) {
    return switch (stroke.getKeyType()) {
      case PageDown, ArrowRight -> says(Input.NEXT);
      case PageUp, ArrowLeft -> says(Input.BACK);
      case ArrowDown -> says(Input.DOWN);
      case ArrowUp -> says(Input.UP);
      case Enter -> says(Input.ENTER);
      case F1, Tab -> says(Input.MENU);
      case F2 -> says(Input.SEND_AGAIN);
      case F3 -> says(Input.QUIET);
      case F4 -> says(Input.UNDO);
      case F5 -> says(Input.READY);
      case Escape -> says(Input.CLOSE);
      case Backspace -> Optional.of(new Key.Letter(BACKSPACE));
      case EOF -> Optional.of(new Key.Leaves());
      case Character -> character(stroke);
      default -> Optional.empty();
    };
  }

  private static Optional<Key> says(Input input) {
    return Optional.of(new Key.Says(input));
  }

  private static Optional<Key> character(KeyStroke stroke) {
    char letter = stroke.getCharacter();
    if (stroke.isCtrlDown()) {
      return letter == 'c' ? Optional.of(new Key.Leaves()) : Optional.empty();
    }
    if (stroke.isAltDown() || Character.isISOControl(letter)) {
      return Optional.empty();
    }
    return letter == ' ' ? says(Input.NEXT) : Optional.of(new Key.Letter(letter));
  }

  static boolean isEnd(KeyStroke stroke) {
    return stroke.getKeyType() == KeyType.EOF;
  }
}
