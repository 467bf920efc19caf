package hullalmanac.exchange.vcard;

import ezvcard.VCard;
import ezvcard.VCardVersion;
import ezvcard.io.text.VCardWriter;
import ezvcard.parameter.TelephoneType;
import ezvcard.property.Address;
import ezvcard.property.Kind;
import ezvcard.property.StructuredName;
import ezvcard.property.Telephone;
import ezvcard.property.Uid;
import hullalmanac.core.record.Party;
import hullalmanac.core.record.PartyKind;
import hullalmanac.core.record.Texts;
import hullalmanac.core.work.CardVersion;
import hullalmanac.exchange.FoldedLines;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.Comparator;
import java.util.List;

/**
 * Parties as one file of contact cards. The same parties always give the same text.
 *
 * <p>References: RFC 2426; RFC 6350; for version 2.1 the specification of the Versit consortium,
 * 1996.
 */
public final class CardFile {
  private static final String URN = "urn:uuid:";
  private static final String UID = "UID:" + URN;

  private CardFile() {}

  /** The text of a file, cards in order of names. Language and kind are in version 4.0 only. */
  public static String text(List<Party> parties, CardVersion version) {
    StringWriter text = new StringWriter();
    try (VCardWriter writer = new VCardWriter(text, versionOf(version))) {
      writer.setAddProdId(false);
      writer.setIncludeTrailingSemicolons(true);
      if (version != CardVersion.V2_1) {
        writer.getVObjectWriter().getFoldedLineWriter().setLineLength(null);
      }
      List<Party> inOrder =
          parties.stream()
              .sorted(Comparator.comparing(Party::name).thenComparing(Party::id))
              .toList();
      for (Party party : inOrder) {
        writer.write(card(party));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    // Version 2.1 breaks long texts by its own rule (quoted-printable), which the library keeps.
    return version == CardVersion.V2_1 ? text.toString() : FoldedLines.of(text.toString());
  }

  /** Whether a text holds no cards but such as this program wrote. */
  public static boolean isOurs(String text) {
    long cards = text.lines().filter(l -> l.equalsIgnoreCase("BEGIN:VCARD")).count();
    long ours =
        text.lines()
            .filter(l -> l.startsWith(UID))
            .filter(
                l ->
                    hullalmanac.core.record.Uid.is(
                        hullalmanac.core.record.Uid.Of.PARTY, l.substring(UID.length())))
            .count();
    return text.isBlank() || (cards > 0 && cards == ours);
  }

  static VCardVersion versionOf(CardVersion version) {
    return switch (version) {
      case V2_1 -> VCardVersion.V2_1;
      case V3_0 -> VCardVersion.V3_0;
      case V4_0 -> VCardVersion.V4_0;
    };
  }

  private static VCard card(Party party) {
    VCard card = new VCard();
    card.setUid(
        new Uid(
            URN
                + hullalmanac.core.record.Uid.of(
                    hullalmanac.core.record.Uid.Of.PARTY, party.id())));
    String name = Texts.oneLine(party.name());
    card.setFormattedName(name);
    boolean firm = party.kind() == PartyKind.FIRM;
    card.setKind(firm ? Kind.org() : Kind.individual());
    card.setStructuredName(firm ? new StructuredName() : structured(name));
    if (firm) {
      card.setOrganization(name);
    }
    if (!party.phone().isBlank()) {
      Telephone phone = new Telephone(Texts.oneLine(party.phone()));
      phone.getTypes().add(TelephoneType.VOICE);
      card.addTelephoneNumber(phone);
    }
    if (!party.email().isBlank()) {
      card.addEmail(Texts.oneLine(party.email()));
    }
    if (!party.address().isBlank()) {
      Address address = new Address();
      address.setStreetAddress(Texts.lines(party.address()));
      card.addAddress(address);
    }
    if (!party.language().isBlank()) {
      card.addLanguage(Texts.oneLine(party.language()));
    }
    if (!party.note().isBlank()) {
      card.addNote(Texts.lines(party.note()));
    }
    return card;
  }

  /**
   * The last word as the family's name, unless a comma parts the two; the name as it is called
   * stands beside it.
   */
  private static StructuredName structured(String name) {
    StructuredName structured = new StructuredName();
    int comma = name.indexOf(',');
    int blank = name.lastIndexOf(' ');
    structured.setFamily(
        comma > 0 ? name.substring(0, comma).strip() : name.substring(blank + 1).strip());
    String given = comma > 0 ? name.substring(comma + 1) : name.substring(0, Math.max(blank, 0));
    if (!given.isBlank()) {
      structured.setGiven(given.strip());
    }
    return structured;
  }
}
