package hullalmanac.ui.sheet;

import com.formdev.flatlaf.util.SystemFileChooser;
import hullalmanac.present.sheet.Sheet;
import hullalmanac.present.sheet.SheetState;
import hullalmanac.ui.widget.Labels;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;

/** Photos beside each other; where it is open, they are dropped, pasted and chosen into it. */
final class PhotosView extends DropFrame {
  private static final long serialVersionUID = 1L;

  private final transient Sheet sheet;
  private final String block;
  private final PhotoGrid grid = new PhotoGrid();
  private final JTextArea words = Labels.wrapped("", true);
  private final transient Map<String, PhotoCell> cells = new LinkedHashMap<>();

  PhotosView(SheetState.Photos state, Sheet sheet) {
    super(
        new MigLayout(
            (state.open() ? "insets 12 14 12 14" : "insets 0")
                + ", fillx, wrap 1, hidemode 3, gap 0 8, aligny center",
            "[grow, fill]",
            ""));
    this.sheet = sheet;
    this.block = state.id();
    setName(block);
    add(grid, "wmin 0");
    add(words, "wmin 100");
    if (state.open()) {
      takePhotos();
    }
    show(state);
  }

  private void takePhotos() {
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
    takeInto(
        new PhotoTransfer(sheet, block),
        PhotoTransfer.TAKEN,
        "Photos: drop them here, or paste them with Ctrl+V");
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
}
