package hullalmanac.present.help;

import hullalmanac.core.guide.Topic;
import java.util.List;

/** What is to be known of the program itself, as a page of the guide. */
final class AboutPage {
  /** The page's id, which is no file. */
  static final String ID = Topic.ABOUT.link();

  static final String RECORD = "open the record’s folder";
  static final String STATE = "open the log’s folder";
  static final String REPORT = "copy for a report";

  private static final List<HelpState.Button> BUTTONS =
      List.of(
          new HelpState.Button(RECORD, "Open the record’s folder"),
          new HelpState.Button(STATE, "Open the folder of log and reports"),
          new HelpState.Button(REPORT, "Copy for a report"));

  private AboutPage() {}

  static List<HelpState.Button> buttons() {
    return BUTTONS;
  }

  static String markdown(Program.Facts facts) {
    StringBuilder page = new StringBuilder();
    page.append("# About Hull Almanac\n\n")
        .append("| what | here |\n| --- | --- |\n")
        .append(row("Version", facts.version()))
        .append(row("Java", facts.java()))
        .append(row("System", facts.system()))
        .append(row("Record", facts.record()))
        .append(row("Log and crash reports", facts.state()))
        .append(row("Crash reports", crashes(facts.crashes())))
        .append(
            "\n**When something goes wrong.** What the line at the bottom says is saved stays saved. The"
                + " program writes down what went wrong, by class and line of the program alone: no name,"
                + " no boat, no note of yours. *Copy for a report* puts that on the clipboard, with the"
                + " version and the end of the log, to be sent to whoever looks after the program."
                + " Nothing is ever sent by itself.\n\n")
        .append(
            "**Licence.** Hull Almanac is free software under the [Apache License 2.0](LICENSE). It is"
                + " built on [libraries with licences of their own](packaging/THIRD-PARTY.md).\n\n")
        .append(
            "**No substitute for looking.** A date is a forecast, not a guarantee. The label and data"
                + " sheet of each product, the harbour’s rules and local codes come first.\n");
    return page.toString();
  }

  private static String crashes(List<String> files) {
    return switch (files.size()) {
      case 0 -> "none";
      case 1 -> "1, " + files.get(0);
      default -> files.size() + ", the newest " + files.get(0);
    };
  }

  /** A path may hold what Markdown takes for marks; as code it is left as it is. */
  private static String row(String name, String value) {
    return "| "
        + name
        + " | "
        + (value.isEmpty() ? "" : "`` " + value.replace("|", "\\|") + " ``")
        + " |\n";
  }
}
