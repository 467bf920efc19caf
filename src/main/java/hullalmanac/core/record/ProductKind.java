package hullalmanac.core.record;

import java.util.Optional;

/**
 * Kinds of product. Those that lay a coat carry the class that says how they wear under washing and
 * which practice value says how many months such coats really last.
 */
public enum ProductKind implements Coded {
  CLEANER_WAX("cleaner-wax", CoatClass.WAX, PracticeValue.LIFE_CLEANER_WAX),
  CARNAUBA("carnauba-wax", CoatClass.WAX, PracticeValue.LIFE_CARNAUBA),
  SPRAY_SEALANT("spray-sealant", CoatClass.SEALANT, PracticeValue.LIFE_SPRAY_SEALANT),
  SILICA_SPRAY("silica-spray", CoatClass.SILICA, PracticeValue.LIFE_SILICA_SPRAY),
  POLYMER_SEALANT("polymer-sealant", CoatClass.SEALANT, PracticeValue.LIFE_POLYMER_SEALANT),
  SILICA_COATING("silica-coating", CoatClass.SILICA, PracticeValue.LIFE_SILICA_COATING),
  SILICA_COATING_THIN(
      "silica-coating-thin", CoatClass.SILICA, PracticeValue.LIFE_SILICA_COATING_THIN),
  TEAK_SEALER("teak-sealer"),
  VINYL_PROTECTANT("vinyl-protectant"),
  CANVAS_PROOFER("canvas-proofer"),
  GLASS_COAT("glass-coat"),
  SOAP("soap"),
  DECONTAMINANT("decontaminant"),
  SANDPAPER_P800("sandpaper-p800"),
  SANDPAPER_P1000("sandpaper-p1000"),
  SANDPAPER_P1500("sandpaper-p1500"),
  SANDPAPER_P2000("sandpaper-p2000"),
  HEAVY_COMPOUND("heavy-compound"),
  COMPOUND("compound"),
  ONE_STEP_POLISH("one-step-polish"),
  POLISH("polish"),
  OTHER("other");

  private final String code;
  private final Optional<CoatClass> coatClass;
  private final Optional<PracticeValue> months;

  ProductKind(String code) {
    this.code = code;
    this.coatClass = Optional.empty();
    this.months = Optional.empty();
  }

  ProductKind(String code, CoatClass coatClass, PracticeValue months) {
    this.code = code;
    this.coatClass = Optional.of(coatClass);
    this.months = Optional.of(months);
  }

  @Override
  public String code() {
    return code;
  }

  @Override
  public String words() {
    return switch (this) {
      case COMPOUND -> "medium compound";
      case ONE_STEP_POLISH -> "one-step polish";
      case POLISH -> "finishing polish";
      default -> Coded.super.words();
    };
  }

  /** How a coat of this kind wears, or nothing when it is not forecast from weather. */
  public Optional<CoatClass> coatClass() {
    return coatClass;
  }

  /** Months such a coat really lasts; absent for kinds that are not forecast from weather. */
  public Optional<PracticeValue> months() {
    return months;
  }

  /** Whether this product is laid on a surface to protect it. */
  public boolean protects() {
    return coatClass.isPresent()
        || this == TEAK_SEALER
        || this == VINYL_PROTECTANT
        || this == CANVAS_PROOFER
        || this == GLASS_COAT;
  }
}
