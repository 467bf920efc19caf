package hullalmanac.exchange.mail;

import java.nio.ByteBuffer;
import java.util.Locale;
import java.util.Map;

/**
 * A file that goes with a message.
 *
 * @param name as the reader sees it
 * @param content of the file
 */
public record Attachment(String name, ByteBuffer content) {
  private static final Map<String, String> TYPES =
      Map.of(
          "pdf", "application/pdf",
          "png", "image/png",
          "jpg", "image/jpeg",
          "jpeg", "image/jpeg",
          "heic", "image/heic",
          "html", "text/html",
          "txt", "text/plain",
          "csv", "text/csv",
          "ics", "text/calendar",
          "vcf", "text/vcard");

  public Attachment {
    content = content.asReadOnlyBuffer();
  }

  /** The media type by the ending of the name; {@code application/octet-stream} for others. */
  String mediaType() {
    String ending = name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
    return TYPES.getOrDefault(ending, "application/octet-stream");
  }

  byte[] bytes() {
    byte[] bytes = new byte[content.remaining()];
    content.duplicate().get(bytes);
    return bytes;
  }
}
