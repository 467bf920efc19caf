package hullalmanac.ui.sheet;

import com.formdev.flatlaf.util.SystemFileChooser;
import hullalmanac.present.sheet.Sheet;
import hullalmanac.present.sheet.SheetState;
import hullalmanac.ui.widget.Labels;
import java.util.List;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;

/** A place for a file: chosen, dropped or pasted into it, or a text that is pasted. */
final class FilesView extends DropFrame {
  private static final long serialVersionUID = 1L;

  private final transient Sheet sheet;
  private final transient SheetState.Files state;
  private final JTextArea words = Labels.wrapped("", true);

  FilesView(SheetState.Files state, Sheet sheet) {
    super(
        new MigLayout(
            "insets 12 14 12 14, fillx, wrap 1, hidemode 3, gap 0 8", "[grow, fill]", ""));
    this.sheet = sheet;
    this.state = state;
    setName(state.id());
    add(words, "wmin 100");
    JPanel ways =
        new JPanel(
            new MigLayout(
                "insets 0, fillx, gap 12 8, novisualpadding", "[][grow, fill]", "[center]"));
    ways.setOpaque(false);
    JButton choose = new JButton(state.choose());
    choose.setName("choose " + state.id());
    choose.addActionListener(e -> choose());
    ways.add(choose, "hmin 32");
    String paste = state.copied().isEmpty() ? "it" : "it or " + state.copied();
    ways.add(
        Labels.wrapped("or drop it here, or paste " + paste + " with Ctrl+V", true), "wmin 60");
    add(ways, "wmin 0");
    takeInto(
        new SheetTransfer(sheet, state.id(), SheetTransfer.TABLES),
        SheetTransfer.TABLES,
        "A file: drop it here, or paste " + paste + " with Ctrl+V");
    show(state);
  }

  private void choose() {
    SystemFileChooser chooser = new SystemFileChooser();
    chooser.setDialogTitle(state.kinds());
    chooser.setFileFilter(
        new SystemFileChooser.FileNameExtensionFilter(
            state.kinds(), state.endings().toArray(String[]::new)));
    if (chooser.showOpenDialog(this) == SystemFileChooser.APPROVE_OPTION) {
      Object file = chooser.getSelectedFile();
      sheet.add(state.id(), List.of(file.toString()));
    }
  }

  void show(SheetState.Files now) {
    words.setText(now.words());
    words.setVisible(!now.words().isBlank());
    revalidate();
  }
}
