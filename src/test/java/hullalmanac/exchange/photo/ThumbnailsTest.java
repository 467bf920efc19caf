package hullalmanac.exchange.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import com.sun.management.ThreadMXBean;
import hullalmanac.core.record.Pixels;
import hullalmanac.core.record.RecordException;
import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class ThumbnailsTest {
  /**
   * Where the first row and the first column of the stored picture are seen, for the orientations
   * from 1 to 8: EXIF 2.32 (JEITA CP-3451E), 4.6.4, tag 0x0112.
   */
  private static final List<String> FIRST_ROW_AND_COLUMN =
      List.of(
          "top left",
          "top right",
          "bottom right",
          "bottom left",
          "left top",
          "right top",
          "right bottom",
          "left bottom");

  @TempDir Path folder;

  private Path file(byte[] content) throws IOException {
    return Files.write(folder.resolve("photo"), content);
  }

  private BufferedImage drawn(byte[] content, int side) throws IOException {
    return Thumbnails.of(file(content), side).orElseThrow();
  }

  /** The stored picture that is seen as the given one. */
  private static BufferedImage stored(BufferedImage seen, int orientation) {
    String[] at = FIRST_ROW_AND_COLUMN.get(orientation - 1).split(" ");
    boolean rowsRun = at[0].equals("top") || at[0].equals("bottom");
    int width = seen.getWidth();
    int height = seen.getHeight();
    BufferedImage stored =
        new BufferedImage(
            rowsRun ? width : height, rowsRun ? height : width, BufferedImage.TYPE_3BYTE_BGR);
    for (int row = 0; row < stored.getHeight(); row++) {
      for (int column = 0; column < stored.getWidth(); column++) {
        int x = rowsRun ? from(at[1], column, width) : from(at[0], row, width);
        int y = rowsRun ? from(at[0], row, height) : from(at[1], column, height);
        stored.setRGB(column, row, seen.getRGB(x, y));
      }
    }
    return stored;
  }

  private static int from(String side, int steps, int size) {
    return side.equals("right") || side.equals("bottom") ? size - 1 - steps : steps;
  }

  static Stream<Arguments> orientations() {
    return Stream.of(ByteOrder.BIG_ENDIAN, ByteOrder.LITTLE_ENDIAN)
        .flatMap(
            order ->
                Stream.iterate(1, way -> way + 1).limit(8).map(way -> Arguments.of(order, way)));
  }

  @ParameterizedTest
  @MethodSource("orientations")
  void everyOrientationIsTurnedUpright(ByteOrder order, int orientation) throws Exception {
    BufferedImage stored = stored(Pictures.corners(96, 64), orientation);
    byte[] tiff = new ExifBytes(order).orientation(orientation).bytes();
    for (byte[] content :
        List.of(
            Pictures.jpegWith(Pictures.jpeg(stored), tiff),
            Pictures.pngWith(Pictures.png(stored), tiff))) {
      BufferedImage small = drawn(content, 48);
      assertThat(small.getWidth()).isEqualTo(48);
      assertThat(small.getHeight()).isEqualTo(32);
      assertThat(Pictures.cornersOf(small)).isEqualTo(Pictures.CORNERS);
    }
  }

  @ParameterizedTest
  @CsvSource({
    "400, 300, 100, 100, 75",
    "300, 400, 100, 75, 100",
    "401, 299, 100, 100, 75",
    "30, 20, 100, 30, 20",
    "100, 100, 100, 100, 100",
    "3000, 2, 100, 100, 1",
    "2, 3000, 1, 1, 1"
  })
  void fitsIntoTheSquareAndIsNeverEnlarged(
      int width, int height, int side, int thenWidth, int thenHeight) throws Exception {
    BufferedImage small = drawn(Pictures.png(Pictures.corners(width, height)), side);
    assertThat(small.getWidth()).isEqualTo(thenWidth);
    assertThat(small.getHeight()).isEqualTo(thenHeight);
  }

  static Stream<BufferedImage> kinds() {
    return Stream.of(
        Pictures.corners(80, 60, BufferedImage.TYPE_INT_ARGB),
        Pictures.corners(80, 60, BufferedImage.TYPE_BYTE_INDEXED),
        Pictures.deep(80, 60));
  }

  @ParameterizedTest
  @MethodSource("kinds")
  void drawsTransparentIndexedAndDeepColours(BufferedImage picture) throws Exception {
    byte[] tiff = new ExifBytes().orientation(3).bytes();
    BufferedImage small = drawn(Pictures.pngWith(Pictures.png(picture), tiff), 20);
    assertThat(Pictures.cornersOf(small))
        .containsExactly(
            Pictures.CORNERS.get(3),
            Pictures.CORNERS.get(2),
            Pictures.CORNERS.get(1),
            Pictures.CORNERS.get(0));
  }

  @Test
  void drawsTheColoursOfPrinters() throws Exception {
    assertThat(new Color(drawn(Pictures.printersJpeg(), 8).getRGB(4, 4))).isEqualTo(Color.WHITE);
  }

  /** Decoded whole it would take 144 MB; a bound of 24 leaves room for what the readers need. */
  @Test
  void aPictureOf48MegapixelsTakesLittleMemory() throws Exception {
    Path file = file(Pictures.jpeg(Pictures.corners(8000, 6000)));
    ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
    long before = threads.getCurrentThreadAllocatedBytes();
    BufferedImage small = Thumbnails.of(file, 200).orElseThrow();
    long taken = threads.getCurrentThreadAllocatedBytes() - before;
    assertThat(small.getWidth()).isEqualTo(200);
    assertThat(small.getHeight()).isEqualTo(150);
    assertThat(Pictures.cornersOf(small)).isEqualTo(Pictures.CORNERS);
    assertThat(taken).isBetween(100_000L, 24_000_000L);
  }

  @Test
  void whatCannotBeDrawnIsNothing() throws Exception {
    assertThat(Thumbnails.of(file(HeifBytes.ftyp("heic")), 100)).isEmpty();
    assertThat(Thumbnails.of(file(new byte[] {1, 2, 3}), 100)).isEmpty();
  }

  @Test
  void aPictureWhosePixelsAreDamagedIsNothing() throws Exception {
    byte[] png = Pictures.png(Pictures.corners(64, 64));
    int pixels = new String(png, StandardCharsets.ISO_8859_1).indexOf("IDAT") + 4;
    for (int i = pixels; i < pixels + 12; i++) {
      png[i] = 0x55;
    }
    assertThat(PhotoReader.read("a", png)).isInstanceOf(PhotoReader.Usable.class);
    assertThat(Thumbnails.of(file(png), 100)).isEmpty();
  }

  @Test
  void aPictureThatIsGoneIsSaidToBe() {
    RecordException e =
        catchThrowableOfType(
            RecordException.class, () -> Thumbnails.of(folder.resolve("gone.jpg"), 100));
    assertThat(e.kind()).isEqualTo(RecordException.Kind.MISSING);
    assertThat(e).hasMessageContaining("gone.jpg is not there");
  }

  @Test
  void asksForPixels() throws Exception {
    Path file = file(Pictures.png(Pictures.corners(4, 4)));
    assertThatThrownBy(() -> Thumbnails.of(file, 0)).hasMessageContaining("not 0");
  }

  @Test
  void givesTheSamePictureAsPlainValues() throws IOException {
    BufferedImage seen = new BufferedImage(40, 30, BufferedImage.TYPE_INT_RGB);
    seen.setRGB(39, 29, 0x00ff00);
    Path photo = file(Pictures.png(seen));
    Pixels picture = Thumbnails.pixels(photo, 40).orElseThrow();
    assertThat(picture.width()).isEqualTo(40);
    assertThat(picture.height()).isEqualTo(30);
    assertThat(picture.argb()[0]).isEqualTo(0xff000000);
    assertThat(picture.argb()[40 * 30 - 1]).isEqualTo(0xff00ff00);
  }
}
