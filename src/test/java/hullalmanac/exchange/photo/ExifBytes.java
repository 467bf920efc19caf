package hullalmanac.exchange.photo;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * Writes the TIFF structure of EXIF 2.32 (JEITA CP-3451E, 4.6): a header, the main directory with
 * the orientation, and the EXIF directory with the time and its zone.
 */
final class ExifBytes {
  private static final int ORIENTATION = 0x0112;
  private static final int EXIF_DIRECTORY = 0x8769;
  private static final int DATE_TIME_ORIGINAL = 0x9003;
  private static final int OFFSET_TIME_ORIGINAL = 0x9011;
  private static final int ASCII = 2;
  private static final int SHORT = 3;
  private static final int LONG = 4;
  private static final int HEADER = 8;

  private final ByteOrder order;
  private final List<Tag> main = new ArrayList<>();
  private final List<Tag> exif = new ArrayList<>();

  private record Tag(int number, int type, int count, ByteBuffer value) {}

  ExifBytes(ByteOrder order) {
    this.order = order;
  }

  ExifBytes() {
    this(ByteOrder.BIG_ENDIAN);
  }

  ExifBytes orientation(int way) {
    main.add(new Tag(ORIENTATION, SHORT, 1, buffer(4).putShort((short) way)));
    return this;
  }

  ExifBytes takenAt(String time) {
    return text(DATE_TIME_ORIGINAL, time);
  }

  ExifBytes zone(String zone) {
    return text(OFFSET_TIME_ORIGINAL, zone);
  }

  private ExifBytes text(int number, String text) {
    byte[] bytes = (text + "\0").getBytes(StandardCharsets.US_ASCII);
    exif.add(new Tag(number, ASCII, bytes.length, buffer(Math.max(4, bytes.length)).put(bytes)));
    return this;
  }

  private ByteBuffer buffer(int bytes) {
    return ByteBuffer.allocate(bytes).order(order);
  }

  byte[] bytes() {
    List<Tag> first = new ArrayList<>(main);
    int second = HEADER + directorySize(first.size() + 1);
    first.add(new Tag(EXIF_DIRECTORY, LONG, 1, buffer(4).putInt(second)));
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.writeBytes(
        ByteBuffer.allocate(HEADER)
            .order(order)
            .put((order == ByteOrder.BIG_ENDIAN ? "MM" : "II").getBytes(StandardCharsets.US_ASCII))
            .putShort((short) 42)
            .putInt(HEADER)
            .array());
    out.writeBytes(directory(first, HEADER));
    out.writeBytes(directory(exif, second));
    return out.toByteArray();
  }

  private static int directorySize(int tags) {
    return 2 + 12 * tags + 4;
  }

  /** A directory, and behind it the values that do not fit into four bytes. */
  private byte[] directory(List<Tag> tags, int at) {
    int behind = directorySize(tags.size());
    int values = tags.stream().mapToInt(t -> t.value().capacity()).filter(bytes -> bytes > 4).sum();
    ByteBuffer out = ByteBuffer.allocate(behind + values).order(order);
    out.putShort((short) tags.size());
    for (Tag tag : tags) {
      out.putShort((short) tag.number()).putShort((short) tag.type()).putInt(tag.count());
      if (tag.value().capacity() == 4) {
        out.put(tag.value().rewind());
      } else {
        out.putInt(at + behind);
        out.put(behind, tag.value(), 0, tag.value().capacity());
        behind += tag.value().capacity();
      }
    }
    return out.putInt(0).array();
  }
}
