package hullalmanac.core.record;

/** What a unit measures. */
public enum Measure {
  LENGTH("a length", "9.9 m or 32.5 ft"),
  AREA("an area", "27.5 m² or 296 ft²"),
  VOLUME("a volume", "500 ml or 16 us fl oz"),
  /** How far a product goes: area for each volume. */
  SPREAD("a spread rate", "10 m²/l or 400 ft²/us gal"),
  TEMPERATURE("a temperature", "18.5 c or 65 f"),
  PRESSURE("a pressure", "100 bar or 1450 psi");

  private final String words;
  private final String example;

  Measure(String words, String example) {
    this.words = words;
    this.example = example;
  }

  /** What it is called, with its article: "an area". */
  public String words() {
    return words;
  }

  /** How a quantity of it is written. */
  public String example() {
    return example;
  }
}
