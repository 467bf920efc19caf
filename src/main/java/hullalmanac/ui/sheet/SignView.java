package hullalmanac.ui.sheet;

import hullalmanac.core.record.Signature;
import hullalmanac.present.sheet.Sheet;
import hullalmanac.present.sheet.SheetState;
import hullalmanac.ui.widget.Labels;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** A field to sign in with a pointer, and what wipes it off; or a signature that was drawn. */
final class SignView extends JPanel {
  private static final long serialVersionUID = 1L;

  private final SignPad pad;
  private final JButton wipe = new JButton("Wipe it off");

  SignView(SheetState.Sign state, Sheet sheet) {
    super(new MigLayout("insets 0, fillx, wrap 1, gap 0 6, novisualpadding", "[grow, fill]", ""));
    setOpaque(false);
    pad = new SignPad(state.words(), drawn -> sheet.enter(state.at(), drawn));
    pad.setName(state.at().block() + " " + state.at().field());
    pad.setOpen(state.open());
    add(Labels.wrapped(state.words(), true), "wmin 60");
    add(pad, "wmin 60, alignx left, growx 0");
    if (state.open()) {
      wipe.setName("wipe " + state.at().block());
      wipe.addActionListener(e -> sheet.enter(state.at(), ""));
      add(wipe, "hmin 32, alignx left, growx 0");
    }
  }

  void show(SheetState.Sign state) {
    pad.show(Optional.of(state.strokes()).filter(drawn -> !drawn.isEmpty()).map(Signature::parse));
    wipe.setEnabled(!state.strokes().isEmpty());
  }
}
