package hullalmanac.core.finish;

import hullalmanac.core.record.Coded;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.ProductKind;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.StepKind;
import java.util.Optional;

/** One pass of correction, by its kind, in falling order of cut. */
public enum Stage implements Coded {
  SAND_P800("sand-p800", 250),
  SAND_P1000("sand-p1000", 150),
  SAND_P1500("sand-p1500", 80),
  SAND_P2000("sand-p2000", 40),
  HEAVY("heavy-compound", 50),
  MEDIUM("medium-compound", 25),
  ONE_STEP("one-step-polish", 15),
  FINISHING("finishing-polish", 5);

  /** The most that heavy compound takes in a pass, tenths of a micron (common practice). */
  private static final int MOST_OF_HEAVY = 100;

  private final String code;
  private final int tenths;

  Stage(String code, int tenths) {
    this.code = code;
    this.tenths = tenths;
  }

  @Override
  public String code() {
    return code;
  }

  @Override
  public String words() {
    return switch (this) {
      case ONE_STEP -> "one-step polish";
      case SAND_P800, SAND_P1000, SAND_P1500, SAND_P2000 -> "wet sanding " + paper();
      default -> Coded.super.words();
    };
  }

  /** In one word, for a picture: "heavy", "P1500". */
  public String brief() {
    return switch (this) {
      case HEAVY -> "heavy";
      case MEDIUM -> "medium";
      case ONE_STEP -> "one-step";
      case FINISHING -> "finishing";
      default -> paper();
    };
  }

  private String paper() {
    return "P" + code.substring("sand-p".length());
  }

  /** Whether it is a paper; a compound always follows one. */
  public boolean sands() {
    return compareTo(HEAVY) < 0;
  }

  /**
   * Tenths of a micron that a pass takes off (common practice, no source). Heavy compound takes 3
   * to 10 µm: 5 on gelcoat, 10 where the whole film may lose no more than that.
   */
  public int tenths(Film film) {
    return this == HEAVY && film.thin() ? MOST_OF_HEAVY : tenths;
  }

  /** The stage whose law it follows: all papers share one. */
  Stage law() {
    return sands() ? SAND_P2000 : this;
  }

  /** The stage that a product is for; none where it corrects nothing. */
  public static Optional<Stage> of(ProductKind kind) {
    return switch (kind) {
      case SANDPAPER_P800 -> Optional.of(SAND_P800);
      case SANDPAPER_P1000 -> Optional.of(SAND_P1000);
      case SANDPAPER_P1500 -> Optional.of(SAND_P1500);
      case SANDPAPER_P2000 -> Optional.of(SAND_P2000);
      case HEAVY_COMPOUND -> Optional.of(HEAVY);
      case COMPOUND -> Optional.of(MEDIUM);
      case ONE_STEP_POLISH -> Optional.of(ONE_STEP);
      case POLISH -> Optional.of(FINISHING);
      default -> Optional.empty();
    };
  }

  /** The stage that a step was, where its product says so; a step that corrects nothing is none. */
  static Optional<Stage> of(Step step, Optional<Product> product) {
    return mayCorrect(step) ? product.flatMap(p -> of(p.kind())) : Optional.empty();
  }

  /** What a step took off at least as much as: its stage, or what is usual where nobody said. */
  static Optional<Stage> usual(Step step, Optional<Product> product) {
    return of(step, product)
        .or(
            () ->
                switch (step.kind()) {
                  case CUT -> Optional.of(MEDIUM);
                  case POLISH -> Optional.of(FINISHING);
                  default -> Optional.empty();
                });
  }

  private static boolean mayCorrect(Step step) {
    return step.kind() == StepKind.CUT
        || step.kind() == StepKind.POLISH
        || step.kind() == StepKind.OTHER;
  }
}
