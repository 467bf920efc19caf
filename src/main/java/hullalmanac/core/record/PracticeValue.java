package hullalmanac.core.record;

import java.util.Arrays;
import java.util.List;

/**
 * A number that the forecast and the plans start from and a person may set to their own. Each
 * standard is common practice, no source.
 */
public enum PracticeValue implements Coded {
  RISK_LIGHT(Topic.RENEWAL, "Light surfaces: chance of bare at which to renew", 0.30, 0.05, 0.95),
  RISK_DARK(Topic.RENEWAL, "Dark surfaces: the same", 0.20, 0.05, 0.95),
  RISK_WAX(Topic.RENEWAL, "Waxes on light surfaces: the same", 0.40, 0.05, 0.95),
  TOLD_TOGETHER(Topic.RENEWAL, "Surfaces due within so many days are told together", 45, 1, 365),
  QUIET_DAYS(
      Topic.RENEWAL,
      "Days after a word to an owner in which nothing more is told of her boat",
      28,
      0,
      365),
  PLAN_AHEAD(Topic.RENEWAL, "Days ahead that a care plan which begins again is told", 21, 1, 365),
  MOVED_DAYS(
      Topic.RENEWAL, "Days a date has to move, after it was told, to be pointed out", 14, 1, 365),

  LABEL_WAX(Topic.LIVES, "Share of its label's months a wax lasts", Math.exp(-0.20), 0.1, 2),
  LABEL_SEALANT(
      Topic.LIVES, "Share of its label's months a sealant lasts", Math.exp(-0.20), 0.1, 2),
  LABEL_SILICA(
      Topic.LIVES, "Share of its label's months a silica coat lasts", Math.exp(-0.40), 0.1, 2),
  LABEL_CARS(
      Topic.LIVES, "Share of the months, where a label speaks of cars", Math.exp(-0.60), 0.1, 2),
  LIFE_CLEANER_WAX(Topic.LIVES, "Cleaner wax without a label: months", 1.5, 0.1, 120),
  LIFE_CARNAUBA(Topic.LIVES, "Carnauba wax without a label: months", 2.5, 0.1, 120),
  LIFE_SPRAY_SEALANT(Topic.LIVES, "Spray sealant without a label: months", 1.5, 0.1, 120),
  LIFE_SILICA_SPRAY(Topic.LIVES, "Silica spray without a label: months", 3.0, 0.1, 120),
  LIFE_POLYMER_SEALANT(Topic.LIVES, "Polymer sealant without a label: months", 5.0, 0.1, 120),
  LIFE_SILICA_COATING(Topic.LIVES, "Silica coating without a label: months", 18.0, 0.1, 120),
  LIFE_SILICA_COATING_THIN(
      Topic.LIVES, "Thin silica coating without a label: months", 12.0, 0.1, 120),
  INTERVAL_TEAK(Topic.LIVES, "Teak: months between sealings", 9, 0.1, 120),
  INTERVAL_CANVAS(Topic.LIVES, "Canvas: months between proofings", 9, 0.1, 120),
  INTERVAL_CLEAR_VINYL(Topic.LIVES, "Clear vinyl: months between treatments", 1.5, 0.1, 120),
  INTERVAL_GLASS(Topic.LIVES, "Glass: months between treatments", 2, 0.1, 120),

  SUN_SHARE(Topic.WEAR, "Share of wear that is the sun's; the rest is wetness", 0.85, 0, 1),
  MEAN_SKY(Topic.WEAR, "Relative sunshine where a harbour's is not known", 0.6, 0, 1),
  SUNWARD(Topic.WEAR, "A side that faces the sun", 1.25, 0, 10),
  SHADED(Topic.WEAR, "A side that faces away", 0.80, 0, 10),
  DARK(Topic.WEAR, "Dark colours", 1.2, 0, 10),
  WATERLINE(Topic.WEAR, "The waterline band", 1.8, 0, 10),
  TRANSOM(Topic.WEAR, "The transom", 1.15, 0, 10),
  SOOTY_TRANSOM(Topic.WEAR, "A transom that soot reaches", 1.3, 0, 10),
  CABIN_SIDES(Topic.WEAR, "Cabin sides", 1.10, 0, 10),
  COCKPIT(Topic.WEAR, "Cockpit and gunwales", 1.25, 0, 10),
  DECKS(Topic.WEAR, "Decks, roofs and platforms", 1.50, 0, 10),
  WINDOWS(Topic.WEAR, "Windows", 1.3, 0, 10),
  NON_SKID(Topic.WEAR, "Non-skid", 2.0, 0, 10),
  USE_IDLE(Topic.WEAR, "A boat that lies idle", 0.9, 0, 10),
  USE_WEEKLY(Topic.WEAR, "A boat used every week", 1.15, 0, 10),
  USE_HARD(Topic.WEAR, "Charter or fishing", 1.4, 0, 10),
  WET_BRACKISH(Topic.WEAR, "Wetness in brackish water, of salt", 0.7, 0, 10),
  WET_FRESH(Topic.WEAR, "Wetness in fresh water, of salt", 0.4, 0, 10),
  WET_ASHORE(Topic.WEAR, "Wetness ashore, of salt water", 0.25, 0, 10),

