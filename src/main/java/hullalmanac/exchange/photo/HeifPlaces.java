package hullalmanac.exchange.photo;

import java.nio.ByteBuffer;
import java.util.Optional;

/** The box {@code iloc}: where in the file each item of a HEIC lies (ISO/IEC 14496-12, 8.11.3). */
final class HeifPlaces {
  private final ByteBuffer in;
  private final int version;
  private final int offsetSize;
  private final int lengthSize;
  private final int baseSize;
  private final int indexSize;

  /** A run of bytes of the file. */
  record Place(long from, long length) {}

  HeifPlaces(ByteBuffer box) {
    in = box.duplicate();
    version = in.getInt() >>> 24;
    int sizes = in.getShort();
    offsetSize = (sizes >> 12) & 0xf;
    lengthSize = (sizes >> 8) & 0xf;
    baseSize = (sizes >> 4) & 0xf;
    indexSize = version == 0 ? 0 : sizes & 0xf;
  }

  /** Where an item lies, when in one piece and in the file itself. */
  Optional<Place> of(long item) {
    long count = version < 2 ? number(2) : number(4);
    for (long n = 0; n < count; n++) {
      long id = version < 2 ? number(2) : number(4);
      long method = version == 0 ? 0 : number(2) & 0xf;
      long elsewhere = number(2);
      long base = number(baseSize);
      long pieces = number(2);
      Optional<Place> first = Optional.empty();
      for (long piece = 0; piece < pieces; piece++) {
        number(indexSize);
        Place place = new Place(base + number(offsetSize), number(lengthSize));
        first = first.or(() -> Optional.of(place));
      }
      if (id == item) {
        return method == 0 && elsewhere == 0 && pieces == 1 ? first : Optional.empty();
      }
    }
    return Optional.empty();
  }

  private long number(int bytes) {
    long number = 0;
    for (int i = 0; i < bytes; i++) {
      number = (number << 8) | (in.get() & 0xff);
    }
    return number;
  }
}
