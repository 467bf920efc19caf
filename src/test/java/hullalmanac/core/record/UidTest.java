package hullalmanac.core.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.Random;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.Test;

class UidTest {
  /** RFC 9562, sections 4.1, 4.2 and 5.8, as the platform's own class reads them. */
  @Test
  void isAUuidOfVersion8() {
    Random random = new Random(5);
    for (int i = 0; i < 1000; i++) {
      UUID uuid = UUID.fromString(Uid.of(Uid.Of.CURE, new IdSource(random::nextLong).next()));
      assertThat(uuid.version()).isEqualTo(8);
      assertThat(uuid.variant()).isEqualTo(2);
    }
  }

  /** Written down once: a calendar that was subscribed to must know its events again for ever. */
  @Test
  void neverChanges() {
    assertThat(Uid.of(Uid.Of.VISIT, new Id<>(1))).isEqualTo("48756c6c-0001-8000-8000-000000000001");
    assertThat(Uid.of(Uid.Of.PARTY, new Id<>(Long.MAX_VALUE)))
        .isEqualTo("48756c6c-0006-8fff-8007-ffffffffffff");
  }

  @Test
  void tellsEveryIdAndEveryKindApart() {
    Set<String> seen = new HashSet<>();
    for (Uid.Of what : Uid.Of.values()) {
      for (int bit = 0; bit < 63; bit++) {
        String uid = Uid.of(what, new Id<>(1L << bit));
        assertThat(seen.add(uid)).as(uid).isTrue();
        assertThat(Uid.is(what, uid)).isTrue();
      }
    }
    assertThat(Uid.is(Uid.Of.VISIT, Uid.of(Uid.Of.PARTY, new Id<>(7)))).isFalse();
    assertThat(Uid.is(Uid.Of.VISIT, UUID.randomUUID().toString())).isFalse();
  }
}
