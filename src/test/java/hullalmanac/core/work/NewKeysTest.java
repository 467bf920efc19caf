package hullalmanac.core.work;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.BoatStatus;
import hullalmanac.core.record.Business;
import hullalmanac.core.record.Kind;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class NewKeysTest {
  private static NewKeys none() {
    return new NewKeys(Almanac.empty(Business.unnamed()));
  }

  @Test
  void areReadAloudLikeTheName() {
    assertThat(none().next(Kind.BOAT, "Merganser")).isEqualTo("merganser");
    assertThat(none().next(Kind.BOAT, "  Blåmes  II! ")).isEqualTo("blames-ii");
    assertThat(none().next(Kind.BOAT, "Fjærø Straße")).isEqualTo("fjaero-strasse");
    assertThat(none().next(Kind.PARTY, "Ned O'Dell")).isEqualTo("ned-odell");
    assertThat(none().next(Kind.SURFACE, "tern", "topsides", "")).isEqualTo("tern-topsides");
  }

  @Test
  void countOnWhereTheNameIsTakenWhateverItsCase() {
    Slip slip = new Slip();
    slip.put(slip.boat("Merganser", BoatStatus.ACTIVE));
    NewKeys keys = new NewKeys(slip.almanac());
    assertThat(keys.next(Kind.BOAT, "Merganser")).isEqualTo("merganser-2");
    assertThat(keys.next(Kind.BOAT, "merganser")).isEqualTo("merganser-3");
    assertThat(keys.next(Kind.PARTY, "merganser")).isEqualTo("merganser");
  }

  @Test
  void takeTheWordOfTheKindWhereNoLetterIsLeft() {
    assertThat(none().next(Kind.BOAT, "海鳥")).isEqualTo("boat");
    assertThat(none().next(Kind.CARE_PLAN, "—")).isEqualTo("care-plan");
  }

  @Test
  void haveAtMostEightyCharactersWithTheirNumber() {
    NewKeys keys = none();
    String first = keys.next(Kind.BOAT, "a".repeat(200));
    String second = keys.next(Kind.BOAT, "a".repeat(200));
    assertThat(first).isEqualTo("a".repeat(80));
    assertThat(second).isEqualTo("a".repeat(78) + "-2");
  }

  @Property(tries = 300)
  void areNeverTwiceTheSameAndAlwaysFitARow(@ForAll @Size(max = 12) List<String> names) {
    NewKeys keys = none();
    Set<String> all = new HashSet<>();
    for (String name : names) {
      String key = keys.next(Kind.BOAT, name);
      assertThat(all.add(key)).isTrue();
      assertThat(key).matches("[a-z0-9]([a-z0-9-]*[a-z0-9])?");
      assertThatCode(() -> new Slip().boat(key, BoatStatus.ACTIVE)).doesNotThrowAnyException();
    }
  }
}
