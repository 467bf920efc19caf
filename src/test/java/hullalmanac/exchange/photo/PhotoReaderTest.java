package hullalmanac.exchange.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.drew.imaging.heif.HeifMetadataReader;
import com.drew.metadata.exif.ExifSubIFDDirectory;
import hullalmanac.exchange.photo.PhotoReader.Refused;
import hullalmanac.exchange.photo.PhotoReader.Usable;
import java.io.ByteArrayInputStream;
import java.io.RandomAccessFile;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class PhotoReaderTest {
  private static final byte[] JPEG = Pictures.jpeg(Pictures.corners(48, 32));
  private static final byte[] PNG = Pictures.png(Pictures.corners(48, 32));
  private static final LocalDateTime MORNING = LocalDateTime.of(2026, 5, 1, 8, 30, 15);

  @TempDir Path folder;

  private static Usable usable(byte[] content) {
    PhotoReader.Outcome outcome = PhotoReader.read("a.jpg", content);
    assertThat(outcome).isInstanceOf(Usable.class);
    return (Usable) outcome;
  }

  private static String refused(byte[] content) {
    return refused(PhotoReader.read("bow.jpg", content));
  }

  private static String refused(PhotoReader.Outcome outcome) {
    assertThat(outcome).isInstanceOf(Refused.class);
    return ((Refused) outcome).sentence();
  }

  static Stream<ByteOrder> orders() {
    return Stream.of(ByteOrder.BIG_ENDIAN, ByteOrder.LITTLE_ENDIAN);
  }

  @ParameterizedTest
  @MethodSource("orders")
  void readsTimeZoneAndOrientationInBothByteOrders(ByteOrder order) throws Exception {
    byte[] tiff =
        new ExifBytes(order).orientation(6).takenAt("2026:05:01 08:30:15").zone("+02:00").bytes();
    Usable expected =
        new Usable(
            PhotoFormat.JPEG,
            Optional.of(new PixelSize(48, 32)),
            Optional.of(MORNING),
            Optional.of(ZoneOffset.ofHours(2)),
            6,
            true);
    Path file = Files.write(folder.resolve("hull.jpg"), Pictures.jpegWith(JPEG, tiff));
    assertThat(PhotoReader.read(file)).isEqualTo(expected);
    assertThat(usable(Pictures.pngWith(PNG, tiff)))
        .isEqualTo(
            new Usable(
                PhotoFormat.PNG, expected.size(), expected.takenAt(), expected.zone(), 6, true));
  }

  @Test
  void aTimeWithoutAZoneIsTheOneTheCameraShowed() {
    Usable photo =
        usable(Pictures.jpegWith(JPEG, new ExifBytes().takenAt("2026:05:01 08:30:15").bytes()));
    assertThat(photo.takenAt()).contains(MORNING);
    assertThat(photo.zone()).isEmpty();
  }

  @Test
  void whatIsNotSaidIsAbsentAndUpright() {
    assertThat(usable(JPEG))
        .isEqualTo(
            new Usable(
                PhotoFormat.JPEG,
                Optional.of(new PixelSize(48, 32)),
                Optional.empty(),
                Optional.empty(),
                1,
                true));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "0000:00:00 00:00:00",
        "    :  :     :  :  ",
        "1989:12:31 23:59:59",
        "2026:13:01 08:00:00",
        "2026:02:30 08:00:00",
        "2026:05:01 24:00:00",
        "yesterday",
        ""
      })
  void absurdTimesAreAbsentAndTheirZonesWithThem(String time) {
    Usable photo =
        usable(Pictures.jpegWith(JPEG, new ExifBytes().takenAt(time).zone("+02:00").bytes()));
    assertThat(photo.takenAt()).isEmpty();
    assertThat(photo.zone()).isEmpty();
  }

  @Test
  void theFirstDayAClockCanBeRightIsTaken() {
    byte[] tiff = new ExifBytes().takenAt("1990:01:01 00:00:00").bytes();
    assertThat(usable(Pictures.jpegWith(JPEG, tiff)).takenAt())
        .contains(LocalDateTime.of(1990, 1, 1, 0, 0));
  }

  @ParameterizedTest
  @ValueSource(strings = {"   :  ", "+25:00", "Z", "02:00"})
  void absurdZonesAreAbsentAndTheTimeStays(String zone) {
    byte[] tiff = new ExifBytes().takenAt("2026:05:01 08:30:15").zone(zone).bytes();
    Usable photo = usable(Pictures.jpegWith(JPEG, tiff));
    assertThat(photo.takenAt()).contains(MORNING);
    assertThat(photo.zone()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 9, 65535})
  void anOrientationThatDoesNotExistIsUpright(int way) {
    byte[] tiff = new ExifBytes().orientation(way).bytes();
    assertThat(usable(Pictures.jpegWith(JPEG, tiff)).orientation()).isEqualTo(1);
  }

  @Test
  void theContentDecidesAndNotTheName() throws Exception {
    Path file = Files.write(folder.resolve("really-a-png.jpg"), PNG);
    assertThat(((Usable) PhotoReader.read(file)).format()).isEqualTo(PhotoFormat.PNG);
  }

  @ParameterizedTest
  @ValueSource(strings = {"heic", "heix", "hevc", "mif1"})
  void heicIsKnownByItsBrandAndCannotBeShown(String brand) {
    assertThat(usable(HeifBytes.ftyp(brand)))
        .isEqualTo(
            new Usable(
                PhotoFormat.HEIC, Optional.empty(), Optional.empty(), Optional.empty(), 1, false));
  }

  /** The library that reads EXIF has a reader of boxes too: it must find the same time. */
  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2})
  void heicSaysItsWholeSizeAndItsTime(int version) {
    byte[] tiff =
        new ExifBytes(ByteOrder.LITTLE_ENDIAN)
            .orientation(6)
            .takenAt("2026:05:01 08:30:15")
            .zone("-03:30")
            .bytes();
    byte[] file = HeifBytes.file(version, 4032, 3024, tiff);
    assertThat(usable(file))
        .isEqualTo(
            new Usable(
                PhotoFormat.HEIC,
                Optional.of(new PixelSize(4032, 3024)),
                Optional.of(MORNING),
                Optional.of(ZoneOffset.ofHoursMinutes(-3, -30)),
                1,
                false));
    assertThat(
            HeifMetadataReader.readMetadata(new ByteArrayInputStream(file))
                .getFirstDirectoryOfType(ExifSubIFDDirectory.class)
                .getString(ExifSubIFDDirectory.TAG_DATETIME_ORIGINAL))
        .isEqualTo("2026:05:01 08:30:15");
  }

  @Test
  void otherThingsInTheSameBoxesAreRefused() {
    assertThat(refused(HeifBytes.ftyp("isom", "mp41"))).contains("is not a JPEG, PNG or HEIC");
    assertThat(refused(HeifBytes.ftyp("mif1", "avif"))).contains("is not a JPEG, PNG or HEIC");
  }

  @Test
  void refusalsNameTheFileAndSayWhatToTry() throws Exception {
    assertThat(refused(new byte[0]))
        .isEqualTo("The file bow.jpg is empty. Copy it from the camera again.");
    assertThat(refused("not a picture at all".getBytes(StandardCharsets.UTF_8)))
        .isEqualTo(
            "The file bow.jpg is not a JPEG, PNG or HEIC photo. Save it as JPEG, then add it again.");
    assertThat(refused(PhotoReader.read(folder.resolve("gone.jpg"))))
        .isEqualTo(
            "The file gone.jpg cannot be read. Look whether it is still there and may be opened.");
    Files.createDirectories(folder.resolve("spring"));
    assertThat(refused(PhotoReader.read(folder.resolve("spring"))))
        .isEqualTo("spring is a folder. Choose the photos in it.");
  }

  @Test
  void aFileOver100MegabytesIsRefusedUnread() throws Exception {
    Path file = folder.resolve("film.jpg");
    try (RandomAccessFile long_ = new RandomAccessFile(file.toFile(), "rw")) {
      long_.write(JPEG);
      long_.setLength(PhotoReader.MOST_BYTES + 1);
    }
    assertThat(refused(PhotoReader.read(file)))
        .isEqualTo(
            "The file film.jpg has more than 100 MB. Save the photo smaller, then add it again.");
  }

  static Stream<byte[]> wholeFiles() {
    byte[] tiff = new ExifBytes().orientation(3).takenAt("2026:05:01 08:30:15").bytes();
    return Stream.of(
        Pictures.jpegWith(JPEG, tiff),
        Pictures.pngWith(PNG, tiff),
        HeifBytes.file(1, 4032, 3024, tiff));
  }

  @ParameterizedTest
  @MethodSource("wholeFiles")
  void aFileCutShortAnywhereIsRefused(byte[] whole) {
    for (int length = 1; length < whole.length; length++) {
      if (!isBetweenBoxes(whole, length)) {
        assertThat(refused(Arrays.copyOf(whole, length))).contains("bow.jpg");
      }
    }
    assertThat(refused(Arrays.copyOf(whole, whole.length - 1)))
        .isEqualTo("The photo bow.jpg is cut short or damaged. Copy it from the camera again.");
  }

  /** A HEIC file has no end mark: cut between two boxes it is a whole one with fewer of them. */
  private static boolean isBetweenBoxes(byte[] whole, int length) {
    String next =
        new String(whole, length, Math.min(8, whole.length - length), StandardCharsets.ISO_8859_1);
    return usable(whole).format() == PhotoFormat.HEIC
        && (next.endsWith("meta") || next.endsWith("mdat"));
  }

  @Test
  void aPictureWithoutPixelsIsDamaged() {
    byte[] header = Arrays.copyOf(PNG, 8 + 12 + 13);
    byte[] end = Pictures.chunk("IEND", new byte[0]);
    assertThat(refused(HeifBytes.joined(header, end))).contains("damaged");
    byte[] frame = Arrays.copyOf(JPEG, frame(JPEG) + 2 + 17);
    assertThat(refused(HeifBytes.joined(frame, HeifBytes.shorts(0xffd9)))).contains("damaged");
  }

  @Test
  void whatFollowsTheEndOfAJpegIsLeftAlone() {
    assertThat(usable(Arrays.copyOf(JPEG, JPEG.length + 500)).size())
        .contains(new PixelSize(48, 32));
  }

  @Test
  void picturesThatWouldBurstTheMemoryAreRefusedByTheirHeader() {
    byte[] png = PNG.clone();
    ByteBuffer.wrap(png).putInt(16, 10_001).putInt(20, 10_000);
    assertThat(refused(png))
        .isEqualTo(
            "The photo bow.jpg has 10001 by 10000 pixels; at most 100 million are taken."
                + " Save it smaller, then add it again.");
    ByteBuffer.wrap(png).putInt(16, 10_000);
    assertThat(usable(png).size()).contains(new PixelSize(10_000, 10_000));
    assertThat(refused(HeifBytes.file(0, -1, -1, new byte[0]))).contains("at most 100 million");
    assertThat(refused(withFrame(JPEG, 65_535, 65_535))).contains("has 65535 by 65535 pixels");
    assertThat(refused(withFrame(JPEG, 48, 0))).contains("damaged");
  }

  private static byte[] withFrame(byte[] jpeg, int width, int height) {
    byte[] changed = jpeg.clone();
    ByteBuffer.wrap(changed)
        .putShort(frame(jpeg) + 5, (short) height)
        .putShort(frame(jpeg) + 7, (short) width);
    return changed;
  }

  /** Where a baseline JPEG says its size and how deep its colours are (ITU-T T.81, B.2.2). */
  private static int frame(byte[] jpeg) {
    for (int at = 0; at < jpeg.length - 1; at++) {
      if (jpeg[at] == (byte) 0xff && jpeg[at + 1] == (byte) 0xc0) {
        return at;
      }
    }
    throw new IllegalArgumentException("no frame");
  }

  @Test
  void aJpegOfDeepColoursIsKeptAndCannotBeShown() {
    byte[] deep = JPEG.clone();
    deep[frame(JPEG) + 4] = 12;
    assertThat(usable(deep).previewable()).isFalse();
    assertThatThrownBy(() -> ImageIO.read(new ByteArrayInputStream(deep)))
        .hasMessageContaining("precision 12");
  }

  /** Each directory points to the next: as deep as a segment allows. */
  @Test
  void directoriesInDirectoriesDoNoHarm() {
    ByteBuffer tiff = ByteBuffer.allocate(60_000);
    tiff.put("MM".getBytes(StandardCharsets.US_ASCII)).putShort((short) 42).putInt(8);
    while (tiff.remaining() > 40) {
      int next = tiff.position() + 18;
      tiff.putShort((short) 1).putShort((short) 0x014a).putShort((short) 4);
      tiff.putInt(1).putInt(next).putInt(0);
    }
    assertThat(usable(Pictures.jpegWith(JPEG, tiff.array())).takenAt()).isEmpty();
  }
}
