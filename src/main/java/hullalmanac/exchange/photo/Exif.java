package hullalmanac.exchange.photo;

import com.drew.imaging.tiff.TiffProcessingException;
import com.drew.imaging.tiff.TiffReader;
import com.drew.lang.ByteArrayReader;
import com.drew.lang.RandomAccessReader;
import com.drew.metadata.Directory;
import com.drew.metadata.Metadata;
import com.drew.metadata.exif.ExifIFD0Directory;
import com.drew.metadata.exif.ExifSubIFDDirectory;
import com.drew.metadata.exif.ExifTiffHandler;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What the EXIF tags of a photo say of when it was taken and which way up it is (EXIF 2.32, JEITA
 * CP-3451E: tags 0x9003, 0x9011 and 0x0112).
 *
 * @param takenAt the time the camera's clock showed
 * @param zone how far that clock was from UTC, where the camera says so and a time as well
 * @param orientation from 1 (upright) to 8
 */
record Exif(Optional<LocalDateTime> takenAt, Optional<ZoneOffset> zone, int orientation) {
  static final Exif NONE = new Exif(Optional.empty(), Optional.empty(), 1);

  private static final Pattern TIME =
      Pattern.compile("(\\d{4})[:-](\\d\\d)[:-](\\d\\d)[ T](\\d\\d):(\\d\\d):(\\d\\d)");
  private static final Pattern ZONE = Pattern.compile("[+-]\\d\\d:\\d\\d");

  /** Before it nobody had a camera that writes EXIF: a clock that was never set. */
  private static final int FIRST_YEAR = 1990;

  /** In JPEG no EXIF can be longer; what lies behind in other formats is not looked at. */
  private static final int MOST_BYTES = 65_535;

  /** Reads tags; what is not there or makes no sense is absent. */
  static Exif of(ByteBuffer tiff) {
    byte[] bytes = new byte[Math.min(MOST_BYTES, tiff.limit())];
    tiff.get(0, bytes);
    Metadata tags = new Metadata();
    try {
      new TiffReader().processTiff(new ByteArrayReader(bytes), new TwoDirectories(tags), 0);
    } catch (TiffProcessingException | IOException | RuntimeException e) {
      // Damaged: what was read before stands in the tags.
    }
    Optional<LocalDateTime> takenAt =
        text(tags, ExifSubIFDDirectory.class, ExifSubIFDDirectory.TAG_DATETIME_ORIGINAL)
            .flatMap(Exif::time);
    Optional<ZoneOffset> zone =
        takenAt.flatMap(
            t ->
                text(tags, ExifSubIFDDirectory.class, ExifSubIFDDirectory.TAG_TIME_ZONE_ORIGINAL)
                    .flatMap(Exif::zone));
    return new Exif(takenAt, zone, orientation(tags));
  }

  /**
   * Reads the main directory and the EXIF directory below it. Notes of makers, small pictures and
   * directories in directories are left alone: a chain of these exhausts the stack.
   */
  private static final class TwoDirectories extends ExifTiffHandler {
    TwoDirectories(Metadata tags) {
      super(tags, null, 0);
    }

    @Override
    public boolean tryEnterSubIfd(int tag) {
      return tag == ExifIFD0Directory.TAG_EXIF_SUB_IFD_OFFSET && super.tryEnterSubIfd(tag);
    }

    @Override
    public boolean hasFollowerIfd() {
      return false;
    }

    @Override
    public boolean customProcessTag(
        int at, Set<Integer> seen, int header, RandomAccessReader in, int tag, int bytes) {
      return false;
    }
  }

  private static Optional<String> text(Metadata tags, Class<? extends Directory> group, int tag) {
    return tags.getDirectoriesOfType(group).stream()
        .filter(d -> d.containsTag(tag))
        .findFirst()
        .map(d -> d.getString(tag))
        .map(String::strip);
  }

  private static Optional<LocalDateTime> time(String text) {
    Matcher m = TIME.matcher(text);
    if (!m.matches() || number(m, 1) < FIRST_YEAR) {
      return Optional.empty();
    }
    try {
      return Optional.of(
          LocalDateTime.of(
              number(m, 1), number(m, 2), number(m, 3), number(m, 4), number(m, 5), number(m, 6)));
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }

  private static int number(Matcher m, int group) {
    return Integer.parseInt(m.group(group));
  }

  private static Optional<ZoneOffset> zone(String text) {
    try {
      return ZONE.matcher(text).matches() ? Optional.of(ZoneOffset.of(text)) : Optional.empty();
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }

  private static int orientation(Metadata tags) {
    Directory main = tags.getFirstDirectoryOfType(ExifIFD0Directory.class);
    Integer way = main == null ? null : main.getInteger(ExifIFD0Directory.TAG_ORIENTATION);
    return way == null || way < 1 || way > 8 ? 1 : way;
  }
}
