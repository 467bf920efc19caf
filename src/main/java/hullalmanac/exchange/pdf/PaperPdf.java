package hullalmanac.exchange.pdf;

import com.openhtmltopdf.extend.FSObjectDrawer;
import com.openhtmltopdf.extend.FSObjectDrawerFactory;
import com.openhtmltopdf.extend.FSStream;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.outputdevice.helper.ExternalResourceControlPriority;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder.PdfAConformance;
import com.openhtmltopdf.util.XRLog;
import hullalmanac.core.paper.Block;
import hullalmanac.core.paper.Paper;
import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.awt.geom.Rectangle2D;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.w3c.dom.Element;

/**
 * Writes papers as PDF/A-3A (ISO 19005-3) that is PDF/UA-1 (ISO 14289-1) too: tagged, with its
 * fonts and colours in it, charts as vectors. Nothing is fetched from anywhere.
 */
public final class PaperPdf {
  /** How addresses of photos begin. */
  static final String PHOTO = "photo";

  /** Feet of letters below a chart would be cut off. */
  private static final int ROOM_BELOW = 3;

  private static final String PRODUCER = "Hull Almanac";

  static {
    // What it would log may hold what stands on a paper.
    XRLog.setLoggingEnabled(false);
  }

  private PaperPdf() {}

  /**
   * A paper as a file.
   *
   * @param content of the PDF
   * @param lacking what the font has no letters for, a sentence each; mostly none
   */
  public record Made(ByteBuffer content, List<String> lacking) {
    public Made {
      content = content.asReadOnlyBuffer();
      lacking = List.copyOf(lacking);
    }

    /** The content once more, as bytes. */
    public byte[] bytes() {
      byte[] bytes = new byte[content.remaining()];
      content.duplicate().get(bytes);
      return bytes;
    }
  }

  /**
   * Lays out a paper. May take a second or more.
   *
   * @param photos the folder in which its photos lie
   */
  public static Made of(Paper paper, Path photos) {
    FontCover cover = new FontCover();
    PaperPhotos ready = new PaperPhotos(photos);
    ready.prepare(photos(paper.blocks()).toList());
    PaperHtml html = new PaperHtml(cover, ready);
    String page = html.of(paper);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try {
      builder(ready, html.drawn()).withHtmlContent(page, null).toStream(out).run();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return new Made(ByteBuffer.wrap(out.toByteArray()), cover.sentences());
  }

  private static Stream<String> photos(List<Block> blocks) {
    return blocks.stream()
        .flatMap(
            b ->
                b instanceof Block.Photos p
                    ? p.photos().stream().map(Block.Photo::file)
                    : b instanceof Block.Kept k ? photos(k.blocks()) : Stream.empty());
  }

  /** Whether a file is a PDF that was made here; its metadata, which is plain XML, says so. */
  public static boolean isOurs(byte[] file) {
    String text = new String(file, StandardCharsets.ISO_8859_1);
    return text.startsWith("%PDF-") && text.contains(PRODUCER);
  }

  private static PdfRendererBuilder builder(PaperPhotos photos, List<Drawn> drawn) {
    PdfRendererBuilder builder = new PdfRendererBuilder();
    builder.usePdfAConformance(PdfAConformance.PDFA_3_A);
    builder.usePdfUaAccessibility(true);
    builder.useColorProfile(ICC_Profile.getInstance(ColorSpace.CS_sRGB).getData());
    builder.withProducer(PRODUCER);
    for (PaperFont.Face face : PaperFont.Face.values()) {
      builder.useFont(face::open, PaperFont.FAMILY, face.weight(), FontStyle.NORMAL, true);
    }
    builder.useProtocolsStreamImplementation(a -> new Jpeg(photos.jpeg(a)), PHOTO);
    builder.useExternalResourceAccessControl(
        (address, type) -> address != null && address.startsWith(PHOTO + ":"),
        ExternalResourceControlPriority.RUN_AFTER_RESOLVING_URI);
    builder.useObjectDrawerFactory(new Drawings(drawn));
    return builder;
  }

  private static final class Jpeg implements FSStream {
    private final byte[] bytes;

    Jpeg(byte[] bytes) {
      this.bytes = bytes;
    }

    @Override
    public InputStream getStream() {
      return new ByteArrayInputStream(bytes);
    }

    @Override
    public Reader getReader() {
      return new InputStreamReader(getStream(), StandardCharsets.ISO_8859_1);
    }
  }

  /** Draws what stands drawn on a page. */
  private record Drawings(List<Drawn> drawn) implements FSObjectDrawerFactory {
    @Override
    public FSObjectDrawer createDrawer(Element e) {
      Drawn what = drawn.get(Integer.parseInt(e.getAttribute(PaperHtml.DRAWN_AT)));
      return (element, x, y, width, height, device, context, dotsPerPixel) -> {
        float w = (float) width / dotsPerPixel;
        float h = (float) height / dotsPerPixel;
        device.drawWithGraphics(
            (float) x,
            (float) y,
            w,
            h,
            g -> what.draw(g, new Rectangle2D.Double(0, 0, w, h - ROOM_BELOW)));
        return Map.of();
      };
    }

    @Override
    public boolean isReplacedObject(Element e) {
      return e.hasAttribute(PaperHtml.DRAWN_AT);
    }
  }
}
