package hullalmanac.ui.widget;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.chart.HistoryChart;
import hullalmanac.chart.LivesChart;
import hullalmanac.chart.StepsDrawing;
import hullalmanac.core.life.GlossPoint;
import hullalmanac.core.life.Survival;
import hullalmanac.core.life.fit.SurvivalStep;
import hullalmanac.core.record.WaterBehaviour;
import hullalmanac.core.report.BoatTimeline;
import hullalmanac.core.report.BoatTimeline.CoatMark;
import hullalmanac.core.report.BoatTimeline.GlossDot;
import hullalmanac.core.report.BoatTimeline.Lane;
import hullalmanac.core.report.BoatTimeline.Span;
import hullalmanac.core.report.BoatTimeline.WaterMark;
import hullalmanac.core.report.DateSteps;
import hullalmanac.fixture.Difference;
import hullalmanac.present.Look;
import hullalmanac.ui.theme.Theme;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.swing.SwingUtilities;
import javax.swing.UIManager;
import org.jfree.chart.JFreeChart;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Paints each chart with and without one thing: what comes must stand out by 3 to 1 from what lies
 * there without it; W3C, WCAG 2.1, success criterion 1.4.11 "Non-text contrast". Grids and frames
 * only adorn, and are exempt.
 */
@Tag("slow")
class ChartLinesTest {
  private static final LocalDate FROM = LocalDate.of(2024, 5, 1);
  private static final LocalDate TODAY = LocalDate.of(2026, 5, 1);
  private static final LocalDate UNTIL = LocalDate.of(2027, 5, 1);
  private static final int WIDTH = 900;
  private static final int LANE = 150;
  private static final int HUES = 6;

  /** What is drawn of a surface in one place of its own; nothing at all to begin with. */
  private record Drawn(
      List<CoatMark> coats,
      List<GlossDot> gloss,
      List<GlossPoint> model,
      List<WaterMark> water,
      Optional<LocalDate> renewBy,
      Optional<Span> likely) {
    static Drawn nothing() {
      return new Drawn(
          List.of(), List.of(), List.of(), List.of(), Optional.empty(), Optional.empty());
    }

    Drawn gloss(GlossDot... dots) {
      return new Drawn(coats, List.of(dots), model, water, renewBy, likely);
    }

    Drawn model(GlossPoint... points) {
      return new Drawn(coats, gloss, List.of(points), water, renewBy, likely);
    }

    Drawn water(WaterBehaviour behaviour) {
      return new Drawn(
          coats, gloss, model, List.of(new WaterMark(day(9), behaviour, "")), renewBy, likely);
    }

    Lane lane() {
      return new Lane("Topsides", coats, gloss, model, water, renewBy, likely);
    }
  }

  /** So many months after the first day shown. */
  private static LocalDate day(int months) {
    return FROM.plusMonths(months);
  }

  static Stream<Arguments> grounds() {
    return Stream.of(Look.Tint.LIGHT, Look.Tint.DARK, Look.Tint.HIGH_CONTRAST)
        .flatMap(
            tint ->
                Stream.of(false, true)
                    .flatMap(
                        ashore ->
                            IntStream.range(0, HUES)
                                .mapToObj(hue -> Arguments.of(tint, ashore, hue))));
  }

  @AfterAll
  static void light() throws Exception {
    theme(Look.Tint.LIGHT);
  }

  private static void theme(Look.Tint tint) throws Exception {
    SwingUtilities.invokeAndWait(() -> Theme.start(new Look(tint, 1f, false, false)));
  }

