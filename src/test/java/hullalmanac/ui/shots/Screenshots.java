package hullalmanac.ui.shots;

import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Id;
import hullalmanac.core.record.Photo;
import hullalmanac.core.record.Product;
import hullalmanac.core.record.Step;
import hullalmanac.core.record.StepKind;
import hullalmanac.core.record.Visit;
import hullalmanac.core.record.VisitStatus;
import hullalmanac.exchange.photo.DrawnPhotos;
import hullalmanac.present.edit.CatchUpSheet;
import hullalmanac.present.edit.PassesSheet;
import hullalmanac.present.sheet.At;
import hullalmanac.present.sheet.Sheet;
import hullalmanac.present.shell.Place;
import hullalmanac.present.shell.ShellPresenter;
import hullalmanac.service.EditService;
import hullalmanac.service.FleetService;
import hullalmanac.service.RecordService;
import hullalmanac.ui.card.CardWindow;
import hullalmanac.ui.owner.OwnerWindow;
import hullalmanac.ui.shell.MainWindow;
import hullalmanac.ui.task.SwingTaskRunner;
import hullalmanac.ui.theme.Theme;
import hullalmanac.ui.widget.StepsBox;
import java.awt.Component;
import java.awt.Container;
import java.awt.Frame;
import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import javax.imageio.ImageIO;
import javax.swing.JComponent;
import javax.swing.JFrame;
import javax.swing.SwingUtilities;

/**
 * Opens the real window on the sample and writes pictures of its places, light and dark, at 100 and
 * 200 %.
 */
final class Screenshots {
  private static final int WIDTH = 1280;
  private static final int HEIGHT = 800;

  private Screenshots() {}

  public static void main(String[] arguments) {
    try {
      shootAll(arguments);
      System.exit(0);
    } catch (Exception e) {
      e.printStackTrace();
      System.exit(1);
    }
  }

  private static void shootAll(String[] arguments) throws Exception {
    Path record = Path.of(arguments[0]);
    File folder = new File(arguments[1]);
    for (boolean dark : new boolean[] {false, true}) {
      for (float zoom : new float[] {1f, 2f}) {
        shoot(record, folder, dark, zoom);
      }
    }
    PaperPictures.write(folder.toPath());
  }

  private static void shoot(Path record, File folder, boolean dark, float zoom) throws Exception {
    String tail = (dark ? "-dark-" : "-light-") + Math.round(zoom * 100) + ".png";
    RecordService open =
        RecordService.openReadOnly(
            record,
            new RecordService.Surroundings(
                Clock.systemUTC(), new Random(1)::nextLong, "pictures", 1));
    Almanac almanac = open.almanac();
    Boat boat =
        almanac.boats().stream()
            .filter(b -> b.name().equals("Black Guillemot"))
            .findFirst()
            .orElseThrow();
    SwingTaskRunner tasks = new SwingTaskRunner();
    ShellPresenter presenter =
        new ShellPresenter(FleetService.of(open), new EditService(open), tasks);
    MainWindow[] window = new MainWindow[1];
    SwingUtilities.invokeAndWait(
        () -> {
          Theme.start(dark, zoom);
          window[0] = new MainWindow(presenter, Optional.empty(), look -> {});
          window[0].frame().setSize(WIDTH, HEIGHT);
          window[0].open();
        });
    Thread.sleep(6000);
    write(window[0], new File(folder, "ahead" + tail));
    SwingUtilities.invokeAndWait(() -> presenter.openBoat(boat.id()));
    Thread.sleep(1500);
    write(window[0], new File(folder, "boat" + tail));
    sheets(presenter, window[0], folder, tail, almanac);
    SwingUtilities.invokeAndWait(() -> presenter.openBoat(boat.id()));
    Thread.sleep(700);
    SwingUtilities.invokeAndWait(() -> bringUp(window[0].frame().getContentPane(), zoom));
    Thread.sleep(500);
    write(window[0], new File(folder, "reasons" + tail));
    owner(presenter, boat.id(), folder, tail);
    card(presenter, almanac, folder, tail);
    SwingUtilities.invokeAndWait(
        () -> {
          presenter.go(Place.SHELF);
          presenter.shelf().choose(product(almanac, "sealant-b"));
          presenter.shelf().layBeside(Optional.of(product(almanac, "coating-c")));
        });
    Thread.sleep(1500);
    write(window[0], new File(folder, "shelf" + tail));
    reckoner(presenter, window[0], folder, tail);
    new MorePages(presenter, window[0], folder, tail).shoot(almanac);
    SwingUtilities.invokeAndWait(
        () -> {
          presenter.go(Place.AHEAD);
          presenter.startFinding();
          presenter.find().type("quill");
        });
    Thread.sleep(1500);
    write(window[0], new File(folder, "find" + tail));
    SwingUtilities.invokeAndWait(() -> window[0].frame().dispose());
    tasks.close();
    open.close();
  }

