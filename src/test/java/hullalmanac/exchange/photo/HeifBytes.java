package hullalmanac.exchange.photo;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;

/**
 * Writes the boxes of a HEIC file without a picture in them (ISO/IEC 14496-12 and 23008-12): what
 * it is, the sizes of the picture and of its tiles, and EXIF.
 */
final class HeifBytes {
  private HeifBytes() {}

  static byte[] box(String type, byte[]... contents) {
    byte[] content = joined(contents);
    return ByteBuffer.allocate(8 + content.length)
        .putInt(8 + content.length)
        .put(letters(type))
        .put(content)
        .array();
  }

  static byte[] joined(byte[]... parts) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    for (byte[] part : parts) {
      out.writeBytes(part);
    }
    return out.toByteArray();
  }

  /** The first box: its main brand, version 0, and all brands. */
  static byte[] ftyp(String main, String... others) {
    return box("ftyp", letters(main), ints(0), letters(main + String.join("", others)));
  }

  /**
   * A file with a picture of the given size made of tiles of 512 pixels, and EXIF.
   *
   * @param version of the box that says where things lie: 0, 1 or 2
   */
  static byte[] file(int version, int width, int height, byte[] tiff) {
    byte[] first = ftyp("heic", "mif1");
    byte[] item = joined(ints(0), tiff);
    // The place of the item depends on the length of what stands before it, which is always one.
    int before = first.length + meta(version, width, height, 0, 0).length + 8;
    return joined(
        first, meta(version, width, height, before, item.length), box("mdat", ints(0), item));
  }

  private static byte[] meta(int version, int width, int height, int from, int length) {
    byte[] tile = box("ispe", ints(0, 512, 512));
    byte[] whole = box("ispe", ints(0, width, height));
    return box(
        "meta",
        ints(0),
        box("hdlr", ints(0, 0), letters("pict"), ints(0, 0, 0), new byte[1]),
        box("iinf", ints(0), shorts(2), info(1, "grid"), info(2, "Exif")),
        iloc(version, from, length),
        box("iprp", box("ipco", tile, whole)));
  }

  private static byte[] info(int id, String type) {
    return box("infe", ints(2 << 24), shorts(id, 0), letters(type), new byte[1]);
  }

  private static byte[] iloc(int version, int from, int length) {
    byte[] method = version == 0 ? new byte[0] : shorts(0);
    byte[] count = version < 2 ? shorts(2) : ints(2);
    byte[] grid = version < 2 ? shorts(1) : ints(1);
    byte[] exif = version < 2 ? shorts(2) : ints(2);
    return box(
        "iloc",
        ints(version << 24),
        shorts(0x4400),
        count,
        joined(grid, method, shorts(0, 1), ints(from, 4)),
        joined(exif, method, shorts(0, 1), ints(from + 4, length)));
  }

  static byte[] letters(String text) {
    return text.getBytes(StandardCharsets.US_ASCII);
  }

  static byte[] ints(int... numbers) {
    ByteBuffer out = ByteBuffer.allocate(4 * numbers.length);
    for (int number : numbers) {
      out.putInt(number);
    }
    return out.array();
  }

  static byte[] shorts(int... numbers) {
    ByteBuffer out = ByteBuffer.allocate(2 * numbers.length);
    for (int number : numbers) {
      out.putShort((short) number);
    }
    return out.array();
  }
}
