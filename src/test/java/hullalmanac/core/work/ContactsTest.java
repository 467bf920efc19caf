package hullalmanac.core.work;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Edit;
import hullalmanac.core.record.Estimate;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.IdSource;
import hullalmanac.core.record.Invoice;
import hullalmanac.core.record.Made;
import hullalmanac.core.record.Party;
import hullalmanac.core.record.PartyKind;
import hullalmanac.core.record.Payment;
import hullalmanac.core.record.Reminder;
import hullalmanac.core.record.Role;
import hullalmanac.core.record.RoleKind;
import hullalmanac.core.record.Row;
import hullalmanac.core.record.Uid;
import hullalmanac.core.record.With;
import hullalmanac.core.work.Alike.Sign;
import hullalmanac.core.work.SideBySide.Field;
import hullalmanac.core.work.SideBySide.Take;
import java.lang.reflect.RecordComponent;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ContactsTest {
  private static final LocalDate DAY = LocalDate.of(2026, 5, 1);

  private final IdSource ids = new IdSource(new Random(6)::nextLong);
  private final Made made = new Made(48.4);

  private Party party(String name, String phone, String email) {
    Id<Party> id = ids.next();
    return new Party(
        id, "p" + id.value(), PartyKind.PERSON, name, phone, email, "", "", Optional.empty(), "");
  }

  private Role role(Party party, RoleKind kind) {
    Id<Role> id = ids.next();
    return new Role(
        id, "r" + id.value(), made.boat().id(), party.id(), kind, DAY, Optional.empty());
  }

  private static Card card(String name, List<String> phones, List<String> emails, String note) {
    return new Card(Optional.empty(), PartyKind.PERSON, name, phones, emails, "", "", note);
  }

  private Almanac with(Row... rows) {
    return made.almanac().with(Edit.put(rows));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      nullValues = "none",
      textBlock =
          """
          Ada Ames | +1 555 0130      | ada@example.org | Ada Ames   | ''              | ''              | NAME
          Ada Ames | ''               | ''              | AMES, Ada  | ''              | ''              | NAME
          Zoë Ñandú| ''               | ''              | zoe nandu  | ''              | ''              | NAME
          Ada Ames | +44 20 7946 0130 | ''              | A. Ames    | (020) 7946 0130 | ''              | PHONE
          Ada Ames | 00 1 555 555 0130| ''              | A. Ames    | +1-555-555-0130 | ''              | PHONE
          Ada Ames | 0130             | ''              | A. Ames    | 0130            | ''              | none
          Ada Ames | +1 555 555 0130  | ''              | A. Ames    | +1 555 555 0131 | ''              | none
          Ada Ames | ''               | Ada@Example.org | A. Ames    | ''              | ada@example.org | MAIL
          Ada Ames | ''               | ''              | Ben Ames   | ''              | ''              | none
          """)
  void knowsWhoMayBeTheSame(
      String nameA,
      String phoneA,
      String mailA,
      String nameB,
      String phoneB,
      String mailB,
      Sign sign) {
    List<Alike> pairs =
        LikeParties.pairs(List.of(party(nameA, phoneA, mailA), party(nameB, phoneB, mailB)));
    if (sign == null) {
      assertThat(pairs).isEmpty();
    } else {
      assertThat(pairs).singleElement().extracting(Alike::signs).isEqualTo(EnumSet.of(sign));
    }
  }

  @Provide
  Arbitrary<List<Party>> people() {
    Arbitrary<Party> one =
        Combinators.combine(
                Arbitraries.of("Ada Ames", "Ames, Ada", "ADA  AMES", "Ben", "ben", "!"),
                Arbitraries.of("", "0130", "+1 555 0130", "0555 0130", "555-0130", "+44 555 0130"),
                Arbitraries.of("", " ", "a@x.org", "A@X.org ", "b@x.org"))
            .as(this::party);
    return one.list().ofMaxSize(12);
  }

  /**
   * Only who shares a trait is compared: that must find all whom comparing each with each finds.
   */
  @Property(tries = 300)
  void findsAllWhoAreAlikeAndEachPairOnce(@ForAll("people") List<Party> people) {
    List<List<Party>> expected = new ArrayList<>();
    for (int i = 0; i < people.size(); i++) {
      for (Party other : people.subList(i + 1, people.size())) {
        Party one = people.get(i);
        if (LikeParties.sameMail(one.email(), other.email())
            || LikeParties.samePhone(one.phone(), other.phone())
            || LikeParties.sameName(one.name(), other.name())) {
          expected.add(List.of(one, other));
        }
      }
    }
    assertThat(LikeParties.pairs(people))
        .extracting(pair -> List.of(pair.known(), pair.other()))
        .isEqualTo(expected);
  }

  @Test
  void whatIsChosenOfEachPairIsDone() {
    Party ada = party("Ada Ames", "", "");
    Contacts contacts =
        Contacts.of(
            with(ada),
            List.of(
                card("Ada Ames", List.of("1"), List.of(), ""),
                card("Ada Ames", List.of("2"), List.of(), ""),
                card("Ada Ames", List.of("3"), List.of(), "")),
            ids);
    List<Alike.Choice> choices =
        List.of(Alike.Choice.BOTH, Alike.Choice.LEAVE_OUT, Alike.Choice.ONE);
    Almanac after =
        with(ada)
            .with(
                contacts.edit(
                    with(ada), pair -> choices.get(Integer.parseInt(pair.other().phone()) - 1)));
    assertThat(after.parties())
        .extracting(Party::phone)
        .as("the first is another, the third gives its phone to Ada")
        .containsExactlyInAnyOrder("1", "3");
    assertThat(contacts.alike()).extracting(Alike::usual).containsOnly(Alike.Choice.LEAVE_OUT);
  }

  @Test
  void sortsCardsIntoNewAlikeAndThere() {
    Party ada = party("Ada Ames", "+1 555 555 0130", "ada@example.org");
    Contacts contacts =
        Contacts.of(
            with(ada),
            List.of(
                card("Ada Ames", List.of("+1 555 555 0130"), List.of(), ""),
                card("Ada Ames", List.of("+1 555 555 0199"), List.of(), "rings first"),
                card("Ben Birch", List.of("1", "2"), List.of("b@example.org", "c@x.org"), "n"),
                card("Birch, Ben", List.of("3"), List.of(), "")),
            ids);
    assertThat(contacts.there()).containsExactly(ada);
    assertThat(contacts.fresh())
        .singleElement()
        .satisfies(
            ben -> {
              assertThat(ben.key()).isEqualTo("ben-birch");
              assertThat(ben.phone()).isEqualTo("1");
              assertThat(ben.email()).isEqualTo("b@example.org");
              assertThat(ben.note()).isEqualTo("n\nAlso 2\nAlso c@x.org");
            });
    assertThat(contacts.alike())
        .extracting(a -> a.known().name(), a -> a.other().phone())
        .containsExactly(
            org.assertj.core.groups.Tuple.tuple("Ada Ames", "+1 555 555 0199"),
            org.assertj.core.groups.Tuple.tuple("Ben Birch", "3"));
  }

  @Test
  void aCardThatCameFromHereFindsItsPartyUnderAnyName() {
    Party ada = party("Ada Ames", "", "");
    Card renamed =
        new Card(
            Optional.of("urn:uuid:" + Uid.of(Uid.Of.PARTY, ada.id())),
            PartyKind.PERSON,
            "Ada Birch",
            List.of(),
            List.of(),
            "",
            "",
            "");
    Contacts contacts = Contacts.of(with(ada), List.of(renamed), ids);
    assertThat(contacts.alike())
        .singleElement()
        .satisfies(
            a -> {
              assertThat(a.known()).isEqualTo(ada);
              assertThat(a.signs()).containsExactly(Sign.CARD);
            });
  }

  @Test
  void bringsInTheSameCardsOnlyOnce() {
    Party ada = party("Ada Ames", "+1 555 555 0130", "");
    List<Card> cards =
        List.of(
            card("Ada Ames", List.of("+1 555 555 0199"), List.of("ada@example.org"), "rings"),
            card("Ben Birch", List.of("+1 555 555 0131"), List.of(), ""));
    Almanac before = with(ada);
    Almanac after = before.with(Contacts.of(before, cards, ids).edit(before, true));
    assertThat(after.parties()).hasSize(2);
    Party merged = InRecord.row(after.parties(), ada.id());
    assertThat(merged.phone()).isEqualTo("+1 555 555 0130");
    assertThat(merged.email()).isEqualTo("ada@example.org");
    assertThat(merged.note()).isEqualTo("rings\nAlso +1 555 555 0199");
    Contacts again = Contacts.of(after, cards, ids);
    assertThat(again.fresh()).isEmpty();
    assertThat(again.alike()).isEmpty();
    assertThat(again.there()).hasSize(2);
  }

  @Test
  void withoutMergingWhoIsAlikeIsLeftAsTheRecordHasThem() {
    Party ada = party("Ada Ames", "", "");
    Contacts contacts =
        Contacts.of(with(ada), List.of(card("Ada Ames", List.of("1"), List.of(), "")), ids);
    assertThat(contacts.edit(with(ada), false).isEmpty()).isTrue();
  }

  @Test
  void laysTwoSideBySideAndKeepsWhatIsChosen() {
    Party ada = With.component(party("Ada Ames", "1", "a@x.org"), "note", "first\n\nsecond");
    Party other = With.component(party("Ada Birch", "2", ""), "note", "second\nthird");
    assertThat(SideBySide.of(ada, other))
        .filteredOn(SideBySide::differ)
        .extracting(SideBySide::field)
        .containsExactly(Field.NAME, Field.PHONE, Field.NOTE);
    Party usual = PartyMerge.merged(ada, other, Map.of());
    assertThat(usual.name()).isEqualTo("Ada Ames");
    assertThat(usual.note()).isEqualTo("first\n\nsecond\nAlso Ada Birch\nAlso 2\nthird");
    Party chosen =
        PartyMerge.merged(
            ada,
            other,
            Map.of(Field.NAME, Take.OTHER, Field.PHONE, Take.KNOWN, Field.NOTE, Take.OTHER));
    assertThat(chosen.name()).isEqualTo("Ada Birch");
    assertThat(chosen.phone()).isEqualTo("1");
    assertThat(chosen.note()).isEqualTo("second\nthird");
    assertThat(chosen.id()).isEqualTo(ada.id());
    assertThat(chosen.key()).isEqualTo(ada.key());
    assertThatThrownBy(() -> PartyMerge.merged(ada, other, Map.of(Field.KIND, Take.BOTH)))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void whatEachFieldTakesFromTheOtherIsTheOthers() {
    Party bare = party("Ada Ames", "", "");
    Party full =
        new Party(
            ids.next(),
            "f",
            PartyKind.FIRM,
            "B",
            "2",
            "b@x.org",
            "2 Quay",
            "de",
            Optional.of(0.3),
            "note");
    Party taken = bare;
    for (Field field : Field.values()) {
      taken = PartyMerge.merged(taken, full, Map.of(field, Take.OTHER));
    }
    assertThat(With.component(With.component(taken, "id", full.id()), "key", "f")).isEqualTo(full);
  }

  @Test
  void theRolesOfBothAreThoseOfOneAndNoneIsThereTwice() {
    Party ada = party("Ada Ames", "", "");
    Party other = party("Ada Ames", "", "");
    Role owns = role(ada, RoleKind.OWNS);
    Role sameOwns = role(other, RoleKind.OWNS);
    Role pays = role(other, RoleKind.PAYS);
    Almanac before = with(ada, other, owns, sameOwns, pays);
    Almanac after = before.with(PartyMerge.edit(before, ada, other, Map.of()));
    assertThat(after.parties()).containsExactly(ada);
    assertThat(after.roles())
        .containsExactlyInAnyOrder(owns, With.component(pays, "party", ada.id()));
    assertThat(References.missing(after)).isEmpty();
    assertThatThrownBy(() -> PartyMerge.edit(before, ada, ada, Map.of()))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void whatOneOfTwoWasToldTheOnePartyWasTold() {
    Party ada = party("Ada Ames", "", "");
    Party other = party("Ada Ames", "", "");
    Reminder told =
        new Reminder(
            ids.next(),
            "told",
            made.boat().id(),
            Optional.of(other.id()),
            List.of(),
            List.of(Reminder.Said.told(DAY, Reminder.Way.PHONE, "")));
    Almanac before = with(ada, other, told);
    Almanac after = before.with(PartyMerge.edit(before, ada, other, Map.of()));
    assertThat(after.reminders())
        .containsExactly(With.component(told, "party", Optional.of(ada.id())));
    assertThat(References.missing(after)).isEmpty();
  }

  /** Whoever adds a row that speaks of a party must say here what becomes of it. */
  @Test
  void onlyRolesMoneyAndRemindersSpeakOfParties() {
    assertThat(
            Arrays.stream(Row.class.getPermittedSubclasses())
                .filter(kind -> kind != Party.class)
                .filter(
                    kind ->
                        Arrays.stream(kind.getRecordComponents())
                            .map(RecordComponent::getGenericType)
                            .anyMatch(t -> t.toString().contains("Id<" + Party.class.getName()))))
        .containsExactlyInAnyOrder(
            Role.class, Estimate.class, Invoice.class, Payment.class, Reminder.class);
  }
}
