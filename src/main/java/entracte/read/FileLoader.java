package entracte.read;

import entracte.finding.NearestName;
import entracte.finding.Place;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.yaml.snakeyaml.reader.StreamReader;

/** Opens and decodes files; what goes wrong is noted where the file was named. */
final class FileLoader {
  /** A set of ten thousand songs is smaller, and SnakeYAML takes seconds for more. */
  static final int LIMIT_MEGABYTES = 2;

  private static final int LIMIT = LIMIT_MEGABYTES << 20;

  /** A folder with more files than this is not searched for a name that is near. */
  private static final int SEARCHED = 1000;

  private static final char BYTE_ORDER_MARK = '\uFEFF';

  private final Notebook notes;

  FileLoader(Notebook notes) {
    this.notes = notes;
  }

  /** Whether there is such a file; if not, that is noted at {@code asked}. */
  boolean isThere(FileName name, Place asked) {
    Path path = name.path();
    String quoted = Names.quoteFile(name.shown());
    if (Files.isDirectory(path)) {
      notes.error(asked, quoted + " is a folder, not a file", "Name a file in it.");
    } else if (!Files.exists(path)) {
      absent(name, asked);
    } else if (!Files.isRegularFile(path)) {
      notes.error(asked, quoted + " is a device, not a file", "Name a text file.");
    }
    return Files.isRegularFile(path);
  }

  /** The file's text; empty if there is none, which has then been noted at {@code asked}. */
  Optional<TextFile> load(FileName name, Place asked) {
    return isThere(name, asked)
        ? bytes(name, asked).flatMap(bytes -> decode(name, bytes))
        : Optional.empty();
  }

  private Optional<byte[]> bytes(FileName name, Place asked) {
    String quoted = Names.quoteFile(name.shown());
    try (InputStream in = Files.newInputStream(name.path())) {
      // A file may grow while it is read, and some have no size until they are.
      byte[] bytes =
          Files.size(name.path()) > LIMIT ? new byte[LIMIT + 1] : in.readNBytes(LIMIT + 1);
      if (bytes.length <= LIMIT) {
        return Optional.of(bytes);
      }
      notes.error(
          asked,
          quoted + " is larger than " + LIMIT_MEGABYTES + " MB",
          "Is it the right file? If it is, part it into several.");
    } catch (AccessDeniedException denied) {
      notes.error(asked, quoted + " may not be read", "Look at the permissions of the file.");
    } catch (IOException trouble) {
      notes.error(
          asked,
          quoted + " cannot be read: " + trouble.getMessage(),
          "Try to open it in an editor.");
    }
    return Optional.empty();
  }

  private void absent(FileName name, Place asked) {
    String quoted = Names.quoteFile(name.shown());
    try {
      name.path().toRealPath();
      notes.error(asked, quoted + " cannot be reached", "Look at the permissions of its folder.");
    } catch (NoSuchFileException gone) {
      boolean link = Files.exists(name.path(), LinkOption.NOFOLLOW_LINKS);
      notes.error(
          asked,
          link ? quoted + " is a link to a file that is not there" : "there is no file " + quoted,
          link ? "Mend the link, or name the file itself." : near(name));
    } catch (AccessDeniedException denied) {
      notes.error(asked, quoted + " may not be read", "Look at the permissions of its folder.");
    } catch (IOException loop) {
      boolean link = Files.isSymbolicLink(name.path());
      notes.error(
          asked,
          quoted + (link ? " is a link that leads to itself" : " cannot be the name of a file"),
          link ? "Mend the link, or name the file itself." : "Give the file another name.");
    }
  }

  /** Advice: the file in the same folder whose name is nearest. */
  private static String near(FileName name) {
    Path folder = name.path().toAbsolutePath().getParent();
    Path wanted = name.path().getFileName();
    if (folder == null || wanted == null || !Files.isDirectory(folder)) {
      return "";
    }
    List<String> names = new ArrayList<>();
    try (DirectoryStream<Path> files = Files.newDirectoryStream(folder)) {
      for (Path file : files) {
        names.add(String.valueOf(file.getFileName()));
        if (names.size() > SEARCHED) {
          return "";
        }
      }
    } catch (IOException | java.nio.file.DirectoryIteratorException unreadable) {
      return "";
    }
    names.sort(null);
    // Endings are mostly alike, and would make short names look near.
    List<String> stems = names.stream().map(FileLoader::stem).toList();
    return NearestName.of(stem(wanted.toString()), stems)
        .map(near -> "Did you mean \"" + names.get(stems.indexOf(near)) + "\"?")
        .orElse("");
  }

  private static String stem(String name) {
    int dot = name.lastIndexOf('.');
    return dot > 0 ? name.substring(0, dot) : name;
  }

  private Optional<TextFile> decode(FileName name, byte[] bytes) {
    CharBuffer chars = CharBuffer.allocate(bytes.length + 1);
    ByteBuffer in = ByteBuffer.wrap(bytes);
    CoderResult result =
        StandardCharsets.UTF_8
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT)
            .decode(in, chars, true);
    String text = chars.flip().toString();
    if (!text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK) {
      text = text.substring(1);
    }
    int odd = firstOdd(text);
    if (odd < text.length()) {
      String code = String.format("U+%04X", text.codePointAt(odd));
      notes.error(
          endOf(name, text.substring(0, odd)),
          "this file holds the character " + code + ", which no text has",
          "Is it a text file? If it is, delete the character.");
      return Optional.empty();
    }
    if (result.isError()) {
      notes.error(
          endOf(name, text),
          "this file is not written in UTF-8: the next byte is "
              + String.format("%02X", bytes[in.position()]),
          "Save it as UTF-8 text.");
      return Optional.empty();
    }
    return Optional.of(new TextFile(name, text));
  }

  /** Where the first character stands that YAML does not allow; the text's length if none. */
  private static int firstOdd(String text) {
    int index = 0;
    while (index < text.length() && StreamReader.isPrintable(text.codePointAt(index))) {
      index += Character.charCount(text.codePointAt(index));
    }
    return index;
  }

  private static Place endOf(FileName name, String before) {
    return new TextFile(name, before).end();
  }
}
