package hullalmanac.ui.boats;

import hullalmanac.present.boats.BoatPage;
import hullalmanac.present.boats.BoatsPresenter;
import hullalmanac.present.boats.BoatsState;
import hullalmanac.ui.theme.Theme;
import hullalmanac.ui.widget.Act;
import hullalmanac.ui.widget.ItemCell;
import hullalmanac.ui.widget.Labels;
import hullalmanac.ui.widget.ListBesidePage;
import java.awt.BorderLayout;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.DefaultListModel;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextField;
import javax.swing.ListSelectionModel;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import net.miginfocom.swing.MigLayout;

/** The boats at the left, the page of the one chosen at the right. */
public final class BoatsPanel extends JPanel {
  private static final long serialVersionUID = 1L;

  private final transient BoatsPresenter presenter;
  private final JTextField find = new JTextField();
  private final JLabel found = Labels.quiet("");
  private final DefaultListModel<BoatsState.Item> items = new DefaultListModel<>();
  private final JList<BoatsState.Item> list = new JList<>(items);
  private final JScrollPane page =
      new JScrollPane(
          JScrollPane.VERTICAL_SCROLLBAR_AS_NEEDED, JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
  private final JPanel left =
      new JPanel(
          new MigLayout("insets 16 12 8 12, fill, wrap 1", "[grow, fill]", "[][][][grow, fill]"));
  private transient Optional<BoatPage> shown = Optional.empty();
  private final ListBesidePage sides;
  private boolean updating;
  private boolean washing;

  public BoatsPanel(BoatsPresenter presenter) {
    super(new BorderLayout());
    this.presenter = presenter;
    buildList();
    page.setBorder(null);
    sides = new ListBesidePage(left, page, "All boats");
    add(sides);
    presenter.onChange(this::render);
  }

  private void buildList() {
    find.setName("find");
    find.putClientProperty("JTextField.placeholderText", "Find a boat or owner");
    find.putClientProperty("JTextField.showClearButton", true);
    find.getAccessibleContext().setAccessibleName("Find a boat, owner, harbour or hull number");
    find.getDocument().addDocumentListener(new Typed());
    Act.on(find, "ESCAPE", () -> find.setText(""));
    Act.on(
        find,
        "DOWN",
        () -> {
          if (list.getSelectedIndex() < 0 && !items.isEmpty()) {
            list.setSelectedIndex(0);
          }
          list.requestFocusInWindow();
        });
    list.setName("boats");
    list.getAccessibleContext().setAccessibleName("Boats");
    list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
    list.setCellRenderer(
        new ItemCell<>(
            new ItemCell.Lines<>(
                BoatsState.Item::name, BoatsState.Item::status, BoatsState.Item::detail)));
    list.addListSelectionListener(
        e -> {
          if (!updating && !e.getValueIsAdjusting() && list.getSelectedValue() != null) {
            sides.choosing(false);
            presenter.choose(list.getSelectedValue().boat());
          }
        });
    JScrollPane scroll =
        new JScrollPane(
            list, JScrollPane.VERTICAL_SCROLLBAR_AS_NEEDED, JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
    scroll.setBorder(null);
    JButton add = new JButton("New boat");
    add.setName("new boat");
    add.setToolTipText("Ctrl+N");
    add.addActionListener(e -> presenter.newBoat());
    left.add(find, "hmin 32");
    left.add(add, "hmin 32");
    left.add(found);
    left.add(scroll, "wmin 0");
    left.setBorder(BorderFactory.createMatteBorder(0, 0, 0, 1, Theme.colour("cardLine")));
  }

  private final class Typed implements DocumentListener {
    @Override
    public void insertUpdate(DocumentEvent e) {
      changedUpdate(e);
    }

    @Override
    public void removeUpdate(DocumentEvent e) {
      changedUpdate(e);
    }

    @Override
    public void changedUpdate(DocumentEvent e) {
      if (!updating) {
        presenter.find(find.getText());
      }
    }
  }

  /** Puts the cursor where one types what to find. */
  public void startFinding() {
    sides.choosing(true);
    find.requestFocusInWindow();
    find.selectAll();
  }

  private void render(BoatsState state) {
    updating = true;
    found.setText(state.found());
    items.clear();
    state.list().forEach(items::addElement);
    state
        .chosen()
        .ifPresent(
            boat -> {
              for (int i = 0; i < items.size(); i++) {
                if (items.get(i).boat().equals(boat)) {
                  list.setSelectedIndex(i);
                  list.ensureIndexIsVisible(i);
                }
              }
            });
    updating = false;
    if (!state.page().equals(shown) || washing != state.washing()) {
      boolean another = !state.page().map(BoatPage::name).equals(shown.map(BoatPage::name));
      java.awt.Point where = page.getViewport().getViewPosition();
      shown = state.page();
      washing = state.washing();
      page.setViewportView(
          state.page().map(p -> new BoatPagePanel(presenter, p, washing).column()).orElse(null));
      page.getViewport().setViewPosition(another ? new java.awt.Point(0, 0) : where);
    }
  }
}
