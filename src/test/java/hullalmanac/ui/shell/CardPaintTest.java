package hullalmanac.ui.shell;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Hazard;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.Visit;
import hullalmanac.fixture.InlineTaskRunner;
import hullalmanac.fixture.OpenSample;
import hullalmanac.present.card.CardState;
import hullalmanac.present.shell.ShellPresenter;
import hullalmanac.ui.card.CardPanel;
import hullalmanac.ui.theme.Theme;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.atomic.AtomicReference;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.swing.JComponent;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Paints job cards light and dark, small and large, and looks at what was painted. */
@Tag("slow")
class CardPaintTest {
  private static ShellPresenter presenter;

  @BeforeAll
  static void openSample() {
    presenter =
        new ShellPresenter(OpenSample.service(), OpenSample.edits(), new InlineTaskRunner());
    presenter.load();
  }

  @AfterAll
  static void usual() throws Exception {
    SwingUtilities.invokeAndWait(() -> Theme.start(false, 1f));
  }

  static Stream<Arguments> looks() {
    return Stream.of(Arguments.of(false, 1f), Arguments.of(true, 2f));
  }

  /** Each step of a visit in which acid is used, wide and narrow, with large targets throughout. */
  @ParameterizedTest
  @MethodSource("looks")
  void paintsAJobCardWholeFromTopToBottom(boolean dark, float zoom) throws Exception {
    for (int wide : new int[] {1400, 760}) {
      SwingUtilities.invokeAndWait(
          () -> {
            Theme.start(dark, zoom);
            CardPanel panel = new CardPanel(presenter.card());
            AtomicReference<CardState> shown = new AtomicReference<>();
            presenter
                .card()
                .onChange(
                    state -> {
                      state.ifPresent(shown::set);
                      state.ifPresent(panel::show);
                    });
            presenter.card().onClock(panel::show);
            presenter.showCard(withAcid(OpenSample.fleet().almanac()));
            int steps = shown.get().steps().size();
            assertThat(steps).isGreaterThan(3);
            for (int step = 0; step < steps; step++) {
              presenter.card().choose(step);
              presenter.card().read(0);
              presenter.card().read(1);
              presenter.card().read(2);
              presenter.card().time();
              holds(panel, wide, "step " + (step + 1) + " at " + zoom + " in " + wide);
              presenter.card().time();
            }
            presenter.card().leave();
            presenter.card().onChange(state -> {});
          });
    }
  }

  private static void holds(CardPanel panel, int wide, String name) {
    assertThat(new Painted(panel, wide, 800).faults()).as(name).isEmpty();
    JComponent page = PanelsPaintTest.page(panel);
    int width = page.getWidth();
    page.getParent().remove(page);
    new Painted(page, width, 1080);
    Painted whole = new Painted(page, width, page.getPreferredSize().height);
    assertThat(whole.faults()).as(name).isEmpty();
    assertThat(whole.textSizes()).hasSizeBetween(2, 3);
    List<JComponent> controls = whole.shown().stream().filter(Painted::isControl).toList();
    assertThat(controls).hasSizeGreaterThan(10);
    assertThat(controls)
        .as(name)
        .allSatisfy(c -> assertThat(c.getHeight()).as(Painted.say(c)).isGreaterThanOrEqualTo(48));
  }

  /** The visit with most steps in which acid is used. */
  static Id<Visit> withAcid(Almanac almanac) {
    Set<Id<Product>> acid =
        almanac.products().stream()
            .filter(p -> p.hazards().contains(Hazard.ACID))
            .map(Product::id)
            .collect(Collectors.toSet());
    Map<Id<Visit>, Long> steps =
        almanac.steps().stream().collect(Collectors.groupingBy(Step::visit, Collectors.counting()));
    return almanac.steps().stream()
        .filter(s -> s.product().filter(acid::contains).isPresent())
        .map(Step::visit)
        .max(Comparator.comparing((Id<Visit> v) -> steps.get(v)).thenComparing(v -> v))
        .orElseThrow();
  }
}