  SLIP_UPRIGHT(Topic.COVERS, "Covered slip: sun on upright surfaces", 0.55, 0, 1),
  SLIP_LYING(Topic.COVERS, "Covered slip: sun on lying surfaces", 0.12, 0, 1),
  COVER_UPRIGHT(Topic.COVERS, "Fitted cover: sun on upright surfaces", 0.95, 0, 1),
  COVER_LYING(Topic.COVERS, "Fitted cover: sun on lying surfaces", 0.10, 0, 1),
  WRAP_UPRIGHT(Topic.COVERS, "Shrink wrap: sun on upright surfaces", 0.50, 0, 1),
  WRAP_LYING(Topic.COVERS, "Shrink wrap: sun on lying surfaces", 0.08, 0, 1),
  LOW_WRAP_UPRIGHT(Topic.COVERS, "Wrap to the waterline: sun on upright surfaces", 0.10, 0, 1),
  LOW_WRAP_LYING(Topic.COVERS, "Wrap to the waterline: sun on lying surfaces", 0.08, 0, 1),
  SHED(Topic.COVERS, "A shed: sun on any surface", 0.05, 0, 1),

  WASH_WAX_MILD(Topic.WASHES, "A mild wash of a wax, in days of wear", 0.7, 0, 1000),
  WASH_WAX_STRONG(Topic.WASHES, "A strong wash of a wax", 15, 0, 1000),
  WASH_SEALANT_MILD(Topic.WASHES, "A mild wash of a sealant", 0.5, 0, 1000),
  WASH_SEALANT_STRONG(Topic.WASHES, "A strong wash of a sealant", 5, 0, 1000),
  WASH_SEALANT_ACID(Topic.WASHES, "Acid or alkali on a sealant", 25, 0, 1000),
  WASH_SILICA_MILD(Topic.WASHES, "A mild wash of a silica coat", 0.3, 0, 1000),
  WASH_SILICA_STRONG(Topic.WASHES, "A strong wash of a silica coat", 1, 0, 1000),
  WASH_SILICA_ACID(Topic.WASHES, "Acid or alkali on a silica coat", 4, 0, 1000),

  NOT_LOOKED_TOUCH(
      Topic.LOOKS, "Share of boats where a look in two touches was none", 0.5, 0.01, 0.9),
  NOT_LOOKED_GRID(Topic.LOOKS, "Share of boats where a look written down was none", 0.1, 0.01, 0.9),
  MISLED_DECONTAMINATED(
      Topic.LOOKS, "Chance that water misleads on a decontaminated surface", 0.05, 0.01, 0.49),
  MISLED_WASHED(Topic.LOOKS, "Chance that water misleads on a washed one", 0.15, 0.01, 0.49),
  MISLED_DIRTY(Topic.LOOKS, "Chance that water misleads on a dirty one", 0.35, 0.01, 0.49),
  MISLED_SOAP(Topic.LOOKS, "Chance that water misleads after a waxy soap", 0.25, 0.01, 0.49),
  MISLED_OWNER(Topic.LOOKS, "The least of it where it is an owner's word", 0.30, 0.01, 0.49),

  REACH_FINISHING_LIGHT(
      Topic.STAGES, "Finishing polish: gloss it leads to on light surfaces", 90, 30, 110),
  REACH_FINISHING_DARK(Topic.STAGES, "Finishing polish: the same on dark ones", 91, 30, 110),
  LEFT_FINISHING(
      Topic.STAGES,
      "Finishing polish: share of the way there that a pass leaves",
      0.55,
      0.01,
      0.95),
  REACH_ONE_STEP_LIGHT(
      Topic.STAGES, "One-step polish: gloss it leads to on light surfaces", 87, 30, 110),
  REACH_ONE_STEP_DARK(Topic.STAGES, "One-step polish: the same on dark ones", 86, 30, 110),
  LEFT_ONE_STEP(
      Topic.STAGES, "One-step polish: share of the way there that a pass leaves", 0.35, 0.01, 0.95),
  REACH_MEDIUM_LIGHT(
      Topic.STAGES, "Medium compound: gloss it leads to on light surfaces", 84, 30, 110),
  REACH_MEDIUM_DARK(Topic.STAGES, "Medium compound: the same on dark ones", 80, 30, 110),
  LEFT_MEDIUM(
      Topic.STAGES, "Medium compound: share of the way there that a pass leaves", 0.30, 0.01, 0.95),
  REACH_HEAVY_LIGHT(
      Topic.STAGES, "Heavy compound: gloss it leads to on light surfaces", 80, 30, 110),
  REACH_HEAVY_DARK(Topic.STAGES, "Heavy compound: the same on dark ones", 74, 30, 110),
  LEFT_HEAVY(
      Topic.STAGES, "Heavy compound: share of the way there that a pass leaves", 0.20, 0.01, 0.95),
  REACH_SANDED_LIGHT(
      Topic.STAGES, "Paper and compound: gloss it leads to on light surfaces", 82, 30, 110),
  REACH_SANDED_DARK(Topic.STAGES, "Paper and compound: the same on dark ones", 76, 30, 110),
  LEFT_SANDED(
      Topic.STAGES,
      "Paper and compound: share of the way there that a pass leaves",
      0.10,
      0.01,
      0.95),
  LIMIT_YOUNG(Topic.STAGES, "Gelcoat under 5 years: highest gloss", 90, 30, 110),
  LIMIT_MIDDLING(Topic.STAGES, "Gelcoat of 5 to 15 years: highest gloss", 87, 30, 110),
  LIMIT_OLD(Topic.STAGES, "Older gelcoat: highest gloss", 83, 30, 110),
  RESERVE_LIGHT(Topic.STAGES, "Gelcoat kept in reserve on light flats, µm", 250, 0, 1000),
  RESERVE_DARK(Topic.STAGES, "Gelcoat kept in reserve on dark flats, µm", 300, 0, 1000),

