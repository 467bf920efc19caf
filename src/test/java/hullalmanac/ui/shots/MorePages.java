package hullalmanac.ui.shots;

import hullalmanac.core.guide.Topic;
import hullalmanac.core.record.Almanac;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Estimate;
import hullalmanac.core.record.Invoice;
import hullalmanac.present.edit.ContactsSheet;
import hullalmanac.present.edit.EstimateSheet;
import hullalmanac.present.edit.InvoiceSheet;
import hullalmanac.present.edit.LetterSheet;
import hullalmanac.present.edit.ListSheet;
import hullalmanac.present.edit.PaperSheet;
import hullalmanac.present.edit.PapersSheet;
import hullalmanac.present.edit.ReminderSheet;
import hullalmanac.present.edit.TellAllSheet;
import hullalmanac.present.edit.WordingSheet;
import hullalmanac.present.sheet.Sheet;
import hullalmanac.present.shell.Place;
import hullalmanac.present.shell.ShellPresenter;
import hullalmanac.service.Papers;
import hullalmanac.ui.shell.MainWindow;
import java.io.File;
import java.util.Optional;
import javax.swing.SwingUtilities;

/** Pictures of money, letters, a list that is brought in, and the guide in the window. */
record MorePages(ShellPresenter presenter, MainWindow window, File folder, String tail) {
  private static final String LIST =
      """
      Boat name\tOwner\tPhone\tLOA\tHarbour\tLast washed\tRemarks
      Wheatear\tNell Farrow\t555-8101\t9.9m\tQuillhaven\t12/4/2026\tbimini
      Stonechat\tBo Larch\t\t32'\tQuillhaven\t3 May 2025\ttall mast
      Siskin\tSomebody Else\t555-8102\t44 ft\t\t\t
      Whinchat, Linnet\tAda Lind\t\t27 1/2 ft\tFallow Creek\t\tboth on trailers
      Total\t\t\t5\t\t\t
      """;

  private static final String CARDS =
      """
      BEGIN:VCARD
      VERSION:3.0
      FN:Ada Lind
      N:Lind;Ada;;;
      TEL:+1 555 8103
      EMAIL:ada@example.org
      END:VCARD
      BEGIN:VCARD
      VERSION:3.0
      FN:Nell Farrow
      N:Farrow;Nell;;;
      TEL:555-8101
      END:VCARD
      """;

  void shoot(Almanac almanac) throws Exception {
    go(() -> presenter.go(Place.TAKINGS), 1200);
    write("takings");
    for (Invoice invoice :
        almanac.books().invoices().stream().filter(Invoice::issued).limit(1).toList()) {
      open(new InvoiceSheet(presenter, invoice.id()), "invoice");
    }
    for (Estimate estimate : almanac.books().estimates().stream().limit(1).toList()) {
      open(new EstimateSheet(presenter, estimate.id()), "estimate");
    }
    Boat boat =
        almanac.boats().stream().filter(b -> b.name().equals("Curlew")).findFirst().orElseThrow();
    go(() -> presenter.openBoat(boat.id()), 700);
    open(new LetterSheet(presenter, boat.id()), "letter");
    open(new ReminderSheet(presenter, boat.id()), "telling");
    open(new PapersSheet(presenter, boat.id()), "papers");
    go(() -> presenter.open(history(boat)), 5000);
    write("paper");
    go(presenter::leave, 300);
    go(() -> presenter.go(Place.SETTINGS), 900);
    write("letterhead");
    open(new WordingSheet(presenter), "letters");
    go(() -> presenter.go(Place.AHEAD), 300);
    open(new TellAllSheet(presenter), "tell-all");
    go(() -> presenter.go(Place.PEOPLE), 300);
    ContactsSheet cards = new ContactsSheet(presenter);
    go(
        () -> {
          presenter.open(cards);
          cards.add("cards file", CARDS);
        },
        1500);
    write("contacts");
    go(presenter::leave, 300);
    go(() -> presenter.go(Place.SHELF), 500);
    go(presenter.shelf()::supplies, 1200);
    write("supplies");
    go(presenter::leave, 300);
    go(() -> presenter.go(Place.BOATS), 300);
    ListSheet list = new ListSheet(presenter);
    go(
        () -> {
          presenter.open(list);
          list.add("list file", LIST);
        },
        1500);
    write("list");
    go(presenter::leave, 300);
    go(() -> presenter.help().open(Topic.VISIT), 1500);
    write("help");
    go(() -> presenter.help().leave(), 300);
  }

  private Sheet history(Boat boat) {
    return PaperSheet.of(
        presenter,
        new Papers.Asked(
            Papers.Sort.HISTORY,
            Optional.of(boat.key()),
            Optional.empty(),
            Optional.empty(),
            Optional.empty()));
  }

  private void open(Sheet sheet, String name) throws Exception {
    go(() -> presenter.open(sheet), 900);
    write(name);
    go(presenter::leave, 300);
  }

  private static void go(Runnable act, int wait) throws Exception {
    SwingUtilities.invokeAndWait(act);
    Thread.sleep(wait);
  }

  private void write(String name) throws Exception {
    Screenshots.write(window, new File(folder, name + tail));
  }
}
