package hullalmanac.exchange.mail;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.record.Texts;
import hullalmanac.core.report.MailDraft;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.apache.james.mime4j.codec.DecodeMonitor;
import org.apache.james.mime4j.dom.BinaryBody;
import org.apache.james.mime4j.dom.Entity;
import org.apache.james.mime4j.dom.Message;
import org.apache.james.mime4j.dom.Multipart;
import org.apache.james.mime4j.dom.SingleBody;
import org.apache.james.mime4j.dom.TextBody;
import org.apache.james.mime4j.dom.field.ContentDispositionField;
import org.apache.james.mime4j.stream.Field;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Apache James Mime4J is the second reader: a general-purpose library that shares no code. */
class DraftFileTest {
  private static final Instant AT = Instant.parse("2026-05-01T12:34:56Z");
  private static final List<String> HEADERS =
      List.of(
          "Date",
          "To",
          "Subject",
          "MIME-Version",
          "Content-Type",
          "Content-Transfer-Encoding",
          "X-Unsent");

  private static MailDraft draft(String name, String address, String subject, String text) {
    return new MailDraft(List.of(new MailDraft.Recipient(name, address)), subject, text);
  }

  private static String text(MailDraft draft, Attachment... attachments) {
    return ((DraftFile.Made) DraftFile.of(draft, List.of(attachments), AT)).text();
  }

  private static Message second(String text) throws Exception {
    return Message.Builder.of(new ByteArrayInputStream(text.getBytes(StandardCharsets.US_ASCII)))
        .build();
  }

  private static byte[] bytes(SingleBody body) throws Exception {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    body.writeTo(out);
    return out.toByteArray();
  }

  private static String body(Entity entity) throws Exception {
    return new String(bytes((TextBody) entity.getBody()), StandardCharsets.UTF_8);
  }

  @Test
  void aPlainDraftIsReadByAnotherLibrary() throws Exception {
    String text =
        text(
            draft(
                "Zoë Ñandú",
                "zoe@example.org",
                "Avocet: süß & fertig",
                "Hello Zoë,\n\nit is done. = 100 %\n.\nFrom now on "));
    Message message = second(text);
    assertThat(message.getTo()).hasSize(1);
    assertThat(message.getTo().flatten().get(0).getName()).isEqualTo("Zoë Ñandú");
    assertThat(message.getTo().flatten().get(0).getAddress()).isEqualTo("zoe@example.org");
    assertThat(message.getSubject()).isEqualTo("Avocet: süß & fertig");
    assertThat(message.getDate()).isEqualTo(AT.toString());
    assertThat(body(message))
        .isEqualTo("Hello Zoë,\r\n\r\nit is done. = 100 %\r\n.\r\nFrom now on ");
    assertThat(message.getHeader().getField("X-Unsent").getBody()).isEqualTo("1");
    assertThat(message.getFrom()).as("whoever sends it says who").isNull();
    assertThat(message.getMessageId()).isNull();
    assertThat(text)
        .isEqualTo(
            text(
                draft(
                    "Zoë Ñandú",
                    "zoe@example.org",
                    "Avocet: süß & fertig",
                    "Hello Zoë,\n\nit is done. = 100 %\n.\nFrom now on ")));
  }

  @Test
  void filesComeBackByteForByteUnderTheirNames() throws Exception {
    byte[] report = new byte[5000];
    new Random(1).nextBytes(report);
    String text =
        text(
            draft("Ada Ames", "ada@example.org", "Report", "--=_hull-almanac\nsee below"),
            new Attachment("Ñandú – report.pdf", ByteBuffer.wrap(report)),
            new Attachment("empty", ByteBuffer.allocate(0)));
    Multipart parts = (Multipart) second(text).getBody();
    assertThat(parts.getBodyParts()).hasSize(3);
    assertThat(body(parts.getBodyParts().get(0))).isEqualTo("--=_hull-almanac\r\nsee below");
    Entity pdf = parts.getBodyParts().get(1);
    assertThat(pdf.getMimeType()).isEqualTo("application/pdf");
    assertThat(bytes((BinaryBody) pdf.getBody())).isEqualTo(report);
    assertThat(fileName(pdf)).isEqualTo("Ñandú – report.pdf");
    assertThat(parts.getBodyParts().get(2).getMimeType()).isEqualTo("application/octet-stream");
    assertThat(text.lines()).allMatch(l -> l.length() <= 998);
  }

