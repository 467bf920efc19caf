package hullalmanac.exchange.photo;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.Set;

/** The formats in which photos are kept, told apart by their first bytes and never by a name. */
public enum PhotoFormat {
  JPEG("jpg"),
  PNG("png"),
  /**
   * What phones write when they save space. It is kept as it is; no Java library decodes it, so it
   * cannot be shown.
   */
  HEIC("heic");

  private static final byte[] PNG_SIGNATURE = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'};

  /** Brands of still pictures and of their sequences, ISO/IEC 23008-12, clause 10 and annex B. */
  private static final Set<String> HEIF_BRANDS =
      Set.of("heic", "heix", "heim", "heis", "hevc", "hevx", "hevm", "hevs", "mif1", "msf1");

  /** Brands of another coding in the same boxes. */
  private static final Set<String> OTHER_BRANDS = Set.of("avif", "avis");

  private final String ending;

  PhotoFormat(String ending) {
    this.ending = ending;
  }

  /** Ending of the names of its files, without the dot. */
  public String ending() {
    return ending;
  }

  /** The format of a content, where its first bytes are those of one of these. */
  static Optional<PhotoFormat> of(ByteBuffer content) {
    if (startsWith(content, new byte[] {(byte) 0xff, (byte) 0xd8, (byte) 0xff})) {
      return Optional.of(JPEG);
    }
    if (startsWith(content, PNG_SIGNATURE)) {
      return Optional.of(PNG);
    }
    return isHeif(content) ? Optional.of(HEIC) : Optional.empty();
  }

  private static boolean startsWith(ByteBuffer content, byte[] start) {
    return content.limit() >= start.length
        && content.slice(0, start.length).equals(ByteBuffer.wrap(start));
  }

  /** The box {@code ftyp} comes first: its size, its name, the main brand, a version, brands. */
  private static boolean isHeif(ByteBuffer content) {
    if (content.limit() < 16
        || !word(content, 4).equals("ftyp")
        || !HEIF_BRANDS.contains(word(content, 8))) {
      return false;
    }
    int end = Math.min(content.limit(), Math.max(16, content.getInt(0)));
    for (int at = 16; at + 4 <= end; at += 4) {
      if (OTHER_BRANDS.contains(word(content, at))) {
        return false;
      }
    }
    return true;
  }

  /** Four letters of a content. */
  static String word(ByteBuffer content, int at) {
    byte[] letters = new byte[4];
    content.get(at, letters);
    return new String(letters, StandardCharsets.ISO_8859_1);
  }
}
