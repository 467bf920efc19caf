package hullalmanac.core.list;

import hullalmanac.core.record.Coded;

/** What is done with a boat or an owner who seems to be known already. */
public enum Same implements Coded {
  SAME("same", "the same, fill in what is missing"),
  ANOTHER("another", "another one"),
  LEAVE_OUT("leave-out", "leave out");

  private final String code;
  private final String words;

  Same(String code, String words) {
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
