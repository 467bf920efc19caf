package hullalmanac.ui.owner;

import com.formdev.flatlaf.util.UIScale;
import hullalmanac.core.record.Pixels;
import hullalmanac.core.report.BoatHistory;
import hullalmanac.present.owner.OwnerState;
import hullalmanac.ui.widget.Labels;
import java.util.Optional;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** Pairs of pictures, each under its name; one whose pictures cannot be shown goes away. */
final class PairList extends JPanel {
  private static final long serialVersionUID = 1L;
  private static final int WIDEST = 760;

  /** A picture a third wider than the frame is enough, however it was held when it was taken. */
  private static final double FINER = 4.0 / 3;

  PairList(OwnerState state, PictureSource pictures) {
    super(new MigLayout("insets 0, fillx, wrap 1, hidemode 3", "[grow, fill]", ""));
    setOpaque(false);
    add(Labels.heading("Before and after"), "wmin 0, gapbottom 4");
    for (BoatHistory.Pair pair : state.pairs()) {
      JPanel block =
          new JPanel(new MigLayout("insets 0 0 16 0, fillx, wrap 1, gapy 4", "[grow, fill]", ""));
      block.setOpaque(false);
      PhotoPair view = new PhotoPair(pair.surface() + ", " + pair.day() + ", before and after");
      block.add(view, "wmin 0, wmax " + UIScale.scale(WIDEST) + "px");
      block.add(Labels.wrapped(pair.surface() + ", " + pair.day(), true), "wmin 60");
      add(block, "wmin 0");
      new Fetch(block, view).of(pair, pictures);
    }
    if (!state.morePairs().isEmpty()) {
      add(Labels.wrapped(state.morePairs(), true), "wmin 60");
    }
  }

  /** Both pictures of one pair; shown when both have come. */
  private final class Fetch {
    private final JPanel block;
    private final PhotoPair view;
    private Optional<Pixels> before = Optional.empty();
    private Optional<Pixels> after = Optional.empty();

    Fetch(JPanel block, PhotoPair view) {
      this.block = block;
      this.view = view;
    }

    void of(BoatHistory.Pair pair, PictureSource pictures) {
      int side = (int) Math.round(UIScale.scale(WIDEST) * FINER);
      pictures.ask(
          pair.before(),
          side,
          p -> {
            before = p;
            came(p);
          });
      pictures.ask(
          pair.after(),
          side,
          p -> {
            after = p;
            came(p);
          });
    }

    private void came(Optional<Pixels> picture) {
      if (picture.isEmpty()) {
        block.setVisible(false);
      } else if (before.isPresent() && after.isPresent()) {
        view.show(before.get(), after.get());
      }
      boolean any = false;
      for (java.awt.Component c : getComponents()) {
        any |= c instanceof JPanel && c.isVisible();
      }
      setVisible(any);
    }
  }
}
