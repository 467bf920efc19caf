package hullalmanac.sample;

import hullalmanac.core.record.Bottle;
import hullalmanac.core.record.Hazard;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.ProductKind;
import hullalmanac.core.record.WashStrength;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/** Products by kind, with labels that flatter. */
final class SampleProducts {
  private SampleProducts() {}

  static void add(Draft d) {
    coat(
        d,
        "cleaner-wax-f",
        "cleaner wax F",
        ProductKind.CLEANER_WAX,
        3,
        4,
        Hazard.WAX,
        Hazard.ABRASIVE);
    coat(
        d,
        "carnauba-a",
        "carnauba paste A",
        ProductKind.CARNAUBA,
        4,
        4,
        Hazard.WAX,
        Hazard.SOLVENT);
    coat(d, "sealant-b", "polymer sealant B", ProductKind.POLYMER_SEALANT, 12, 12, Hazard.SOLVENT);
    coat(
        d,
        "coating-c",
        "silica coating C",
        ProductKind.SILICA_COATING,
        36,
        48,
        Hazard.SOLVENT,
        Hazard.SILICONE);
    coat(
        d,
        "coating-g",
        "silica coating G, thin",
        ProductKind.SILICA_COATING_THIN,
        24,
        24,
        Hazard.SILICONE);
    coat(d, "silica-spray-d", "silica spray D", ProductKind.SILICA_SPRAY, 6, 2, Hazard.SILICONE);
    coat(d, "spray-sealant-e", "spray sealant E", ProductKind.SPRAY_SEALANT, 0, 1, Hazard.SILICONE);
    fixedLives(d);
    cleaners(d);
    d.products.values().stream()
        .filter(p -> p.kind().coatClass().isPresent())
        .toList()
        .forEach(p -> bottles(d, p));
  }

  private static void fixedLives(Draft d) {
    other(
        d,
        "teak-sealer",
        "teak sealer H",
        ProductKind.TEAK_SEALER,
        Optional.empty(),
        Optional.empty());
    other(
        d,
        "vinyl-care",
        "vinyl protectant K",
        ProductKind.VINYL_PROTECTANT,
        Optional.empty(),
        Optional.empty());
    other(
        d,
        "canvas-proofer",
        "canvas proofer L",
        ProductKind.CANVAS_PROOFER,
        Optional.empty(),
        Optional.empty());
    other(
        d,
        "glass-coat",
        "glass coat M",
        ProductKind.GLASS_COAT,
        Optional.empty(),
        Optional.empty());
  }

  private static void cleaners(Draft d) {
    other(
        d,
        "soap-mild",
        "mild soap N",
        ProductKind.SOAP,
        Optional.of(WashStrength.MILD),
        Optional.of(100));
    other(
        d,
        "soap-strong",
        "strong soap P",
        ProductKind.SOAP,
        Optional.of(WashStrength.STRONG),
        Optional.of(20));
    other(
        d,
        "decon-acid",
        "acid decontaminant Q",
        ProductKind.DECONTAMINANT,
        Optional.of(WashStrength.ACID_OR_ALKALI),
        Optional.of(4),
        Hazard.ACID);
    other(
        d,
        "compound-r",
        "medium compound R",
        ProductKind.COMPOUND,
        Optional.empty(),
        Optional.empty(),
        Hazard.ABRASIVE);
    other(
        d,
        "polish-s",
        "finishing polish S",
        ProductKind.POLISH,
        Optional.empty(),
        Optional.empty(),
        Hazard.ABRASIVE);
  }

  private static void coat(
      Draft d,
      String key,
      String name,
      ProductKind kind,
      int label,
      int cureHours,
      Hazard... hazards) {
    d.products.put(
        key,
        new Product(
            d.id(),
            key,
            name,
            kind,
            label == 0 ? Optional.empty() : Optional.of((double) label),
            key.equals("silica-spray-d"),
            kind == ProductKind.SILICA_COATING ? Optional.of(60.0) : Optional.empty(),
            Optional.empty(),
            false,
            false,
            new TreeSet<>(List.of(hazards)),
            new Product.Handling(
                Optional.empty(),
                Optional.empty(),
                Optional.of(cureHours),
                Optional.of(8),
                Optional.of(30),
                Optional.of(80),
                Optional.empty(),
                Optional.empty()),
            "Invented, like everything here."));
  }

  private static void other(
      Draft d,
      String key,
      String name,
      ProductKind kind,
      Optional<WashStrength> wash,
      Optional<Integer> partsWater,
      Hazard... hazards) {
    boolean acid = kind == ProductKind.DECONTAMINANT;
    d.products.put(
        key,
        new Product(
            d.id(),
            key,
            name,
            kind,
            Optional.empty(),
            false,
            Optional.empty(),
            wash,
            key.equals("soap-strong"),
            false,
            new TreeSet<>(List.of(hazards)),
            new Product.Handling(
                acid ? Optional.of(3) : Optional.empty(),
                acid ? Optional.of(5) : Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                partsWater,
                Optional.empty()),
            ""));
  }

  private static void bottles(Draft d, Product product) {
    for (int year = 2022; year <= 2026; year++) {
      String key = product.key() + "-" + year;
      d.bottles.put(
          key,
          new Bottle(
              d.id(),
              key,
              product.id(),
              "B" + year % 100 + d.between(100, 999),
              Optional.of(LocalDate.of(year, 3, d.between(1, 20))),
              Optional.of(LocalDate.of(year + 2, 3, 1)),
              Optional.of(500),
              Optional.of(year == 2026 ? 420 : 0),
              year == 2026 ? Optional.of(Draft.AS_OF.minusDays(7)) : Optional.empty()));
    }
  }
}
