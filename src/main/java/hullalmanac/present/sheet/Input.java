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

  /**
   * The name of a file, typed or chosen; in forms only.
   *
   * @param kinds what files there are to choose from, in words
   * @param endings of their names, without a dot
   * @param toWrite whether it is to be written, so that it need not be there yet
   */
  record FileName(String kinds, List<String> endings, boolean toWrite) implements Input {
    public FileName {
      endings = List.copyOf(endings);
    }
  }

  /**
   * Nothing is written; a touch, Enter or Space does what its text says. In grids only; where the
   * text is empty there is nothing to do.
   *
   * @param key does it from any cell of its row, such as {@code ctrl M}
   */
  record Press(String key) implements Input {}

  /** A text that is only read. */
  record Fixed() implements Input {}

  /** Whether one writes in it. */
  default boolean written() {
    return !(this instanceof Press) && !(this instanceof Fixed);
  }
}
