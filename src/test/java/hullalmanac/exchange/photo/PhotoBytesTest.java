package hullalmanac.exchange.photo;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.exchange.photo.PhotoReader.Refused;
import hullalmanac.exchange.photo.PhotoReader.Usable;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** Whatever the bytes: an answer, and never an exception. */
class PhotoBytesTest {
  private static final byte[] TIFF =
      new ExifBytes().orientation(6).takenAt("2026:05:01 08:30:15").zone("+02:00").bytes();
  private static final List<byte[]> WHOLE =
      List.of(
          Pictures.jpegWith(Pictures.jpeg(Pictures.corners(24, 16)), TIFF),
          Pictures.pngWith(Pictures.png(Pictures.corners(24, 16)), TIFF),
          HeifBytes.file(0, 4032, 3024, TIFF),
          HeifBytes.file(2, 4032, 3024, TIFF));

  /** Noise, and noise behind the first bytes of each format. */
  @Provide
  Arbitrary<byte[]> noise() {
    return Combinators.combine(
            Arbitraries.of(
                new byte[0],
                new byte[] {(byte) 0xff, (byte) 0xd8, (byte) 0xff},
                new byte[] {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'},
                HeifBytes.ftyp("heic"),
                HeifBytes.joined(HeifBytes.ftyp("heic"), HeifBytes.box("meta"))),
            Arbitraries.bytes().array(byte[].class).ofMaxSize(400))
        .as((start, rest) -> HeifBytes.joined(start, rest));
  }

  /** A whole file in which some bytes were changed. */
  @Provide
  Arbitrary<byte[]> damaged() {
    return Combinators.combine(
            Arbitraries.of(WHOLE),
            Arbitraries.integers().between(0, 100_000).list().ofMinSize(1).ofMaxSize(12),
            Arbitraries.bytes().array(byte[].class).ofSize(12))
        .as(
            (whole, places, values) -> {
              byte[] changed = whole.clone();
              for (int i = 0; i < places.size(); i++) {
                changed[places.get(i) % changed.length] = values[i];
              }
              return changed;
            });
  }

  private static void answers(byte[] content) {
    PhotoReader.Outcome outcome = PhotoReader.read("x", content);
    if (outcome instanceof Refused refused) {
      assertThat(refused.sentence()).contains(" x ").endsWith(".");
    } else {
      assertThat(((Usable) outcome).size().map(PixelSize::pixels).orElse(1L))
          .isBetween(1L, PhotoReader.MOST_PIXELS);
    }
  }

  @Property
  void noiseIsAnswered(@ForAll("noise") byte[] content) {
    answers(content);
  }

  @Property(tries = 4000)
  void damageIsAnswered(@ForAll("damaged") byte[] content) {
    answers(content);
  }

  @Property(tries = 400)
  void damagedPhotosAreDrawnSmallOrNotAtAll(@ForAll("damaged") byte[] content) throws IOException {
    Path file = Files.createTempFile("photo", ".jpg");
    try {
      Files.write(file, content);
      Optional<BufferedImage> drawn = Thumbnails.of(file, 8);
      assertThat(drawn.map(BufferedImage::getWidth).orElse(1)).isBetween(1, 8);
      assertThat(drawn.map(BufferedImage::getHeight).orElse(1)).isBetween(1, 8);
    } finally {
      Files.delete(file);
    }
  }
}
