package hullalmanac.ui.owner;

import com.formdev.flatlaf.util.UIScale;
import hullalmanac.core.report.BoatHistory;
import hullalmanac.present.boats.BoatPage;
import hullalmanac.present.owner.OwnerState;
import hullalmanac.ui.theme.Theme;
import hullalmanac.ui.widget.Card;
import hullalmanac.ui.widget.ChartBox;
import hullalmanac.ui.widget.Labels;
import hullalmanac.ui.widget.ScrollColumn;
import java.awt.BorderLayout;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;

/**
 * A boat as her owner sees her: what comes next and why, the boat over time, what was done and is
 * to pay.
 */
public final class OwnerPanel extends JPanel {
  private static final long serialVersionUID = 1L;
  private static final int WIDEST = 1500;

  private final transient PictureSource pictures;
  private final transient Runnable leave;
  private final JScrollPane scroll =
      new JScrollPane(
          JScrollPane.VERTICAL_SCROLLBAR_AS_NEEDED, JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
  private transient Optional<OwnerState> shown = Optional.empty();

  public OwnerPanel(PictureSource pictures, Runnable leave) {
    super(new BorderLayout());
    this.pictures = pictures;
    this.leave = leave;
    scroll.setBorder(null);
    add(scroll);
  }

  /** Shows a boat; nothing happens when she is shown as she is already. */
  public void show(OwnerState state) {
    if (!shown.equals(Optional.of(state))) {
      shown = Optional.of(state);
      again();
    }
  }

  /** Builds the view again, in the size that is set now. */
  void again() {
    boolean focused = scroll.getViewport().getView() != null;
    shown.ifPresent(state -> scroll.setViewportView(column(state)));
    if (focused) {
      takeFocus();
    }
  }

  /** Lets the arrow keys scroll from the start. */
  void takeFocus() {
    scroll.getViewport().getView().requestFocusInWindow();
  }

  private ScrollColumn column(OwnerState state) {
    ScrollColumn column =
        new ScrollColumn(
            new MigLayout(
                "insets 28 40 40 40, fillx, wrap 1, hidemode 3, alignx center",
                "[grow, fill, ::" + UIScale.scale(WIDEST) + "px]",
                ""));
    column.setFocusable(true);
    column.setName("owner's view");
    column.getAccessibleContext().setAccessibleName(state.name() + ", for her owner");
    column.add(head(state), "wmin 0, gapbottom 16");
    column.add(next(state.next()), "wmin 0, gapbottom 24");
    if (!state.timeline().lanes().isEmpty()) {
      column.add(Labels.heading("The boat over time"), "wmin 0, gapbottom 4");
      ChartBox chart = new ChartBox();
      chart.show(state.timeline(), state.next().heading() + ". " + state.next().sentence());
      column.add(chart, "wmin 100");
      column.add(Labels.wrapped(ChartBox.KEY, true), "wmin 100, gapbottom 24");
    }
    column.add(
        state.pairs().isEmpty()
            ? history(state)
            : new Sides(new PairList(state, pictures), Optional.of(history(state))),
        "wmin 0");
    if (!state.toPay().isEmpty()) {
      column.add(Labels.heading("Still to pay"), "wmin 0, gaptop 24, gapbottom 4");
      state.toPay().forEach(open -> column.add(Labels.wrapped(open, false), "wmin 60"));
    }
    return column;
  }

  private JPanel head(OwnerState state) {
    JPanel head = clear("insets 0, fillx, wrap 2, novisualpadding", "[grow, fill]16[]", "[]2[]");
    JTextArea name = Labels.wrapped(state.name(), false);
    name.setFont(Theme.font(Theme.Size.TITLE));
    JButton back = new JButton("Leave");
    back.setName("leave");
    back.setToolTipText("Esc");
    back.addActionListener(e -> leave.run());
    head.add(name, "wmin 100");
    head.add(back, "hmin 32, spany 2, aligny top");
    head.add(Labels.wrapped(state.facts(), true), "wmin 100");
    return head;
  }

  private static JPanel next(OwnerState.Next next) {
    Card card = new Card(new MigLayout("insets 18 20 18 20, fillx", "[grow, fill]", ""));
    JPanel due = clear("insets 0, fillx, wrap 1", "[grow, fill]", "");
    JTextArea heading = Labels.wrapped(next.heading(), false);
    heading.setFont(Theme.font(Theme.Size.HEADING));
    due.add(heading, "wmin 100");
    due.add(Labels.wrapped(next.sentence(), false), "wmin 100");
    due.add(Labels.wrapped(next.caution(), true), "wmin 100");
    card.add(new Sides(due, why(next)), "wmin 0");
    return card;
  }

  private static Optional<JComponent> why(OwnerState.Next next) {
    if (next.reasons().isEmpty()) {
      return Optional.empty();
    }
    JPanel why = clear("insets 0, fillx, wrap 3", "[]16[grow, fill]16[right]", "[top]6[top]");
    for (BoatPage.ReasonCard reason : next.reasons()) {
      why.add(Labels.quiet(reason.title()));
      why.add(Labels.wrapped(String.join("; ", reason.facts()), false), "wmin 60");
      why.add(Labels.strong(reason.date()));
    }
    return Optional.of(why);
  }

  private static JPanel history(OwnerState state) {
    JPanel list = clear("insets 0, fillx, wrap 1, gapy 2", "[grow, fill]", "");
    list.add(Labels.heading("What was done"), "wmin 0, gapbottom 4");
    if (state.history().isEmpty()) {
      list.add(Labels.wrapped("Nothing yet.", true), "wmin 60");
    }
    for (BoatHistory.Visited visit : state.history()) {
      JPanel row = clear("insets 10 0 10 0, fillx, wrap 1, gapy 3", "[grow, fill]", "");
      row.setBorder(BorderFactory.createMatteBorder(1, 0, 0, 0, Theme.colour("cardLine")));
      row.add(Labels.strong(visit.day()), "wmin 0");
      visit.done().forEach(done -> row.add(Labels.wrapped(done, false), "wmin 60"));
      visit.seen().forEach(seen -> row.add(Labels.wrapped(seen, true), "wmin 60"));
      list.add(row, "wmin 0");
    }
    return list;
  }

  private static JPanel clear(String layout, String columns, String rows) {
    JPanel panel = new JPanel(new MigLayout(layout, columns, rows));
    panel.setOpaque(false);
    return panel;
  }
}
