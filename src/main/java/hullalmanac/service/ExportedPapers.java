package hullalmanac.service;

import hullalmanac.core.paper.HistoryPaper;
import hullalmanac.core.paper.Paper;
import hullalmanac.core.record.Boat;
import hullalmanac.core.record.Books;
import hullalmanac.core.record.Expense;
import hullalmanac.core.record.Invoice;
import hullalmanac.core.record.Payment;
import hullalmanac.core.record.Trip;
import hullalmanac.exchange.pdf.PaperPdf;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** All papers of a record, written beside its lists: they say what the record said on that day. */
final class ExportedPapers {
  /** The folder beside the lists. */
  static final String FOLDER = "papers";

  private final RecordService record;
  private final Fleet fleet;
  private final Papers papers;
  private final Path folder;
  private final Map<String, String> written = new LinkedHashMap<>();

  private ExportedPapers(RecordService record, Path folder) {
    this.record = record;
    this.folder = folder;
    fleet = Fleet.of(record.almanac(), record.today());
    papers = new Papers(fleet);
  }

  /**
   * Writes the history of each boat, each invoice and credit, what is due, how long products last,
   * and the takings of each year.
   *
   * @param beside the folder of the lists
   * @return addresses from there by what they are, in order
   */
  static Map<String, String> write(RecordService record, Path beside) throws IOException {
    Path folder = beside.resolve(FOLDER);
    Files.createDirectories(folder);
    ExportedPapers all = new ExportedPapers(record, folder);
    all.boats();
    all.invoices();
    all.whole(Papers.Sort.DUE, "due");
    all.whole(Papers.Sort.LIVES, "lives");
    all.years();
    all.sweep();
    return all.written;
  }

  private void boats() throws IOException {
    List<Boat> boats =
        fleet.almanac().boats().stream()
            .sorted(Comparator.comparing(Boat::name).thenComparing(Boat::key))
            .toList();
    for (Boat boat : boats) {
      write(
          HistoryPaper.of(fleet.almanac(), fleet.coats(), fleet.asOf(), boat.id()),
          "history-" + boat.key());
    }
  }

  private void invoices() throws IOException {
    List<String> numbers =
        fleet.almanac().books().invoices().stream()
            .map(Invoice::issue)
            .flatMap(Optional::stream)
            .map(Invoice.Issue::number)
            .sorted()
            .toList();
    for (String number : numbers) {
      write(
          new Papers.Asked(
              Papers.Sort.INVOICE,
              Optional.empty(),
              Optional.empty(),
              Optional.of(number),
              Optional.empty()),
          "invoice-" + number);
    }
  }

  private void whole(Papers.Sort sort, String name) throws IOException {
    write(Papers.Asked.ofAll(sort), name);
  }

  private void years() throws IOException {
    Books books = fleet.almanac().books();
    List<Integer> years =
        Stream.of(
                books.invoices().stream().flatMap(i -> i.issue().stream()).map(Invoice.Issue::day),
                books.payments().stream().map(Payment::day),
                books.expenses().stream().map(Expense::day),
                books.trips().stream().map(Trip::day))
            .flatMap(days -> days)
            .map(LocalDate::getYear)
            .distinct()
            .sorted()
            .toList();
    for (int year : years) {
      write(Papers.Asked.ofYear(year), "takings-" + year);
    }
  }

  /** Takes away what an earlier export wrote of things that are gone. */
  private void sweep() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : files.toList()) {
        if (!written.containsValue(FOLDER + "/" + file.getFileName())
            && Files.isRegularFile(file)
            && PaperPdf.isOurs(Files.readAllBytes(file))) {
          Files.delete(file);
        }
      }
    }
  }

  private void write(Papers.Asked asked, String name) throws IOException {
    if (papers.of(asked) instanceof Papers.Ready ready) {
      write(ready.paper(), name);
    }
  }

  private void write(Paper paper, String name) throws IOException {
    String plain = name.replaceAll("[^A-Za-z0-9-]+", "-");
    String file = plain + ".pdf";
    for (int i = 2; written.containsValue(FOLDER + "/" + file); i++) {
      file = plain + "-" + i + ".pdf";
    }
    PaperService.write(
        new MadePaper.Maker(record.photos()).make(paper, fleet.asOf()), folder.resolve(file));
    String words = paper.name();
    for (int i = 2; written.containsKey(words); i++) {
      words = paper.name() + " (" + i + ")";
    }
    written.put(words, FOLDER + "/" + file);
  }
}
