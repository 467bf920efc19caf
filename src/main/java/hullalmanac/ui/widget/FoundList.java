package hullalmanac.ui.widget;

import hullalmanac.ui.theme.Theme;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Predicate;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;

/** The left side of a place: what is looked for, and the list of what was found. */
public final class FoundList<T> extends JPanel {
  private static final long serialVersionUID = 1L;

  private final JTextField find = new JTextField();
  private final JPanel buttons =
      new JPanel(
          new MigLayout("insets 0, fillx, wrap 1, gap 0 6, novisualpadding", "[grow, fill]", ""));
  private final JLabel found = Labels.quiet("");
  private final ItemList<T> list;
  private transient Runnable chosen = () -> {};
  private transient Runnable escaped = () -> {};

  /**
   * @param name of the list
   * @param find what stands in the field while nothing is looked for
   * @param add what the button says that adds one; empty where none can be added
   */
  public record Words(String name, String find, String add) {}

  /**
   * What one does with it.
   *
   * @param find looks for a text
   * @param choose chooses an item
   * @param add adds one
   */
  public record Acts<T>(Consumer<String> find, Consumer<T> choose, Runnable add) {}

  public FoundList(Words words, ItemCell.Lines<T> lines, Acts<T> acts) {
    super(
        new MigLayout(
            "insets 16 12 8 12, fill, wrap 1",
            "[grow, fill]",
            words.add().isEmpty() ? "[][][grow, fill]" : "[][][][grow, fill]"));
    list =
        new ItemList<>(
            words.name(),
            lines,
            item -> {
              chosen.run();
              acts.choose().accept(item);
            });
    field(words, acts);
    JScrollPane scroll =
        new JScrollPane(
            list, JScrollPane.VERTICAL_SCROLLBAR_AS_NEEDED, JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
    scroll.setBorder(null);
    add(find, "hmin 32");
    if (!words.add().isEmpty()) {
      buttons.setOpaque(false);
      also(words.add(), acts.add());
      add(buttons);
    }
    add(found);
    add(scroll, "wmin 0");
    setBorder(BorderFactory.createMatteBorder(0, 0, 0, 1, Theme.colour("cardLine")));
  }

  private void field(Words words, Acts<T> acts) {
    find.setName("find " + words.name());
    find.putClientProperty("JTextField.placeholderText", words.find());
    find.putClientProperty("JTextField.showClearButton", true);
    find.getAccessibleContext().setAccessibleName(words.find());
    Act.on(find, "ESCAPE", this::escape);
    Act.on(find, "DOWN", list::requestFocusInWindow);
    Typing.in(find, () -> acts.find().accept(find.getText()));
  }

  /** One thing more that one can do, below the button that adds one. */
  public void also(String words, Runnable act) {
    JButton button = new JButton(words);
    button.setName(words);
    button.addActionListener(e -> act.run());
    buttons.add(button, "hmin 32");
  }

  /** Tells who wants to know that one was chosen. */
  public void onChosen(Runnable act) {
    chosen = act;
  }

  /** Tells who wants to know that one leaves with nothing typed. */
  public void onEscape(Runnable act) {
    escaped = act;
  }

  private void escape() {
    if (find.getText().isEmpty()) {
      escaped.run();
    } else {
      find.setText("");
    }
  }

  /** Puts the cursor where one types what to find. */
  public void startFinding() {
    find.requestFocusInWindow();
    find.selectAll();
  }

  /**
   * Shows what was found.
   *
   * @param words how many, in words
   * @param isChosen tells the one that is chosen
   */
  public void show(List<T> now, String words, Predicate<T> isChosen) {
    found.setText(words);
    list.show(now, isChosen);
  }
}
