package hullalmanac.exchange.vcard;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.record.PartyKind;
import hullalmanac.core.work.Card;
import java.io.InputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Cards as general-purpose libraries wrote them, all of one invented person: libebook-contacts
 * 3.46.4 (2.1, quoted-printable), vcards-js 2.11.1 (2.1, 3.0, 4.0), vobject 0.9.6.1 for Python
 * (3.0), vcf 2.1.2 for JavaScript (4.0).
 */
class CardReaderTest {
  private static CardReader.Read read(String... lines) {
    return CardReader.read(String.join("\r\n", lines).getBytes(StandardCharsets.UTF_8));
  }

  private static CardReader.Read file(String name) throws Exception {
    try (InputStream in = CardReaderTest.class.getResourceAsStream(name)) {
      return CardReader.read(in.readAllBytes());
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "2.1-libebook-contacts.vcf",
        "2.1-vcards-js.vcf",
        "3.0-vcards-js.vcf",
        "3.0-vobject.vcf",
        "4.0-vcards-js.vcf",
        "4.0-vcf.vcf"
      })
  void readsNamesPhonesMailsAddressesAndNotesOfEveryVersion(String name) throws Exception {
    CardReader.Read read = file(name);
    assertThat(read.problems()).isEmpty();
    Card card = read.cards().get(0);
    assertThat(card.name()).isEqualTo("Zoë Ñandú");
    assertThat(card.kind()).isEqualTo(PartyKind.PERSON);
    assertThat(card.phones()).containsExactly("+1 555 0140", "+1 555 0141");
    assertThat(card.emails()).containsExactly("zoe@example.org");
    assertThat(card.address()).isEqualTo("3 Mühlenweg\nSt Brannock");
    assertThat(card.note())
        .startsWith("Zwei Hunde, ein Schlüssel; läutet zuerst\nund schreibt dann");
  }

  @Test
  void tellsAFirmFromAPersonOfAFirm() throws Exception {
    List<Card> cards = file("3.0-vobject.vcf").cards();
    assertThat(cards).hasSize(2);
    assertThat(cards.get(0).note()).endsWith("\nFirm: Ñandú & Söhne");
    assertThat(cards.get(1).kind()).isEqualTo(PartyKind.FIRM);
    assertThat(cards.get(1).name()).isEqualTo("Maren Rigging");
    assertThat(cards.get(1).note()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          FN:Ada Ames                   | Ada Ames
          N:Ames;Ada;Mary;Dr.;MSc       | Dr. Ada Mary Ames MSc
          ORG:Maren Rigging;Workshop    | Maren Rigging, Workshop
          EMAIL:ada@example.org         | ada@example.org
          TEL:+1 555 0100               | +1 555 0100
          """)
  void namesACardByTheBestItHas(String line, String name) {
    CardReader.Read read = read("BEGIN:VCARD", "VERSION:3.0", line, "END:VCARD", "");
    assertThat(read.cards()).singleElement().extracting(Card::name).isEqualTo(name);
  }

  @Test
  void takesThePreferredNumberFirst() {
    CardReader.Read read =
        read(
            "BEGIN:VCARD",
            "VERSION:4.0",
            "FN:Ada Ames",
            "TEL;TYPE=cell:+1 555 0101",
            "item1.TEL;VALUE=uri;PREF=1:tel:+1-555-0102;ext=7",
            "tel:+1 555 0103",
            "EMAIL;PREF=2:b@example.org",
            "EMAIL;PREF=1:a@example.org",
            "END:VCARD",
            "");
    Card card = read.cards().get(0);
    assertThat(card.phones()).containsExactly("+1-555-0102 ext. 7", "+1 555 0101", "+1 555 0103");
    assertThat(card.emails()).containsExactly("a@example.org", "b@example.org");
  }

  @Test
  void readsCardsOfOldProgramsThatAreNotUtf8() {
    String text = "BEGIN:VCARD\r\nVERSION:2.1\r\nN:Åström;Åsa\r\nTEL;CELL:1\r\nEND:VCARD\r\n";
    for (Charset charset :
        List.of(Charset.forName("windows-1252"), StandardCharsets.UTF_8, StandardCharsets.UTF_16)) {
      assertThat(CardReader.read(text.getBytes(charset)).cards())
          .as(charset.name())
          .singleElement()
          .extracting(Card::name)
          .isEqualTo("Åsa Åström");
    }
    byte[] marked = ("\uFEFF" + text).getBytes(StandardCharsets.UTF_8);
    assertThat(CardReader.read(marked).cards()).hasSize(1);
  }

  @Test
  void saysWhatItCannotTakeAndTakesTheRest() {
    CardReader.Read read =
        read(
            "BEGIN:VCARD",
            "VERSION:3.0",
            "NOTE:nobody",
            "END:VCARD",
            "BEGIN:VCARD",
            "VERSION:3.0",
            "FN:Ada Ames",
            "END:VCARD",
            "");
    assertThat(read.cards()).hasSize(1);
    assertThat(read.problems())
        .containsExactly("Card 1 has no name, phone or mail; it was left out.");
    assertThat(read("a shopping list").problems())
        .containsExactly("It holds no contact card. Choose a file that ends with .vcf.");
    assertThat(read("").problems()).hasSize(1);
  }
}
