package entracte.cli;

import entracte.plan.WhatIf;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;

/** The answers of {@code whatif} as one JSON object. */
final class WhatIfJson {
  private WhatIfJson() {}

  static Map<String, Object> of(WhatIf.Answers answers) {
    int now = answers.base().plan().moves();
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("set", answers.base().plan().setList().name());
    json.put("moves", now);
    json.put("more", answers.more().stream().map(a -> more(a, now)).toList());
    json.put("without", answers.without().stream().map(WhatIfJson::without).toList());
    return json;
  }

  private static Map<String, Object> more(WhatIf answer, int now) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("what", answer.changed().what());
    json.put("moves", orNull(answer.moves()));
    json.put("saved", now - answer.moves().orElse(now));
    json.put("certain", answer.certain());
    return json;
  }

  private static Map<String, Object> without(WhatIf answer) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("module", answer.changed().what());
    json.put("lost", List.<Object>copyOf(answer.lost()));
    json.put("moves", orNull(answer.moves()));
    return json;
  }

  private static Object orNull(OptionalInt moves) {
    return moves.isPresent() ? (Object) moves.getAsInt() : null;
  }
}
