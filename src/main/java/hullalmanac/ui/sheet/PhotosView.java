package hullalmanac.ui.sheet;

import com.formdev.flatlaf.util.SystemFileChooser;
import hullalmanac.present.sheet.Sheet;
import hullalmanac.present.sheet.SheetState;
import hullalmanac.ui.theme.Theme;
import hullalmanac.ui.widget.Act;
import hullalmanac.ui.widget.Labels;
import java.awt.BasicStroke;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.event.ActionEvent;
import java.awt.event.FocusEvent;
import java.awt.event.FocusListener;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TooManyListenersException;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.TransferHandler;
import net.miginfocom.swing.MigLayout;

/** Photos beside each other; where it is open, they are dropped, pasted and chosen into it. */
final class PhotosView extends JPanel {
  private static final long serialVersionUID = 1L;
  private static final float[] DASHES = {5f, 4f};

  private final transient Sheet sheet;
  private final String block;
  private final boolean open;
  private final PhotoGrid grid = new PhotoGrid();
  private final JTextArea words = Labels.wrapped("", true);
  private final transient Map<String, PhotoCell> cells = new LinkedHashMap<>();
  private boolean over;

  PhotosView(SheetState.Photos state, Sheet sheet) {
    super(
        new MigLayout(
            (state.open() ? "insets 12 14 12 14" : "insets 0")
                + ", fillx, wrap 1, hidemode 3, gap 0 8, aligny center",
            "[grow, fill]",
            ""));
    this.sheet = sheet;
    this.block = state.id();
    this.open = state.open();
    setOpaque(false);
    setName(block);
    add(grid, "wmin 0");
    add(words, "wmin 100");
    if (open) {
      takePhotos();
    }
    show(state);
  }

  private void takePhotos() {
    setFocusable(true);
    getAccessibleContext().setAccessibleName("Photos: drop them here, or paste them with Ctrl+V");
    JPanel ways =
        new JPanel(
            new MigLayout(
                "insets 0, fillx, gap 12 8, novisualpadding", "[][grow, fill]", "[center]"));
    ways.setOpaque(false);
    JButton choose = new JButton("Add photos …");
    choose.setName("add " + block);
    choose.addActionListener(e -> choose());
    ways.add(choose, "hmin 32");
    ways.add(Labels.wrapped("or drop them here, or paste them with Ctrl+V", true), "wmin 60");
    add(ways, "wmin 0");
    setTransferHandler(new PhotoTransfer(sheet, block));
    Act.within(this, "ctrl V", this::paste);
    addMouseListener(
        new MouseAdapter() {
          @Override
          public void mousePressed(MouseEvent e) {
            requestFocusInWindow();
          }
        });
    addFocusListener(
        new FocusListener() {
          @Override
          public void focusGained(FocusEvent e) {
            repaint();
          }

          @Override
          public void focusLost(FocusEvent e) {
            repaint();
          }
        });
    if (getDropTarget() != null) {
      try {
        getDropTarget().addDropTargetListener(new Hover(this::over));
      } catch (TooManyListenersException e) {
        throw new IllegalStateException("a drop target of Swing takes any number", e);
      }
    }
  }

  private void over(boolean now) {
    over = now;
    repaint();
  }

  /** Takes photos from the clipboard. */
  void paste() {
    TransferHandler.getPasteAction()
        .actionPerformed(new ActionEvent(this, ActionEvent.ACTION_PERFORMED, "paste"));
  }

  private void choose() {
    SystemFileChooser chooser = new SystemFileChooser();
    chooser.setDialogTitle("Add photos");
    chooser.setMultiSelectionEnabled(true);
    chooser.setFileFilter(
        new SystemFileChooser.FileNameExtensionFilter(
            "Photos (JPEG, PNG, HEIC)", "jpg", "jpeg", "png", "heic", "heif"));
    if (chooser.showOpenDialog(this) == SystemFileChooser.APPROVE_OPTION) {
      List<String> files = new ArrayList<>();
      for (Object file : chooser.getSelectedFiles()) {
        files.add(file.toString());
      }
      sheet.add(block, files);
    }
  }

  void show(SheetState.Photos state) {
    List<String> ids = state.cards().stream().map(SheetState.PhotoCard::id).toList();
    boolean same = ids.equals(List.copyOf(cells.keySet()));
    Map<String, PhotoCell> now = new LinkedHashMap<>();
    for (SheetState.PhotoCard card : state.cards()) {
      PhotoCell before = cells.get(card.id());
      boolean fits = before != null && before.fits(card);
      same = same && fits;
      now.put(card.id(), fits ? before : new PhotoCell(block, card, sheet));
      now.get(card.id()).show(card);
    }
    cells.clear();
    cells.putAll(now);
    if (!same) {
      grid.removeAll();
      cells.values().forEach(grid::addCell);
    }
    grid.setVisible(!cells.isEmpty());
    words.setText(state.words());
    words.setVisible(!state.words().isBlank());
    revalidate();
    repaint();
  }

  void take() {
    cells.values().forEach(PhotoCell::take);
  }

  /** Whether one begins here: where photos can be pasted. */
  boolean open() {
    return open;
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    super.paintComponent(graphics);
    if (!open) {
      return;
    }
    Graphics2D g = (Graphics2D) graphics.create();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    int arc = com.formdev.flatlaf.util.UIScale.scale(12);
    float zoom = com.formdev.flatlaf.util.UIScale.scale(1f);
    boolean marked = over || isFocusOwner();
    if (over) {
      g.setColor(Theme.colour("chosen"));
      g.fillRoundRect(1, 1, getWidth() - 3, getHeight() - 3, arc, arc);
    }
    g.setColor(
        marked ? Theme.colour("accent") : javax.swing.UIManager.getColor("Component.borderColor"));
    g.setStroke(marked ? new BasicStroke(3f * zoom) : dashed(zoom));
    g.drawRoundRect(1, 1, getWidth() - 3, getHeight() - 3, arc, arc);
    g.dispose();
  }

  private static BasicStroke dashed(float zoom) {
    return new BasicStroke(
        zoom,
        BasicStroke.CAP_BUTT,
        BasicStroke.JOIN_ROUND,
        1f,
        new float[] {DASHES[0] * zoom, DASHES[1] * zoom},
        0f);
  }
}
