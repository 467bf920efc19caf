package hullalmanac.ui.boats;

import com.formdev.flatlaf.util.UIScale;
import hullalmanac.present.boats.BoatPage;
import hullalmanac.present.boats.BoatsPresenter;
import hullalmanac.present.boats.BoatsState;
import hullalmanac.ui.theme.Theme;
import hullalmanac.ui.widget.Labels;
import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.event.ActionEvent;
import java.util.Optional;
import javax.swing.AbstractAction;
import javax.swing.BorderFactory;
import javax.swing.DefaultListModel;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.ListCellRenderer;
import javax.swing.ListSelectionModel;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import net.miginfocom.swing.MigLayout;

/** The boats at the left, the page of the one chosen at the right. */
public final class BoatsPanel extends JPanel {
  private static final long serialVersionUID = 1L;
  private static final int FOLDS_UNDER = 900;

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
          new MigLayout("insets 16 12 8 12, fill, wrap 1", "[grow, fill]", "[][][grow, fill]"));
  private transient Optional<BoatPage> shown = Optional.empty();
  private final JButton all = new JButton("All boats");
  private final JPanel fold = new JPanel(new MigLayout("insets 12 24 0 24"));
  private boolean updating;
  private boolean choosing;

  public BoatsPanel(BoatsPresenter presenter) {
    super(new BorderLayout());
    this.presenter = presenter;
    buildList();
    page.setBorder(null);
    add(left, BorderLayout.WEST);
    add(page);
    all.addActionListener(e -> startFinding());
    all.setName("all boats");
    fold.add(all, "hmin 32");
    add(fold, BorderLayout.NORTH);
    presenter.onChange(this::render);
  }

  /** Where there is no room for both, the list folds away and comes instead of the page. */
  @Override
  public void doLayout() {
    boolean room = getWidth() >= UIScale.scale(FOLDS_UNDER);
    boolean listOnly = !room && (choosing || shown.isEmpty());
    left.setVisible(room || listOnly);
    page.setVisible(!listOnly);
    fold.setVisible(!room && !listOnly);
    BorderLayout sides = (BorderLayout) getLayout();
    if (listOnly != (sides.getConstraints(left) == BorderLayout.CENTER)) {
      sides.removeLayoutComponent(left);
      sides.removeLayoutComponent(page);
      sides.addLayoutComponent(left, listOnly ? BorderLayout.CENTER : BorderLayout.WEST);
      sides.addLayoutComponent(page, listOnly ? BorderLayout.EAST : BorderLayout.CENTER);
    }
    super.doLayout();
  }

  private void choosing(boolean now) {
    choosing = now;
    revalidate();
    repaint();
  }

  private void buildList() {
    find.setName("find");
    find.putClientProperty("JTextField.placeholderText", "Find a boat or owner");
    find.putClientProperty("JTextField.showClearButton", true);
    find.getAccessibleContext().setAccessibleName("Find a boat, owner, harbour or hull number");
    find.getDocument().addDocumentListener(new Typed());
    key(find, "ESCAPE", () -> find.setText(""));
    key(
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
    list.setCellRenderer(new ItemCell());
    list.addListSelectionListener(
        e -> {
          if (!updating && !e.getValueIsAdjusting() && list.getSelectedValue() != null) {
            choosing(false);
            presenter.choose(list.getSelectedValue().boat());
          }
        });
    JScrollPane scroll =
        new JScrollPane(
            list, JScrollPane.VERTICAL_SCROLLBAR_AS_NEEDED, JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
    scroll.setBorder(null);
    left.add(find, "hmin 32");
    left.add(found);
    left.add(scroll, "wmin 0");
    left.setBorder(BorderFactory.createMatteBorder(0, 0, 0, 1, Theme.colour("cardLine")));
  }

  private static void key(JTextField field, String key, Runnable act) {
    field.getInputMap().put(KeyStroke.getKeyStroke(key), key);
    field
        .getActionMap()
        .put(
            key,
            new AbstractAction() {
              private static final long serialVersionUID = 1L;

              @Override
              public void actionPerformed(ActionEvent e) {
                act.run();
              }
            });
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
    choosing(true);
    doLayout();
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
    if (!state.page().equals(shown)) {
      shown = state.page();
      page.setViewportView(state.page().map(BoatPagePanel::of).orElse(null));
      page.getViewport().setViewPosition(new java.awt.Point(0, 0));
    }
  }

  /** A boat in the list: name, owner and harbour, and what is due first. */
  private static final class ItemCell extends JPanel implements ListCellRenderer<BoatsState.Item> {
    private static final long serialVersionUID = 1L;
    private final JLabel name = Labels.strong("");
    private final JLabel detail = Labels.quiet("");
    private final JLabel status = Labels.quiet("");

    ItemCell() {
      super(new MigLayout("insets 6 10 6 8, fillx, gap 4 0, wrap 1", "[grow, fill]", ""));
      add(name, "wmin 0");
      add(status, "wmin 0");
      add(detail, "wmin 0");
    }

    @Override
    public Component getListCellRendererComponent(
        JList<? extends BoatsState.Item> in,
        BoatsState.Item item,
        int index,
        boolean selected,
        boolean focus) {
      name.setText(item.name());
      detail.setText(item.detail());
      status.setText(item.status());
      status.setForeground(Theme.colour("accent"));
      setBackground(selected ? in.getSelectionBackground() : in.getBackground());
      getAccessibleContext()
          .setAccessibleName(item.name() + ", " + item.status() + ", " + item.detail());
      return this;
    }

    @Override
    public Dimension getPreferredSize() {
      Dimension size = super.getPreferredSize();
      return new Dimension(UIScale.scale(230), size.height);
    }

    @Override
    public void updateUI() {
      super.updateUI();
      if (name != null) {
        name.updateUI();
        detail.updateUI();
        status.updateUI();
      }
    }
  }
}
