package hullalmanac.exchange.photo;

import hullalmanac.core.record.Photo;
import hullalmanac.core.record.RecordException;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Copies photo files between folders and makes sure that each is what its name says. */
public final class PhotoFiles {
  private PhotoFiles() {}

  /** SHA-256 of a content, in hex. */
  public static String sha256(byte[] content) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(content));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }

  /**
   * Photos whose files are not in a folder, or are not what their names say, and what is wrong with
   * each.
   */
  public static Map<Photo, String> missing(Path folder, List<Photo> photos) {
    Map<Photo, String> missing = new LinkedHashMap<>();
    for (Photo photo : photos) {
      Path file = folder.resolve(photo.file());
      try {
        if (!Files.exists(file)) {
          missing.put(photo, "there is no picture " + photo.file());
        } else if (!photo.file().startsWith(sha256(Files.readAllBytes(file)))) {
          missing.put(photo, "the picture " + photo.file() + " is not what its name says");
        }
      } catch (IOException e) {
        missing.put(photo, "the picture " + photo.file() + " cannot be read");
      }
    }
    return missing;
  }

  /**
   * Copies the files of photos into a folder, each whole and on the disk before the next; those
   * there already stay.
   *
   * @throws RecordException when one cannot be copied
   */
  public static void copy(Path from, Path to, List<Photo> photos) {
    for (Photo photo : photos) {
      Path target = to.resolve(photo.file());
      try {
        Files.createDirectories(to);
        if (!Files.exists(target)) {
          Path rough = to.resolve(photo.file() + ".tmp");
          Files.copy(from.resolve(photo.file()), rough, StandardCopyOption.REPLACE_EXISTING);
          try (FileChannel channel = FileChannel.open(rough, StandardOpenOption.WRITE)) {
            channel.force(true);
          }
          Files.move(rough, target, StandardCopyOption.ATOMIC_MOVE);
        }
      } catch (IOException e) {
        throw new RecordException(
            RecordException.Kind.OTHER,
            "The picture " + photo.file() + " could not be copied to " + to + ".",
            e);
      }
    }
  }
}
