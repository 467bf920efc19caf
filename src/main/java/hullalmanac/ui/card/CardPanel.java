package hullalmanac.ui.card;

import hullalmanac.present.card.CardClock;
import hullalmanac.present.card.CardPresenter;
import hullalmanac.present.card.CardState;
import hullalmanac.ui.theme.Theme;
import hullalmanac.ui.widget.Act;
import hullalmanac.ui.widget.ButtonRow;
import hullalmanac.ui.widget.Card;
import hullalmanac.ui.widget.ScrollColumn;
import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Container;
import java.awt.KeyboardFocusManager;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.SwingUtilities;
import javax.swing.UIManager;
import net.miginfocom.swing.MigLayout;

/** The card of a visit: steps, the step shown in full, what to see to and what to bring. */
public final class CardPanel extends JPanel {
  private static final long serialVersionUID = 1L;
  private final transient CardPresenter presenter;
  private final JScrollPane scroll =
      new JScrollPane(
          JScrollPane.VERTICAL_SCROLLBAR_AS_NEEDED, JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
  private transient Optional<CardState> shown = Optional.empty();
  private final transient List<JTextArea> rows = new ArrayList<>();
  private transient JTextArea large = CardParts.clock();
  private transient JTextArea toDo = CardParts.strong("");
  private transient JTextField back = new JTextField();
  private transient JTextArea backSaid = CardParts.strong("");

  public CardPanel(CardPresenter presenter) {
    super(new BorderLayout());
    this.presenter = presenter;
    scroll.setBorder(null);
    add(scroll);
    // What scrolls has these keys for itself.
    Act.within(scroll, "PAGE_DOWN", () -> presenter.go(1));
    Act.within(scroll, "PAGE_UP", () -> presenter.go(-1));
  }

  /**
   * Shows a card. When one is expected back is put in its place: it is written by going elsewhere,
   * and what one goes to must not be built anew under one's hands.
   */
  public void show(CardState state) {
    boolean same =
        shown.filter(s -> s.expecting(state.back(), state.backSaid()).equals(state)).isPresent();
    shown = Optional.of(state);
    if (same) {
      expect(state);
    } else {
      again();
    }
  }

  private void expect(CardState state) {
    if (!back.getText().strip().equals(state.back())) {
      back.setText(state.back());
    }
    put(backSaid, state.backSaid());
  }

  /** Shows what goes with the clock. */
  public void show(CardClock now) {
    for (int i = 0; i < rows.size(); i++) {
      put(rows.get(i), i < now.rows().size() ? now.rows().get(i) : "");
    }
    put(large, now.large());
    put(toDo, now.words());
    toDo.setForeground(
        now.urgent() ? Theme.colour("accent") : UIManager.getColor("Label.foreground"));
  }

  private static void put(JTextArea area, String text) {
    if (!area.getText().equals(text)) {
      area.setText(text);
      area.setVisible(!text.isEmpty());
      area.revalidate();
    }
  }

  /** Builds the card again, in the size that is set now; the cursor stays where it was. */
  void again() {
    Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
    boolean inside = owner != null && SwingUtilities.isDescendingFrom(owner, this);
    String name = inside ? owner.getName() : null;
    int at = scroll.getVerticalScrollBar().getValue();
    rows.clear();
    shown.ifPresent(state -> scroll.setViewportView(column(state)));
    scroll.getVerticalScrollBar().setValue(at);
    if (inside) {
      Optional.ofNullable(name)
          .flatMap(n -> named(scroll, n))
          .orElse(scroll.getViewport().getView())
          .requestFocusInWindow();
    }
  }

  private static Optional<Component> named(Container in, String name) {
    for (Component c : in.getComponents()) {
      Optional<Component> hit =
          name.equals(c.getName())
              ? Optional.of(c)
              : c instanceof Container inner ? named(inner, name) : Optional.empty();
      if (hit.isPresent()) {
        return hit;
      }
    }
    return Optional.empty();
  }

  /** Lets the arrow keys scroll from the start. */
  void takeFocus() {
    scroll.getViewport().getView().requestFocusInWindow();
  }

  private ScrollColumn column(CardState state) {
    ScrollColumn column =
        new ScrollColumn(
            new MigLayout(
                "insets 20 28 24 28, fillx, wrap 1, hidemode 3, novisualpadding",
                "[grow, fill]",
                ""));
    column.setFocusable(true);
    column.setName("job card");
    column.getAccessibleContext().setAccessibleName("Job card of " + state.title());
    column.add(head(state), "wmin 0, gapbottom 12");
    column.add(new Columns(steps(state), middle(state), around(state)), "wmin 0, gapbottom 12");
    column.add(CardParts.strong(state.standing()), "wmin 100");
    return column;
  }

  private JPanel head(CardState state) {
    JPanel head = CardParts.clear("insets 0, fillx", "[grow, fill]20[200, fill]12[]", "");
    head.add(CardParts.heading(state.title() + ", " + state.facts()), "wmin 100");
    JTextField field = new JTextField(state.back());
    back = field;
    back.setName("back by");
    back.setFont(CardParts.text("").getFont());
    back.putClientProperty("JTextField.placeholderText", "back by, 16:30");
    back.getAccessibleContext().setAccessibleName("Expected back by");
    Act.on(back, "ENTER", () -> presenter.back(field.getText()));
    back.addFocusListener(
        new FocusAdapter() {
          @Override
          public void focusLost(FocusEvent e) {
            presenter.back(field.getText());
          }
        });
    head.add(back, CardParts.HIGH + ", aligny top");
    head.add(
        CardParts.button("leave", "Leave", presenter::leave),
        CardParts.HIGH + ", aligny top, wrap");
    head.add(CardParts.text(state.runoff()), "wmin 100");
    backSaid = CardParts.strong(state.backSaid());
    backSaid.setName("back said");
    head.add(backSaid, "wmin 100, spanx 2");
    return head;
  }

  private JPanel steps(CardState state) {
    JPanel list = CardParts.clear("insets 0, fillx, wrap 1, gapy 6", "[grow, fill]", "");
    list.add(CardParts.heading("Steps"), "wmin 0");
    if (state.steps().isEmpty()) {
      list.add(CardParts.quiet("This visit has no steps yet: add them on its sheet."), "wmin 60");
    }
    for (int i = 0; i < state.steps().size(); i++) {
      CardState.Row row = state.steps().get(i);
      int step = i;
      String words = row.words() + (row.done() ? ", done" : "");
      JButton button =
          row.shown()
              ? CardParts.main("step " + (i + 1), words, () -> presenter.choose(step))
              : CardParts.button("step " + (i + 1), words, () -> presenter.choose(step));
      button.setHorizontalAlignment(JButton.LEFT);
      button.setToolTipText(row.where());
      list.add(button, CardParts.HIGH + ", wmin 60");
      JTextArea time = CardParts.strong("");
      time.setVisible(false);
      rows.add(time);
      list.add(time, "wmin 60, gapleft 14, hidemode 3");
    }
    JButton print = CardParts.button("print", "Print all of it", presenter::print);
    list.add(print, CardParts.HIGH + ", wmin 60, gaptop 12");
    return list;
  }

  /** The step shown, and what to bring. */
  private JPanel middle(CardState state) {
    JPanel middle = CardParts.clear("insets 0, fillx, wrap 1, gapy 6", "[grow, fill]", "");
    middle.add(now(state), "wmin 0");
    middle.add(CardParts.heading("Bring"), "wmin 0, gaptop 12");
    middle.add(CardParts.text(String.join(" · ", state.tools())), "wmin 60");
    return middle;
  }

  private Card now(CardState state) {
    Card card =
        new Card(
            new MigLayout(
                "insets 16 18 18 18, fillx, wrap 1, hidemode 3, gapy 8, novisualpadding",
                "[grow, fill]",
                ""));
    large = CardParts.clock();
    toDo = CardParts.strong("");
    large.setName("dwell left");
    large.setVisible(false);
    toDo.setVisible(false);
    state.now().ifPresent(now -> fill(card, now));
    return card;
  }

  private void fill(Card card, CardState.Now now) {
    JTextArea heading = CardParts.heading(now.heading());
    heading.setName("heading");
    card.add(heading, "wmin 100");
    for (int i = 0; i < now.stops().size(); i++) {
      card.add(stop(now.stops().get(i), i), "wmin 0");
    }
    JPanel facts = CardParts.clear("insets 0, fillx, wrap 2, gapy 4", "[]16[grow, fill]", "[top]");
    now.facts()
        .forEach(
            fact -> {
              facts.add(CardParts.quiet(fact.label()), "wmin 90");
              facts.add(CardParts.text(fact.text()), "wmin 60");
            });
    card.add(facts, "wmin 0");
    now.mix().forEach(line -> card.add(CardParts.strong(line), "wmin 100"));
    if (!now.bottles().isEmpty()) {
      card.add(bottles(now), "wmin 0");
    }
    if (!now.dwell().isEmpty()) {
      card.add(CardParts.text(now.dwell()), "wmin 100");
      card.add(large, "wmin 100");
      card.add(toDo, "wmin 100");
    }
    card.add(acts(now), "wmin 0");
    now.cautions().forEach(text -> card.add(CardParts.text(text), "wmin 100"));
  }

  private JPanel stop(CardState.StopLine line, int stop) {
    JPanel row = CardParts.clear("insets 0, fillx", "[grow, fill]12[]", "[top]");
    row.add(
        line.read()
            ? CardParts.text("Read: " + line.text())
            : CardParts.strong("Stop. " + line.text() + " (" + line.source() + ")"),
        "wmin 100");
    if (!line.read()) {
      row.add(
          CardParts.button("read " + (stop + 1), "I have read it", () -> presenter.read(stop)),
          CardParts.HIGH);
    }
    return row;
  }

  private ButtonRow bottles(CardState.Now now) {
    ButtonRow row = new ButtonRow();
    for (CardState.Bottle b : now.bottles()) {
      Runnable act = () -> presenter.bottle(b.millilitres());
      JButton button =
          b.chosen()
              ? CardParts.main("bottle " + b.words(), b.words(), act)
              : CardParts.button("bottle " + b.words(), b.words(), act);
      button
          .getAccessibleContext()
          .setAccessibleName("Bottle of " + b.words() + (b.chosen() ? ", chosen" : ""));
      row.add(button, CardParts.HIGH);
    }
    return row;
  }

  private ButtonRow acts(CardState.Now now) {
    ButtonRow row = new ButtonRow();
    if (!now.dwell().isEmpty()) {
      JButton time =
          CardParts.main(
              "time", now.timing() ? "End the dwell" : "Begin the dwell", presenter::time);
      time.setToolTipText("Ctrl+M");
      time.setEnabled(now.free() || now.timing());
      row.add(time, CardParts.HIGH);
    }
    JButton done = CardParts.button("done", now.done() ? "Not done" : "Done", presenter::tickStep);
    done.setToolTipText("Ctrl+Enter");
    done.setEnabled(now.free() || now.done());
    row.add(done, CardParts.HIGH);
    row.add(CardParts.button("before", "Step before", () -> presenter.go(-1)), CardParts.HIGH);
    row.add(CardParts.button("next", "Next step", () -> presenter.go(1)), CardParts.HIGH);
    return row;
  }

  private JPanel around(CardState state) {
    JPanel list = CardParts.clear("insets 0, fillx, wrap 2, gapy 6", "[]12[grow, fill]", "");
    list.add(CardParts.heading("See to"), "wmin 0, span, growx");
    for (int i = 0; i < state.checks().size(); i++) {
      CardState.Check check = state.checks().get(i);
      int n = i;
      list.add(
          CardParts.tick(
              "check " + (i + 1), check.words(), check.ticked(), () -> presenter.tick(n)),
          CardParts.HIGH + ", wmin 76");
      list.add(
          check.ticked() ? CardParts.quiet(check.words()) : CardParts.text(check.words()),
          "wmin 60");
    }
    return list;
  }
}
