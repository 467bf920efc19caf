package hullalmanac.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.CharRange;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** RFC 5545, section 3.1: lines of at most 75 octets, never parted within a character. */
class FoldedLinesTest {
  private static List<Integer> octets(String folded) {
    return Stream.of(folded.split("\r\n"))
        .map(line -> line.getBytes(StandardCharsets.UTF_8).length)
        .collect(Collectors.toList());
  }

  /** Lengths worked out by a program of its own, from the rule in section 3.1. */
  @ParameterizedTest
  @CsvSource({
    "SUMMARY:, 67, '', 75",
    "SUMMARY:, 68, '', 75 2",
    "DESCRIPTION:, 138, '', 75 75 2",
    "SUMMARY:, 66, ézzzzz, 74 8",
    "SUMMARY:, 65, €zzz, 73 7",
    "SUMMARY:, 64, 🛥q, 72 6"
  })
  void foldsAtOctetsAndNotAtCharacters(String name, int count, String after, String lengths) {
    String line = name + "a".repeat(count) + after;
    String folded = FoldedLines.of(line + "\r\n");
    assertThat(octets(folded))
        .isEqualTo(Stream.of(lengths.split(" ")).map(Integer::valueOf).toList());
    assertThat(folded.replace("\r\n ", "")).isEqualTo(line + "\r\n");
  }

  @Property(tries = 300)
  void anyLineUnfoldsToItselfAndNoneIsTooLong(
      @ForAll
          @StringLength(max = 400)
          @CharRange(from = '!', to = '~')
          @CharRange(from = '\u00C0', to = '\u024F')
          @CharRange(from = '\u3040', to = '\u30FF')
          String text) {
    String folded = FoldedLines.of("X:" + text + "\r\nY:1\r\n");
    assertThat(folded.replace("\r\n ", "")).isEqualTo("X:" + text + "\r\nY:1\r\n");
    assertThat(octets(folded)).allMatch(n -> n <= 75);
  }
}
