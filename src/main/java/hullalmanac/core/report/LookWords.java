package hullalmanac.core.report;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Coat;
import hullalmanac.core.record.CoatEnd;
import hullalmanac.core.record.EndState;
import hullalmanac.core.record.Finding;
import hullalmanac.core.record.Geometry;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Lookups;
import hullalmanac.core.record.Observation;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.Texts;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.WaterBehaviour;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** What water and gloss said in a visit: before a coat was renewed, and when somebody looked. */
final class LookWords {
  private final Lookups lookups;
  private final Map<Id<Surface>, List<Coat>> coats;
  private final Map<Id<Visit>, List<Finding>> findings;

  LookWords(Almanac almanac, Lookups lookups) {
    this.lookups = lookups;
    coats = almanac.coats().stream().collect(Collectors.groupingBy(Coat::surface));
    findings =
        almanac.findings().stream()
            .filter(f -> f.visit().isPresent())
            .collect(Collectors.groupingBy(f -> f.visit().get()));
  }

  /**
   * Sentences, none where nobody looked.
   *
   * @param hers surfaces of the boat
   */
  List<String> sentences(Visit visit, List<Surface> hers) {
    List<String> sentences = new ArrayList<>();
    water(before(visit, hers)).ifPresent(w -> sentences.add("Before: " + w));
    List<Finding> looks = findings.getOrDefault(visit.id(), List.of());
    List<String> seen = new ArrayList<>();
    water(looked(looks)).ifPresent(seen::add);
    gloss(looks).ifPresent(seen::add);
    if (!seen.isEmpty()) {
      sentences.add(Texts.capital(String.join("; ", seen)));
    }
    return sentences;
  }

  /** What the coats that this visit renewed did just before. */
  private Map<WaterBehaviour, List<Surface>> before(Visit visit, List<Surface> hers) {
    Map<WaterBehaviour, List<Surface>> before = new EnumMap<>(WaterBehaviour.class);
    for (Surface s : hers) {
      List<Coat> all = coats.getOrDefault(s.id(), List.of());
      Set<LocalDate> renewedOn =
          all.stream()
              .filter(c -> c.visit().equals(Optional.of(visit.id())) && c.over().isEmpty())
              .flatMap(c -> c.laidOn().stream())
              .collect(Collectors.toSet());
      all.stream()
          .flatMap(c -> c.ending().stream())
          .filter(e -> e.how() == CoatEnd.RENEWED && renewedOn.contains(e.on()))
          .flatMap(e -> behaviour(e.seen()).stream())
          .findFirst()
          .ifPresent(w -> before.computeIfAbsent(w, x -> new ArrayList<>()).add(s));
    }
    return before;
  }

  private static Optional<WaterBehaviour> behaviour(EndState seen) {
    return switch (seen) {
      case BEADS -> Optional.of(WaterBehaviour.BEADS);
      case SHEETS -> Optional.of(WaterBehaviour.SHEETS);
      case FLAT -> Optional.of(WaterBehaviour.FLAT);
      case NOT_LOOKED -> Optional.empty();
    };
  }

  private Map<WaterBehaviour, List<Surface>> looked(List<Finding> looks) {
    Map<WaterBehaviour, List<Surface>> looked = new EnumMap<>(WaterBehaviour.class);
    for (Finding f : looks) {
      if (f.seen() instanceof Observation.WaterSeen w) {
        looked
            .computeIfAbsent(w.behaviour(), x -> new ArrayList<>())
            .add(lookups.surface(f.surface()));
      }
    }
    return looked;
  }

  private static Optional<String> water(Map<WaterBehaviour, List<Surface>> seen) {
    List<String> parts = new ArrayList<>();
    seen.forEach(
        (behaviour, on) -> {
          String did =
              switch (behaviour) {
                case BEADS -> "beaded";
                case SHEETS -> "sheeted";
                case FLAT -> "lay flat";
              };
          parts.add(did + " on " + SurfaceNames.of(on));
        });
    return parts.isEmpty() ? Optional.empty() : Optional.of("water " + String.join("; ", parts));
  }

  /** Gloss at 60°, rounded: the last reading of a surface in the visit. */
  private Optional<String> gloss(List<Finding> looks) {
    Map<Surface, Long> gloss = new LinkedHashMap<>();
    looks.stream()
        .filter(f -> f.seen() instanceof Observation.GlossRead g && g.geometry() == Geometry.DEG_60)
        .sorted(java.util.Comparator.comparing(Finding::day).thenComparing(Finding::key))
        .forEach(
            f ->
                gloss.put(
                    lookups.surface(f.surface()),
                    Math.round(((Observation.GlossRead) f.seen()).mean())));
    String text =
        gloss.entrySet().stream()
            .sorted(Map.Entry.comparingByKey(SurfaceNames.ORDER))
            .map(e -> e.getValue() + " on " + SurfaceNames.of(List.of(e.getKey())))
            .collect(Collectors.joining(", "));
    return text.isEmpty() ? Optional.empty() : Optional.of("gloss " + text);
  }
}
