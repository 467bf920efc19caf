package hullalmanac.ui.sheet;

import hullalmanac.present.sheet.SheetState;
import hullalmanac.ui.widget.Act;
import hullalmanac.ui.widget.Card;
import hullalmanac.ui.widget.Labels;
import java.awt.Toolkit;
import java.awt.datatransfer.StringSelection;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;

/** What came out of a sum, large, with a button that copies it. */
final class AnswerView extends Card {
  private static final long serialVersionUID = 1L;

  private final JTextArea label = Labels.wrapped("", true);
  private final JTextArea text = Labels.large("");
  private final JButton copy = new JButton("Copy");
  private String copied = "";

  AnswerView(String id) {
    super(
        new MigLayout(
            "insets 10 16 10 12, fillx, gap 16 0, hidemode 3", "[grow, fill][]", "[][center]"));
    add(label, "wmin 100, wrap");
    add(text, "wmin 100");
    copy.setName("copy " + id);
    copy.addActionListener(e -> copy());
    add(copy, "hmin 32");
    Act.on(copy, "ENTER", this::copy);
    Act.within(this, "ctrl C", this::copy);
    setVisible(false);
  }

  private void copy() {
    copy(copied);
  }

  static void copy(String text) {
    Toolkit.getDefaultToolkit().getSystemClipboard().setContents(new StringSelection(text), null);
  }

  /** What is copied of it; absent while nothing came out. */
  Optional<String> copied() {
    return Optional.of(copied).filter(c -> !c.isEmpty());
  }

  void show(SheetState.Answer answer) {
    label.setText(answer.label());
    label.setVisible(!answer.label().isEmpty());
    text.setText(answer.text());
    copied = answer.copy();
    copy.getAccessibleContext().setAccessibleName("Copy " + answer.text());
    setVisible(!answer.text().isEmpty());
  }
}