  private static void sheets(
      ShellPresenter presenter, MainWindow window, File folder, String tail, Almanac almanac)
      throws Exception {
    SwingUtilities.invokeAndWait(presenter.boats()::newBoat);
    Thread.sleep(700);
    write(window, new File(folder, "new-boat" + tail));
    SwingUtilities.invokeAndWait(
        () -> {
          presenter.leave();
          presenter.boats().change();
        });
    Thread.sleep(700);
    write(window, new File(folder, "facts" + tail));
    Visit visit =
        almanac.visits().stream()
            .filter(v -> v.boat().equals(presenter.boats().chosen().orElseThrow()))
            .filter(v -> v.status() == VisitStatus.DONE)
            .max(Comparator.comparing(Visit::day))
            .orElseThrow();
    SwingUtilities.invokeAndWait(
        () -> {
          presenter.leave();
          presenter.boats().openVisit(visit.id());
        });
    Thread.sleep(700);
    write(window, new File(folder, "visit" + tail));
    SwingUtilities.invokeAndWait(
        () -> {
          presenter.leave();
          presenter.go(Place.PEOPLE);
        });
    Thread.sleep(700);
    write(window, new File(folder, "people" + tail));
    SwingUtilities.invokeAndWait(
        () -> {
          presenter.shelf().choose(product(almanac, "coating-c"));
          presenter.go(Place.SHELF);
          presenter.shelf().change();
        });
    Thread.sleep(700);
    write(window, new File(folder, "product" + tail));
    SwingUtilities.invokeAndWait(presenter::leave);
    passes(presenter, window, folder, tail, almanac);
    photos(presenter, window, folder, tail, almanac);
  }

  /** Plans of correction with a test spot. */
  private static void passes(
      ShellPresenter presenter, MainWindow window, File folder, String tail, Almanac almanac)
      throws Exception {
    Boat boat =
        almanac.boats().stream().filter(b -> b.name().equals("Siskin")).findFirst().orElseThrow();
    Sheet sheet = new PassesSheet(presenter, boat.id());
    SwingUtilities.invokeAndWait(
        () -> {
          presenter.openBoat(boat.id());
          presenter.open(sheet);
        });
    Thread.sleep(1500);
    SwingUtilities.invokeAndWait(
        () -> {
          sheet.enter(new At("agreed", "", "gloss"), "84");
          sheet.enter(new At("more", "", "own"), "medium; finishing");
          sheet.press(new At("plans", "1", "show"));
        });
    Thread.sleep(1500);
    write(window, new File(folder, "passes" + tail));
    SwingUtilities.invokeAndWait(presenter::leave);
  }

  /** A visit's photos, and a day's photos in the evening. */
  private static void photos(
      ShellPresenter presenter, MainWindow window, File folder, String tail, Almanac almanac)
      throws Exception {
    Photo photo = almanac.photos().get(0);
    SwingUtilities.invokeAndWait(
        () -> {
          presenter.openBoat(photo.boat());
          presenter.boats().openVisit(photo.visit().orElseThrow());
        });
    Thread.sleep(700);
    SwingUtilities.invokeAndWait(() -> bringUp(window.frame().getContentPane(), "photos"));
    Thread.sleep(1500);
    write(window, new File(folder, "photos" + tail));
    LocalDate day = LocalDate.of(2026, 4, 20);
    SwingUtilities.invokeAndWait(
        () -> {
          Sheet sheet = new CatchUpSheet(presenter);
          presenter.open(sheet);
          sheet.enter(new At("day", "", "day"), day.toString());
          sheet.add("photos", drawn(day));
        });
    Thread.sleep(2500);
    write(window, new File(folder, "catch-up" + tail));
    SwingUtilities.invokeAndWait(() -> bringUp(window.frame().getContentPane(), "put"));
    Thread.sleep(1500);
    write(window, new File(folder, "missing" + tail));
    SwingUtilities.invokeAndWait(presenter::leave);
  }

