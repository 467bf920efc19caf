package hullalmanac.ui.card;

import static org.assertj.core.api.Assertions.assertThat;

import hullalmanac.core.record.Hazard;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.Step;
import hullalmanac.fixture.InlineTaskRunner;
import hullalmanac.fixture.OpenSample;
import hullalmanac.present.card.CardPresenter;
import hullalmanac.present.card.CardState;
import hullalmanac.present.shell.ShellPresenter;
import hullalmanac.ui.theme.Theme;
import java.awt.Component;
import java.awt.Container;
import java.awt.event.FocusEvent;
import java.awt.event.FocusListener;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.atomic.AtomicReference;
import java.util.stream.Stream;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.SwingUtilities;
import javax.swing.UIManager;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The card's panel without a window. */
@Tag("slow")
class CardPanelTest {
  private final AtomicReference<CardState> shown = new AtomicReference<>();
  private CardPresenter presenter;
  private CardPanel panel;

  /** A step in which acid is used. */
  @BeforeEach
  void open() throws Exception {
    List<Product> acids =
        OpenSample.fleet().almanac().products().stream()
            .filter(p -> p.hazards().contains(Hazard.ACID))
            .toList();
    Step step =
        OpenSample.fleet().almanac().steps().stream()
            .filter(
                s -> acids.stream().anyMatch(a -> s.product().filter(a.id()::equals).isPresent()))
            .max(Comparator.comparing(Step::day).thenComparing(Step::id))
            .orElseThrow();
    SwingUtilities.invokeAndWait(
        () -> {
          Theme.start(false, 1f);
          ShellPresenter shell =
              new ShellPresenter(OpenSample.service(), OpenSample.edits(), new InlineTaskRunner());
          shell.load();
          presenter = shell.card();
          panel = new CardPanel(presenter);
          presenter.onChange(
              state -> {
                state.ifPresent(shown::set);
                state.ifPresent(panel::show);
              });
          presenter.open(step.visit());
          presenter.choose(step.order() - 1);
        });
  }

  @AfterEach
  void leave() throws Exception {
    SwingUtilities.invokeAndWait(() -> presenter.leave());
  }

  private static Stream<Component> all(Container in) {
    return Stream.of(in.getComponents())
        .flatMap(
            c -> Stream.concat(Stream.of(c), c instanceof Container i ? all(i) : Stream.empty()));
  }

  private <C extends Component> C part(Class<C> kind, String name) {
    return all(panel)
        .filter(c -> name.equals(c.getName()))
        .map(kind::cast)
        .findFirst()
        .orElseThrow();
  }

  /**
   * The cursor leaves it because a button is pressed; the button must be there when it is let go.
   */
  @Test
  void sayingWhenOneIsBackBuildsNothingAnew() throws Exception {
    SwingUtilities.invokeAndWait(
        () -> {
          List<Component> before = all(panel).toList();
          JTextField back = part(JTextField.class, "back by");
          back.setText(" 16:30");
          for (FocusListener listener : back.getFocusListeners()) {
            listener.focusLost(new FocusEvent(back, FocusEvent.FOCUS_LOST));
          }
          assertThat(shown.get().back()).isEqualTo("16:30");
          assertThat(part(JTextArea.class, "back said").getText())
              .isEqualTo("Expected back by 16:30. Tell someone.");
          assertThat(all(panel).toList()).isEqualTo(before);
          presenter.tick(0);
          assertThat(part(JTextField.class, "back by").getText()).isEqualTo("16:30");
          assertThat(part(JTextArea.class, "back said").getText()).contains("16:30");
        });
  }

  /** What protects hands and water is not to be the palest text of all. */
  @Test
  void cautionsAndStopsThatWereReadStandInPlainText() throws Exception {
    SwingUtilities.invokeAndWait(
        () -> {
          int stops = shown.get().now().orElseThrow().stops().size();
          for (int stop = 0; stop < stops; stop++) {
            presenter.read(stop);
          }
          CardState.Now now = shown.get().now().orElseThrow();
          assertThat(now.stops()).isNotEmpty().allMatch(CardState.StopLine::read);
          assertThat(now.cautions()).isNotEmpty();
          Stream.concat(now.stops().stream().map(s -> "Read: " + s.text()), now.cautions().stream())
              .forEach(
                  text ->
                      assertThat(all(panel))
                          .as(text)
                          .filteredOn(c -> c instanceof JTextArea a && a.getText().equals(text))
                          .isNotEmpty()
                          .allMatch(
                              c ->
                                  c.getForeground()
                                      .equals(UIManager.getColor("Label.foreground"))));
        });
  }
}