  private static BufferedImage image(int height, Consumer<Graphics2D> draw) {
    BufferedImage image = new BufferedImage(WIDTH, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    g.setColor(UIManager.getColor("Panel.background"));
    g.fillRect(0, 0, WIDTH, height);
    draw.accept(g);
    g.dispose();
    return image;
  }

  private static BufferedImage image(int height, JFreeChart chart) {
    return image(height, g -> chart.draw(g, new Rectangle2D.Double(0, 0, WIDTH, height)));
  }

  /** The picture of a boat whose last surface is drawn, in the hue of its place. */
  private static BufferedImage history(Drawn drawn, boolean ashore, int hue) {
    List<Lane> lanes = new ArrayList<>();
    IntStream.range(0, hue).forEach(i -> lanes.add(Drawn.nothing().lane()));
    lanes.add(drawn.lane());
    List<Span> layUps = ashore ? List.of(new Span(FROM, UNTIL)) : List.of();
    BoatTimeline timeline = new BoatTimeline(FROM, UNTIL, TODAY, layUps, lanes);
    return image(LANE * (hue + 1) + 40, HistoryChart.of(timeline, Theme.chartColours()));
  }

  private static Difference more(Drawn before, Drawn after, boolean ashore, int hue) {
    return new Difference(history(before, ashore, hue), history(after, ashore, hue));
  }

  private static GlossPoint point(LocalDate day) {
    return new GlossPoint(day, 80, 76, 84, 70, 90);
  }

  @ParameterizedTest
  @MethodSource("grounds")
  void glossAndBothBandsStandOut(Look.Tint tint, boolean ashore, int hue) throws Exception {
    theme(tint);
    // Two readings that hold the axis where it is.
    Drawn two = Drawn.nothing().gloss(new GlossDot(day(1), 66, 3), new GlossDot(day(2), 92, 3));
    Drawn three =
        two.gloss(
            new GlossDot(day(1), 66, 3), new GlossDot(day(2), 92, 3), new GlossDot(day(9), 78, 3));
    assertThat(more(two, three, ashore, hue).points()).as("a reading").isGreaterThan(18);
    Drawn banded = two.model(point(day(6)), point(day(30)));
    double[] rows = more(two, banded, ashore, hue).rows();
    assertThat(Difference.runs(rows, 0.15)).as("the middle and four ends").hasSize(5);
    Drawn on = three.model(point(day(6)), point(day(30)));
    assertThat(more(banded, on, ashore, hue).points()).as("a reading on a band").isGreaterThan(18);
  }

  @ParameterizedTest
  @MethodSource("grounds")
  void waterStandsOut(Look.Tint tint, boolean ashore, int hue) throws Exception {
    theme(tint);
    for (WaterBehaviour behaviour : WaterBehaviour.values()) {
      Difference drop = more(Drawn.nothing(), Drawn.nothing().water(behaviour), ashore, hue);
      assertThat(drop.points()).as(behaviour.words()).isGreaterThan(20);
    }
  }

  @ParameterizedTest
  @MethodSource("grounds")
  void coatsAndDaysStandOut(Look.Tint tint, boolean ashore, int hue) throws Exception {
    theme(tint);
    Drawn none = Drawn.nothing();
    Lane plain = none.lane();
    double lane = (double) LANE / (LANE * (hue + 1) + 40);
    Drawn coat =
        new Drawn(
            List.of(new CoatMark(day(9), "", false)),
            List.of(),
            plain.model(),
            plain.water(),
            Optional.empty(),
            Optional.empty());
    assertThat(Difference.runs(more(none, coat, ashore, hue).columns(), lane * 0.7))
        .as("a coat")
        .hasSize(1);
    Drawn by =
        new Drawn(
            List.of(), List.of(), List.of(), List.of(), Optional.of(day(30)), Optional.empty());
    assertThat(Difference.runs(more(none, by, ashore, hue).columns(), lane * 0.25))
        .as("the day to renew by")
        .isNotEmpty();
    Drawn window =
        new Drawn(
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            Optional.empty(),
            Optional.of(new Span(day(27), day(33))));
    assertThat(Difference.runs(more(none, window, ashore, hue).columns(), lane * 0.2))
        .as("both ends of when it is likely bare")
        .hasSize(2);
  }

  @ParameterizedTest
  @EnumSource(names = "SYSTEM", mode = EnumSource.Mode.EXCLUDE)
  void todayAndTimeAshoreStandOut(Look.Tint tint) throws Exception {
    theme(tint);
    List<Lane> lane = List.of(Drawn.nothing().lane());
    BufferedImage plain = timeline(TODAY, List.of(), lane);
    Difference day = new Difference(plain, timeline(TODAY.minusMonths(6), List.of(), lane));
    assertThat(Difference.runs(day.columns(), 0.5)).as("today, and where it was").hasSize(2);
    Difference ashore =
        new Difference(plain, timeline(TODAY, List.of(new Span(day(6), day(12))), lane));
    // Half a year of three, less what the names at both sides take.
    assertThat(Difference.runs(ashore.rows(), 0.14)).as("ashore").isNotEmpty();
  }

  private static BufferedImage timeline(LocalDate today, List<Span> layUps, List<Lane> lanes) {
    return image(
        LANE + 40,
        HistoryChart.of(new BoatTimeline(FROM, UNTIL, today, layUps, lanes), Theme.chartColours()));
  }

  @ParameterizedTest
  @EnumSource(names = "SYSTEM", mode = EnumSource.Mode.EXCLUDE)
  void livesOfAProductStandOut(Look.Tint tint) throws Exception {
    theme(tint);
    List<Survival.Point> curve = List.of(new Survival.Point(0, 0.95), new Survival.Point(40, 0.95));
    SurvivalStep step =
        new SurvivalStep(
            0, 39, 0.5, Optional.of(0.1), Optional.of(new SurvivalStep.Band(0.3, 0.7)));
    SurvivalStep early =
        new SurvivalStep(0, 2, 0.5, Optional.of(0.1), Optional.of(new SurvivalStep.Band(0.3, 0.7)));
    List<Survival.Point> other = List.of(new Survival.Point(0, 0.15), new Survival.Point(40, 0.15));
    BufferedImage bare = lives(new Survival(0, List.of(), curve), Optional.empty());
    Difference moved =
        new Difference(bare, lives(new Survival(0, List.of(), other), Optional.empty()));
    assertThat(Difference.runs(moved.rows(), 0.7)).as("the curve, here and there").hasSize(2);
    Difference steps =
        new Difference(bare, lives(new Survival(9, List.of(early, step), curve), Optional.empty()));
    assertThat(Difference.runs(steps.rows(), 0.2)).as("steps and both ends").hasSize(3);
    Difference label =
        new Difference(bare, lives(new Survival(0, List.of(), curve), Optional.of(20.0)));
    assertThat(Difference.runs(label.columns(), 0.3)).as("the label").isNotEmpty();
  }

  private static BufferedImage lives(Survival survival, Optional<Double> label) {
    return image(300, LivesChart.of(survival, label, 40, Theme.chartColours()));
  }

  @ParameterizedTest
  @EnumSource(names = "SYSTEM", mode = EnumSource.Mode.EXCLUDE)
  void stepsOfADateAndChancesStandOut(Look.Tint tint) throws Exception {
    theme(tint);
    Difference moved = new Difference(steps(day(6)), steps(day(20)));
    assertThat(moved.points()).as("a step and its dot").isGreaterThan(200);
    BufferedImage none = strip(List.of());
    assertThat(new Difference(none, strip(List.of(Optional.of(TODAY.plusMonths(2))))).points())
        .as("a chance to come")
        .isGreaterThan(12);
    assertThat(new Difference(none, strip(List.of(Optional.of(TODAY.minusMonths(1))))).points())
        .as("a chance past")
        .isGreaterThan(25);
    BufferedImage ground = image(56, g -> {});
    assertThat(Difference.runs(new Difference(ground, none).columns(), 0.5)).as("today").hasSize(1);
  }

  private static BufferedImage steps(LocalDate third) {
    DateSteps steps =
        new DateSteps(
            FROM,
            TODAY,
            List.of(
                Optional.of(day(12)),
                Optional.of(day(9)),
                Optional.of(third),
                Optional.of(day(30))));
    return image(
        200,
        g ->
            new StepsDrawing(steps, List.of("One", "Two", "Three", "Four"), Theme.chartColours())
                .draw(g, new Rectangle2D.Double(0, 0, WIDTH, 200)));
  }

  private static BufferedImage strip(List<Optional<LocalDate>> days) {
    DotStrip strip = new DotStrip(days, TODAY, "chances");
    strip.setSize(WIDTH, 56);
    return image(56, strip::paint);
  }
}
