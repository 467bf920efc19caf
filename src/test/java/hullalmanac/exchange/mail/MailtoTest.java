package hullalmanac.exchange.mail;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.report.MailDraft;
import java.net.URI;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.CharRange;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** RFC 6068, section 6: its examples, as several public test suites quote them. */
class MailtoTest {
  private static MailDraft draft(String subject, String text, String... to) {
    return new MailDraft(
        Arrays.stream(to).map(a -> new MailDraft.Recipient("", a)).toList(), subject, text);
  }

  /** Sections 6.1 and 6.2: letters with a meaning of their own in an address. */
  @ParameterizedTest
  @CsvSource(
      quoteCharacter = '`',
      delimiter = '|',
      textBlock =
          """
          chris@example.com                    | mailto:chris@example.com
          gorby%kremvax@example.com            | mailto:gorby%25kremvax@example.com
          unlikely?address@example.com         | mailto:unlikely%3Faddress@example.com
          Mike&family@example.org              | mailto:Mike%26family@example.org
          "not@me"@example.org                 | mailto:%22not%40me%22@example.org
          "oh\\\\no"@example.org               | mailto:%22oh%5C%5Cno%22@example.org
          "\\\\\\"it's\\ ugly\\\\\\""@example.org | mailto:%22%5C%5C%5C%22it's%5C%20ugly%5C%5C%5C%22%22@example.org
          user@納豆.example.org                 | mailto:user@%E7%B4%8D%E8%B1%86.example.org
          """)
  void writesAddressesAsTheStandardDoes(String address, String link) {
    assertThat(Mailto.of(draft("", "", address))).isEqualTo(link);
  }

  /** Sections 2, 6.1 and 6.3. */
  @Test
  void writesSubjectsAndTextsAsTheStandardDoes() {
    assertThat(Mailto.of(draft("", "", "addr1@an.example", "addr2@an.example")))
        .isEqualTo("mailto:addr1@an.example,addr2@an.example");
    assertThat(Mailto.of(draft("current-issue", "", "infobot@example.com")))
        .isEqualTo("mailto:infobot@example.com?subject=current-issue");
    assertThat(Mailto.of(draft("", "send current-issue\nsend index", "infobot@example.com")))
        .isEqualTo("mailto:infobot@example.com?body=send%20current-issue%0D%0Asend%20index");
    assertThat(Mailto.of(draft("café", "café", "user@example.org")))
        .isEqualTo("mailto:user@example.org?subject=caf%C3%A9&body=caf%C3%A9");
    assertThat(Mailto.of(draft("", ""))).isEqualTo("mailto:");
  }

  /** The platform's own reader of links, RFC 3986, takes every one and finds what was written. */
  @Property(tries = 300)
  void noTextCanAddAFieldOrAReader(
      @ForAll @StringLength(min = 1, max = 60) @CharRange(from = '\u0000', to = '\u024F')
          String subject,
      @ForAll @StringLength(min = 1, max = 60) @CharRange(from = '!', to = '~') String text) {
    String link = Mailto.of(draft("s" + subject, text, "ada@example.org"));
    URI uri = URI.create(link);
    List<String> fields = List.of(uri.getRawSchemeSpecificPart().split("[?&]"));
    assertThat(fields).hasSize(3);
    assertThat(fields.get(0)).isEqualTo("ada@example.org");
    assertThat(fields.get(1)).startsWith("subject=").doesNotContain("%0A", "%0D");
    assertThat(URLDecoder.decode(fields.get(2), StandardCharsets.UTF_8)).isEqualTo("body=" + text);
  }
}
