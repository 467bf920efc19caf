package hullalmanac.exchange.vcard;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.record.Id;
import hullalmanac.core.record.Party;
import hullalmanac.core.record.PartyKind;
import hullalmanac.core.record.Texts;
import hullalmanac.core.record.Uid;
import hullalmanac.core.work.Card;
import hullalmanac.core.work.CardVersion;
import hullalmanac.fixture.OpenSample;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class CardFileTest {
  private static Party party(String name, PartyKind kind, String address, String note) {
    return new Party(
        new Id<>(42),
        "ames",
        kind,
        name,
        "+1 555 0130",
        "ada@example.org",
        address,
        "de",
        Optional.of(0.2),
        note);
  }

  private static Card back(Party party, CardVersion version) {
    String text = CardFile.text(List.of(party), version);
    CardReader.Read read = CardReader.read(text.getBytes(StandardCharsets.UTF_8));
    assertThat(read.problems()).isEmpty();
    return read.cards().get(0);
  }

  @ParameterizedTest
  @EnumSource(CardVersion.class)
  void comesBackInEveryVersion(CardVersion version) {
    Party ada =
        party("Ada Ames", PartyKind.PERSON, "1 Quay, Flat 2\nQuillhaven", "Two dogs; süß\nrings");
    Card card = back(ada, version);
    assertThat(card.name()).isEqualTo("Ada Ames");
    assertThat(card.kind()).isEqualTo(PartyKind.PERSON);
    assertThat(card.phones()).containsExactly("+1 555 0130");
    assertThat(card.emails()).containsExactly("ada@example.org");
    assertThat(card.address()).isEqualTo("1 Quay, Flat 2\nQuillhaven");
    assertThat(card.note()).isEqualTo("Two dogs; süß\nrings");
    assertThat(card.language()).isEqualTo(version == CardVersion.V4_0 ? "de" : "");
    assertThat(card.uid()).contains("urn:uuid:" + Uid.of(Uid.Of.PARTY, ada.id()));
    assertThat(back(party("Maren Rigging", PartyKind.FIRM, "", ""), version).kind())
        .isEqualTo(PartyKind.FIRM);
  }

  /** RFC 6350, sections 6.1, 6.2.1 and 6.7.9; RFC 2426, section 3.1: N is needed in 3.0. */
  @Test
  void holdsWhatTheStandardsDemand() {
    Party ada = party("Ada Ames", PartyKind.PERSON, "", "");
    assertThat(CardFile.text(List.of(ada), CardVersion.V4_0))
        .startsWith("BEGIN:VCARD\r\nVERSION:4.0\r\n")
        .contains("\r\nFN:Ada Ames\r\n")
        .endsWith("\r\nEND:VCARD\r\n");
    assertThat(CardFile.text(List.of(ada), CardVersion.V3_0))
        .startsWith("BEGIN:VCARD\r\nVERSION:3.0\r\n")
        .contains("\r\nFN:Ada Ames\r\n", "\r\nN:Ames;Ada;;;\r\n");
    assertThat(
            CardFile.text(List.of(party("Ames, Ada", PartyKind.PERSON, "", "")), CardVersion.V3_0))
        .contains("\r\nN:Ames;Ada;;;\r\n");
  }

  @Provide
  Arbitrary<String> oddTexts() {
    return Arbitraries.strings()
        .withChars("\\;,:\"n\n\r\t\u0000\u0085\u2028= äЖλ船~aB1 ")
        .ofMaxLength(120)
        .map(text -> text.replace("~", "🚤"));
  }

  @Property(tries = 300)
  void everyTextComesBack(
      @ForAll("oddTexts") String name,
      @ForAll("oddTexts") String address,
      @ForAll("oddTexts") String note) {
    Party party = party("x" + name, PartyKind.PERSON, address, note);
    for (CardVersion version : List.of(CardVersion.V3_0, CardVersion.V4_0)) {
      String text = CardFile.text(List.of(party), version);
      Card card = back(party, version);
      assertThat(card.name()).isEqualTo(Texts.oneLine("x" + name));
      assertThat(card.address().lines().map(String::strip))
          .containsExactlyElementsOf(Texts.lines(address).lines().map(String::strip).toList());
      assertThat(card.note()).isEqualTo(Texts.lines(note));
      assertThat(Stream.of(text.split("\r\n")))
          .allMatch(l -> l.getBytes(StandardCharsets.UTF_8).length <= 75);
      assertThat(text.replace("\r\n", "")).doesNotContain("\n").doesNotContain("\r");
    }
  }

  @ParameterizedTest
  @EnumSource(CardVersion.class)
  void theSampleComesBackWholeAndTheSameEachTime(CardVersion version) {
    List<Party> parties = OpenSample.fleet().almanac().parties();
    String text = CardFile.text(parties, version);
    assertThat(CardFile.text(parties, version)).isEqualTo(text);
    assertThat(CardFile.isOurs(text)).isTrue();
    List<Card> cards = CardReader.read(text.getBytes(StandardCharsets.UTF_8)).cards();
    assertThat(cards).hasSameSizeAs(parties).hasSizeGreaterThan(30);
    for (Party party : parties) {
      assertThat(cards)
          .anySatisfy(
              c -> {
                assertThat(c.name()).isEqualTo(party.name());
                assertThat(c.kind()).isEqualTo(party.kind());
                assertThat(c.phones()).isEqualTo(list(party.phone()));
                assertThat(c.emails()).isEqualTo(list(party.email()));
                assertThat(c.note()).isEqualTo(party.note());
              });
    }
  }

  private static List<String> list(String text) {
    return text.isBlank() ? List.of() : List.of(text);
  }

  @Test
  void knowsItsOwnCardsFromOthers() {
    Party ada = party("Ada Ames", PartyKind.PERSON, "", "");
    String own = CardFile.text(List.of(ada), CardVersion.V3_0);
    String other = "BEGIN:VCARD\r\nVERSION:3.0\r\nUID:1\r\nFN:x\r\nEND:VCARD\r\n";
    assertThat(CardFile.isOurs(own)).isTrue();
    assertThat(CardFile.isOurs(other)).isFalse();
    assertThat(CardFile.isOurs(own + other)).isFalse();
    assertThat(CardFile.isOurs("a shopping list")).isFalse();
  }
}
