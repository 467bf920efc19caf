package hullalmanac.core.entry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.function.Supplier;

/** What the tests of all readers ask. */
final class Entries {
  private Entries() {}

  static <T> T readIn(Entry<T> entry) {
    return read(entry).value();
  }

  static String echoOf(Entry<?> entry) {
    return read(entry).echo();
  }

  static String refusalOf(Entry<?> entry) {
    assertThat(entry).isInstanceOf(Entry.Refused.class);
    return ((Entry.Refused<?>) entry).sentence();
  }

  /** Whatever was typed: a value with an echo, nothing, or a sentence that a person can read. */
  static void assertAnswered(String typed, Entry<?> entry) {
    if (entry instanceof Entry.Read<?> read) {
      assertThat(read.value()).isNotNull();
      assertThat(read.echo()).isNotBlank();
    } else if (entry instanceof Entry.Refused<?> refused) {
      assertThat(refused.sentence()).hasSizeBetween(20, 260);
      assertThat(refused.sentence().codePoints().noneMatch(Character::isISOControl)).isTrue();
    } else {
      assertThat(Typed.fold(typed)).isEmpty();
    }
  }

  /** The answer under a default locale; the one before is set again. */
  static <T> T under(String language, Supplier<T> answer) {
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag(language));
      return answer.get();
    } finally {
      Locale.setDefault(before);
    }
  }

  private static <T> Entry.Read<T> read(Entry<T> entry) {
    assertThat(entry).isInstanceOf(Entry.Read.class);
    return (Entry.Read<T>) entry;
  }
}
