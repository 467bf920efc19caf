package hullalmanac.exchange.vcard;

import ezvcard.VCard;
import ezvcard.io.text.VCardReader;
import ezvcard.parameter.TelephoneType;
import ezvcard.property.Address;
import ezvcard.property.Email;
import ezvcard.property.Note;
import ezvcard.property.Organization;
import ezvcard.property.StructuredName;
import ezvcard.property.Telephone;
import hullalmanac.core.record.PartyKind;
import hullalmanac.core.work.Card;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Reads contact cards of any version: names, phones, mails, addresses, language and notes. A firm
 * on a person's card is said in the note.
 */
public final class CardReader {
  private static final Charset OLD = Charset.forName("windows-1252");
  private static final char BYTE_ORDER_MARK = '\uFEFF';
  private static final int LEAST_PREFERRED = 101;

  private final List<Card> cards = new ArrayList<>();
  private final List<String> problems = new ArrayList<>();

  private CardReader() {}

  /**
   * What was found in a file.
   *
   * @param problems what could not be taken, a sentence each; the rest was read all the same
   */
  public record Read(List<Card> cards, List<String> problems) {
    public Read {
      cards = List.copyOf(cards);
      problems = List.copyOf(problems);
    }
  }

  /** Reads the content of a file. */
  public static Read read(byte[] content) {
    CardReader reader = new CardReader();
    reader.read(text(content));
    return new Read(reader.cards, reader.problems);
  }

