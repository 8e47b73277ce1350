package entracte.cli;

import entracte.finding.Finding;
import entracte.finding.Severity;
import java.util.LinkedHashMap;
import java.util.Map;

/** What a check found, as one JSON object. */
final class FindingsJson {
  private FindingsJson() {}

  static Map<String, Object> of(Loader.Loaded loaded) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("playable", loaded.set().isPresent());
    for (Severity severity : Severity.values()) {
      json.put(severity.word() + "s", (int) loaded.count(severity));
    }
    json.put("findings", loaded.findings().stream().map(FindingsJson::finding).toList());
    return json;
  }

  private static Map<String, Object> finding(Finding finding) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("severity", finding.severity().word());
    json.put("file", finding.place().file());
    json.put("line", finding.place().line());
    json.put("column", finding.place().column());
    json.put("message", finding.message());
    json.put("advice", finding.advice());
    return json;
  }
}
