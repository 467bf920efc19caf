package hullalmanac.ui.ahead;

import com.formdev.flatlaf.util.UIScale;
import hullalmanac.present.ahead.AheadPresenter;
import hullalmanac.present.ahead.AheadState;
import hullalmanac.present.ahead.AheadTable;
import hullalmanac.present.table.TableMemory;
import hullalmanac.ui.widget.EmptyPage;
import hullalmanac.ui.widget.Labels;
import hullalmanac.ui.widget.ScrollColumn;
import hullalmanac.ui.widget.SideScroll;
import hullalmanac.ui.widget.TidyTable;
import java.awt.BorderLayout;
import java.util.List;
import javax.swing.DefaultComboBoxModel;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;

/** What needs doing now, read from the top. */
public final class AheadPanel extends JPanel {
  private static final long serialVersionUID = 1L;
  private static final int NARROW_UNDER = 900;

  private final transient AheadPresenter presenter;
  private final transient TableMemory memory;
  private final JLabel heading = Labels.title("");
  private final JTextArea summary = Labels.wrapped("", true);
  private final JComboBox<String> harbour = new JComboBox<>();
  private final JButton asTable = new JButton();
  private final JPanel rows =
      new JPanel(
          new MigLayout("insets 0, fillx, wrap 1, hidemode 3, novisualpadding", "[grow]", ""));
  private final JPanel beside =
      new JPanel(new MigLayout("insets 0, fillx, wrap 1, novisualpadding", "[grow]", ""));
  private final JButton catchUp = new JButton("Evening catch-up");
  private final JButton tellAll = new JButton("Letter to all …");
  private final JButton onPaper = new JButton("On paper");
  private final JButton more = new JButton("Show more");
  private final ScrollColumn page =
      new ScrollColumn(
          new MigLayout("insets 20 24 24 24, fillx, gap 32 0", "[grow]32[190:200:220]", "[][top]"));
  private transient AheadState shown = AheadState.waiting();
  private boolean updating;
  private boolean narrow;

