package hullalmanac.exchange.mail;

import hullalmanac.core.record.Texts;
import hullalmanac.core.report.MailDraft;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A draft as a {@code mailto:} link, which any mail program opens. It carries no files, and some
 * systems cut it after some 2000 characters.
 *
 * <p>Reference: RFC 6068.
 */
public final class Mailto {
  private static final String UNRESERVED = "-._~";
  private static final String IN_ADDRESS = UNRESERVED + "!$'*+";

  private Mailto() {}

  /** The link. */
  public static String of(MailDraft draft) {
    String to =
        draft.to().stream()
            .map(r -> address(Texts.oneLine(r.address())))
            .collect(Collectors.joining(","));
    List<String> fields = new ArrayList<>();
    if (!draft.subject().isBlank()) {
      fields.add("subject=" + encoded(Texts.oneLine(draft.subject()), UNRESERVED));
    }
    if (!draft.text().isBlank()) {
      fields.add("body=" + encoded(draft.text().replaceAll("\\R", "\r\n"), UNRESERVED));
    }
    return "mailto:" + to + (fields.isEmpty() ? "" : "?" + String.join("&", fields));
  }

  private static String address(String address) {
    int at = address.lastIndexOf('@');
    return at < 0
        ? encoded(address, IN_ADDRESS)
        : encoded(address.substring(0, at), IN_ADDRESS)
            + "@"
            + encoded(address.substring(at + 1), IN_ADDRESS);
  }

  private static String encoded(String text, String kept) {
    StringBuilder out = new StringBuilder();
    for (byte b : text.getBytes(StandardCharsets.UTF_8)) {
      char c = (char) (b & 0xFF);
      boolean plain = c < 0x80 && (Character.isLetterOrDigit(c) || kept.indexOf(c) >= 0);
      out.append(plain ? String.valueOf(c) : String.format("%%%02X", (int) c));
    }
    return out.toString();
  }
}
