package hullalmanac.exchange.photo;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Photo files drawn for tests of what is built upon photos. */
public final class DrawnPhotos {
  private static final DateTimeFormatter EXIF =
      DateTimeFormatter.ofPattern("yyyy:MM:dd HH:mm:ss", Locale.ROOT);

  private DrawnPhotos() {}

  /** A JPEG taken at a time; other colours for another number, and so another content. */
  public static byte[] jpeg(int number, LocalDateTime takenAt) {
    return Pictures.jpegWith(
        Pictures.jpeg(hull(number, 400, 300)),
        new ExifBytes().orientation(1).takenAt(EXIF.format(takenAt)).bytes());
  }

  /** A PNG that does not say when it was taken. */
  public static byte[] png(int number) {
    return Pictures.png(hull(number, 320, 240));
  }

  /** A HEIC file without a picture in it, taken at a time. */
  public static byte[] heic(LocalDateTime takenAt) {
    return HeifBytes.file(
        1, 4032, 3024, new ExifBytes().orientation(1).takenAt(EXIF.format(takenAt)).bytes());
  }

  /** A hull on water under a sky. */
  public static BufferedImage hull(int number, int width, int height) {
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    g.setColor(new Color(0xDCE6E8));
    g.fillRect(0, 0, width, height);
    g.setColor(new Color(0x7FA3A8));
    g.fillRect(0, height * 2 / 3, width, height / 3);
    g.setColor(Color.getHSBColor(number * 0.13f, 0.5f, 0.8f));
    g.fillPolygon(
        new int[] {width / 10, width * 9 / 10, width * 8 / 10, width / 5},
        new int[] {height * 2 / 5, height / 3, height * 3 / 4, height * 3 / 4},
        4);
    g.setColor(Color.WHITE);
    for (int i = 0; i <= number % 6; i++) {
      g.fillRect(width / 4 + i * width / 12, height / 2, width / 20, height / 30);
    }
    g.dispose();
    return image;
  }
}
