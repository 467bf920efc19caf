package hullalmanac.present.card;

import java.util.List;
import java.util.Optional;

/**
 * The card of a visit but for what goes with the clock.
 *
 * @param facts day and place
 * @param back when one is expected back, as it was typed
 * @param backSaid what that means, or what is missing
 * @param now the step that is shown in full; absent where the visit has none
 * @param standing what always comes first
 */
public record CardState(
    String title,
    String facts,
    String back,
    String backSaid,
    String runoff,
    List<Row> steps,
    Optional<Now> now,
    List<Check> checks,
    List<String> tools,
    String standing) {
  public CardState {
    steps = List.copyOf(steps);
    checks = List.copyOf(checks);
    tools = List.copyOf(tools);
  }

  /** The same, where one is expected back at another time. */
  public CardState expecting(String typed, String said) {
    return new CardState(title, facts, typed, said, runoff, steps, now, checks, tools, standing);
  }

  /**
   * A step in the list.
   *
   * @param words number and what is done
   * @param where its surfaces
   * @param done whether it was ticked
   * @param shown whether it is shown in full
   */
  public record Row(String words, String where, boolean done, boolean shown) {}

  /**
   * The step shown in full.
   *
   * @param heading number, what is done
   * @param facts label and text of surfaces, product, pad, speed …
   * @param mix the dilution in words and for the bottle in hand; empty where nothing is mixed
   * @param bottles sizes of a bottle in hand to choose from; empty where nothing is mixed
   * @param stops what is to be read before the step goes on
   * @param cautions of the product
   * @param dwell what is said of its dwell; empty where nothing stays on
   * @param timing whether a dwell is being timed
   * @param free whether all that stops it was read
   */
  public record Now(
      String heading,
      List<Fact> facts,
      List<String> mix,
      List<Bottle> bottles,
      List<StopLine> stops,
      List<String> cautions,
      String dwell,
      boolean timing,
      boolean free,
      boolean done) {
    public Now {
      facts = List.copyOf(facts);
      mix = List.copyOf(mix);
      bottles = List.copyOf(bottles);
      stops = List.copyOf(stops);
      cautions = List.copyOf(cautions);
    }
  }

  /** A label and a text. */
  public record Fact(String label, String text) {}

  /** A size of a bottle in hand. */
  public record Bottle(int millilitres, String words, boolean chosen) {}

  /** What is to be read, where it is known from, and whether it was. */
  public record StopLine(String text, String source, boolean read) {}

  /** Something to see to. */
  public record Check(String words, boolean ticked) {}
}
