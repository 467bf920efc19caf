package hullalmanac.core.find;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.record.Boat;
import hullalmanac.core.record.BoatStatus;
import hullalmanac.core.record.Bottle;
import hullalmanac.core.record.Finding;
import hullalmanac.core.record.Harbour;
import hullalmanac.core.record.Observation;
import hullalmanac.core.record.Party;
import hullalmanac.core.record.Photo;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.RoleKind;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.Visit;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is found by what is typed, and in which order. */
class FindIndexTest {
  private static final int MANY = 100;

  private final Roster roster = new Roster();

  private List<String> titles(String typed) {
    return roster.index().find(typed, MANY).stream().map(Hit::title).toList();
  }

  @ParameterizedTest
  @CsvSource({
    "Müwe, muwe",
    "Müwe, MÜWE",
    "muwe, müwe",
    "Weißer Reiher, weisser reiher",
    "Weißer Reiher, WEIßER",
    "Sørens Ørn, sorens orn",
    "Łabędź, labedz",
    "Æger, aeger",
    "Ćma, cm",
    "Arctic Tern, tern arctic",
    "Arctic Tern, '  te   ARC '",
    "Arctic Tern, arctic-tern",
    "Sea-Holly II, sea holly",
    "Sea-Holly II, ii",
    "O’Malley's Joy, omalleys",
    "O’Malley's Joy, o'malley",
    "'Nr. 7, the Skiff', 7 skiff",
    "Éider 3½, eider",
  })
  void findsANameByTheBeginningsOfItsWords(String name, String typed) {
    roster.boat("Another");
    roster.boat(name);
    assertThat(titles(typed)).containsExactly(name);
  }

