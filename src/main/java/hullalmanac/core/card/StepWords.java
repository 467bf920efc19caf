package hullalmanac.core.card;

import hullalmanac.core.card.JobCard.CardStep;
import hullalmanac.core.record.Bottle;
import hullalmanac.core.record.Hazard;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A step of a card in words, the same on screen and on paper. */
public final class StepWords {
  /** Sizes of bottles and buckets, in millilitres (common practice, no source). */
  public static final List<Integer> BOTTLES = List.of(500, 750, 1000, 5000, 10_000);

  private static final List<Integer> ON_PAPER = List.of(500, 1000, 5000);

  /** Said of a berth of which nobody wrote where runoff is caught. */
  public static final String NO_RUNOFF =
      "nothing is written down of this berth; ask before anything runs off.";

  private static final int LITRE = 1000;

  private StepWords() {}

  /** With what, of which batch, and how much of that is left; empty where nothing is used. */
  public static String product(CardStep step) {
    return step.product().map(p -> p.name() + bottle(step.bottle())).orElse("");
  }

  private static String bottle(Optional<Bottle> bottle) {
    return bottle
        .map(
            b ->
                (b.batch().isBlank() ? "" : ", batch " + b.batch())
                    + b.leftMl().map(ml -> ", " + ml + " ml left").orElse(""))
        .orElse("");
  }

  /**
   * How it is mixed in a bottle, a line each: its parts, what goes in and in which order, and what
   * the bottle lacks. Nothing for a step that mixes nothing.
   *
   * @param bottleMl what is mixed in
   */
  public static List<String> mix(CardStep step, int bottleMl) {
    if (step.dilution().isEmpty()) {
      return List.of();
    }
    Mix mix = new Mix(step.dilution().get(), bottleMl);
    List<String> lines = new ArrayList<>();
    lines.add(mix.dilution().words());
    lines.add("For " + size(bottleMl) + ": " + amounts(step, mix));
    step.bottle()
        .flatMap(Bottle::leftMl)
        .filter(left -> left < mix.product())
        .ifPresent(left -> lines.add("The bottle of that batch holds only " + left + " ml."));
    return lines;
  }

  private static String amounts(CardStep step, Mix mix) {
    boolean acid = step.product().filter(p -> p.hazards().contains(Hazard.ACID)).isPresent();
    return acid
        ? mix.water() + " ml water first, then " + mix.product() + " ml of the acid into it"
        : mix.product() + " ml, then " + mix.water() + " ml water";
  }

  /** The same for a few sizes, without what a bottle lacks: for paper, which cannot ask. */
  public static List<String> mixes(CardStep step) {
    return step.dilution()
        .map(
            d ->
                ON_PAPER.stream()
                    .map(ml -> "For " + size(ml) + ": " + amounts(step, new Mix(d, ml)))
                    .toList())
        .orElse(List.of());
  }

  /** A size of a bottle. */
  public static String size(int ml) {
    return ml % LITRE == 0 ? ml / LITRE + " l" : ml + " ml";
  }

  /** How long it stays on. */
  public static String dwell(Dwell dwell) {
    long from = dwell.shortest().toMinutes();
    long to = dwell.longest().toMinutes();
    return "Dwells "
        + (from == to || from == 0 ? (from == 0 ? "up to " : "") + to : from + " to " + to)
        + (to == 1 ? " minute" : " minutes")
        + (dwell.practice() ? " (common practice, no source; the label comes first)" : "")
        + ". Do not let it dry.";
  }
}
