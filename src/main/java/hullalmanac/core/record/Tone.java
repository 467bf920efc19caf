package hullalmanac.core.record;

/** Whether a surface is light or dark: dark ones take more heat. */
public enum Tone implements Coded {
  LIGHT("light"),
  DARK("dark");

  private final String code;

  Tone(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }
}
