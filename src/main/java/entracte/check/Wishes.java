package entracte.check;

import entracte.finding.NearestName;
import entracte.rig.Kind;
import entracte.setlist.Distance;
import entracte.setlist.KeyScale;
import entracte.setlist.Patch;
import entracte.setlist.Sound;
import entracte.setlist.Sound.Wish;
import entracte.setlist.TunedTo;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/** What a patch says for the ear names roles that it has, and can be understood. */
final class Wishes {
  private static final List<String> DRIVES = List.of("wanted", "unwanted");

  private final Findings findings;

  Wishes(Findings findings) {
    this.findings = findings;
  }

  void check(Patch patch, List<RoleDraft> drafts) {
    List<String> roles = drafts.stream().map(RoleDraft::name).distinct().toList();
    Sound sound = patch.sound();
    List<Wish> all = new ArrayList<>(sound.tune());
    all.addAll(sound.scale());
    all.addAll(sound.drive());
    all.forEach(wish -> known(wish, wish.role(), roles));
    fitting(sound.tune(), drafts, WishKinds::canBeTuned, WishKinds.NOTHING_TO_TUNE);
    fitting(sound.scale(), drafts, WishKinds::hasPitch, WishKinds.NO_PITCH);
    fitting(sound.drive(), drafts, WishKinds::canDrive, WishKinds.NOTHING_TO_DRIVE);
    Map<String, String> references = new HashMap<>();
    sound.tune().forEach(wish -> tune(wish, drafts, references));
    sound.tune().forEach(wish -> noCircle(wish, references));
    sound.scale().forEach(this::scale);
    sound.drive().forEach(this::drive);
  }

  /** A wish that no kind of its role can answer to was put to the wrong role. */
  private void fitting(
      List<Wish> wishes, List<RoleDraft> drafts, Predicate<Kind> fits, String lack) {
    for (Wish wish : wishes) {
      List<Kind> kinds = kinds(wish.role(), drafts);
      if (!kinds.isEmpty() && kinds.stream().noneMatch(fits)) {
        findings.warning(wish, "\"" + wish.role() + "\" has " + lack, "Wish it for another role.");
      }
    }
  }

  private boolean known(Wish wish, String role, List<String> roles) {
    if (roles.contains(role)) {
      return true;
    }
    findings.error(
        wish,
        "\"" + role + "\" is no role of this patch and no module that it names",
        NearestName.advice(role, roles));
    return false;
  }

  /** An ear tunes against what sounds, and a keyboard does not. */
  private void measured(Wish wish, String role, List<RoleDraft> drafts) {
    List<Kind> kinds = kinds(role, drafts);
    if (!kinds.isEmpty() && kinds.stream().noneMatch(WishKinds::canBeTuned)) {
      findings.warning(
          wish,
          "nothing can be tuned against \"" + role + "\": it has " + WishKinds.NOTHING_TO_TUNE,
          "Tune it against an oscillator, or to a note such as E2.");
    }
  }

  private static List<Kind> kinds(String role, List<RoleDraft> drafts) {
    return drafts.stream()
        .filter(draft -> draft.name().equals(role))
        .flatMap(draft -> draft.offers().stream())
        .map(RoleDraft.Offer::kind)
        .toList();
  }

  private void tune(Wish wish, List<RoleDraft> drafts, Map<String, String> references) {
    List<String> roles = drafts.stream().map(RoleDraft::name).distinct().toList();
    Optional<TunedTo> read = TunedTo.parse(wish.value());
    if (read.isEmpty()) {
      String[] words = wish.value().split(" (?:above|below) ", 2);
      findings.error(
          wish,
          "\"" + wish.value() + "\" is nothing to tune to",
          words.length == 2 ? distance(words[0], wish.value()) : form(wish.value()));
    } else if (read.get() instanceof TunedTo.From from && known(wish, from.role(), roles)) {
      references.put(wish.role(), from.role());
      measured(wish, from.role(), drafts);
    }
  }

  private static String form(String written) {
    if (Distance.parse(written).isPresent()) {
      return "Say from which role: \"" + written + " above bass\", or below it.";
    }
    return written.contains(" over ") || written.contains(" under ")
        ? "Say \"above\" or \"below\"."
        : TunedTo.FORM;
  }

  private static String distance(String written, String wish) {
    if (written.startsWith("-")) {
      boolean above = wish.contains(" above ");
      return "Write it without the minus, and " + (above ? "\"below\"." : "\"above\".");
    }
    if (written.matches("\\d{5,}.*")) {
      return "A distance is at most 9999 semitones or cents.";
    }
    return NearestName.of(written.replaceFirst("^(?:an? )?(?:pure |tempered )?", ""), names())
        .map(near -> "Did you mean \"" + near + "\"?")
        .orElse(
            "A distance is 7 semitones, 702 cents, 3:2 or one of: "
                + String.join(", ", names())
                + ".");
  }

  private static List<String> names() {
    return Distance.names();
  }

  /** Tuned by each other, neither would be right. */
  private void noCircle(Wish wish, Map<String, String> references) {
    Set<String> seen = new HashSet<>();
    String role = wish.role();
    while (role != null && seen.add(role)) {
      role = references.get(role);
    }
    if (wish.role().equals(role)) {
      findings.error(
          wish,
          "\"" + role + "\" is tuned by itself in the end",
          "Let one role be the reference, and tune the others to it.");
    }
  }

  private void scale(Wish wish) {
    if (KeyScale.parse(wish.value()).isEmpty()) {
      findings.error(
          wish, "\"" + wish.value() + "\" does not say how far one key goes", KeyScale.FORM);
    }
  }

  private void drive(Wish wish) {
    if (!DRIVES.contains(wish.value())) {
      findings.error(
          wish, "drive is not \"" + wish.value() + "\"", NearestName.advice(wish.value(), DRIVES));
    }
  }
}
