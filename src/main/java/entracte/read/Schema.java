package entracte.read;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/**
 * What a file of each sort may hold, as JSON Schema (draft 2020-12) for editors that complete names
 * and mark mistakes while one types. The schema sees one file only, and no figure against another:
 * what it refuses the readers refuse too, and they alone know whether names lead anywhere.
 */
public enum Schema {
  SET("set"),
  RIG("rig"),
  PATCH("patch");

  private final String sort;

  Schema(String sort) {
    this.sort = sort;
  }

  /** The name of the schema's own file. */
  public String fileName() {
    return sort + ".schema.json";
  }

  /** The schema. */
  public String text() {
    try (InputStream in = Schema.class.getResourceAsStream(fileName())) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
