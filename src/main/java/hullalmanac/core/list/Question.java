package hullalmanac.core.list;

import java.util.List;

/**
 * Something that only a person can say.
 *
 * @param id of the answer among {@link ListChoices#answers}
 * @param asked what it is about, such as {@code Row 9: “Tern / Plover”}
 * @param why what is open, a sentence
 * @param words the answers to choose from
 * @param chosen the one that holds
 */
public record Question(String id, String asked, String why, List<String> words, String chosen) {
  /** Answers. */
  public static final String LEAVE = "leave it there";

  public static final String TAKE = "take it as the owner’s phone";
  public static final String ONE = "one boat";

  public Question {
    words = List.copyOf(words);
    if (!words.contains(chosen)) {
      throw new IllegalArgumentException(chosen + " is none of " + words);
    }
  }

  /** A question to which the first answer holds until a person chooses another. */
  static Question of(String id, String asked, String why, List<String> words, ListChoices choices) {
    String chosen = choices.answer(id).filter(words::contains).orElse(words.get(0));
    return new Question(id, asked, why, words, chosen);
  }
}
