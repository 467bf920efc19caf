package hullalmanac.exchange.pdf;

import hullalmanac.core.record.RecordException;
import hullalmanac.exchange.photo.Thumbnails;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.Collection;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageOutputStream;

/** Photos of a record as they go on paper: upright, no finer than print can show, as JPEG. */
final class PaperPhotos {
  /** Enough for 230 dots an inch over half the width of a page. */
  private static final int SIDE = 750;

  private static final float QUALITY = 0.82f;

  private final Path folder;
  private final Map<String, Ready> ready = new ConcurrentHashMap<>();

  /** A photo, ready to be put in: its address on the page, and its size in pixels. */
  record Shown(String address, int width, int height) {}

  private static final class Ready {
    private final Shown shown;
    private final byte[] jpeg;

    Ready(Shown shown, byte[] jpeg) {
      this.shown = shown;
      this.jpeg = jpeg;
    }
  }

  PaperPhotos(Path folder) {
    this.folder = folder;
  }

  /** Makes many ready, several at a time. */
  void prepare(Collection<String> files) {
    files.stream().distinct().toList().parallelStream().forEach(this::show);
  }

  /** Makes one ready; nothing when it is not there, has no name, or cannot be drawn. */
  Optional<Shown> show(String file) {
    if (file.isEmpty()) {
      return Optional.empty();
    }
    Ready known = ready.get(file);
    if (known != null) {
      return Optional.of(known.shown);
    }
    Optional<Ready> made = drawn(file).map(image -> of(file, image));
    made.ifPresent(r -> ready.put(file, r));
    return made.map(r -> r.shown);
  }

  private Optional<BufferedImage> drawn(String file) {
    try {
      return Thumbnails.of(folder.resolve(file), SIDE);
    } catch (RecordException e) {
      return Optional.empty();
    }
  }

  /** The JPEG behind an address of a page. */
  byte[] jpeg(String address) {
    return ready.values().stream()
        .filter(r -> r.shown.address().equals(address))
        .findFirst()
        .map(r -> r.jpeg)
        .orElseThrow(() -> new IllegalArgumentException("no photo has the address " + address));
  }

  private static Ready of(String file, BufferedImage image) {
    return new Ready(
        new Shown(PaperPdf.PHOTO + ":" + file, image.getWidth(), image.getHeight()), jpeg(image));
  }

  private static byte[] jpeg(BufferedImage image) {
    BufferedImage opaque =
        new BufferedImage(image.getWidth(), image.getHeight(), BufferedImage.TYPE_INT_RGB);
    Graphics2D g = opaque.createGraphics();
    g.drawImage(image, 0, 0, Color.WHITE, null);
    g.dispose();
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
    try (ImageOutputStream out = ImageIO.createImageOutputStream(bytes)) {
      writer.setOutput(out);
      ImageWriteParam how = writer.getDefaultWriteParam();
      how.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
      how.setCompressionQuality(QUALITY);
      writer.write(null, new IIOImage(opaque, null, null), how);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } finally {
      writer.dispose();
    }
    return bytes.toByteArray();
  }
}
