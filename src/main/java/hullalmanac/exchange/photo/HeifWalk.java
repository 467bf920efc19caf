package hullalmanac.exchange.photo;

import java.nio.BufferUnderflowException;
import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Walks from box to box of a HEIC file (boxes: ISO/IEC 14496-12; pictures in them: ISO/IEC
 * 23008-12). A picture made of tiles names the size of a tile as well as its own, so the largest is
 * taken.
 */
final class HeifWalk {
  /** No real file has as many boxes in one place. */
  private static final int MOST_BOXES = 10_000;

  /** Version and flags at the start of a full box. */
  private static final int FULL = 4;

  private HeifWalk() {}

  private record Box(String type, ByteBuffer content) {}

  /** What a HEIC file says of itself, or nothing when it is cut short or damaged. */
  static Optional<PictureHeader> read(ByteBuffer content) {
    return boxes(content, 0)
        .map(
            top -> {
              List<Box> meta = inside(top, "meta", FULL);
              return new PictureHeader(size(meta), exif(content, meta), false);
            });
  }

  /** The boxes one behind the other from a place on; nothing when one is cut short. */
  private static Optional<List<Box>> boxes(ByteBuffer content, int from) {
    List<Box> boxes = new ArrayList<>();
    int at = from;
    while (at < content.limit()) {
      int left = content.limit() - at;
      if (left < 8 || boxes.size() == MOST_BOXES) {
        return Optional.empty();
      }
      long size = Integer.toUnsignedLong(content.getInt(at));
      int head = size == 1 ? 16 : 8;
      if (size == 1) {
        size = left < 16 ? -1 : content.getLong(at + 8);
      } else if (size == 0) {
        size = left;
      }
      if (size < head || size > left) {
        return Optional.empty();
      }
      boxes.add(
          new Box(PhotoFormat.word(content, at + 4), content.slice(at + head, (int) size - head)));
      at += (int) size;
    }
    return Optional.of(boxes);
  }

  private static Stream<ByteBuffer> named(List<Box> boxes, String type) {
    return boxes.stream().filter(b -> b.type().equals(type)).map(Box::content);
  }

  private static List<Box> inside(List<Box> boxes, String type, int from) {
    return named(boxes, type).findFirst().flatMap(b -> boxes(b, from)).orElse(List.of());
  }

  private static Optional<PixelSize> size(List<Box> meta) {
    List<Box> properties = inside(inside(meta, "iprp", 0), "ipco", 0);
    return named(properties, "ispe")
        .filter(b -> b.limit() >= 12 && b.getInt(4) != 0 && b.getInt(8) != 0)
        .map(b -> new PixelSize(pixels(b.getInt(4)), pixels(b.getInt(8))))
        .max(Comparator.comparingLong(PixelSize::pixels));
  }

  private static int pixels(int unsigned) {
    return (int) Math.min(Integer.MAX_VALUE, Integer.toUnsignedLong(unsigned));
  }

  /** The item of type {@code Exif}: four bytes say how far behind them its TIFF header begins. */
  private static Optional<ByteBuffer> exif(ByteBuffer file, List<Box> meta) {
    try {
      Optional<Long> item = named(meta, "iinf").findFirst().flatMap(HeifWalk::exifItem);
      Optional<ByteBuffer> place = named(meta, "iloc").findFirst();
      if (item.isEmpty() || place.isEmpty()) {
        return Optional.empty();
      }
      return new HeifPlaces(place.get())
          .of(item.get())
          .filter(p -> p.length() > 4 && p.from() >= 0 && p.from() <= file.limit() - p.length())
          .map(p -> file.slice((int) p.from(), (int) p.length()))
          .flatMap(HeifWalk::tiff);
    } catch (BufferUnderflowException e) {
      return Optional.empty();
    }
  }

  private static Optional<ByteBuffer> tiff(ByteBuffer item) {
    long from = 4 + Integer.toUnsignedLong(item.getInt(0));
    return from < item.limit()
        ? Optional.of(item.slice((int) from, item.limit() - (int) from))
        : Optional.empty();
  }

  private static Optional<Long> exifItem(ByteBuffer items) {
    int version = items.duplicate().get();
    return boxes(items, FULL + (version == 0 ? 2 : 4)).orElse(List.of()).stream()
        .filter(b -> b.type().equals("infe"))
        .flatMap(b -> exifId(b.content().duplicate()).stream())
        .findFirst();
  }

  private static Optional<Long> exifId(ByteBuffer item) {
    int version = item.getInt() >>> 24;
    if (version < 2) {
      return Optional.empty();
    }
    long id = version == 2 ? item.getShort() & 0xffff : Integer.toUnsignedLong(item.getInt());
    item.getShort(); // protection
    return item.getInt() == 0x45786966 ? Optional.of(id) : Optional.empty(); // "Exif"
  }
}
