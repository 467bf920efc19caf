package hullalmanac.exchange.photo;

import hullalmanac.core.record.Photo;
import hullalmanac.core.record.RecordException;
import hullalmanac.core.record.RecordException.Kind;
import java.io.IOException;
import java.io.InputStream;
import java.nio.channels.FileChannel;
import java.nio.file.FileStore;
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

/**
 * Keeps photo files under names made from their content, copies them between folders and makes sure
 * that each is what its name says.
 */
public final class PhotoFiles {
  /** Left free on the disk, so that the record itself can still be written. */
  static final long RESERVE = 50_000_000;

  private PhotoFiles() {}

  /** How many bytes can still be written into a folder. */
  @FunctionalInterface
  interface Room {
    long in(Path folder) throws IOException;
  }

  /** SHA-256 of a content, in hex. */
  public static String sha256(byte[] content) {
    return HexFormat.of().formatHex(digest().digest(content));
  }

  private static String sha256(Path file) throws IOException {
    MessageDigest digest = digest();
    byte[] part = new byte[1 << 16];
    try (InputStream in = Files.newInputStream(file)) {
      for (int n = in.read(part); n >= 0; n = in.read(part)) {
        digest.update(part, 0, n);
      }
    }
    return HexFormat.of().formatHex(digest.digest());
  }

  private static MessageDigest digest() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }

  /**
   * Keeps a photo in a record's folder of photos, whole and on the disk when this returns. The same
   * content is kept once, under whatever names it comes.
   *
   * @param source the file as it was given, which stays where it is
   * @param format as {@link PhotoReader} found it
   * @param photos the folder, made if there is none
   * @return its name in the folder, for {@link Photo#file()}
   * @throws RecordException when there is no room left, when a damaged file has its name, or when
   *     it cannot be written
   */
  public static String store(Path source, PhotoFormat format, Path photos) {
    return store(source, format, photos, PhotoFiles::room);
  }

  static String store(Path source, PhotoFormat format, Path photos, Room room) {
    try {
      String hash = sha256(source);
      Path target = photos.resolve(hash + "." + format.ending());
      if (Files.exists(target)) {
        requireIntact(target, hash);
      } else {
        makeFolder(photos);
        requireRoom(source, photos, room);
        Path rough = target.resolveSibling(target.getFileName() + ".tmp");
        try {
          layRough(source, rough);
          if (!sha256(rough).equals(hash)) {
            throw new IOException("changed while it was copied: " + source);
          }
          settle(rough, target);
        } finally {
          Files.deleteIfExists(rough);
        }
      }
      return target.getFileName().toString();
    } catch (IOException e) {
      throw new RecordException(
          Kind.OTHER,
          "The photo "
              + PhotoReader.name(source)
              + " could not be kept in "
              + photos
              + ". Look whether the photo is still there and the folder can be written to.",
          e);
    }
  }

  private static void requireIntact(Path target, String hash) throws IOException {
    if (!Files.isRegularFile(target) || !sha256(target).equals(hash)) {
      throw new RecordException(
          Kind.IN_THE_WAY,
          "The picture "
              + target
              + " is not what its name says, and was left as it is. Move it elsewhere, then add the"
              + " photo again.");
    }
  }

  private static void requireRoom(Path source, Path photos, Room room) throws IOException {
    if (room.in(photos) < Files.size(source) + RESERVE) {
      throw new RecordException(
          Kind.FULL,
          "There is no room left for the photo "
              + PhotoReader.name(source)
              + " in "
              + photos
              + ", where 50 MB are kept free. Nothing was changed; make room and try again.");
    }
  }

  /**
   * Asks whether there is room for photos before the first of them is kept, so that all are or
   * none.
   *
   * @param sources the files as they were given; of those kept already none needs room, which is
   *     not looked at here
   * @throws RecordException when there is not room enough
   */
  public static void requireRoom(List<Path> sources, Path photos) {
    requireRoom(sources, photos, PhotoFiles::room);
  }

  /** In the record's folder, which is not made anew where it is gone. */
  private static void makeFolder(Path photos) throws IOException {
    if (!Files.isDirectory(photos)) {
      Files.createDirectory(photos);
    }
  }

  static void requireRoom(List<Path> sources, Path photos, Room room) {
    try {
      makeFolder(photos);
      long bytes = RESERVE;
      for (Path source : sources) {
        bytes += Files.size(source);
      }
      if (room.in(photos) < bytes) {
        throw new RecordException(
            Kind.FULL,
            "There is no room left for "
                + (sources.size() == 1 ? "this photo" : "these " + sources.size() + " photos")
                + " in "
                + photos
                + ", where 50 MB are kept free. Nothing was changed; make room and try again.");
      }
    } catch (IOException e) {
      throw new RecordException(
          Kind.OTHER,
          "The photos could not be kept in "
              + photos
              + ". Look whether they are still there and the folder can be written to.",
          e);
    }
  }

  /** A disk that does not say how large it is does not say how much is free either. */
  private static long room(Path folder) throws IOException {
    FileStore disk = Files.getFileStore(folder);
    return disk.getTotalSpace() == 0 ? Long.MAX_VALUE : disk.getUsableSpace();
  }

  private static void layRough(Path source, Path rough) throws IOException {
    Files.copy(source, rough, StandardCopyOption.REPLACE_EXISTING);
    try (FileChannel channel = FileChannel.open(rough, StandardOpenOption.WRITE)) {
      channel.force(true);
    }
  }

  /** Gives a file its name, which is on the disk as well before a row can speak of it. */
  private static void settle(Path rough, Path target) throws IOException {
    Files.move(rough, target, StandardCopyOption.ATOMIC_MOVE);
    try (FileChannel folder = FileChannel.open(target.getParent(), StandardOpenOption.READ)) {
      folder.force(true);
    } catch (IOException e) {
      // Windows opens no folders; its file system writes names down by itself.
    }
  }

  /**
   * Files that are not in a folder, or are not what their names say, and what is wrong with each.
   */
  public static Map<String, String> missing(Path folder, List<String> files) {
    Map<String, String> missing = new LinkedHashMap<>();
    for (String name : files) {
      Path file = folder.resolve(name);
      try {
        if (!Files.exists(file)) {
          missing.put(name, "there is no picture " + name);
        } else if (!name.startsWith(sha256(file))) {
          missing.put(name, "the picture " + name + " is not what its name says");
        }
      } catch (IOException e) {
        missing.put(name, "the picture " + name + " cannot be read");
      }
    }
    return missing;
  }

  /**
   * Copies files of pictures into a folder, each whole and on the disk before the next; those there
   * already stay.
   *
   * @throws RecordException when one cannot be copied
   */
  public static void copy(Path from, Path to, List<String> files) {
    for (String file : files) {
      Path target = to.resolve(file);
      try {
        Files.createDirectories(to);
        if (!Files.exists(target)) {
          Path rough = to.resolve(file + ".tmp");
          layRough(from.resolve(file), rough);
          settle(rough, target);
        }
      } catch (IOException e) {
        throw new RecordException(
            Kind.OTHER, "The picture " + file + " could not be copied to " + to + ".", e);
      }
    }
  }
}
