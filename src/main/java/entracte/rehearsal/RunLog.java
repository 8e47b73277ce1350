package entracte.rehearsal;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The rehearsal log of a set: a text file that only ever grows. Each line is on the disk before the
 * next is asked for. Whatever cuts a line off (a crash, an empty battery, a full disk) costs that
 * line and no other. A link in its place is not written through: who hands on a set must not choose
 * what files of yours grow.
 */
public final class RunLog {
  private static final String HEAD =
      """
      # Rehearsal log of entracte. One line for each timed changeover; times in seconds.
      # Lines are only added. One without "end" was cut off and is passed over.
      """;

  private final Path file;

  private RunLog(Path file) {
    this.file = file;
  }

  /**
   * What a log holds.
   *
   * @param runs in the order they were written, without those withdrawn
   * @param unread what cannot be read
   */
  record Contents(List<Run> runs, List<Unread> unread) {
    Contents {
      runs = List.copyOf(runs);
      unread = List.copyOf(unread);
    }
  }

  /**
   * A line that cannot be read, and so is left out.
   *
   * @param number from 1
   * @param last whether nothing follows, so that it was probably cut off
   */
  public record Unread(int number, String text, boolean last) {
    /** What is wrong with it, as {@code was cut off and is left out}. */
    public String trouble() {
      return (last ? "was cut off" : "cannot be read") + " and is left out";
    }
  }

  /** The log in that file, which need not be there yet. */
  public static RunLog in(Path file) {
    return new RunLog(file);
  }

  /**
   * The log beside a set: {@code rehearsal.log} in its folder; {@code tour.rehearsal.log} if the
   * set's file is {@code tour.yaml}.
   */
  public static RunLog beside(Path fileOrFolder) {
    if (Files.isDirectory(fileOrFolder)) {
      return in(fileOrFolder.resolve("rehearsal.log"));
    }
    String bare = fileOrFolder.getFileName().toString().replaceFirst("\\.[^.]*$", "");
    String name = bare.equals("set") ? "rehearsal.log" : bare + ".rehearsal.log";
    return in(fileOrFolder.resolveSibling(name));
  }

  /** Where it is. */
  public Path file() {
    return file;
  }

  /** What of it cannot be read, a sentence for each line; nothing if there is no file yet. */
  public List<String> notes() throws IOException {
    return read().unread().stream().map(this::note).toList();
  }

  /** The lines that cannot be read; none if there is no file yet. */
  public List<Unread> unread() throws IOException {
    return read().unread();
  }

  /** All that can be read; nothing if there is no file yet. */
  Contents read() throws IOException {
    return Files.exists(file)
        ? contents(new String(Files.readAllBytes(file), StandardCharsets.UTF_8))
        : new Contents(List.of(), List.of());
  }

  /** All runs, those withdrawn as well. */
  List<Run> everAdded() throws IOException {
    if (!Files.exists(file)) {
      return List.of();
    }
    return new String(Files.readAllBytes(file), StandardCharsets.UTF_8)
        .lines()
        .flatMap(line -> LogLine.read(line).stream())
        .flatMap(entry -> entry.run().stream())
        .toList();
  }

  private Contents contents(String text) {
    List<Run> runs = new ArrayList<>();
    Set<Instant> withdrawn = new HashSet<>();
    List<String> lines = text.lines().toList();
    List<Unread> unread = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      String line = lines.get(i);
      Optional<LogLine.Entry> entry = LogLine.read(line);
      entry.flatMap(LogLine.Entry::run).ifPresent(runs::add);
      entry.ifPresent(each -> withdrawn.add(each.withdrawn()));
      if (entry.isEmpty() && !line.isBlank() && !line.startsWith("#")) {
        unread.add(new Unread(i + 1, line, i == lines.size() - 1));
      }
    }
    runs.removeIf(run -> withdrawn.contains(run.when()));
    return new Contents(runs, unread);
  }

  /** Says of a line that it is left out. */
  String note(Unread line) {
    String which = line.last() ? "The last line" : "Line " + line.number();
    return which + " of " + file.getFileName() + " " + line.trouble() + ".";
  }

  /** Why runs cannot be added, as {@link #why} says it; found out without adding anything. */
  Optional<String> trouble() {
    try {
      tryOut();
      return Optional.empty();
    } catch (IOException e) {
      return Optional.of(why(e));
    }
  }

  /** What hinders, in our own words: what the system says of it is written for programmers. */
  public String why(IOException problem) {
    if (Files.isDirectory(file)) {
      return file + " is a folder";
    }
    if (Files.isSymbolicLink(file)) {
      return file + " is a link";
    }
    return problem instanceof AccessDeniedException
        ? file + " may not be read or changed"
        : file + " cannot be read or written";
  }

  private void tryOut() throws IOException {
    if (Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
      FileChannel.open(file, StandardOpenOption.WRITE, LinkOption.NOFOLLOW_LINKS).close();
    } else if (!Files.isWritable(file.toAbsolutePath().getParent())) {
      throw new AccessDeniedException(file.toString());
    }
  }

  /** Adds a run and waits until it is on the disk. */
  void add(Run run) throws IOException {
    append(LogLine.write(run));
  }

  /** Says that a run shall not count; its line stays. */
  void withdraw(Run run) throws IOException {
    append(LogLine.withdraw(run));
  }

  private void append(String line) throws IOException {
    try (FileChannel channel =
        FileChannel.open(
            file,
            StandardOpenOption.CREATE,
            StandardOpenOption.READ,
            StandardOpenOption.WRITE,
            LinkOption.NOFOLLOW_LINKS)) {
      String before = channel.size() == 0 ? HEAD : endsInside(channel) ? "\n" : "";
      ByteBuffer bytes = ByteBuffer.wrap((before + line + "\n").getBytes(StandardCharsets.UTF_8));
      channel.position(channel.size());
      while (bytes.hasRemaining()) {
        channel.write(bytes);
      }
      channel.force(true);
    }
  }

  /** Whether the file ends inside a line that was cut off. */
  private static boolean endsInside(FileChannel channel) throws IOException {
    ByteBuffer last = ByteBuffer.allocate(1);
    channel.read(last, channel.size() - 1);
    return last.get(0) != '\n';
  }
}