  @ParameterizedTest
  @ValueSource(strings = {"rctic", "tern osprey", "arctictern", "", "  ", "?!", "x"})
  void findsNothingBySomethingElse(String typed) {
    roster.boat("Arctic Tern");
    assertThat(titles(typed)).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "+1 555 0104, 555 0104",
    "+1 555 0104, 5550104",
    "+1 555 0104, 0104",
    "+1 555 0104, +1-555-01 04",
    "+1 555 0104, brand 0104",
    "+1 555 0104, 555 0104 brand",
    "15550104, 1 555 01 04",
    "+1 (0)55 50104, 0555 0104",
    "+1 555 0104, 00155501",
    "+1-555-0104, 55501",
  })
  void findsAPhoneNumberWhateverItsSpacing(String phone, String typed) {
    Party party = roster.party("Elin Brand", phone);
    roster.party("Ada Lind", "+1 555 9999");
    assertThat(roster.index().find(typed, MANY))
        .extracting(Hit::target)
        .containsExactly(new Target.ToParty(party.id()));
  }

  @ParameterizedTest
  @CsvSource({
    "ZZZ39913G818, zzz39913g818",
    "ZZZ39913G818, 39913",
    "ZZZ39913G818, 13g",
    "ZZZ39913G818, zz",
    "ZZZ39913G818, G818 siskin",
    "ZZZ 39913 G818, zzz39913g818",
    "ZZZ39913G818, ZZZ 39913 G8 18",
    "US-ZZZ39913G818, us-zzz39913g818",
  })
  void findsAHullNumberByAnyPieceOfIt(String number, String typed) {
    Boat boat = roster.boat("Siskin", number, BoatStatus.ACTIVE);
    roster.boat("Siskin", "YYY11111A111", BoatStatus.ACTIVE);
    assertThat(roster.index().find(typed, MANY))
        .containsExactly(
            new Hit(HitKind.HULL_NUMBER, number, "Siskin", new Target.ToBoat(boat.id())));
  }

  @ParameterizedTest
  @ValueSource(strings = {"g8", "18", "z39913x"})
  void findsNoHullNumberByLessThanThreeCharactersFromInside(String typed) {
    roster.boat("Siskin", "ZZZ39913G818", BoatStatus.ACTIVE);
    assertThat(titles(typed)).isEmpty();
  }

  @Test
  void putsTheExactNameFirstThenItsBeginningThenItsWordsThenTheRest() {
    Boat plain = roster.boat("Plain");
    roster.role(roster.party("Jo Tern", ""), RoleKind.OWNS, plain);
    roster.boat("Arctic Tern");
    roster.boat("Tern of Ebb");
    roster.boat("Tern");
    roster.boat("Ternary");
    assertThat(titles("tern"))
        .containsExactly("Tern", "Ternary", "Tern of Ebb", "Arctic Tern", "Jo Tern", "Plain");
  }

  @Test
  void putsTheExactNameOrNumberFirstEvenOfABoatThatIsSold() {
    roster.boat("Knots", "ZZZ12", BoatStatus.ACTIVE);
    roster.boat("Knot", "ZZZ1", BoatStatus.SOLD);
    assertThat(titles("knot")).startsWith("Knot", "Knots");
    assertThat(titles("kno")).startsWith("Knots", "Knot");
    assertThat(titles("zzz-1")).containsExactly("ZZZ1", "ZZZ12");
    assertThat(titles("zzz")).containsExactly("ZZZ12", "ZZZ1");
  }

  @Test
  void putsBoatsStillLookedAfterBeforeTheOthersAndThoseByName() {
    roster.boat("Tern C");
    roster.boat("Tern A", "", BoatStatus.SOLD);
    roster.boat("Térn B");
    roster.boat("Tern D", "", BoatStatus.RETIRED);
    roster.boat("tern E");
    assertThat(titles("ter")).containsExactly("Térn B", "Tern C", "tern E", "Tern A", "Tern D");
    assertThat(titles("tern a")).containsExactly("Tern A");
  }

  @Test
  void givesNoMoreThanAsked() {
    for (int i = 10; i < 30; i++) {
      roster.boat("Tern " + i);
    }
    assertThat(roster.index().find("tern", 3))
        .extracting(Hit::title)
        .containsExactly("Tern 10", "Tern 11", "Tern 12");
  }

  @Test
  void findsABoatByHerOwnerHarbourBerthAndNoteAndShowsWhich() {
    Boat tern =
        roster.boat("Arctic Tern", "", BoatStatus.ACTIVE, "Stripe: nothing with silicone there.");
    roster.lies(tern, roster.harbour("Quillhaven"), "D17");
    roster.role(roster.party("Ada Lind", ""), RoleKind.OWNS, tern);
    roster.role(roster.party("Upper Yard", ""), RoleKind.OPENS_UP, tern);
    Target her = new Target.ToBoat(tern.id());
    FindIndex index = roster.index();
    for (String typed : List.of("ada lind", "quillhaven d17", "lind quill arc")) {
      assertThat(index.find(typed, MANY))
          .as(typed)
          .contains(new Hit(HitKind.BOAT, "Arctic Tern", "Ada Lind · Quillhaven D17", her));
    }
    assertThat(index.find("silicone", MANY))
        .containsExactly(
            new Hit(
                HitKind.BOAT,
                "Arctic Tern",
                "Stripe: nothing with silicone there. · Ada Lind · Quillhaven D17",
                her));
    assertThat(index.find("upper", MANY))
        .extracting(Hit::detail)
        .containsExactly("Arctic Tern", "Upper Yard, opens up · Ada Lind · Quillhaven D17");
  }

  @Test
  void tellsWhoOwnsABoatTodayAndThatSheIsSold() {
    Boat tern = roster.boat("Tern", "", BoatStatus.SOLD);
    Party before = roster.party("Elin Brand", "");
    roster.role(before, RoleKind.OWNS, tern, Optional.of(LocalDate.of(2025, 9, 1)));
    roster.role(roster.party("Cora Hale", ""), RoleKind.OWNS, tern);
    FindIndex index = roster.index();
    assertThat(index.find("tern", MANY))
        .extracting(Hit::detail)
        .containsExactly("sold · Cora Hale");
    assertThat(index.find("cora hale", MANY))
        .extracting(Hit::kind)
        .containsExactly(HitKind.OWNER, HitKind.BOAT);
    assertThat(index.find("brand", MANY))
        .containsExactly(
            new Hit(HitKind.PERSON, "Elin Brand", "", new Target.ToParty(before.id())));
  }

  @Test
  void namesTheBoatsOfAnOwnerButNotAllOfMany() {
    Party party = roster.party("Ada Lind", "+1 555 0100");
    for (String name : List.of("Knot", "Auk", "Diver", "Egret")) {
      roster.role(party, RoleKind.OWNS, roster.boat(name));
    }
    assertThat(roster.index().find("ada", 1))
        .extracting(Hit::detail)
        .containsExactly("Auk, Diver and 2 more · +1 555 0100");
  }

  @Test
  void findsAHarbourAndCountsItsBoats() {
    Harbour quill = roster.harbour("Quillhaven");
    Harbour ebb = roster.harbour("Ebb");
    roster.lies(roster.boat("Tern"), quill, "");
    roster.lies(roster.boat("Knot", "", BoatStatus.SOLD), quill, "");
    FindIndex index = roster.index();
    assertThat(index.find("quillhaven", MANY).get(0))
        .isEqualTo(
            new Hit(HitKind.HARBOUR, "Quillhaven", "1 boat", new Target.ToHarbour(quill.id())));
    assertThat(index.find("ebb", MANY))
        .containsExactly(
            new Hit(HitKind.HARBOUR, "Ebb", "no boat", new Target.ToHarbour(ebb.id())));
  }

  @Test
  void findsABatchOnTheShelfAndTheBoatsItIsOn() {
    Product product = roster.product("polymer sealant B");
    Bottle bottle = roster.bottle(product, "LOT 22/352");
    Boat tern = roster.boat("Tern");
    Surface transom = roster.transom(tern);
    roster.coat(transom, bottle, LocalDate.of(2024, 5, 2));
    roster.coat(transom, bottle, LocalDate.of(2025, 5, 3));
    FindIndex index = roster.index();
    for (String typed : List.of("lot22352", "lot 22/352", "352 lot", "polymer lot")) {
      assertThat(index.find(typed, MANY))
          .as(typed)
          .containsExactly(
              new Hit(
                  HitKind.BATCH,
                  "LOT 22/352",
                  "polymer sealant B · opened 1 March 2024",
                  new Target.ToProduct(product.id())),
              new Hit(
                  HitKind.COAT,
                  "LOT 22/352",
                  "on Tern · polymer sealant B · 3 May 2025",
                  new Target.ToBoat(tern.id())));
    }
    assertThat(index.find("polymer", MANY))
        .containsExactly(
            new Hit(
                HitKind.PRODUCT,
                "polymer sealant B",
                "polymer sealant",
                new Target.ToProduct(product.id())));
  }

  @Test
  void findsNotesOfVisitsAndFindingsAndCaptionsOfPhotosTheNewestOfEqualsFirst() {
    Boat tern = roster.boat("Tern");
    Surface transom = roster.transom(tern);
    Visit visit = roster.visit(tern, "fender left a mark");
    Finding damage =
        roster.finding(
            transom,
            LocalDate.of(2025, 4, 3),
            new Observation.Damage(
                "fender chip",
                Optional.of(new Observation.Told("Ida Brook", LocalDate.of(2025, 4, 4)))),
            "");
    Finding older = roster.water(transom, LocalDate.of(2024, 4, 3), "fender marks");
    Finding newer = roster.water(transom, LocalDate.of(2025, 4, 3), "fender marks");
    Photo photo = roster.photo(tern, "fender, before");
    assertThat(roster.index().find("fender", MANY))
        .containsExactly(
            new Hit(
                HitKind.PHOTO, "fender, before", "Tern", new Target.ToPhoto(photo.id(), tern.id())),
            new Hit(
                HitKind.FINDING,
                "fender chip",
                "Tern · transom · told Ida Brook · 3 April 2025",
                new Target.ToFinding(damage.id(), tern.id())),
            new Hit(
                HitKind.VISIT,
                "fender left a mark",
                "Tern · 22 April 2025",
                new Target.ToVisit(visit.id(), tern.id())),
            new Hit(
                HitKind.FINDING,
                "fender marks",
                "Tern · transom · 3 April 2025",
                new Target.ToFinding(newer.id(), tern.id())),
            new Hit(
                HitKind.FINDING,
                "fender marks",
                "Tern · transom · 3 April 2024",
                new Target.ToFinding(older.id(), tern.id())));
  }

  @Test
  void findsANoteWithTheHelpOfItsBoatAndMonthButNotByThoseAlone() {
    Visit visit = roster.visit(roster.boat("Tern"), "fender left a mark");
    roster.visit(roster.boat("Knot"), "fender left a mark");
    FindIndex index = roster.index();
    assertThat(index.find("fender tern april 2025", MANY))
        .extracting(Hit::target)
        .containsExactly(new Target.ToVisit(visit.id(), visit.boat()));
    assertThat(index.find("tern", MANY)).extracting(Hit::kind).containsExactly(HitKind.BOAT);
    assertThat(index.find("tern april", MANY)).isEmpty();
  }

  @Test
  void showsOfALongNoteThePartThatWasFound() {
    String long1 = "The owner wants the deck left as it is until the leak is mended. ";
    roster.visit(roster.boat("Tern"), long1.repeat(4) + "Fenders\nchafe. " + long1.repeat(4));
    String title = titles("fend").get(0);
    assertThat(title).contains("Fenders chafe.").startsWith("… ").endsWith(" …");
    assertThat(title.length()).isLessThan(100);
  }

  @Test
  void findsNoKeyGateCodeOrAbsence() {
    Boat tern = roster.boat("Tern");
    roster.lies(tern, roster.harbour("Quillhaven"), "D4");
    for (String secret : List.of("7788", "mat", "away", "june")) {
      assertThat(titles(secret)).as(secret).isEmpty();
    }
    assertThat(titles("d4")).containsExactly("Tern");
  }

  @Test
  void saysWhichWordIsUnknown() {
    roster.boat("Arctic Tern");
    FindIndex index = roster.index();
    assertThat(index.unknown("tern Ösprey arc")).contains("Ösprey");
    assertThat(index.unknown("tern arc")).isEmpty();
    assertThat(index.unknown("")).isEmpty();
  }

  @Test
  void knowsTheBoatsOfTheRecordAndWhetherThereIsAnything() {
    assertThat(roster.index().isEmpty()).isTrue();
    Boat tern = roster.boat("Tern");
    FindIndex index = roster.index();
    assertThat(index.isEmpty()).isFalse();
    assertThat(index.boat(tern.id())).map(Hit::title).contains("Tern");
    assertThat(index.boat(new hullalmanac.core.record.Id<>(Long.MAX_VALUE))).isEmpty();
  }
}