  /** Photos of a day's work, drawn here, in files of their own. */
  private static List<String> drawn(LocalDate day) {
    int[] minutes = {485, 487, 560, 563, 700, 702, 705, 810, 812, 960};
    try {
      Path folder = Files.createTempDirectory("drawn");
      List<String> files = new ArrayList<>();
      for (int n = 0; n < minutes.length; n++) {
        Path file = folder.resolve("IMG_04" + (11 + n) + ".jpg");
        Files.write(file, DrawnPhotos.jpeg(n, day.atStartOfDay().plusMinutes(minutes[n])));
        files.add(file.toString());
      }
      Path far = folder.resolve("IMG_0430.heic");
      files.add(Files.write(far, DrawnPhotos.heic(day.atTime(16, 2))).toString());
      Path old = folder.resolve("IMG_0398.jpg");
      files.add(Files.write(old, DrawnPhotos.jpeg(20, day.minusDays(1).atTime(9, 5))).toString());
      return files;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Scrolls to what has a name. */
  private static void bringUp(Container in, String name) {
    for (Component c : in.getComponents()) {
      if (name.equals(c.getName()) && c.isShowing() && c instanceof JComponent part) {
        part.scrollRectToVisible(new Rectangle(0, 0, part.getWidth(), part.getHeight() + 400));
      } else if (c instanceof Container inner) {
        bringUp(inner, name);
      }
    }
  }

  /** A sum, and the coating window by the hour. */
  private static void reckoner(
      ShellPresenter presenter, MainWindow window, File folder, String tail) throws Exception {
    SwingUtilities.invokeAndWait(
        () -> {
          presenter.go(Place.RECKONER);
          List.of("water=10", "bottle=1000 ml").forEach(f -> given(presenter, 0, f));
        });
    Thread.sleep(700);
    write(window, new File(folder, "reckoner" + tail));
    SwingUtilities.invokeAndWait(
        () -> {
          List.of("air=18.5", "humidity=62", "surface=21", "product=silica coating C")
              .forEach(f -> given(presenter, 4, f));
          sheet(presenter, 4)
              .paste(
                  new At("hours", "0", "at"),
                  List.of(
                      List.of("9:00", "14", "82", "13"),
                      List.of("10:30", "16", "74", "17.5"),
                      List.of("12:00", "18.5", "62", "21"),
                      List.of("13:30", "19", "60", "22"),
                      List.of("15:00", "19", "61", "20"),
                      List.of("16:30", "17", "75", "15")));
        });
    Thread.sleep(700);
    write(window, new File(folder, "window" + tail));
    SwingUtilities.invokeAndWait(() -> bringUp(window.frame().getContentPane(), "copy day"));
    Thread.sleep(700);
    write(window, new File(folder, "hours" + tail));
  }

  private static Sheet sheet(ShellPresenter presenter, int sum) {
    presenter.reckoner().choose(sum);
    return presenter.reckoner().chosen();
  }

  private static void given(ShellPresenter presenter, int sum, String field) {
    String[] parts = field.split("=");
    sheet(presenter, sum).enter(new At("given", "", parts[0]), parts[1]);
  }

  private static void owner(ShellPresenter presenter, Id<Boat> boat, File folder, String tail)
      throws Exception {
    SwingUtilities.invokeAndWait(() -> presenter.showOwner(boat));
    Thread.sleep(2000);
    for (Frame frame : Frame.getFrames()) {
      if (frame.isShowing() && OwnerWindow.NAME.equals(frame.getName())) {
        SwingUtilities.invokeAndWait(
            () -> {
              frame.setSize(1600, 1000);
              frame.validate();
            });
        Thread.sleep(700);
        write((JFrame) frame, new File(folder, "owner" + tail));
      }
    }
    SwingUtilities.invokeAndWait(presenter.owner()::leave);
  }

  /** The card of a visit in which acid is used, with a dwell that is timed. */
  private static void card(ShellPresenter presenter, Almanac almanac, File folder, String tail)
      throws Exception {
    Step step =
        almanac.steps().stream()
            .filter(s -> s.kind() == StepKind.DECONTAMINATE && s.product().isPresent())
            .max(Comparator.comparing(Step::day).thenComparing(Step::id))
            .orElseThrow();
    SwingUtilities.invokeAndWait(() -> presenter.showCard(step.visit()));
    Thread.sleep(2000);
    SwingUtilities.invokeAndWait(
        () -> {
          presenter.card().choose(step.order() - 1);
          for (int stop = 0; stop < 3; stop++) {
            presenter.card().read(stop);
          }
          presenter.card().time();
          presenter.card().back("16:30");
          presenter.card().tick(0);
        });
    Thread.sleep(1000);
    for (Frame frame : Frame.getFrames()) {
      if (frame.isShowing() && CardWindow.NAME.equals(frame.getName())) {
        SwingUtilities.invokeAndWait(
            () -> {
              frame.setSize(1600, 1000);
              frame.validate();
            });
        Thread.sleep(700);
        write((JFrame) frame, new File(folder, "card" + tail));
      }
    }
    SwingUtilities.invokeAndWait(presenter.card()::leave);
  }

  /** Scrolls to the picture of how a date came about. */
  private static void bringUp(Container in, float zoom) {
    for (Component c : in.getComponents()) {
      if (c instanceof StepsBox box) {
        int above = Math.round(250 * zoom);
        box.scrollRectToVisible(new Rectangle(0, -above, box.getWidth(), above + box.getHeight()));
      } else if (c instanceof Container inner) {
        bringUp(inner, zoom);
      }
    }
  }

  private static Id<Product> product(Almanac almanac, String key) {
    return almanac.products().stream()
        .filter(p -> p.key().equals(key))
        .findFirst()
        .orElseThrow()
        .id();
  }

  static void write(MainWindow window, File file) throws Exception {
    write(window.frame(), file);
  }

  private static void write(JFrame window, File file) throws Exception {
    BufferedImage[] image = new BufferedImage[1];
    SwingUtilities.invokeAndWait(
        () -> {
          Container content = window.getRootPane();
          image[0] =
              new BufferedImage(
                  content.getWidth(), content.getHeight(), BufferedImage.TYPE_INT_RGB);
          content.printAll(image[0].createGraphics());
        });
    ImageIO.write(image[0], "png", file);
    System.out.println(file);
  }
}
