package hullalmanac.core.work;

import static hullalmanac.core.work.Slip.DAY;
import static hullalmanac.core.work.Slip.refused;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Berth;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.BoatType;
import hullalmanac.core.record.Cover;
import hullalmanac.core.record.Harbour;
import hullalmanac.core.record.Kind;
import hullalmanac.core.record.Length;
import hullalmanac.core.record.Party;
import hullalmanac.core.record.Past;
import hullalmanac.core.record.Problem;
import hullalmanac.core.record.RoleKind;
import hullalmanac.core.record.Row;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.Water;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class NewBoatTest {
  private final Slip slip = new Slip();
  private final Harbour harbour =
      slip.put(new Harbour(slip.ids.next(), "h", "Quillhaven", 48.4, List.of(), ""));

  private PhoneCall call(String owner, String phone, String boat) {
    return new PhoneCall(
        owner,
        phone,
        boat,
        Optional.of(Length.ofFeet(28, 0)),
        new PhoneCall.At(harbour.id()),
        BoatType.MOTOR_CRUISER,
        DAY);
  }

  private Almanac take(PhoneCall call) {
    return slip.apply(NewBoat.from(slip.almanac(), slip.ids, call));
  }

  private Boat boat(String key) {
    return slip.almanac().boats().stream()
        .filter(b -> b.key().equals(key))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void aCallGivesABoatWithOwnerSurfacesAndBerth() {
    Almanac after = take(call(" Ada Fenn ", "555 01", "Merganser"));
    Boat boat = boat("merganser");
    assertThat(boat.name()).isEqualTo("Merganser");
    assertThat(boat.knownFrom()).contains(DAY);
    assertThat(boat.loa()).contains(Length.ofFeet(28, 0));
    assertThat(boat.beam()).isEmpty();
    assertThat(after.parties())
        .extracting(Party::key, Party::name, Party::phone)
        .containsExactly(tuple("ada-fenn", "Ada Fenn", "555 01"));
    assertThat(after.roles())
        .singleElement()
        .satisfies(
            r -> {
              assertThat(r.kind()).isEqualTo(RoleKind.OWNS);
              assertThat(r.from()).isEqualTo(DAY);
              assertThat(r.until()).isEmpty();
              assertThat(r.boat()).isEqualTo(boat.id());
              assertThat(r.party()).isEqualTo(after.parties().get(0).id());
            });
    List<Surface> surfaces = InRecord.surfaces(after, boat.id());
    assertThat(surfaces)
        .hasSameSizeAs(SurfaceTemplate.of(BoatType.MOTOR_CRUISER))
        .allMatch(s -> s.past() == Past.UNKNOWN);
    assertThat(surfaces).extracting(Surface::key).contains("merganser-topsides-port");
    Berth berth = after.berths().get(0);
    assertThat(berth.boat()).isEqualTo(boat.id());
    assertThat(berth.harbour()).isEqualTo(harbour.id());
    assertThat(berth.cover()).isEqualTo(Cover.OPEN);
    assertThat(berth.water()).isEqualTo(Water.SALT);
    assertThat(berth.from()).isEqualTo(DAY);
  }

  @Test
  void theSameOwnerIsNotWrittenDownTwice() {
    take(call("Ada Fenn", "555-01", "Merganser"));
    Almanac after = take(call("  ada   FENN", "555 01", "Merganser"));
    assertThat(after.parties()).hasSize(1);
    assertThat(after.roles()).extracting(r -> r.party()).containsOnly(after.parties().get(0).id());
    assertThat(after.boats()).extracting(Boat::key).contains("merganser", "merganser-2");
  }

  @Test
  void aPhoneThatWasMissingIsFilledInAndOneThatIsNotSaidIsKept() {
    take(call("Ada Fenn", "", "Merganser"));
    take(call("Ada Fenn", "555 01", "Smew"));
    Almanac after = take(call("Ada Fenn", "", "Knot"));
    assertThat(after.parties()).extracting(Party::phone).containsExactly("555 01");
  }

  @Test
  void anotherPhoneIsAnotherOwner() {
    take(call("Ada Fenn", "555 01", "Merganser"));
    Almanac after = take(call("Ada Fenn", "555 02", "Smew"));
    assertThat(after.parties()).extracting(Party::key).contains("ada-fenn", "ada-fenn-2");
    Almanac third = take(call("Ada Fenn", "555 02", "Knot"));
    assertThat(third.parties()).hasSize(2);
  }

  @Test
  void aNewHarbourIsMadeOnceByName() {
    PhoneCall.Where where = new PhoneCall.AtNew("Oyster Hard", 48.3);
    for (String name : List.of("Merganser", "Smew")) {
      PhoneCall c = call("Ada Fenn", "", name);
      take(new PhoneCall(c.owner(), "", name, Optional.empty(), where, BoatType.SLOOP, DAY));
      where = new PhoneCall.AtNew("oyster hard ", 48.4);
    }
    assertThat(slip.almanac().harbours())
        .extracting(Harbour::key, Harbour::latitude)
        .contains(tuple("oyster-hard", 48.3))
        .hasSize(2);
    assertThat(boat("smew").loa()).isEmpty();
  }

  @Test
  void whatCannotBeANameIsRefusedWithAllThatIsWrong() {
    PhoneCall call =
        new PhoneCall(
            " ",
            "",
            "",
            Optional.empty(),
            new PhoneCall.AtNew(" ", Double.NaN),
            BoatType.OTHER,
            DAY);
    assertThat(refused(NewBoat.from(slip.almanac(), slip.ids, call)))
        .extracting(Problem::kind)
        .containsExactly(Kind.PARTY, Kind.BOAT, Kind.HARBOUR, Kind.HARBOUR);
  }

  @Test
  void theRowItMadeCanBeAskedFor() {
    Change change = NewBoat.from(slip.almanac(), slip.ids, call("Ada Fenn", "", "Merganser"));
    assertThat(((Change.Ready) change).put(Boat.class).map(Row::key)).contains("merganser");
    assertThat(((Change.Ready) change).put(Harbour.class)).isEmpty();
  }
}
