package hullalmanac.core.report;

import hullalmanac.core.record.Coat;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Lookups;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.StepKind;
import hullalmanac.core.record.Surface;
import hullalmanac.core.record.Texts;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.WorkState;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What was done in a visit, in words: a sentence for surfaces treated alike, such as "Washed,
 * polished, protected with polymer sealant B: topsides, transom".
 */
final class WorkWords {
  private final Lookups lookups;
  private final List<Surface> hers;
  private final Set<Id<Surface>> left;
  private final List<Step> steps;
  private final List<Coat> coats;

  /**
   * @param hers surfaces of the boat
   * @param steps of the visit, in their order
   * @param coats laid in the visit
   */
  WorkWords(Lookups lookups, Visit visit, List<Surface> hers, List<Step> steps, List<Coat> coats) {
    this.lookups = lookups;
    this.hers = hers.stream().sorted(SurfaceNames.ORDER).toList();
    this.steps = steps;
    this.coats = coats;
    left =
        visit.surfaces().stream()
            .filter(p -> p.state() != WorkState.DONE)
            .map(Visit.Part::surface)
            .collect(Collectors.toSet());
  }

  List<String> sentences() {
    String everywhere = verbs(steps.stream().filter(WorkWords::whole).toList(), List.of());
    Map<String, List<Surface>> alike = new LinkedHashMap<>();
    for (Surface s : hers) {
      String verbs =
          left.contains(s.id())
              ? everywhere
              : verbs(
                  steps.stream().filter(x -> whole(x) || x.surfaces().contains(s.id())).toList(),
                  coats.stream().filter(c -> c.surface().equals(s.id())).toList());
      alike.computeIfAbsent(verbs, v -> new ArrayList<>()).add(s);
    }
    alike.remove("");
    boolean rest = alike.remove(everywhere) != null || (hers.isEmpty() && !everywhere.isEmpty());
    List<String> sentences = new ArrayList<>();
    alike.forEach((verbs, on) -> sentences.add(sentence(verbs, SurfaceNames.of(on))));
    if (rest) {
      sentences.add(
          sentence(everywhere, alike.isEmpty() ? "the whole boat" : "the rest of the boat"));
    }
    return sentences;
  }

  private static String sentence(String verbs, String where) {
    return Texts.capital(verbs) + ": " + where;
  }

  private static boolean whole(Step step) {
    return step.surfaces().isEmpty();
  }

  /** Looking is said only where nothing else was done. */
  private String verbs(List<Step> done, List<Coat> laid) {
    List<String> verbs =
        Stream.concat(
                done.stream()
                    .filter(s -> s.kind() != StepKind.INSPECT)
                    .filter(s -> laid.isEmpty() || !protects(s) || s.product().isPresent())
                    .map(this::verb),
                laid.stream().map(this::verb))
            .distinct()
            .toList();
    return verbs.isEmpty() && !done.isEmpty() ? "looked over" : String.join(", ", verbs);
  }

  private static boolean protects(Step step) {
    return step.kind() == StepKind.PROTECT || step.kind() == StepKind.TOP;
  }

  private String verb(Coat coat) {
    return (coat.over().isPresent() ? "topped" : "protected") + with(Optional.of(coat.product()));
  }

  private String verb(Step step) {
    return switch (step.kind()) {
      case INSPECT -> "looked over";
      case WASH -> "washed";
      case DECONTAMINATE -> "decontaminated";
      case CUT -> "cut";
      case POLISH -> "polished";
      case PROTECT -> "protected" + with(step.product());
      case TOP -> "topped" + with(step.product());
      case OTHER -> "worked on";
    };
  }

  private String with(Optional<Id<Product>> product) {
    return product.map(id -> " with " + lookups.product(id).name()).orElse("");
  }
}
