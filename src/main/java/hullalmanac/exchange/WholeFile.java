package hullalmanac.exchange;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;

/** Puts files in the place of others, so that nobody ever reads half of one. */
public final class WholeFile {
  private WholeFile() {}

  /**
   * Writes a file, or leaves it alone where it holds the same bytes, so that what watches it is not
   * called for nothing.
   *
   * @return whether it was written
   */
  public static boolean write(Path file, byte[] bytes) throws IOException {
    if (Files.isRegularFile(file) && Arrays.equals(Files.readAllBytes(file), bytes)) {
      return false;
    }
    Path rough = file.resolveSibling(file.getFileName() + ".new");
    try {
      try (FileChannel channel =
          FileChannel.open(
              rough,
              StandardOpenOption.CREATE,
              StandardOpenOption.TRUNCATE_EXISTING,
              StandardOpenOption.WRITE)) {
        ByteBuffer rest = ByteBuffer.wrap(bytes);
        while (rest.hasRemaining()) {
          channel.write(rest);
        }
        channel.force(true);
      }
      Files.move(rough, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
      return true;
    } finally {
      Files.deleteIfExists(rough);
    }
  }
}