  /** Old programs wrote what is not UTF-8 and does not say so. */
  private static String text(byte[] content) {
    boolean wide =
        content.length > 1
            && ((content[0] == (byte) 0xFE && content[1] == (byte) 0xFF)
                || (content[0] == (byte) 0xFF && content[1] == (byte) 0xFE));
    if (wide) {
      return new String(content, StandardCharsets.UTF_16);
    }
    try {
      String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(content)).toString();
      return !text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK ? text.substring(1) : text;
    } catch (CharacterCodingException e) {
      return new String(content, OLD);
    }
  }

  private void read(String text) {
    int found = 0;
    try (VCardReader reader = new VCardReader(text)) {
      for (VCard card = reader.readNext(); card != null; card = reader.readNext()) {
        found++;
        Optional<Card> taken = card(card);
        taken.ifPresent(cards::add);
        if (taken.isEmpty()) {
          problems.add("Card " + found + " has no name, phone or mail; it was left out.");
        }
      }
    } catch (IOException e) {
      problems.add("The cards after the " + found + "th cannot be read.");
    }
    if (found == 0) {
      problems.add("It holds no contact card. Choose a file that ends with .vcf.");
    }
  }

  private static Optional<Card> card(VCard card) {
    List<String> phones = phones(card);
    List<String> emails = emails(card);
    Optional<String> name =
        Stream.of(
                formattedName(card),
                Optional.ofNullable(card.getStructuredName()).map(CardReader::joined),
                firm(card),
                emails.stream().findFirst(),
                phones.stream().findFirst())
            .flatMap(Optional::stream)
            .filter(n -> !n.isBlank())
            .findFirst();
    return name.map(
        n ->
            new Card(
                Optional.ofNullable(card.getUid()).map(u -> u.getValue()),
                isFirm(card, n) ? PartyKind.FIRM : PartyKind.PERSON,
                n.strip(),
                phones,
                emails,
                card.getAddresses().stream().findFirst().map(CardReader::address).orElse(""),
                card.getLanguages().stream()
                    .findFirst()
                    .map(l -> l.getValue())
                    .map(String::strip)
                    .orElse(""),
                note(card, n)));
  }

  private static Optional<String> formattedName(VCard card) {
    return Optional.ofNullable(card.getFormattedName()).map(f -> f.getValue());
  }

  private static String joined(StructuredName name) {
    return Stream.of(
            name.getPrefixes().stream(),
            Stream.of(Objects.requireNonNullElse(name.getGiven(), "")),
            name.getAdditionalNames().stream(),
            Stream.of(Objects.requireNonNullElse(name.getFamily(), "")),
            name.getSuffixes().stream())
        .flatMap(s -> s)
        .filter(part -> !part.isBlank())
        .map(String::strip)
        .collect(Collectors.joining(" "));
  }

  private static Optional<String> firm(VCard card) {
    return Optional.ofNullable(card.getOrganization())
        .map(Organization::getValues)
        .map(
            values ->
                values.stream()
                    .filter(v -> !v.isBlank())
                    .map(String::strip)
                    .collect(Collectors.joining(", ")))
        .filter(f -> !f.isEmpty());
  }

  private static boolean isFirm(VCard card, String name) {
    boolean noPerson =
        card.getStructuredName() == null || joined(card.getStructuredName()).isEmpty();
    boolean namedSo = firm(card).map(f -> f.equals(name.strip())).orElse(false);
    return (card.getKind() != null && card.getKind().isOrg()) || (noPerson && namedSo);
  }

  private static String note(VCard card, String name) {
    Stream<String> firm =
        isFirm(card, name) ? Stream.empty() : firm(card).stream().map(f -> "Firm: " + f);
    return Stream.concat(card.getNotes().stream().map(Note::getValue), firm)
        .filter(n -> n != null && !n.isBlank())
        .map(n -> n.replaceAll("\\r\\n?", "\n").strip())
        .collect(Collectors.joining("\n"));
  }

  /** The preferred one first, then one to carry about, then as they stand. */
  private static List<String> phones(VCard card) {
    Comparator<Telephone> byUse =
        Comparator.<Telephone>comparingInt(
                t -> preference(t.getPref(), t.getTypes().contains(TelephoneType.PREF)))
            .thenComparing(t -> !t.getTypes().contains(TelephoneType.CELL));
    return card.getTelephoneNumbers().stream()
        .sorted(byUse)
        .map(CardReader::number)
        .map(String::strip)
        .filter(n -> !n.isEmpty())
        .distinct()
        .toList();
  }

  private static String number(Telephone phone) {
    if (phone.getUri() != null) {
      String extension = phone.getUri().getExtension();
      return phone.getUri().getNumber() + (extension == null ? "" : " ext. " + extension);
    }
    String text = Objects.requireNonNullElse(phone.getText(), "");
    return text.replaceFirst("(?i)^tel:", "");
  }

  private static List<String> emails(VCard card) {
    return card.getEmails().stream()
        .sorted(
            Comparator.comparingInt(
                (Email e) ->
                    preference(
                        e.getPref(),
                        e.getTypes().stream()
                            .anyMatch(t -> t.getValue().equalsIgnoreCase("pref")))))
        .map(e -> Objects.requireNonNullElse(e.getValue(), ""))
        .map(e -> e.strip().replaceFirst("(?i)^mailto:", ""))
        .filter(e -> !e.isEmpty())
        .distinct()
        .toList();
  }

  private static int preference(Integer said, boolean typed) {
    if (said != null) {
      return said;
    }
    return typed ? 1 : LEAST_PREFERRED;
  }

  /** As its sender would have it on an envelope where the card says so, or line by line. */
  private static String address(Address address) {
    if (address.getLabel() != null && !address.getLabel().isBlank()) {
      return address.getLabel().replaceAll("\\r\\n?", "\n").strip();
    }
    String town =
        words(Stream.of(address.getLocalities(), address.getRegions(), address.getPostalCodes()));
    return Stream.of(
            address.getPoBoxes().stream(),
            address.getExtendedAddresses().stream(),
            address.getStreetAddresses().stream(),
            Stream.of(town),
            address.getCountries().stream())
        .flatMap(s -> s)
        .filter(line -> line != null && !line.isBlank())
        .map(line -> line.replaceAll("\\r\\n?", "\n").strip())
        .collect(Collectors.joining("\n"));
  }

  private static String words(Stream<List<String>> parts) {
    return parts
        .flatMap(Collection::stream)
        .filter(p -> p != null && !p.isBlank())
        .map(String::strip)
        .collect(Collectors.joining(" "));
  }
}