  MINUTES_FINISHING(Topic.EFFORT, "Finishing polish: minutes a pass", 4, 0.1, 120),
  MINUTES_ONE_STEP(Topic.EFFORT, "One-step polish: minutes a pass", 6, 0.1, 120),
  MINUTES_MEDIUM(Topic.EFFORT, "Medium compound: minutes a pass", 6, 0.1, 120),
  MINUTES_HEAVY(Topic.EFFORT, "Heavy compound: minutes a pass", 8, 0.1, 120),
  MINUTES_SANDED(Topic.EFFORT, "Wet sanding: minutes a pass", 12, 0.1, 120),
  MINUTES_WASH(Topic.EFFORT, "Washing: minutes", 1.2, 0.1, 120),
  MINUTES_DECONTAMINATE(Topic.EFFORT, "Decontaminating: minutes", 1.3, 0.1, 120),
  MINUTES_PROTECT(Topic.EFFORT, "Protecting: minutes", 3, 0.1, 120),
  ML_FINISHING(Topic.EFFORT, "Finishing polish: ml a pass", 8, 0.1, 200),
  ML_ONE_STEP(Topic.EFFORT, "One-step polish: ml a pass", 10, 0.1, 200),
  ML_MEDIUM(Topic.EFFORT, "Medium compound: ml a pass", 10, 0.1, 200),
  ML_HEAVY(Topic.EFFORT, "Heavy compound: ml a pass", 12, 0.1, 200),
  ML_PROTECT(Topic.EFFORT, "Protection: ml", 6, 0.1, 200),
  ML_WASH(Topic.EFFORT, "Washing: ml as mixed with water", 200, 1, 5000),
  ML_DECONTAMINATE(Topic.EFFORT, "Decontaminating: ml as mixed with water", 40, 0.1, 1000);

  /** What a value is about. */
  public enum Topic implements Coded {
    RENEWAL("renewal", "When to renew", "Chance of bare one accepts"),
    LIVES("lives", "Lives of coats", "Months, before any was seen"),
    WEAR("wear", "Faster wear", "Factors on light topsides"),
    COVERS("covers", "Covers", "Share of the sun let through"),
    WASHES("washes", "Washing", "Days of wear taken off"),
    LOOKS("looks", "Trust in looks", "How often one misleads"),
    STAGES("stages", "Correction", "What polishing reaches"),
    EFFORT("effort", "Minutes and product", "For a square metre");

    private final String code;
    private final String words;
    private final String about;

    Topic(String code, String words, String about) {
      this.code = code;
      this.words = words;
      this.about = about;
    }

    @Override
    public String code() {
      return code;
    }

    @Override
    public String words() {
      return words;
    }

    /** Whether the dates of boats hang on its values. */
    public boolean dates() {
      return this != STAGES && this != EFFORT;
    }

    /** What its values say. */
    public String about() {
      return about;
    }

    /** The values about it. */
    public List<PracticeValue> all() {
      return Arrays.stream(PracticeValue.values()).filter(v -> v.topic == this).toList();
    }
  }

  /** Where every standard comes from. */
  public static final String ORIGIN = "common practice, no source";

  private final Topic topic;
  private final String words;
  private final double standard;
  private final double lowest;
  private final double highest;

  PracticeValue(Topic topic, String words, double standard, double lowest, double highest) {
    this.topic = topic;
    this.words = words;
    this.standard = standard;
    this.lowest = lowest;
    this.highest = highest;
  }

  @Override
  public String code() {
    return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
  }

  @Override
  public String words() {
    return words;
  }

  public Topic topic() {
    return topic;
  }

  /** What it is where nobody set it. */
  public double standard() {
    return standard;
  }

  public double lowest() {
    return lowest;
  }

  public double highest() {
    return highest;
  }
}
