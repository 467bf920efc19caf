package hullalmanac.present.sheet;

import java.util.List;

/** How a field is filled in. */
public sealed interface Input {
  /**
   * One line of text.
   *
   * @param hint what stands there while it is empty
   */
  record Line(String hint) implements Input {}

  /** Several lines of text. */
  record Paragraph() implements Input {}

  /** One of some words. */
  record Choice(List<String> words) implements Input {
    public Choice {
      words = List.copyOf(words);
    }
  }

  /** One line of text, with some words at hand. */
  record Suggest(List<String> words) implements Input {
    public Suggest {
      words = List.copyOf(words);
    }
  }

  /** A text that is only read. */
  record Fixed() implements Input {}
}
