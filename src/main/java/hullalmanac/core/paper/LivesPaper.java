package hullalmanac.core.paper;

import hullalmanac.core.life.LivesSeen;
import hullalmanac.core.life.ProductLives;
import hullalmanac.core.life.Survival;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Cover;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.Texts;
import hullalmanac.core.report.DateWords;
import hullalmanac.core.report.MonthWords;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** How long the products of a record really last: what was seen, the curve, and by harbour. */
public final class LivesPaper {
  private static final int FEW = 6;

  private LivesPaper() {}

  /**
   * Gathers the lives of products.
   *
   * @param today the day from which it is seen
   */
  public static Paper of(Almanac almanac, List<ProductLives> lives, LocalDate today) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Words("By the coats on record up to " + DateWords.dated(today) + "."));
    if (lives.isEmpty()) {
      blocks.add(new Block.Words("No product whose coats are forecast is on the shelf yet."));
    }
    lives.forEach(l -> blocks.add(new Block.Kept(of(l))));
    blocks.add(
        new Block.Note(
            "Months of the reference berth: light topsides afloat in an open slip. Line: what the"
                + " forecast uses; steps: what was seen, between their dotted ends 95 times in 100;"
                + " dashed: the label. "
                + Paper.FORECAST));
    return Paper.of(almanac.business(), "How long products last", "", blocks);
  }

  private static List<Block> of(ProductLives lives) {
    List<Block> blocks = new ArrayList<>();
    Product product = lives.product();
    blocks.add(new Block.Heading(2, Texts.capital(product.name())));
    blocks.add(new Block.Words(seen(lives.seen()) + label(product)));
    blocks.add(
        new Block.Drawing(
            new Block.Surviving(lives.survival(), product.labelMonths()), alternative(lives)));
    Map<String, Map<Cover, String>> places = new LinkedHashMap<>();
    lives
        .places()
        .forEach(
            p ->
                places
                    .computeIfAbsent(p.harbour().name(), h -> new LinkedHashMap<>())
                    .put(p.cover(), MonthWords.of(p.months())));
    List<Cover> covers = lives.places().stream().map(ProductLives.Place::cover).distinct().toList();
    if (!places.isEmpty()) {
      List<Block.Column> columns = new ArrayList<>();
      columns.add(Block.Column.words("Half last so long at"));
      covers.forEach(c -> columns.add(Block.Column.words(Texts.capital(c.words()), 25)));
      blocks.add(
          new Block.Table(
              "how long half of the coats last, by harbour",
              columns,
              places.entrySet().stream().map(e -> row(e.getKey(), e.getValue(), covers)).toList(),
              List.of()));
    }
    return blocks;
  }

  private static List<String> row(String harbour, Map<Cover, String> months, List<Cover> covers) {
    List<String> row = new ArrayList<>();
    row.add(harbour);
    covers.forEach(c -> row.add(months.getOrDefault(c, "")));
    return row;
  }

  private static String seen(LivesSeen seen) {
    if (seen.tooFew()) {
      return "Too few to say: "
          + (seen.coats() == 0
              ? "no coat tells anything yet."
              : seen.coats() + " on record tell anything, " + seen.lapsed() + " seen bare.");
    }
    return "Of "
        + seen.coats()
        + " coats "
        + seen.lapsed()
        + " have been seen bare; half last "
        + MonthWords.of(seen.middleMonths())
        + ".";
  }

  private static String label(Product product) {
    return product.labelMonths().map(m -> " The label says " + MonthWords.of(m) + ".").orElse("");
  }

  private static String alternative(ProductLives lives) {
    return "Chart of how many in 10 coats of "
        + lives.product().name()
        + " still protect: "
        + few(lives.survival().curve()).stream()
            .map(p -> Math.round(10 * p.surviving()) + " after " + MonthWords.of(p.months()))
            .collect(Collectors.joining(", "))
        + "."
        + label(lives.product());
  }

  /** A few points that tell the course of a curve. */
  private static List<Survival.Point> few(List<Survival.Point> curve) {
    int step = Math.max(1, curve.size() / FEW);
    return IntStream.range(1, curve.size())
        .filter(i -> i % step == 0)
        .mapToObj(curve::get)
        .toList();
  }
}
