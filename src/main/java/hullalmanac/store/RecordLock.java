package hullalmanac.store;

import hullalmanac.core.record.RecordException;
import hullalmanac.core.record.RecordException.Kind;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Optional;

/**
 * The file {@code almanac.lock} in a record's folder: who has it open for writing. The system's own
 * lock on the file decides on one computer; for a folder that several computers see, what is
 * written in the file decides, while it is fresh.
 */
public final class RecordLock implements AutoCloseable {
  private static final String FILE = "almanac.lock";

  /** Locked far behind the text, so that others can read the text on every system. */
  private static final long LOCKED_BYTE = 1L << 40;

  private static final Duration FRESH = Duration.ofHours(12);

  private final Path file;
  private final FileChannel channel;

  /**
   * Who has a record open.
   *
   * @param host name of the computer
   * @param process its process
   * @param since when it was opened
   * @param port port at which its window can be called, 0 for none
   */
  public record Holder(String host, long process, Instant since, int port) {
    private String text() {
      return String.join(
              "\n", host, String.valueOf(process), since.toString(), String.valueOf(port))
          + "\n";
    }

    private static Optional<Holder> parse(List<String> lines) {
      try {
        return lines.size() < 4
            ? Optional.empty()
            : Optional.of(
                new Holder(
                    lines.get(0),
                    Long.parseLong(lines.get(1)),
                    Instant.parse(lines.get(2)),
                    Integer.parseInt(lines.get(3))));
      } catch (NumberFormatException | DateTimeParseException e) {
        return Optional.empty();
      }
    }
  }

  private RecordLock(Path file, FileChannel channel) {
    this.file = file;
    this.channel = channel;
  }

  /**
   * Takes the lock of a record.
   *
   * @param now the time, to tell a fresh lock from one that was left behind
   * @throws RecordException when somebody else has it
   */
  public static RecordLock take(Path folder, Holder me, Instant now) {
    Path file = folder.resolve(FILE);
    Optional<Holder> other = holder(folder);
    FileChannel channel = null;
    try {
      channel = FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
      boolean elsewhere =
          other
              .filter(
                  h ->
                      !h.host().equals(me.host())
                          && Duration.between(h.since(), now).compareTo(FRESH) < 0)
              .isPresent();
      if (elsewhere || !tryLock(channel)) {
        channel.close();
        throw inUse(folder, other);
      }
      channel.truncate(0);
      channel.write(ByteBuffer.wrap(me.text().getBytes(StandardCharsets.UTF_8)), 0);
      channel.force(true);
      return new RecordLock(file, channel);
    } catch (IOException e) {
      throw new RecordException(
          Kind.READ_ONLY,
          "The folder " + folder + " cannot be written to, so the record is only shown.",
          e);
    }
  }

  private static boolean tryLock(FileChannel channel) throws IOException {
    try {
      FileLock lock = channel.tryLock(LOCKED_BYTE, 1, false);
      return lock != null;
    } catch (OverlappingFileLockException e) {
      return false;
    }
  }

  private static RecordException inUse(Path folder, Optional<Holder> other) {
    String who =
        other
            .map(h -> "on " + h.host() + " (process " + h.process() + ") since " + h.since())
            .orElse("by another program");
    return new RecordException(
        Kind.LOCKED,
        "The record in " + folder + " is open " + who + ". Close it there, then try again.");
  }

  /** Who has a record open, as far as its lock says. */
  public static Optional<Holder> holder(Path folder) {
    try {
      return Holder.parse(Files.readAllLines(folder.resolve(FILE)));
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  /** Writes a changed holder, such as one that now has a port. */
  public void announce(Holder me) {
    try {
      channel.truncate(0);
      channel.write(ByteBuffer.wrap(me.text().getBytes(StandardCharsets.UTF_8)), 0);
      channel.force(true);
    } catch (IOException e) {
      throw new RecordException(Kind.OTHER, "The lock " + file + " cannot be written.", e);
    }
  }

  @Override
  public void close() {
    try {
      channel.truncate(0);
      channel.close();
      Files.deleteIfExists(file);
    } catch (IOException e) {
      throw new RecordException(Kind.OTHER, "The lock " + file + " could not be let go.", e);
    }
  }
}
