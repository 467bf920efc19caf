package hullalmanac.core.record;

/** What a letter to somebody is about. */
public enum LetterKind implements Coded {
  DUE("due", "a boat that falls due"),
  OTHER("other", "any other letter");

  private final String code;
  private final String words;

  LetterKind(String code, String words) {
    this.code = code;
    this.words = words;
  }

  @Override
  public String code() {
    return code;
  }

  @Override
  public String words() {
    return words;
  }
}
