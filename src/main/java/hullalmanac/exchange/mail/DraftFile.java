package hullalmanac.exchange.mail;

import hullalmanac.core.record.Texts;
import hullalmanac.core.report.MailDraft;
import jakarta.activation.DataHandler;
import jakarta.mail.Address;
import jakarta.mail.Message;
import jakarta.mail.MessagingException;
import jakarta.mail.Session;
import jakarta.mail.internet.AddressException;
import jakarta.mail.internet.ContentType;
import jakarta.mail.internet.InternetAddress;
import jakarta.mail.internet.MimeBodyPart;
import jakarta.mail.internet.MimeMessage;
import jakarta.mail.internet.MimeMultipart;
import jakarta.mail.internet.ParameterList;
import jakarta.mail.util.ByteArrayDataSource;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Date;
import java.util.List;
import java.util.Optional;
import java.util.Properties;

/**
 * A message as a file that a person's own mail program opens: plain text in UTF-8, with files
 * attached. {@code X-Unsent: 1} makes some programs open it to be gone over and sent; it is a
 * convention, not a standard, and others show it as one that came in. It names no sender: the mail
 * program does.
 *
 * <p>What is written into a header is brought onto one line and cut first, so no name can become a
 * header.
 *
 * <p>References: RFC 5322; RFC 2045 to 2047; RFC 2231 (names of files).
 */
public final class DraftFile {
  private static final String UTF_8 = StandardCharsets.UTF_8.name();

  /** Stands in no part: there an equals sign is never followed by an underline (RFC 2045, 6.7). */
  private static final String BOUNDARY = "=_hull-almanac";

  private static final int LONGEST = 200;
  private static final int LONGEST_FILE_NAME = 60;

  private DraftFile() {}

  /** What came of writing. */
  public sealed interface Outcome {}

  /** The message, lines ended by CR LF. */
  public record Made(String text) implements Outcome {}

  /** Why there is none, in a sentence. */
  public record Refused(String sentence) implements Outcome {}

  /**
   * Makes a message.
   *
   * @param at when it was drafted
   */
  public static Outcome of(MailDraft draft, List<Attachment> attachments, Instant at) {
    Optional<String> refusal = refusal(draft);
    if (refusal.isPresent()) {
      return new Refused(refusal.get());
    }
    List<Address> to = new ArrayList<>();
    draft.to().forEach(recipient -> address(recipient).ifPresent(to::add));
    try {
      MimeMessage message = new Unsent();
      message.setRecipients(Message.RecipientType.TO, to.toArray(Address[]::new));
      message.setSubject(cut(draft.subject(), LONGEST), UTF_8);
      message.setSentDate(Date.from(at));
      message.setHeader("X-Unsent", "1");
      if (attachments.isEmpty()) {
        message.setText(body(draft), UTF_8);
        message.setHeader("Content-Transfer-Encoding", "quoted-printable");
      } else {
        message.setContent(new Parts(draft, attachments));
      }
      message.saveChanges();
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      message.writeTo(bytes);
      return new Made(bytes.toString(StandardCharsets.US_ASCII));
    } catch (MessagingException e) {
      throw new IllegalStateException(e);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Why nobody can be written to so, a sentence; nothing where one can. */
  public static Optional<String> refusal(MailDraft draft) {
    return draft.to().stream()
        .filter(r -> address(r).isEmpty())
        .findFirst()
        .map(
            r ->
                "\""
                    + Texts.oneLine(r.address())
                    + "\" is not a mail address. Write it like ada@example.org.");
  }

  /** A message without the name that a library would make up for it. */
  private static final class Unsent extends MimeMessage {
    Unsent() {
      super(Session.getInstance(new Properties()));
    }

    @Override
    protected void updateMessageID() {
      // Whoever sends it names it.
    }
  }

  /** The text and the files, with a boundary that is the same each time. */
  private static final class Parts extends MimeMultipart {
    Parts(MailDraft draft, List<Attachment> attachments) throws MessagingException {
      ParameterList parameters = new ParameterList();
      parameters.set("boundary", BOUNDARY);
      contentType = new ContentType("multipart", "mixed", parameters).toString();
      MimeBodyPart text = new MimeBodyPart();
      text.setText(body(draft), UTF_8);
      text.setHeader("Content-Transfer-Encoding", "quoted-printable");
      addBodyPart(text);
      for (Attachment attachment : attachments) {
        MimeBodyPart part = new MimeBodyPart();
        part.setDataHandler(
            new DataHandler(new ByteArrayDataSource(attachment.bytes(), attachment.mediaType())));
        part.setFileName(fileName(attachment.name()));
        part.setHeader("Content-Transfer-Encoding", "base64");
        addBodyPart(part);
      }
    }
  }

  private static String body(MailDraft draft) {
    return draft.text().replaceAll("\\R", "\r\n");
  }

  /** Whether a mail can be addressed so. */
  static Optional<InternetAddress> address(MailDraft.Recipient recipient) {
    String given = recipient.address().strip();
    try {
      InternetAddress address = new InternetAddress(given, true);
      boolean plain = given.chars().allMatch(c -> c > ' ' && c < 0x7F);
      if (!plain || !address.getAddress().equals(given) || given.length() > LONGEST) {
        return Optional.empty();
      }
      String name = cut(recipient.name(), LONGEST);
      if (!name.isEmpty()) {
        address.setPersonal(name, UTF_8);
      }
      return Optional.of(address);
    } catch (AddressException | java.io.UnsupportedEncodingException e) {
      return Optional.empty();
    }
  }

  private static String fileName(String name) {
    String line = Texts.oneLine(name).replaceAll("[/\\\\:*?\"<>|]", "-");
    int dot = line.lastIndexOf('.');
    String ending = dot > 0 ? line.substring(dot) : "";
    return cut(line.substring(0, line.length() - ending.length()), LONGEST_FILE_NAME)
        + cut(ending, LONGEST_FILE_NAME / 3);
  }

  /** One line of at most so many characters; what was longer ends with an ellipsis. */
  private static String cut(String text, int most) {
    String line = Texts.oneLine(text);
    return line.codePointCount(0, line.length()) <= most
        ? line
        : line.substring(0, line.offsetByCodePoints(0, most - 1)) + "…";
  }
}
