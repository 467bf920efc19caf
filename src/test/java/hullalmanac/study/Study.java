package hullalmanac.study;

import hullalmanac.core.exposure.WearPractice;
import hullalmanac.core.record.ProductKind;
import hullalmanac.study.generator.SecondLaw.Fleet;
import hullalmanac.study.generator.SecondLaw.Plan;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/**
 * Holds the forecast against fleets under the second law and writes what came of it: {@code mvn
 * -Pstudy verify}. Arguments: the page to write, then how many fleets, boats and seasons.
 */
public final class Study {
  private static final List<ProductKind> PRODUCTS =
      List.of(
          ProductKind.CARNAUBA,
          ProductKind.SILICA_SPRAY,
          ProductKind.POLYMER_SEALANT,
          ProductKind.SILICA_COATING);

  private final int fleets;
  private final int boats;
  private final int seasons;

  private Study(int fleets, int boats, int seasons) {
    this.fleets = fleets;
    this.boats = boats;
    this.seasons = seasons;
  }

  /**
   * What came of one fleet.
   *
   * @param byClock by the forecast as it is
   * @param byCalendar by one that learns months and knows no weather
   * @param blind errors of the best that does not look
   */
  record One(List<Score> byClock, List<Score> byCalendar, List<Double> blind) {}

  /** Writes the page and its picture. */
  public static void main(String[] args) throws IOException {
    Path page = Path.of(args[0]);
    Study study =
        new Study(Integer.parseInt(args[1]), Integer.parseInt(args[2]), Integer.parseInt(args[3]));
    List<One> flattered = study.run(false, true);
    List<One> waterOnly = study.run(false, false);
    List<One> honest = study.run(true, true);
    Files.writeString(page, study.page(flattered, waterOnly, honest));
    StudyPicture.write(page.resolveSibling("study.png"), PRODUCTS, flattered, waterOnly);
  }

  private List<One> run(boolean honestLabels, boolean gloss) {
    return IntStream.rangeClosed(1, fleets)
        .parallel()
        .mapToObj(seed -> one(new Plan(seed, boats, seasons, honestLabels, gloss)))
        .toList();
  }

  private static One one(Plan plan) {
    Fleet fleet = Fleets.of(plan);
    return new One(
        Fleets.scores(fleet, WearPractice.usual()),
        Fleets.scores(fleet, Fleets.calendar()),
        Fleets.bestBlindErrors(fleet));
  }

  private String page(List<One> flattered, List<One> waterOnly, List<One> honest) {
    StringBuilder out = new StringBuilder();
    out.append(
        String.format(
            Locale.ROOT,
            """
            # Does it work? A study on invented fleets

            Written by `mvn -Pstudy verify`. Each of %d fleets has %d boats and is lived through for %d seasons under a
            law that is not the model's (`src/test/java/hullalmanac/study/generator`, written from a description by someone
            who had not read the model): Weibull lives, an effect of each boat with standard deviation 0.3 in ln L, gloss
            that falls along a curve, every factor of wear up to a quarter off, a quarter of the coats never looked at,
            complaints, and visits made when the forecast asks for them. On a random day of the last season every coat in
            service is scored. Standard errors are over fleets. Invented fleets show that the reckoning is sound, not that
            its practice values are right: for that there is only a business's own record.

            ## Does the 80 %% range hold the true day?

            Aim: 75 to 85 %%.

            | fleets | all | %s |
            | --- | --- | --- | --- | --- | --- |
            %s%s%s
            ![Share of true days in the range](study.png)

            ## How far off is the middle date?

            Median over coats of the days between the date and the true day, then the mean over fleets. *Labels*: so many
            months after laying as the label says. *Months without the clock*: the same learning, by the calendar. *Best
            without looking*: someone who knows the true wear, the true median of each product and each boat's effect, but
            has not looked at the coat.

            | fleets | forecast | labels | months without the clock | best without looking | forecast / labels |
            | --- | --- | --- | --- | --- | --- |
            %s%s%s
            """,
            fleets,
            boats,
            seasons,
            String.join(" | ", PRODUCTS.stream().map(ProductKind::words).toList()),
            coverage("labels flatter by 10 to 45 %", flattered),
            coverage("the same, findings of water only", waterOnly),
            coverage("honest labels", honest),
            worth("labels flatter by 10 to 45 %", flattered),
            worth("the same, findings of water only", waterOnly),
            worth("honest labels", honest)));
    return out.toString();
  }

  private static String coverage(String name, List<One> all) {
    StringBuilder row = new StringBuilder("| ").append(name).append(" | ");
    row.append(percent(Estimate.over(all, one -> held(one.byClock()))));
    for (ProductKind kind : PRODUCTS) {
      row.append(" | ").append(percent(Estimate.over(all, one -> held(of(kind, one)))));
    }
    return row.append(" |\n").toString();
  }

  private static String worth(String name, List<One> all) {
    Estimate forecast = Estimate.over(all, one -> error(one.byClock(), Score::error));
    Estimate labels = Estimate.over(all, one -> error(one.byClock(), Score::labelError));
    Estimate calendar = Estimate.over(all, one -> error(one.byCalendar(), Score::error));
    Estimate blind = Estimate.over(all, one -> Fleets.median(one.blind()));
    Estimate ratio =
        Estimate.over(
            all,
            one -> error(one.byClock(), Score::error) / error(one.byClock(), Score::labelError));
    return String.format(
        Locale.ROOT,
        "| %s | %s | %s | %s | %s | %.2f ± %.2f |%n",
        name,
        days(forecast),
        days(labels),
        days(calendar),
        days(blind),
        ratio.mean(),
        ratio.error());
  }

  static List<Score> of(ProductKind kind, One one) {
    return one.byClock().stream().filter(s -> s.product() == kind).toList();
  }

  static double held(List<Score> scores) {
    return scores.stream().mapToDouble(s -> s.held() ? 1 : 0).average().orElseThrow();
  }

  private static double error(List<Score> scores, ToDoubleFunction<Score> of) {
    return Fleets.median(scores.stream().map(of::applyAsDouble).toList());
  }

  private static String percent(Estimate e) {
    return String.format(Locale.ROOT, "%.1f ± %.1f %%", 100 * e.mean(), 100 * e.error());
  }

  private static String days(Estimate e) {
    return String.format(Locale.ROOT, "%.0f ± %.0f days", e.mean(), e.error());
  }
}
