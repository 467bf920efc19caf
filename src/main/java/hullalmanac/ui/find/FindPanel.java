package hullalmanac.ui.find;

import com.formdev.flatlaf.util.UIScale;
import hullalmanac.core.find.Hit;
import hullalmanac.present.find.FindPresenter;
import hullalmanac.present.find.FindState;
import hullalmanac.ui.theme.Theme;
import hullalmanac.ui.widget.Act;
import hullalmanac.ui.widget.Card;
import hullalmanac.ui.widget.Labels;
import hullalmanac.ui.widget.Typing;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.List;
import javax.swing.DefaultListModel;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.ListSelectionModel;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;

/**
 * Lies over the window while one finds: what is typed at the top, what is found below it. Meant to
 * be the glass pane of the window.
 */
public final class FindPanel extends JPanel {
  private static final long serialVersionUID = 1L;
  private static final int WIDTH = 640;
  private static final int TOP = 56;
  private static final int MARGIN = 24;
  private static final int ROWS = 8;

  private final transient FindPresenter presenter;
  private final transient Runnable focusElsewhere;
  private final Card card =
      new Card(new MigLayout("insets 14, fillx, wrap 1, hidemode 3, gap 0 10", "[grow, fill]", ""));
  private final JTextField field = new JTextField();
  private final JLabel heading = Labels.quiet("");
  private final JTextArea sentence = Labels.wrapped("", false);
  private final JLabel foot = Labels.quiet("Up and Down choose, Enter opens, Esc leaves");
  private final DefaultListModel<Hit> hits = new DefaultListModel<>();
  private final JList<Hit> list = new JList<>(hits);
  private final JScrollPane scroll =
      new JScrollPane(
          list, JScrollPane.VERTICAL_SCROLLBAR_AS_NEEDED, JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
  private transient List<Hit> shown = List.of();
  private transient Component before;
  private boolean updating;

  /**
   * @param focusElsewhere puts the focus somewhere where it was before cannot have it back
   */
  public FindPanel(FindPresenter presenter, Runnable focusElsewhere) {
    super(null);
    this.presenter = presenter;
    this.focusElsewhere = focusElsewhere;
    setOpaque(false);
    setVisible(false);
    setFocusCycleRoot(true);
    getAccessibleContext().setAccessibleName("Find");
    buildField();
    buildList();
    sentence.setName("find says");
    foot.setToolTipText(foot.getText());
    card.add(field, "hmin 40, wmin 0");
    card.add(heading, "gapleft 14, wmin 0");
    card.add(sentence, "gapleft 14, gapright 14, gapbottom 8, wmin 0");
    card.add(scroll, "wmin 0, hmin 28, shrinkprio 200");
    card.add(foot, "gapleft 14, wmin 0");
    add(card);
    addMouseListener(new Outside());
    presenter.onChange(this::render);
  }

  private void buildField() {
    field.setName("find anything");
    field.putClientProperty(
        "JTextField.placeholderText", "Boat, owner, harbour, number, batch, note");
    field.putClientProperty("JTextField.selectAllOnFocusPolicy", "never");
    field.putClientProperty("JTextField.leadingIcon", Theme.icon("find", 20));
    field
        .getAccessibleContext()
        .setAccessibleName("Find a boat, owner, harbour, product, number, batch or note");
    Typing.in(field, this::typed);
    key("DOWN", presenter::down);
    key("UP", presenter::up);
    key("ENTER", presenter::take);
    key("ESCAPE", presenter::leave);
  }

  private void key(String key, Runnable act) {
    Act.on(field, key, act);
  }

  private void buildList() {
    list.setName("found");
    list.getAccessibleContext().setAccessibleName("Found");
    list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
    list.setCellRenderer(new HitCell());
    list.setFocusable(false);
    list.setOpaque(false);
    scroll.setBorder(null);
    scroll.setOpaque(false);
    scroll.getViewport().setOpaque(false);
    scroll.getVerticalScrollBar().putClientProperty("FlatLaf.style", "track: $Almanac.card");
    Pointed pointed = new Pointed();
    list.addMouseListener(pointed);
    list.addMouseMotionListener(pointed);
  }

  /** A click beside the card leaves. */
  private final class Outside extends MouseAdapter {
    @Override
    public void mousePressed(MouseEvent e) {
      if (!card.getBounds().contains(e.getPoint())) {
        presenter.leave();
      }
    }
  }

  /** The pointer chooses the hit under it, and a click takes it. */
  private final class Pointed extends MouseAdapter {
    private boolean at(MouseEvent e) {
      int hit = list.locationToIndex(e.getPoint());
      boolean over = hit >= 0 && list.getCellBounds(hit, hit).contains(e.getPoint());
      if (over) {
        presenter.choose(hit);
      }
      return over;
    }

    @Override
    public void mouseMoved(MouseEvent e) {
      at(e);
    }

    @Override
    public void mouseReleased(MouseEvent e) {
      if (SwingUtilities.isLeftMouseButton(e) && at(e)) {
        presenter.take();
      }
    }
  }

  private void typed() {
    if (!updating) {
      presenter.type(field.getText());
    }
  }

  private void render(FindState state) {
    updating = true;
    if (!field.getText().equals(state.text())) {
      field.setText(state.text());
    }
    updating = false;
    heading.setText(state.heading());
    heading.setVisible(!state.heading().isEmpty());
    sentence.setText(state.sentence());
    sentence.setVisible(!state.sentence().isEmpty());
    renderHits(state);
    if (state.open() != isVisible()) {
      appear(state.open());
    }
    revalidate();
    repaint();
  }

  private void renderHits(FindState state) {
    if (!state.hits().equals(shown)) {
      shown = state.hits();
      hits.clear();
      hits.addAll(shown);
      list.setVisibleRowCount(Math.max(1, Math.min(ROWS, shown.size())));
    }
    scroll.setVisible(!shown.isEmpty());
    foot.setVisible(!shown.isEmpty());
    if (state.chosen() < 0) {
      list.clearSelection();
      field.getAccessibleContext().setAccessibleDescription(state.sentence());
    } else {
      list.setSelectedIndex(state.chosen());
      list.ensureIndexIsVisible(state.chosen());
      field
          .getAccessibleContext()
          .setAccessibleDescription(HitCell.words(shown.get(state.chosen())));
    }
  }

  /** Takes the focus when it opens, and gives it back to where it was when it closes. */
  private void appear(boolean open) {
    if (open) {
      before = Typing.place(this);
      setVisible(true);
      field.requestFocusInWindow();
      return;
    }
    Component back = before;
    before = null;
    setVisible(false);
    if (back != null && back.isShowing()) {
      back.requestFocusInWindow();
    } else {
      focusElsewhere.run();
    }
  }

  @Override
  public void doLayout() {
    int margin = UIScale.scale(MARGIN);
    int top = Math.min(UIScale.scale(TOP), getHeight() / 10);
    int width = Math.max(0, Math.min(UIScale.scale(WIDTH), getWidth() - 2 * margin));
    int room = Math.max(0, getHeight() - top - margin);
    // The height of the sentence depends on its width, so the card is laid out to be measured.
    card.setSize(width, room);
    card.validate();
    int height = Math.min(room, card.getPreferredSize().height);
    card.setBounds((getWidth() - width) / 2, top, width, height);
  }

  @Override
  protected void paintComponent(Graphics g) {
    g.setColor(Theme.colour("veil"));
    g.fillRect(0, 0, getWidth(), getHeight());
  }
}