  public AheadPanel(AheadPresenter presenter, TableMemory memory) {
    super(new BorderLayout());
    this.memory = memory;
    this.presenter = presenter;
    harbour.setName("harbour");
    harbour.getAccessibleContext().setAccessibleName("Harbour");
    harbour.addActionListener(
        e -> {
          if (!updating) {
            presenter.chooseHarbour((String) harbour.getSelectedItem());
          }
        });
    asTable.setName("as a table");
    asTable.addActionListener(e -> presenter.asTable(shown.table().isEmpty()));
    catchUp.setName("catch up");
    catchUp.setToolTipText("Ctrl+Shift+E");
    catchUp.addActionListener(e -> presenter.catchUp());
    tellAll.setName("tell all");
    tellAll.addActionListener(e -> presenter.tellAll());
    onPaper.setName("on paper");
    onPaper.setToolTipText("Ctrl+P");
    onPaper.addActionListener(e -> presenter.onPaper());
    more.setName("show more");
    more.addActionListener(e -> presenter.showMore());
    rows.setOpaque(false);
    beside.setOpaque(false);
    JPanel head =
        new JPanel(
            new MigLayout("insets 0, fillx, gap 16 4, novisualpadding", "[grow][][]", "[][]"));
    head.setOpaque(false);
    head.add(heading, "growx");
    head.add(asTable, "hmin 32");
    head.add(harbour, "hmin 32, wrap");
    head.add(summary, "span 3, growx, wmin 100");
    page.add(head, "span 2, growx, wrap 16");
    arrange();
    JScrollPane scroll =
        new JScrollPane(
            page, JScrollPane.VERTICAL_SCROLLBAR_AS_NEEDED, JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
    scroll.setBorder(null);
    add(scroll);
    presenter.onChange(this::render);
  }

  /** Where there is no room beside, the lists at the side go under the rows. */
  private void arrange() {
    page.remove(rows);
    page.remove(beside);
    page.add(rows, narrow ? "span 2, growx, wmin 0, wrap" : "growx, wmin 0");
    page.add(beside, narrow ? "span 2, growx" : "growx, aligny top");
  }

  @Override
  public void doLayout() {
    boolean nowNarrow = getWidth() < UIScale.scale(NARROW_UNDER);
    if (nowNarrow != narrow) {
      narrow = nowNarrow;
      arrange();
      render(shown);
    }
    super.doLayout();
  }

  private void render(AheadState state) {
    shown = state;
    updating = true;
    heading.setText(state.heading());
    summary.setText(state.summary());
    harbour.setModel(new DefaultComboBoxModel<>(state.harbours().toArray(String[]::new)));
    harbour.setSelectedItem(state.harbour());
    updating = false;
    asTable.setText(state.table().isPresent() ? "As a list" : "As a table");
    asTable.setEnabled(!state.due().isEmpty() || !state.later().isEmpty());
    rows.removeAll();
    state
        .invitation()
        .ifPresent(
            i ->
                rows.add(
                    EmptyPage.of(i, presenter::accept, presenter::acceptOther, "12 0 0 0"),
                    "growx, wmin 0"));
    state.table().ifPresentOrElse(this::addTable, () -> addCards(state));
    beside.removeAll();
    boolean many = state.toTell() > 1;
    beside.add(catchUp, "hmin 32, gapbottom 4");
    beside.add(onPaper, many ? "hmin 32, gapbottom 4" : "hmin 32, gapbottom 20");
    if (many) {
      tellAll.setToolTipText("To the owners of " + state.toTell() + " boats who are to be told");
      beside.add(tellAll, "hmin 32, gapbottom 20");
    }
    for (AheadState.Aside aside : state.beside()) {
      beside.add(Labels.heading(aside.heading()), "gapbottom 4");
      for (AheadState.Line line : aside.lines()) {
        if (!line.small().isEmpty()) {
          beside.add(Labels.quiet(line.small()), "gapbottom 0");
        }
        beside.add(Labels.wrapped(line.text(), false), "growx, wmin 80, gapbottom 8");
      }
      beside.add(new JLabel(" "), "hmax 12");
    }
    revalidate();
    repaint();
  }

  private void addCards(AheadState state) {
    addRows("Due", state.due(), state);
    if (!state.due().isEmpty()) {
      rows.add(
          Labels.quiet("Each ring is one chance in twenty; filled rings lie before today."),
          "gapbottom 20");
    }
    addRows("Later", state.later(), state);
    if (!state.part().isEmpty()) {
      rows.add(Labels.quiet(state.part()), "split 2, gaptop 12");
      rows.add(more, "hmin 32");
    }
  }

  private void addTable(AheadTable table) {
    TidyTable view = new TidyTable(table.table(), memory);
    view.onOpen(row -> presenter.open(table.boats().get(row)));
    rows.add(new SideScroll(view), "growx, wmin 0");
    rows.add(
        Labels.wrapped("The chance that it turns bare in that month.", true), "growx, wmin 60");
  }

  private void addRows(String title, List<AheadState.Row> list, AheadState state) {
    if (list.isEmpty()) {
      return;
    }
    if (narrow) {
      rows.add(Labels.heading(title));
    } else {
      JPanel head = new JPanel(RowCard.wide());
      head.setOpaque(false);
      head.add(Labels.heading(title));
      head.add(new JLabel(), "growx");
      head.add(new MonthScale(state.today()), "growx");
      head.add(new JLabel());
      rows.add(head, "growx");
    }
    for (AheadState.Row row : list) {
      rows.add(
          new RowCard(
              row,
              state.today(),
              narrow,
              () -> presenter.open(row.boat()),
              () -> presenter.remind(row.boat())),
          "growx, gapbottom 2");
    }
  }
}
