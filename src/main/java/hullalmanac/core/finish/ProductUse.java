package hullalmanac.core.finish;

import hullalmanac.core.record.Product;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.StepKind;
import java.util.Optional;

/** What a step takes of its product and of pads, by what the planner of the passes reckons with. */
public final class ProductUse {
  private final Rates rates;

  public ProductUse(Experience experience) {
    rates = experience.rates();
  }

  /**
   * Millilitres for a square metre in all passes of a step. What one washes or decontaminates with
   * is meant as it is mixed with water; everything else as it comes out of the bottle.
   *
   * @return nothing for a step that lays no product on, such as an inspection or paper
   */
  public Optional<Estimate> millilitres(Step step, Product product) {
    Optional<Estimate> once =
        switch (step.kind()) {
          case PROTECT, TOP -> Optional.of(rates.protection());
          case WASH, DECONTAMINATE -> Optional.of(rates.cleaning(step.kind()));
          default ->
              Stage.of(step, Optional.of(product))
                  .filter(stage -> !stage.sands())
                  .map(rates::millilitres);
        };
    return once.map(ml -> ml.times(step.passes().orElse(1)));
  }

  /** Whether a step of a kind is reckoned as mixed with water. */
  public static boolean mixed(StepKind kind) {
    return kind == StepKind.WASH || kind == StepKind.DECONTAMINATE;
  }

  /**
   * The pad of a step: the one it names, else the usual one of its stage; nothing where none is.
   */
  public static Optional<String> pad(Step step, Optional<Product> product) {
    return Optional.of(step.pad().strip())
        .filter(pad -> !pad.isEmpty())
        .or(() -> Stage.of(step, product).map(FinishPractice::pad));
  }

  /**
   * How many pads or sheets a step takes on an area: a stage as the planner changes them, anything
   * else one a pass.
   */
  public static int pads(Step step, Optional<Product> product, double squareMetres) {
    int onePass =
        Stage.of(step, product)
            .map(s -> (int) Math.ceil(squareMetres / FinishPractice.squareMetresAPad(s)))
            .orElse(1);
    return onePass * step.passes().orElse(1);
  }

  /** Whether the pad of a step is paper, which is used once. */
  public static boolean paper(Step step, Optional<Product> product) {
    return Stage.of(step, product).filter(Stage::sands).isPresent();
  }
}