  private static String fileName(Entity part) throws Exception {
    Field raw = part.getHeader().getField("Content-Disposition");
    ContentDispositionField field =
        org.apache.james.mime4j.field.ContentDispositionFieldLenientImpl.PARSER.parse(
            raw, DecodeMonitor.SILENT);
    return field.getFilename();
  }

  @Provide
  Arbitrary<String> names() {
    return Arbitraries.strings()
        .withChars("\r\n\t\u0000\u0007\u007F\u0085\u2028\u2029:;,<>@\"\\()=?_. aBcñ船🚤-")
        .ofMaxLength(80)
        .flatMap(
            odd ->
                Arbitraries.of(
                    odd,
                    odd + "\r\nBcc: all@example.org",
                    "\nBcc: all@example.org\n\n" + odd,
                    odd + "\r Bcc: all@example.org",
                    "=?UTF-8?Q?x=0D=0ABcc:_all@example.org?=" + odd,
                    "x\u2028Bcc: all@example.org"));
  }

  /** No name of a person, boat or file can put a header, a reader or a part into a message. */
  @Property(tries = 400)
  void noNameBecomesAHeader(
      @ForAll("names") String name, @ForAll("names") String subject, @ForAll("names") String file)
      throws Exception {
    String text =
        text(
            draft(name, "ada@example.org", subject, "text"),
            new Attachment(file, ByteBuffer.wrap(new byte[] {1})));
    String head = text.substring(0, text.indexOf("\r\n\r\n"));
    assertThat(head.split("\r\n"))
        .allMatch(
            line ->
                line.startsWith(" ")
                    || line.startsWith("\t")
                    || HEADERS.contains(line.substring(0, Math.max(line.indexOf(':'), 0))));
    assertThat(text.replace("\r\n", "")).doesNotContain("\r").doesNotContain("\n");
    assertThat(text.chars()).allMatch(c -> c == '\r' || c == '\n' || c == '\t' || c >= ' ');
    assertThat(text.lines()).allMatch(line -> line.length() <= 998);
    Message message = second(text);
    assertThat(message.getHeader().getFields()).extracting(Field::getName).isSubsetOf(HEADERS);
    assertThat(message.getTo().flatten()).hasSize(1);
    assertThat(message.getTo().flatten().get(0).getAddress()).isEqualTo("ada@example.org");
    assertThat(message.getBcc()).isNull();
    Multipart parts = (Multipart) message.getBody();
    assertThat(parts.getBodyParts()).hasSize(2);
    assertThat(parts.getBodyParts().get(1).getHeader().getFields())
        .extracting(Field::getName)
        .containsExactlyInAnyOrder(
            "Content-Type", "Content-Disposition", "Content-Transfer-Encoding");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "ada",
        "ada@",
        "Ada <ada@example.org>",
        "ada@example.org, ben@example.org",
        "ada@example.org\r\nBcc: all@example.org",
        "ada ames@example.org",
        "zoë@example.org",
        "friends: ada@example.org;"
      })
  void saysWhatIsNoAddress(String address) {
    assertThat(DraftFile.of(draft("Ada", address, "s", "t"), List.of(), AT))
        .isEqualTo(
            new DraftFile.Refused(
                "\""
                    + Texts.oneLine(address)
                    + "\" is not a mail address. Write it like ada@example.org."));
  }

  @Test
  void aLongNameIsCutAndTheDraftStaysValid() throws Exception {
    String text =
        text(
            draft("n".repeat(3000), "ada@example.org", "s".repeat(3000), "t".repeat(3000)),
            new Attachment("f".repeat(3000) + ".pdf", ByteBuffer.allocate(1)));
    assertThat(text.lines()).allMatch(l -> l.length() <= 998);
    assertThat(second(text).getSubject()).hasSize(200).endsWith("…");
    assertThat(Stream.of(text.split("\r\n")).filter(l -> l.contains(".pdf"))).isNotEmpty();
  }

  @Test
  void aDraftMayNameNobody() throws Exception {
    Message message = second(text(new MailDraft(List.of(), "Avocet", "done")));
    assertThat(message.getTo()).isNull();
    assertThat(body(message)).isEqualTo("done");
  }
}
