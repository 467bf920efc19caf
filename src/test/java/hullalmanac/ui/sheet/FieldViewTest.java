package hullalmanac.ui.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import com.formdev.flatlaf.ui.FlatTextBorder;
import hullalmanac.present.sheet.At;
import hullalmanac.present.sheet.Input;
import hullalmanac.present.sheet.Said;
import hullalmanac.present.sheet.Sheet;
import hullalmanac.present.sheet.SheetState;
import hullalmanac.service.Fleet;
import hullalmanac.ui.theme.Theme;
import java.awt.Component;
import java.awt.event.ActionEvent;
import java.awt.event.FocusEvent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.Action;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a field does as the cursor comes into it. */
class FieldViewTest {
  private static final class Quiet implements Sheet {
    @Override
    public void onChange(Consumer<SheetState> view) {}

    @Override
    public void show(Fleet fleet) {}

    @Override
    public Said say(At at, String text) {
      return Said.NOTHING;
    }

    @Override
    public void enter(At at, String text) {}
  }

  /** Somebody who was called away in the middle of a word goes on writing it. */
  @ParameterizedTest
  @CsvSource({
    "false, TRAVERSAL_FORWARD, w",
    "false, TRAVERSAL_BACKWARD, w",
    "false, ACTIVATION,",
    "true, ACTIVATION,",
    "true, UNKNOWN,"
  })
  void selectsWhatStandsThereUnlessTheWindowOnlyCameBack(
      boolean forAMoment, FocusEvent.Cause cause, String selected) throws Exception {
    SwingUtilities.invokeAndWait(
        () -> {
          Theme.start(false, 1f);
          FieldView view =
              FieldView.labelled(
                  "call",
                  new SheetState.Field("boat", "Boat", new Input.Line(""), "", Said.NOTHING),
                  new Quiet());
          JTextField line = line(view);
          line.setText("w");
          FocusEvent lost = new FocusEvent(line, FocusEvent.FOCUS_LOST, forAMoment);
          Arrays.stream(line.getFocusListeners()).forEach(l -> l.focusLost(lost));
          FocusEvent gained =
              new FocusEvent(line, FocusEvent.FOCUS_GAINED, false, (Component) null, cause);
          Arrays.stream(line.getFocusListeners()).forEach(l -> l.focusGained(gained));
          assertThat(line.getSelectedText()).isEqualTo(selected);
        });
  }

  @Test
  void aLongTextIsSeenFromItsBeginning() throws Exception {
    SwingUtilities.invokeAndWait(
        () -> {
          Theme.start(false, 1f);
          FieldView view = FieldView.labelled("letter", subject("Curlew: transom"), new Quiet());
          assertThat(line(view).getCaretPosition()).isZero();
          view.show(subject("Curlew: transom, cabin sides and topsides"));
          assertThat(line(view).getCaretPosition()).isZero();
        });
  }

  private static SheetState.Field subject(String text) {
    return new SheetState.Field("subject", "Subject", new Input.Line(""), text, Said.NOTHING);
  }

  /** The frame of an area is not one that themes know of, and a theme takes away what it finds. */
  @Test
  void aFewLinesKeepTheirFrameWhenTheThemeIsChanged() throws Exception {
    SwingUtilities.invokeAndWait(
        () -> {
          Theme.start(false, 1f);
          ParagraphArea area = new ParagraphArea();
          Object light = area.getBorder();
          Theme.start(true, 1f);
          SwingUtilities.updateComponentTreeUI(area);
          assertThat(area.getBorder()).isInstanceOf(FlatTextBorder.class).isNotSameAs(light);
          Theme.start(false, 1f);
          SwingUtilities.updateComponentTreeUI(area);
          assertThat(area.getBorder()).isInstanceOf(FlatTextBorder.class);
        });
  }

  @Test
  void takesBackAWordThatWasBegunBeforeTheRecordIsAsked() throws Exception {
    SwingUtilities.invokeAndWait(
        () -> {
          Theme.start(false, 1f);
          FieldView view =
              FieldView.labelled(
                  "call",
                  new SheetState.Field("boat", "Boat", new Input.Line(""), "", Said.NOTHING),
                  new Quiet());
          JTextField line = line(view);
          Action undo =
              line.getActionMap().get(line.getInputMap().get(KeyStroke.getKeyStroke("ctrl Z")));
          assertThat(undo.isEnabled()).as("nothing was begun: the key goes on").isFalse();
          line.setText("Whea");
          assertThat(undo.isEnabled()).isTrue();
          undo.actionPerformed(new ActionEvent(line, 0, ""));
          assertThat(line.getText()).isEmpty();
        });
  }

  @Test
  void theNameOfAFileIsClearedAtOnceAndCanBeChosen() throws Exception {
    SwingUtilities.invokeAndWait(
        () -> {
          Theme.start(false, 1f);
          Heard heard = new Heard();
          FieldView view =
              FieldView.labelled(
                  "calendar",
                  new SheetState.Field(
                      "written",
                      "File to write",
                      new Input.FileName("Calendars (.ics)", List.of("ics"), true),
                      "",
                      Said.NOTHING),
                  heard);
          FileChoice choice =
              Arrays.stream(view.getComponents())
                  .filter(FileChoice.class::isInstance)
                  .map(FileChoice.class::cast)
                  .findFirst()
                  .orElseThrow();
          assertThat(choice.getComponents())
              .extracting(Component::getName)
              .containsExactly("calendar written", "choose calendar written");
          JTextField line = (JTextField) choice.getComponent(0);
          view.show(
              new SheetState.Field(
                  "written",
                  "File to write",
                  new Input.FileName("Calendars (.ics)", List.of("ics"), true),
                  "almanac.ics",
                  Said.NOTHING));
          assertThat(line.getText()).isEqualTo("almanac.ics");
          assertThat(line.getClientProperty("JTextField.showClearButton")).isEqualTo(true);
          cleared(line).accept(line);
          assertThat(line.getText()).isEmpty();
          assertThat(heard.texts).containsExactly("");
        });
  }

  @SuppressWarnings("unchecked")
  private static Consumer<JTextField> cleared(JTextField line) {
    return (Consumer<JTextField>) line.getClientProperty("JTextField.clearCallback");
  }

  /** Keeps what is entered. */
  private static final class Heard implements Sheet {
    private final List<String> texts = new ArrayList<>();

    @Override
    public void onChange(Consumer<SheetState> view) {}

    @Override
    public void show(Fleet fleet) {}

    @Override
    public Said say(At at, String text) {
      return Said.NOTHING;
    }

    @Override
    public void enter(At at, String text) {
      texts.add(text);
    }
  }

  private static JTextField line(FieldView view) {
    return Arrays.stream(view.getComponents())
        .filter(JTextField.class::isInstance)
        .map(JTextField.class::cast)
        .findFirst()
        .orElseThrow();
  }
}
