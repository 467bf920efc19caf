package hullalmanac.core.report;

import hullalmanac.core.finish.Plan;
import hullalmanac.core.finish.Stage;
import hullalmanac.core.record.Hazard;
import hullalmanac.core.record.Product;
import java.util.ArrayList;
import java.util.List;

/**
 * Something that can hurt someone or spoil a boat, said where work is planned, done and printed. It
 * never takes the place of the product's own label and data sheet, the harbour's rules or local
 * codes.
 *
 * @param source where it comes from
 */
public record Caution(String text, String source) {
  /** Said after every list of cautions. */
  public static final String LABEL_FIRST =
      "The product’s own label and data sheet, the harbour’s rules and local codes come first.";

  private static final String PRACTICE = "common practice, no source";
  private static final String GHS = "UN GHS hazard statements";
  private static final String CHLORINE =
      "CDC, MMWR: Chlorine Gas Toxicity from Mixture of Bleach with Other Cleaning Products";

  /** The cautions of a product, by what it contains and does. */
  public static List<Caution> of(Product product) {
    List<Caution> cautions = new ArrayList<>();
    product.hazards().forEach(h -> cautions.addAll(of(h)));
    boolean slippery =
        product.hazards().contains(Hazard.WAX)
            || product.hazards().contains(Hazard.SILICONE)
            || product.kind().coatClass().isPresent();
    if (slippery && !product.nonSlip()) {
      cautions.add(
          new Caution(
              "Slippery: not on non-skid, swim platforms, ladders, seats or wheels.", PRACTICE));
    }
    return cautions.stream().distinct().toList();
  }

  /** The cautions of a plan of correction, by its stages and what is known of the surface. */
  public static List<Caution> of(Plan plan) {
    if (plan.stages().isEmpty()) {
      return List.of();
    }
    List<Caution> cautions = new ArrayList<>();
    cautions.add(
        practice(
            "Test spot before any cut. Edges and corners are thin: tape them. Do not polish off a"
                + " hull number or lettering."));
    if (plan.stages().stream().anyMatch(Stage::sands)) {
      cautions.add(
          practice(
              "Wet sanding is for trained hands only; keep its slurry where the harbour lets it"
                  + " go."));
    }
    switch (plan.left().basis()) {
      case BY_AGE, NO_AGE ->
          cautions.add(
              practice(
                  "The past of this surface is not known: it may be thinner than reckoned. Measure"
                      + " it where you can."));
      case THIN_FILM ->
          cautions.add(
              practice(
                  "What is cut through cannot be polished back: painting is for a qualified yard."));
      default -> {
        // what was measured or written down needs no word more
      }
    }
    cautions.add(practice("Keep a cap on the hours at the machine in a day."));
    return cautions;
  }

  private static Caution practice(String text) {
    return new Caution(text, PRACTICE);
  }

  private static List<Caution> of(Hazard hazard) {
    return switch (hazard) {
      case ACID ->
          List.of(
              new Caution(
                  "Acid: never on mirrored or tinted glass, bare aluminium, anodising, chrome, anodes, galvanised"
                      + " trailers or teak. Acid into water, never the other way.",
                  GHS + " H290, H314"),
              new Caution("Never with hypochlorite: the mixture gives off chlorine.", CHLORINE));
      case FLUORIDE ->
          List.of(
              new Caution(
                  "Fluoride: burns may show late. Have the first aid its label names at hand.",
                  GHS + " H314"));
      case HYPOCHLORITE -> List.of(new Caution("Never with acids or with ammonia.", CHLORINE));
      case AMMONIA ->
          List.of(
              new Caution("Never with hypochlorite.", CHLORINE),
              new Caution("Never on acrylic or clear vinyl.", PRACTICE));
      case SOLVENT ->
          List.of(
              new Caution(
                  "Solvent: never in closed covers or cabins; keep from sparks and flames.",
                  GHS + " H225, H226, H336"),
              new Caution("Never on acrylic or clear vinyl.", PRACTICE));
      case SILICONE ->
          List.of(
              new Caution(
                  "Not where a repaint, a repair or antifouling is planned: paint will not hold.",
                  PRACTICE));
      case ABRASIVE ->
          List.of(
              new Caution(
                  "Takes gelcoat off: test spot first, tape edges and corners; not on urethane paint or wraps unless"
                      + " their maker allows it.",
                  PRACTICE));
      case WAX -> List.of();
      case ISOCYANATE ->
          List.of(
              new Caution(
                  "Isocyanate: may cause allergy or asthma when breathed in; trained hands only.",
                  GHS + " H334"));
      case OILY_RAGS ->
          List.of(
              new Caution(
                  "Oily rags heat by themselves: under water in a closed metal tin.", PRACTICE));
    };
  }
}
