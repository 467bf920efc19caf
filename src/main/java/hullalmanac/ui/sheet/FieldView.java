package hullalmanac.ui.sheet;

import hullalmanac.present.sheet.At;
import hullalmanac.present.sheet.Input;
import hullalmanac.present.sheet.Said;
import hullalmanac.present.sheet.Sheet;
import hullalmanac.present.sheet.SheetState;
import hullalmanac.ui.widget.Act;
import hullalmanac.ui.widget.Labels;
import hullalmanac.ui.widget.Typing;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.event.PopupMenuEvent;
import javax.swing.event.PopupMenuListener;
import javax.swing.text.JTextComponent;
import net.miginfocom.swing.MigLayout;

/** A field of a form: its label, what one writes in, and what was understood. */
final class FieldView extends JPanel {
  private static final long serialVersionUID = 1L;

  private final transient Sheet sheet;
  private final transient At at;
  private final transient List<Object> asked;
  private final JComponent input;
  private final JTextArea said = Labels.wrapped("", true);
  private String taken = "";
  private boolean showing;
  private boolean away;

  /** A field of a form, under its label. */
  static FieldView labelled(String block, SheetState.Field field, Sheet sheet) {
    return new FieldView(new At(block, "", field.id()), field, sheet, true);
  }

  /** A field that shows its label to pointers and readers only, for where its text says enough. */
  static FieldView bare(At at, SheetState.Field field, Sheet sheet) {
    return new FieldView(at, field, sheet, false);
  }

  private FieldView(At at, SheetState.Field field, Sheet sheet, boolean labelled) {
    super(
        new MigLayout(
            "insets 0, fillx, wrap 1, gap 0 2, hidemode 3, novisualpadding", "[grow, fill]", ""));
    this.sheet = sheet;
    this.at = at;
    this.asked = List.of(field.label(), field.input());
    setOpaque(false);
    input = input(field);
    input.setName(at.block() + (at.row().isEmpty() ? " " : " " + at.row() + " ") + field.id());
    input.getAccessibleContext().setAccessibleName(field.label());
    if (labelled) {
      JLabel label = Labels.quiet(field.label());
      label.setLabelFor(input);
      add(label, "wmin 60");
    } else {
      input.setToolTipText(field.label());
    }
    if (field.input() instanceof Input.FileName file) {
      FileChoice choice = new FileChoice(input, file, name -> put(name));
      add(choice, "wmin 0");
    } else {
      add(input, "hmin 32, wmin 60");
    }
    add(said, "wmin 60");
    said.setVisible(false);
  }

  /** Whether it asks for this, in the same way. */
  boolean isFor(SheetState.Field field) {
    return asked.equals(List.of(field.label(), field.input()));
  }

  private JComponent input(SheetState.Field field) {
    if (field.input() instanceof Input.Choice choice) {
      return box(choice.words().toArray(String[]::new), false);
    }
    if (field.input() instanceof Input.Suggest suggest) {
      return box(suggest.words().toArray(String[]::new), true);
    }
    if (field.input() instanceof Input.Paragraph) {
      ParagraphArea area = new ParagraphArea();
      text(area);
      return area;
    }
    JTextField line = new JTextField();
    if (field.input() instanceof Input.Line hinted) {
      line.putClientProperty("JTextField.placeholderText", hinted.hint());
    } else if (field.input() instanceof Input.FileName) {
      line.putClientProperty("JTextField.showClearButton", true);
      Consumer<JTextComponent> clear = cleared -> put("");
      line.putClientProperty("JTextField.clearCallback", clear);
    } else {
      line.setEditable(false);
    }
    text(line);
    Act.on(
        line,
        "ENTER",
        () -> {
          take();
          line.transferFocus();
        });
    return line;
  }

  private void text(JTextComponent component) {
    Act.when(component, "ctrl C", () -> component.getSelectedText() != null, component::copy);
    Act.when(component, "menu Z", () -> !text().equals(taken), () -> component.setText(taken));
    component.putClientProperty("JTextField.selectAllOnFocusPolicy", "never");
    Typing.in(component, this::typed);
    component.addFocusListener(
        new FocusAdapter() {
          @Override
          public void focusLost(FocusEvent e) {
            away = e.isTemporary();
            take();
          }

          @Override
          public void focusGained(FocusEvent e) {
            // What was begun is written on when the window was left for a moment.
            if (!away && text().equals(taken) && e.getCause() != FocusEvent.Cause.ACTIVATION) {
              component.selectAll();
            }
            away = false;
          }
        });
  }

  private JComboBox<String> box(String[] words, boolean open) {
    JComboBox<String> box = new JComboBox<>(words);
    box.setEditable(open);
    box.setMaximumRowCount(14);
    box.addPopupMenuListener(
        new PopupMenuListener() {
          @Override
          public void popupMenuWillBecomeVisible(PopupMenuEvent e) {
            // Nothing is chosen yet.
          }

          @Override
          public void popupMenuWillBecomeInvisible(PopupMenuEvent e) {
            javax.swing.SwingUtilities.invokeLater(FieldView.this::take);
          }

          @Override
          public void popupMenuCanceled(PopupMenuEvent e) {
            // What was chosen before stays.
          }
        });
    FocusAdapter left =
        new FocusAdapter() {
          @Override
          public void focusLost(FocusEvent e) {
            take();
          }
        };
    if (open) {
      JTextField editor = (JTextField) box.getEditor().getEditorComponent();
      editor.addFocusListener(left);
      Typing.in(editor, this::typed);
      Act.on(editor, "ENTER", editor::transferFocus);
    } else {
      box.addFocusListener(left);
    }
    return box;
  }

  private void typed() {
    if (!showing) {
      say(sheet.say(at, text()));
    }
  }

  /** Puts a text in as if it were typed and left. */
  private void put(String text) {
    ((JTextComponent) input).setText(text);
    take();
  }

  private String text() {
    if (input instanceof JComboBox<?> box) {
      Object chosen = box.isEditable() ? box.getEditor().getItem() : box.getSelectedItem();
      return chosen == null ? "" : chosen.toString();
    }
    return ((JTextComponent) input).getText();
  }

  private void say(Said now) {
    said.setText(now.refused() ? "Not taken: " + now.words() : now.words());
    said.setVisible(!now.words().isEmpty());
    input.putClientProperty("JComponent.outline", now.refused() ? "error" : null);
    revalidate();
  }

  /** Shows the field as it is; a text that is being written stays. */
  void show(SheetState.Field field) {
    boolean writing = !text().equals(taken);
    if (writing && !field.text().equals(text()) && hasCursor()) {
      return;
    }
    showing = true;
    taken = field.text();
    if (input instanceof JComboBox<?> box) {
      box.setSelectedItem(field.text());
    } else if (!((JTextComponent) input).getText().equals(field.text())) {
      ((JTextComponent) input).setText(field.text());
      if (!hasCursor()) {
        // A long text is seen from its beginning.
        ((JTextComponent) input).setCaretPosition(0);
      }
    }
    showing = false;
    say(field.said());
  }

  private boolean hasCursor() {
    java.awt.Component owner =
        java.awt.KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
    return owner != null && javax.swing.SwingUtilities.isDescendingFrom(owner, input);
  }

  /** Has what was written taken, if it is new. */
  void take() {
    String text = text();
    if (!text.equals(taken)) {
      taken = text;
      sheet.enter(at, text);
    }
  }

  /** Puts the cursor into it. */
  void start() {
    input.requestFocusInWindow();
  }
}
