package hullalmanac.exchange.list;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

/**
 * The letters of a file: UTF-8, UTF-16 or, where it is neither, Windows-1252.
 *
 * @param remarks what a person should know of how they were read
 */
record Letters(String text, List<String> remarks) {
  private static final double MOST_CONTROLS = 0.005;
  private static final double ZEROS_OF_UTF_16 = 0.6;

  /** Absent where the bytes are no text. */
  static Optional<Letters> of(byte[] bytes) {
    if (begins(bytes, 0xEF, 0xBB, 0xBF)) {
      return plain(decode(bytes, 3, StandardCharsets.UTF_8));
    }
    if (begins(bytes, 0xFF, 0xFE)) {
      return plain(decode(bytes, 2, StandardCharsets.UTF_16LE));
    }
    if (begins(bytes, 0xFE, 0xFF)) {
      return plain(decode(bytes, 2, StandardCharsets.UTF_16BE));
    }
    Optional<Charset> wide = withoutMark(bytes);
    if (wide.isPresent()) {
      return plain(decode(bytes, 0, wide.get()));
    }
    try {
      String text =
          StandardCharsets.UTF_8
              .newDecoder()
              .onMalformedInput(CodingErrorAction.REPORT)
              .onUnmappableCharacter(CodingErrorAction.REPORT)
              .decode(ByteBuffer.wrap(bytes))
              .toString();
      return plain(text);
    } catch (CharacterCodingException e) {
      return plain(decode(bytes, 0, Charset.forName("windows-1252")))
          .map(
              l ->
                  new Letters(
                      l.text(),
                      List.of(
                          "It is not written in Unicode; it was read as Windows-1252. Look at names"
                              + " with accents.")));
    }
  }

  private static boolean begins(byte[] bytes, int... with) {
    if (bytes.length < with.length) {
      return false;
    }
    for (int i = 0; i < with.length; i++) {
      if ((bytes[i] & 0xFF) != with[i]) {
        return false;
      }
    }
    return true;
  }

  private static String decode(byte[] bytes, int from, Charset letters) {
    return new String(bytes, from, bytes.length - from, letters);
  }

  /** UTF-16 without a mark has a zero in every second byte of western letters. */
  private static Optional<Charset> withoutMark(byte[] bytes) {
    int even = 0;
    int odd = 0;
    for (int i = 0; i < bytes.length; i++) {
      if (bytes[i] == 0) {
        even += 1 - i % 2;
        odd += i % 2;
      }
    }
    double half = bytes.length / 2.0;
    if (odd > ZEROS_OF_UTF_16 * half && even == 0) {
      return Optional.of(StandardCharsets.UTF_16LE);
    }
    return even > ZEROS_OF_UTF_16 * half && odd == 0
        ? Optional.of(StandardCharsets.UTF_16BE)
        : Optional.empty();
  }

  /** A text, unless it is full of signs that no text has. */
  private static Optional<Letters> plain(String text) {
    long controls =
        text.chars()
            .filter(c -> c < ' ' && c != '\t' && c != '\n' && c != '\r' && c != '\f')
            .count();
    return text.indexOf(0) >= 0 || controls > MOST_CONTROLS * text.length()
        ? Optional.empty()
        : Optional.of(new Letters(text, List.of()));
  }
}
