package entracte.check;

import entracte.rig.Kind;
import entracte.rig.Module;
import java.util.ArrayList;
import java.util.List;

/**
 * A role of one song while its patch is read: who might play it, and what is asked of them. Drafts
 * are told apart by identity.
 */
final class RoleDraft {
  /** A kind that would do, and its modules, top row first, left to right. */
  record Offer(Kind kind, List<Module> modules) {}

  private final String name;
  private final Object piece;
  private final boolean declared;
  private final boolean pinned;
  private final List<Offer> offers;
  private final List<JackAsk> jacks = new ArrayList<>();
  private final List<ControlAsk> controls = new ArrayList<>();

  /**
   * @param piece where the role is written, or the module first named
   * @param declared whether it stands among the patch's roles
   * @param pinned whether it names one module
   */
  RoleDraft(String name, Object piece, boolean declared, boolean pinned, List<Offer> offers) {
    this.name = name;
    this.piece = piece;
    this.declared = declared;
    this.pinned = pinned;
    this.offers = List.copyOf(offers);
  }

  void ask(JackAsk jack) {
    jacks.add(jack);
  }

  void ask(ControlAsk control) {
    controls.add(control);
  }

  String name() {
    return name;
  }

  Object piece() {
    return piece;
  }

  boolean isDeclared() {
    return declared;
  }

  boolean isPinned() {
    return pinned;
  }

  List<Offer> offers() {
    return offers;
  }

  List<JackAsk> jacks() {
    return jacks;
  }

  List<ControlAsk> controls() {
    return controls;
  }

  /** Where a control of the module's own is set; the role itself if it is not. */
  Object settingOf(String control) {
    return controls.stream()
        .filter(ask -> ask.channel().isEmpty() && ask.control().equals(control))
        .findFirst()
        .<Object>map(ControlAsk::setting)
        .orElse(piece);
  }

  /**
   * Where a connection leads to the jack; the role itself if none does.
   *
   * @param strip how the patch calls the channel or the equal jack; empty for a jack of its own
   */
  Object sink(String strip, String jack) {
    return jacks.stream()
        .filter(ask -> !ask.source())
        .filter(ask -> ask.channel().equals(strip) ? ask.jack().equals(jack) : isEqual(ask, strip))
        .findFirst()
        .<Object>map(JackAsk::end)
        .orElse(piece);
  }

  private static boolean isEqual(JackAsk ask, String strip) {
    return ask.channel().isEmpty() && ask.jack().equals(strip);
  }

  /** Who is asked, for messages: the module if only one will do, else the kind. */
  String subject(Offer offer) {
    return pinned
        ? "module \"" + offer.modules().get(0).name() + "\""
        : "kind \"" + offer.kind().name() + "\"";
  }
}
