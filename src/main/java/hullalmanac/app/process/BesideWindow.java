package hullalmanac.app.process;

import com.formdev.flatlaf.util.SystemFileChooser;
import hullalmanac.exchange.pdf.PaperPages;
import hullalmanac.present.Outside;
import hullalmanac.service.MadePaper;
import java.awt.Desktop;
import java.awt.print.PrinterException;
import java.awt.print.PrinterJob;
import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.SwingUtilities;

/**
 * The desktop, its printers and its dialog for files. Asked on the event thread, which then only
 * waits for dialogs; other programs and printers are waited for beside it.
 */
public final class BesideWindow implements Outside {
  /** From the search for printers until the dialog is answered; a second press asks nothing. */
  private boolean choosing;

  @Override
  public void open(String file, Consumer<Optional<String>> said) {
    hand(
        Desktop.Action.OPEN,
        desktop -> desktop.open(Path.of(file).toFile()),
        "The desktop opens no such file for programs. It is " + file + ".",
        said);
  }

  @Override
  public void mail(String link, Consumer<Optional<String>> said) {
    hand(
        Desktop.Action.MAIL,
        desktop -> desktop.mail(URI.create(link)),
        "The desktop starts no mail program for programs. Write the draft as a file, and open it"
            + " there.",
        said);
  }

  /** What is done with the desktop. */
  private interface Deed {
    void with(Desktop desktop) throws IOException;
  }

  private static void hand(
      Desktop.Action action, Deed deed, String otherwise, Consumer<Optional<String>> said) {
    if (!Desktop.isDesktopSupported() || !Desktop.getDesktop().isSupported(action)) {
      said.accept(Optional.of(otherwise));
      return;
    }
    aside(
        () -> {
          Optional<String> not = Optional.empty();
          try {
            deed.with(Desktop.getDesktop());
          } catch (IOException | IllegalArgumentException e) {
            not = Optional.of(otherwise);
          }
          Optional<String> answer = not;
          SwingUtilities.invokeLater(() -> said.accept(answer));
        });
  }

  @Override
  public void print(MadePaper paper, Consumer<Optional<String>> said) {
    if (choosing) {
      return;
    }
    choosing = true;
    // Printers on a network take their time to be found.
    aside(
        () -> {
          boolean any = false;
          try {
            any = PrinterJob.lookupPrintServices().length > 0;
          } finally {
            boolean found = any;
            SwingUtilities.invokeLater(() -> found(found, paper, said));
          }
        });
  }

  private void found(boolean any, MadePaper paper, Consumer<Optional<String>> said) {
    try {
      if (any) {
        choosePrinter(paper, said);
      } else {
        said.accept(
            Optional.of(
                "No printer is set up on this computer. Save the paper, and print it elsewhere."));
      }
    } finally {
      choosing = false;
    }
  }

  private static void choosePrinter(MadePaper paper, Consumer<Optional<String>> said) {
    PrinterJob job = PrinterJob.getPrinterJob();
    job.setJobName(paper.paper().name());
    if (job.printDialog()) {
      aside(
          () -> {
            Optional<String> not = Optional.empty();
            try {
              PaperPages.print(paper.made(), job);
            } catch (PrinterException | UncheckedIOException e) {
              not = Optional.of("It was not printed: " + e.getMessage() + ". Look at the printer.");
            }
            Optional<String> answer = not;
            SwingUtilities.invokeLater(() -> said.accept(answer));
          });
    }
  }

  private static void aside(Runnable work) {
    Thread thread = new Thread(work, "beside the window");
    thread.setDaemon(true);
    thread.start();
  }

  @Override
  public Optional<String> where(String name, String kind) {
    SystemFileChooser chooser = new SystemFileChooser();
    chooser.setDialogTitle("Save " + kind);
    String ending = name.substring(name.lastIndexOf('.'));
    chooser.setFileFilter(new SystemFileChooser.FileNameExtensionFilter(kind, ending.substring(1)));
    chooser.setSelectedFile(new File(name));
    while (chooser.showSaveDialog(null) == SystemFileChooser.APPROVE_OPTION) {
      String chosen = chooser.getSelectedFile().toString();
      if (chosen.toLowerCase(Locale.ROOT).endsWith(ending)) {
        return Optional.of(chosen);
      }
      File named = new File(chosen + ending);
      if (!named.exists()) {
        return Optional.of(named.toString());
      }
      // The dialog has asked of another name; this one it has to ask of.
      chooser.setSelectedFile(named);
    }
    return Optional.empty();
  }
}
