package hullalmanac.exchange.photo;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Transparency;
import java.awt.color.ColorSpace;
import java.awt.image.BufferedImage;
import java.awt.image.ComponentColorModel;
import java.awt.image.DataBuffer;
import java.awt.image.Raster;
import java.awt.image.WritableRaster;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.zip.CRC32;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageOutputStream;

/** Pictures drawn for tests, each corner in a colour of its own, and their files. */
final class Pictures {
  /** Upper left, upper right, lower left, lower right. */
  static final List<Color> CORNERS = List.of(Color.RED, Color.GREEN, Color.BLUE, Color.YELLOW);

  private Pictures() {}

  static BufferedImage corners(int width, int height, int type) {
    return painted(new BufferedImage(width, height, type));
  }

  static BufferedImage corners(int width, int height) {
    return corners(width, height, BufferedImage.TYPE_3BYTE_BGR);
  }

  /** A picture of 16 bits a colour, which has no type number of its own. */
  static BufferedImage deep(int width, int height) {
    ComponentColorModel model =
        new ComponentColorModel(
            ColorSpace.getInstance(ColorSpace.CS_sRGB),
            false,
            false,
            Transparency.OPAQUE,
            DataBuffer.TYPE_USHORT);
    return painted(
        new BufferedImage(model, model.createCompatibleWritableRaster(width, height), false, null));
  }

  private static BufferedImage painted(BufferedImage image) {
    Graphics2D g = image.createGraphics();
    int halfWidth = (image.getWidth() + 1) / 2;
    int halfHeight = (image.getHeight() + 1) / 2;
    for (int corner = 0; corner < 4; corner++) {
      g.setColor(CORNERS.get(corner));
      g.fillRect(corner % 2 * halfWidth, corner / 2 * halfHeight, halfWidth, halfHeight);
    }
    g.dispose();
    return image;
  }

  /** Which of the colours each corner of a picture has, in the order of {@link #CORNERS}. */
  static List<Color> cornersOf(BufferedImage image) {
    int right = image.getWidth() - 1;
    int low = image.getHeight() - 1;
    return List.of(
        nearest(image.getRGB(0, 0)),
        nearest(image.getRGB(right, 0)),
        nearest(image.getRGB(0, low)),
        nearest(image.getRGB(right, low)));
  }

  /** The colour itself when it is none of the four. */
  private static Color nearest(int rgb) {
    Color seen = new Color(rgb);
    return CORNERS.stream()
        .filter(
            c ->
                Math.abs(c.getRed() - seen.getRed()) < 60
                    && Math.abs(c.getGreen() - seen.getGreen()) < 60
                    && Math.abs(c.getBlue() - seen.getBlue()) < 60)
        .findFirst()
        .orElse(seen);
  }

  static byte[] jpeg(BufferedImage image) {
    return file(image, "jpeg");
  }

  static byte[] png(BufferedImage image) {
    return file(image, "png");
  }

  private static byte[] file(BufferedImage image, String format) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try {
      if (!ImageIO.write(image, format, out)) {
        throw new IllegalArgumentException("no " + format + " of this picture");
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toByteArray();
  }

  /** White paper in the four colours of printers, upside down as APP14 says: 255 is no ink. */
  static byte[] printersJpeg() {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    WritableRaster white = Raster.createInterleavedRaster(DataBuffer.TYPE_BYTE, 16, 16, 4, null);
    int[] noInk = new int[16 * 16 * 4];
    Arrays.fill(noInk, 255);
    white.setPixels(0, 0, 16, 16, noInk);
    ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
    try (ImageOutputStream stream = ImageIO.createImageOutputStream(out)) {
      writer.setOutput(stream);
      writer.write(new IIOImage(white, null, null));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } finally {
      writer.dispose();
    }
    byte[] four = out.toByteArray();
    byte[] says =
        HeifBytes.joined(HeifBytes.letters("Adobe"), HeifBytes.shorts(100, 0, 0), new byte[1]);
    return HeifBytes.joined(
        Arrays.copyOf(four, 2),
        HeifBytes.shorts(0xffee, 2 + says.length),
        says,
        Arrays.copyOfRange(four, 2, four.length));
  }

  /** Puts EXIF into a JPEG as its first segment, APP1 (EXIF 2.32, 4.7.2). */
  static byte[] jpegWith(byte[] jpeg, byte[] tiff) {
    byte[] mark = "Exif\0\0".getBytes(StandardCharsets.US_ASCII);
    ByteBuffer out = ByteBuffer.allocate(jpeg.length + 4 + mark.length + tiff.length);
    out.put(jpeg, 0, 2).putShort((short) 0xffe1).putShort((short) (2 + mark.length + tiff.length));
    out.put(mark).put(tiff).put(jpeg, 2, jpeg.length - 2);
    return out.array();
  }

  /** Puts EXIF into a PNG behind its header, chunk eXIf (W3C PNG, third edition). */
  static byte[] pngWith(byte[] png, byte[] tiff) {
    int header = 8 + 12 + 13;
    ByteBuffer out = ByteBuffer.allocate(png.length + 12 + tiff.length);
    out.put(png, 0, header).put(chunk("eXIf", tiff)).put(png, header, png.length - header);
    return out.array();
  }

  static byte[] chunk(String name, byte[] data) {
    ByteBuffer out = ByteBuffer.allocate(12 + data.length);
    out.putInt(data.length).put(name.getBytes(StandardCharsets.US_ASCII)).put(data);
    CRC32 sum = new CRC32();
    sum.update(out.array(), 4, 4 + data.length);
    return out.putInt((int) sum.getValue()).array();
  }
}
